using System.Diagnostics;

namespace Protocolist.Tests.EndToEnd;

/// <summary>Nothing that stands on the disk is lost to an output: no input by whatever name, no link, device, folder, and nobody's temporary file.</summary>
public sealed class OutputFileTests : IDisposable
{
    private const string Start = "2027-03-01T09:00";

    private const string Snails = "specimen,group,mass (g),length (mm)\nA,gastropod,14,38\nB,gastropod,15,39\n";

    private readonly Tool _tool = new();

    public void Dispose() => _tool.Dispose();

    private string At(string name) => Path.Combine(_tool.Folder, name);

    private void Shell(string line) => Assert.Equal(0, Ran("sh", "-c", line).ExitCode);

    private Process Ran(string file, params string[] arguments)
    {
        var process = Process.Start(new ProcessStartInfo(file, arguments) { WorkingDirectory = _tool.Folder })!;
        process.WaitForExit();
        return process;
    }

    private Run Plan(string specimen, string to, params string[] more) => _tool.Run(["plan", specimen, "--start", Start, "--out", to, .. more]);

    private void Refuses(Run run, string says, string name, string content)
    {
        Assert.True(run.Exit == 2, run.ToString());
        Assert.Contains("error unwritable-file", run.Error, StringComparison.Ordinal);
        Assert.Contains(says, run.Error, StringComparison.Ordinal);
        Assert.Empty(run.Out);
        Assert.Equal(content, File.ReadAllText(At(name)));
        Assert.DoesNotContain(Directory.GetFiles(_tool.Folder), f => f.EndsWith(".part", StringComparison.Ordinal) && Path.GetFileName(f) != "mine.part");
    }

    [Theory]
    [InlineData("in.yaml")]
    [InlineData("./in.yaml")]
    [InlineData("below/../in.yaml")]
    [InlineData("linked-folder/in.yaml")]
    [InlineData("hard.yaml")]
    public void An_output_never_replaces_an_input_by_whatever_name(string to)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "links are made by a shell");
        var text = File.ReadAllText(Repository.Otter);
        _tool.File("in.yaml", text);
        Directory.CreateDirectory(At("below"));
        Shell("ln -s . linked-folder; ln in.yaml hard.yaml");

        Refuses(Plan("in.yaml", to), "input of this very run", "in.yaml", text);
    }

    [Fact]
    public void A_link_to_the_input_is_an_input_under_its_own_name_too()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "links are made by a shell");
        var text = File.ReadAllText(Repository.Otter);
        _tool.File("in.yaml", text);
        Shell("ln -s in.yaml link.yaml");

        Refuses(Plan("link.yaml", "in.yaml"), "input of this very run", "in.yaml", text);
    }

    [Fact]
    public void An_output_never_replaces_the_bench_or_a_house_protocol()
    {
        var (bench, house) = (_tool.File("bench.yaml", File.ReadAllText(Repository.SkerryPoint)), _tool.File("house/a.yaml", "format: 1\nprotocol: a\nrevision: 1\ntitle: A\nextends: fish\n"));

        Refuses(Plan(Repository.Otter, "bench.yaml", "--bench", bench), "input of this very run", "bench.yaml", File.ReadAllText(Repository.SkerryPoint));
        Refuses(Plan(Repository.Otter, "house/a.yaml", "--protocols", "house"), "input of this very run", "house/a.yaml", File.ReadAllText(house));
    }

    [Fact]
    public void A_revised_plan_never_replaces_the_plan_nor_the_log()
    {
        var plan = Plan(Repository.Otter, "plan.json", "--format", "json");
        Assert.True(plan.Exit is 0 or 1, plan.ToString());
        var text = File.ReadAllText(At("plan.json"));
        _tool.File("log.yaml", "format: 1\nlog: a\n");

        Refuses(_tool.Run("revise", "plan.json", "log.yaml", "--out", "plan.json"), "input of this very run", "plan.json", text);
        Refuses(_tool.Run("revise", "plan.json", "log.yaml", "--out", "log.yaml"), "input of this very run", "log.yaml", "format: 1\nlog: a\n");
    }

    [Theory]
    [InlineData("X.rows.csv")]
    [InlineData("X.shopping.csv")]
    [InlineData("X.progress.json")]
    [InlineData("X.rows.unfinished.csv")]
    public void A_batch_never_replaces_its_table(string name)
    {
        _tool.File(name, Snails);

        Refuses(_tool.Run("batch", name, "--start", Start, "--out", "X"), "input of this very run", name, Snails);
        Assert.Single(Directory.GetFiles(_tool.Folder));
    }

    [Fact]
    public void A_link_stays_a_link_and_what_it_leads_to_stays()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "links are made by a shell");
        _tool.File("target.txt", "mine");
        Shell("ln -s target.txt link.txt; ln -s nowhere dangling.txt");

        Refuses(Plan(Repository.Otter, "link.txt"), "is a link", "target.txt", "mine");
        Refuses(Plan(Repository.Otter, "dangling.txt"), "is a link", "target.txt", "mine");
        Assert.NotNull(new FileInfo(At("link.txt")).LinkTarget);
        Assert.NotNull(new FileInfo(At("dangling.txt")).LinkTarget);
    }

    [Fact]
    public void A_pipe_and_a_device_stay()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "pipes are made by a shell");
        _tool.File("mine.txt", "mine");
        Shell("mkfifo pipe");

        Refuses(Plan(Repository.Otter, "pipe"), "a device, a pipe or a socket", "mine.txt", "mine");
        Refuses(Plan(Repository.Otter, "/dev/null"), "a device, a pipe or a socket", "mine.txt", "mine");
        Shell("test -p pipe && test -c /dev/null");
    }

    [Fact]
    public void Nobodys_temporary_file_is_touched()
    {
        _tool.File("mine.part", "mine");

        Assert.True(Plan(Repository.Otter, "mine").Exit is 0 or 1);

        Assert.Equal("mine", File.ReadAllText(At("mine.part")));
        Assert.Equal(["mine", "mine.part"], Directory.GetFiles(_tool.Folder).Select(Path.GetFileName).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void The_mode_of_a_file_is_kept()
    {
        if (OperatingSystem.IsWindows()) return;
        _tool.File("plan.txt", "old");
        const UnixFileMode Mode = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupWrite;
        File.SetUnixFileMode(At("plan.txt"), Mode);

        Assert.True(Plan(Repository.Otter, "plan.txt").Exit is 0 or 1);

        Assert.StartsWith("Large mammal", File.ReadAllText(At("plan.txt")), StringComparison.Ordinal);
        Assert.Equal(Mode, File.GetUnixFileMode(At("plan.txt")));
    }

    [Fact]
    public void An_output_without_a_name_is_refused()
    {
        Assert.Contains("no file is named", Plan(Repository.Otter, "").Error, StringComparison.Ordinal);
        Assert.Contains("--out names nothing", _tool.Run("batch", _tool.File("a.csv", Snails), "--out", "").Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/dev/zero")]
    [InlineData("pipe")]
    public void What_never_ends_or_never_begins_is_not_read(string path)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "pipes are made by a shell");
        Shell("mkfifo pipe");
        foreach (var arguments in (string[][])[["plan", path], ["batch", path], ["check", path], ["explain", path, "fix.last"], ["plan", Repository.Otter, "--bench", path]])
        {
            var run = _tool.Run(arguments);
            Assert.True(run.Exit == 2, run.ToString());
            Assert.Contains("a device, a pipe or a socket", run.Error, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_file_too_long_is_refused_without_reading_all_of_it()
    {
        using (var file = new FileStream(At("long.yaml"), FileMode.CreateNew)) file.SetLength(20_000_000_000);

        var run = _tool.Run("plan", "long.yaml");

        Assert.True(run.Exit == 2, run.ToString());
        Assert.Contains("long.yaml:1:1: error file-too-long", run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("plan nowhere.yaml 2>&-")]
    [InlineData("plan nowhere.yaml 2>/dev/full")]
    [InlineData("list >&-")]
    [InlineData("list >/dev/full")]
    [InlineData("list >&- 2>&-")]
    public void Streams_that_are_closed_or_full_end_it_with_2(string line)
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "/dev/full is a device of Linux");
        Assert.Equal(2, Ran("sh", "-c", $"'{Tool.Program}' {line}").ExitCode);
    }

    [Fact]
    public void A_reader_that_has_seen_enough_is_no_fault()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "pipes are made by a shell");
        Shell($"('{Tool.Program}' list; echo $? >code) | head -n 1 && grep -qx 0 code");
    }

    [Fact]
    public void Standard_input_is_read_once_by_its_dash()
    {
        var run = _tool.RunWith(File.ReadAllText(Repository.Otter), "plan", "-", "--start", Start);
        Assert.True(run.Exit is 0 or 1, run.ToString());
        Assert.StartsWith("Large mammal", run.Out, StringComparison.Ordinal);
        Assert.Contains("can be read once", _tool.RunWith("", "plan", "-", "--bench", "-").Error, StringComparison.Ordinal);
        var batch = _tool.RunWith(Snails, "batch", "-", "--start", Start);
        Assert.Equal(2, batch.Out.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
    }
}
