using System.Diagnostics;
using System.Globalization;

namespace Protocolist.Tests.EndToEnd;

/// <summary>Folders that are large, empty, closed or without an end; and thousands of findings.</summary>
public sealed class FolderTests : IDisposable
{
    private readonly Tool _tool = new();

    public void Dispose() => _tool.Dispose();

    private void Protocol(string name, string @class = "{group: mammal, mass: 1 g to 2 g}", string more = "") =>
        _tool.File(name, $"format: 1\nprotocol: {Path.GetFileNameWithoutExtension(name)}\nrevision: 1\ntitle: House\nextends: mammal-large\nfor: {@class}\n{more}");

    private void Shell(string line)
    {
        using var shell = Process.Start(new ProcessStartInfo("sh", ["-c", line]) { WorkingDirectory = _tool.Folder })!;
        shell.WaitForExit();
        Assert.Equal(0, shell.ExitCode);
    }

    [Fact]
    public void A_link_that_leads_back_is_told_once_and_the_rest_is_checked()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "links are made by a shell");
        Protocol("house/deep/a.yaml");
        Shell("ln -s .. house/deep/back; ln -s . house/self; ln -s a.yaml house/deep/b.yaml");

        var run = _tool.Run("check", "house");

        Assert.Single(run.Out.Split('\n'), l => l.StartsWith("house/deep/back: warning link-leads-back", StringComparison.Ordinal));
        Assert.Single(run.Out.Split('\n'), l => l.StartsWith("house/self: warning link-leads-back", StringComparison.Ordinal));
        Assert.Contains("2 files checked", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_that_may_not_be_read_is_told_and_the_rest_is_checked()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows() || Environment.UserName == "root", "whoever may do everything is kept out of nothing");
        Protocol("house/open/a.yaml");
        Protocol("house/closed/b.yaml");
        Shell("chmod 0 house/closed");
        try
        {
            var run = _tool.Run("check", "house");

            Assert.Equal(2, run.Exit);
            Assert.Contains("house/closed: error unreadable-folder", run.Out, StringComparison.Ordinal);
            Assert.Contains("1 file checked", run.Out, StringComparison.Ordinal);
        }
        finally
        {
            Shell("chmod 700 house/closed");
        }
    }

    [Fact]
    public void A_file_that_cannot_be_read_is_told_and_the_rest_is_checked()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "links are made by a shell");
        Protocol("house/a.yaml", more: "valuess: {}\n");
        Shell("ln -s nowhere house/gone.yaml; mkfifo house/pipe.yaml");

        var run = _tool.Run("check", "house");

        Assert.Equal(2, run.Exit);
        Assert.Contains("house/gone.yaml: error unreadable-file: there is no such file", run.Out, StringComparison.Ordinal);
        Assert.Contains("house/pipe.yaml: error unreadable-file: this is a device, a pipe or a socket", run.Out, StringComparison.Ordinal);
        Assert.Contains("house/a.yaml:7:1: error unknown-key", run.Out, StringComparison.Ordinal);
        Assert.Contains("house/pipe.yaml", _tool.Run("plan", Repository.Otter, "--protocols", "house").Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("check", "house")]
    [InlineData("list", "protocols", "--protocols", "house")]
    [InlineData("plan", "otter.yaml", "--protocols", "house")]
    public void A_folder_with_nothing_in_it_is_an_error(params string[] words)
    {
        _tool.File("otter.yaml", File.ReadAllText(Repository.Otter));
        _tool.File("house/deep/a.txt", "");

        var run = _tool.Run(words);

        Assert.Equal(2, run.Exit);
        Assert.Contains("house: error nothing-found", run.Error, StringComparison.Ordinal);
        Assert.Empty(run.Out);
    }

    [Fact]
    public void Of_thousands_of_findings_the_gravest_are_listed_and_the_rest_counted()
    {
        for (var i = 0; i < 30; i++)
            Protocol(string.Create(CultureInfo.InvariantCulture, $"house/h{i:00}.yaml"), more: string.Concat(Enumerable.Range(0, 50).Select(n => $"unheard-of-{n}: x\n")));

        var run = _tool.Run("check", "house");

        Assert.Equal(1, run.Exit);
        var lines = run.Out.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(1002, lines.Length);
        Assert.Matches(@"^and \d+ findings more, none graver than these: mend these first$", lines[1000]);
        Assert.Matches(@"^30 files checked: 15\d\d errors", lines[1001]);
        Assert.Contains("\"more\": ", _tool.Run("check", "house", "--json").Out, StringComparison.Ordinal);
        var plan = _tool.Run("plan", Repository.Otter, "--protocols", "house");
        Assert.Equal(1001, plan.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
    }

    [Fact]
    public void Classes_that_are_all_the_same_are_told_a_few_times_each()
    {
        for (var i = 0; i < 12; i++)
            Protocol(string.Create(CultureInfo.InvariantCulture, $"house/h{i:00}.yaml"), "{group: mammal, mass: 1 g to 200 g, length: 1 cm to 90 cm, half-thickness: 1 mm to 50 mm, volume: 1 mL to 200 mL}");

        var told = _tool.Run("check", "house").Out.Split('\n').Count(l => l.Contains("error overlapping-classes", StringComparison.Ordinal));

        Assert.Equal((9 * 3) + 2 + 1, told);
    }
}
