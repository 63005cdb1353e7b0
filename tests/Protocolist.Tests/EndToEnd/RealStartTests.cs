namespace Protocolist.Tests.EndToEnd;

/// <summary>The built program, started as a process: what it says and how it ends is what the call in a process gives.</summary>
public sealed class RealStartTests : IDisposable
{
    private const string Start = "2027-03-01T09:00";

    private readonly Tool _tool = new();

    public void Dispose() => _tool.Dispose();

    private Run Same(int exit, params string[] words)
    {
        var (called, started) = (_tool.Run(words), _tool.Start([], words));
        Assert.Equal(exit, started.Exit);
        Assert.Equal(called.ToString(), started.ToString().ReplaceLineEndings("\n"));
        return started;
    }

    [Fact]
    public void Plan_ends_with_0()
    {
        var run = Same(0, "plan", Repository.Otter, "--bench", Repository.SkerryPoint, "--start", Start);

        Assert.StartsWith("Large mammal, whole body: SKP-2027-014, Lutra lutra\n", run.Out.ReplaceLineEndings("\n"), StringComparison.Ordinal);
        Assert.Empty(run.Error);
    }

    [Fact]
    public void Plan_with_an_error_ends_with_1()
    {
        _tool.File("nameless.yaml", "format: 1\nspecimen: X-1\ngroup: mammal\nmass: 7 kg\n");

        Assert.Contains("DO NOT START", Same(1, "plan", "nameless.yaml", "--start", Start).Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Unreadable_file_ends_with_2() => Assert.Empty(Same(2, "plan", "nowhere.yaml").Out);

    [Fact]
    public void Help_lists_every_command()
    {
        var run = _tool.Start([], "--help");

        Assert.Equal(0, run.Exit);
        Assert.All((string[])["plan", "check", "explain", "list", "show"], c => Assert.Contains($"  {c} ", run.Out, StringComparison.Ordinal));
        Assert.Contains("  protocolist [command] [options]", run.Out, StringComparison.Ordinal);
    }

    /// <summary>As in <c>protocolist plan … --json | head -n 1</c>.</summary>
    [Fact]
    public void Listener_that_leaves_early_is_no_fault()
    {
        var run = _tool.StartAndHearOneLine("plan", Repository.Otter, "--bench", Repository.SkerryPoint, "--start", Start, "--json");

        Assert.True(run.Exit == 0, run.ToString());
        Assert.Equal("{", run.Out);
        Assert.Empty(run.Error);
    }

    [Fact]
    public void Check_of_what_comes_with_it()
    {
        var run = Same(0, "check", Repository.File("protocols"), Repository.SkerryPoint, Repository.Otter);

        Assert.Contains(" 0 errors", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Compare()
    {
        var run = Same(0, "compare", Repository.Otter, "--bench", Repository.SkerryPoint, "--start", Start);

        Assert.Contains("good for:", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_and_revise_with_files_in_the_folder_of_the_start()
    {
        var log = Repository.File("samples", "logs", "harbour-otter.yaml");
        Assert.Empty(Same(0, "plan", Repository.Otter, "--bench", Repository.SkerryPoint, "--start", Start, "--json", "--out", "plan.json").Out);

        Assert.Contains("fix-re-inject-1: new", Same(0, "revise", "plan.json", log, "--bench", Repository.SkerryPoint).Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Batch_leaves_its_files_in_the_folder_of_the_start()
    {
        _tool.File("finds.csv", "specimen,group,mass (g),length (mm)\nA,gastropod,14,38\nB,gastropod,-3,38\n");

        Same(1, "batch", "finds.csv", "--bench", Repository.SkerryPoint, "--start", Start, "--out", "finds");
        Assert.True(File.Exists(Path.Combine(_tool.Folder, "finds.rows.csv")));
    }
}
