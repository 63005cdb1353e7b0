using System.Diagnostics;

namespace Protocolist.Tests.EndToEnd;

/// <summary>The sample that embeds the library stays short, builds with the solution and says what it should.</summary>
public class EmbedSampleTests
{
    [Fact]
    public void Program_that_embeds_the_library_plans()
    {
        var start = new ProcessStartInfo(Environment.ProcessPath is { } dotnet && Path.GetFileNameWithoutExtension(dotnet) == "dotnet" ? dotnet : "dotnet", [Repository.Built("samples", "Embed", "Embed.dll")]) { RedirectStandardOutput = true };
        using var process = Process.Start(start)!;
        var said = process.StandardOutput.ReadToEnd();
        process.WaitForExit();

        Assert.Equal(0, process.ExitCode);
        Assert.Contains("note protocol-selected: Large mammal, whole body (mammal-large, revision ", said, StringComparison.Ordinal);
        Assert.Contains("\nLarge mammal, whole body, to be started: yes\n", said, StringComparison.Ordinal);
        Assert.Contains("\n2027-03-03 09:00 Keep it cold until work begins\n", said, StringComparison.Ordinal);
        Assert.Contains(" Fix in formalin: neutral buffered formalin 10 %\n", said, StringComparison.Ordinal);
        Assert.Matches("\nIt soaks [0-9.]+ to [0-9.]+ d, which is soak\n  soak = [0-9.]+ to [0-9.]+ d, which is penetration-time.*\n$", said);
    }

    [Fact]
    public void Program_that_embeds_the_library_is_short() =>
        Assert.True(File.ReadAllLines(Repository.File("samples", "Embed", "Program.cs")).Length < 40);
}
