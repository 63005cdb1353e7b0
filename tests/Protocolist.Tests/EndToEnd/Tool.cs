using System.Diagnostics;
using System.Text;
using Protocolist.Cli;

namespace Protocolist.Tests.EndToEnd;

/// <summary>What a run of the tool gave.</summary>
public sealed record Run(int Exit, string Out, string Error)
{
    /// <summary>All of it, for a failed assertion.</summary>
    public override string ToString() => $"exit {Exit}\n--- out\n{Out}\n--- error\n{Error}";
}

/// <summary>
/// The command line, and a folder of one's own to run it in. Called in this process it does all that the program does, the start of a
/// process aside; <see cref="RealStartTests"/> holds that both say the same.
/// </summary>
public sealed class Tool : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(1);

    public Tool() => Directory.CreateDirectory(Folder);

    /// <summary>A new empty folder.</summary>
    public string Folder { get; } = Path.Combine(Path.GetTempPath(), "protocolist-tests", Guid.NewGuid().ToString("N"));

    /// <summary>Writes a file into the folder and gives its path.</summary>
    public string File(string name, string text)
    {
        var path = Path.Combine(Folder, name);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        System.IO.File.WriteAllText(path, text);
        return path;
    }

    /// <summary>Another program to hold to the same, as the native one: its path. Every run of the tests is then a start of it.</summary>
    private static readonly string? Other = Environment.GetEnvironmentVariable("PROTOCOLIST_PROGRAM") is { Length: > 0 } path ? Path.GetFullPath(path) : null;

    /// <summary>Where the built program is.</summary>
    public static string Program => Other ?? Repository.Built("src", "Protocolist.Cli", OperatingSystem.IsWindows() ? "protocolist.exe" : "protocolist");

    /// <summary>Calls the command line in this process.</summary>
    public Run Run(params string[] words) => RunWith("", words);

    /// <summary>Calls it with a text on its standard input.</summary>
    public Run RunWith(string input, params string[] words)
    {
        if (Other is not null) return Start([], input, words);
        var (output, error) = (new StringWriter { NewLine = "\n" }, new StringWriter { NewLine = "\n" });
        var call = Task.Run(() => CommandLine.Run(words, new() { Folder = Folder, Input = () => new MemoryStream(Encoding.UTF8.GetBytes(input)), Output = output, Error = error }));
        Assert.True(call.Wait(Patience), "the tool does not end");
        return Told(new(call.Result, output.ToString(), error.ToString()));
    }

    /// <summary>Starts the built program, with variables of the environment set.</summary>
    public Run Start((string Name, string Value)[] variables, params string[] words) => Start(variables, "", words);

    private Run Start((string Name, string Value)[] variables, string input, string[] words)
    {
        using var process = Begin(variables, words);
        process.StandardInput.Write(input);
        process.StandardInput.Close();
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        return Told(new(EndOf(process), output, error.GetAwaiter().GetResult()));
    }

    /// <summary>Starts the built program and stops listening after its first line, as <c>head -n 1</c> does.</summary>
    public Run StartAndHearOneLine(params string[] words)
    {
        using var process = Begin([], words);
        var error = process.StandardError.ReadToEndAsync();
        var line = process.StandardOutput.ReadLine();
        process.StandardOutput.Close();
        return Told(new(EndOf(process), line ?? "", error.GetAwaiter().GetResult()));
    }

    /// <summary>Starts the built program, for a test that does something to it while it runs.</summary>
    public Process Begin(params string[] words) => Begin([], words);

    public void Dispose() => Directory.Delete(Folder, recursive: true);

    private static int EndOf(Process process)
    {
        Assert.True(process.WaitForExit(Patience), "the program does not end");
        return process.ExitCode;
    }

    /// <summary>Whatever happened, nobody is shown a stack trace.</summary>
    private static Run Told(Run run)
    {
        Assert.DoesNotContain("   at ", run.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("Exception", run.Error, StringComparison.Ordinal);
        return run;
    }

    private Process Begin((string Name, string Value)[] variables, string[] words)
    {
        var start = new ProcessStartInfo(Program, words)
        {
            WorkingDirectory = Folder,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            StandardInputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false),
            RedirectStandardError = true,
            StandardOutputEncoding = Encoding.UTF8,
            StandardErrorEncoding = Encoding.UTF8,
        };
        foreach (var (name, value) in variables) start.Environment[name] = value;
        return Process.Start(start)!;
    }
}
