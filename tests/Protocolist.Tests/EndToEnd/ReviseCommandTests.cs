namespace Protocolist.Tests.EndToEnd;

/// <summary>Plan, log, revise, calendar: as somebody at the bench does it.</summary>
public sealed class ReviseCommandTests : IDisposable
{
    private static readonly string Log = Repository.File("samples", "logs", "harbour-otter.yaml");

    private readonly Tool _tool = new();

    public void Dispose() => _tool.Dispose();

    private string Planned()
    {
        var path = Path.Combine(_tool.Folder, "plan.json");
        var planned = _tool.Run("plan", Repository.Otter, "--bench", Repository.SkerryPoint, "--start", "2027-03-01T09:00", "--format", "json", "--out", path);
        Assert.True(planned.Exit == 0, planned.ToString());
        return path;
    }

    [Fact]
    public void Revising_a_revised_plan_again_changes_nothing()
    {
        var plan = Planned();
        var (once, twice) = (Path.Combine(_tool.Folder, "once.json"), Path.Combine(_tool.Folder, "twice.json"));

        var first = _tool.Run("revise", plan, Log, "--bench", Repository.SkerryPoint, "--out", once);
        var second = _tool.Run("revise", once, Log, "--bench", Repository.SkerryPoint, "--out", twice);

        Assert.Contains("fix-re-inject-1: new", first.Out, StringComparison.Ordinal);
        Assert.Equal("nothing changes", second.Out.Trim());
        Assert.Equal(File.ReadAllText(once), File.ReadAllText(twice));
        Assert.Contains("BEGIN:VEVENT", _tool.Run("revise", plan, Log, "--bench", Repository.SkerryPoint, "--format", "ics").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Bench_that_is_left_out_is_asked_for_and_the_plan_file_stays_as_it_was()
    {
        var plan = Planned();
        var before = File.ReadAllBytes(plan);

        var run = _tool.Run("revise", plan, Log, "--out", plan);

        Assert.True(run.Exit == 2, run.ToString());
        Assert.Contains("error bench-missing", run.Error, StringComparison.Ordinal);
        Assert.Contains("give it with --bench", run.Error, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllBytes(plan));
    }

    [Fact]
    public void Zone_that_nobody_knows_is_told_with_its_place()
    {
        var plan = Planned();
        File.WriteAllText(plan, File.ReadAllText(plan).Replace("\"zone\": \"Atlantic/Azores\"", "\"zone\": \"Atlantic/Azure\"", StringComparison.Ordinal));

        var run = _tool.Run("revise", plan, Log, "--bench", Repository.SkerryPoint);

        Assert.True(run.Exit == 2, run.ToString());
        Assert.Matches(@"plan\.json:\d+:3: error unknown-zone: the plan's zone 'Atlantic/Azure' is not known", run.Error);
    }

    [Fact]
    public void Bench_closed_for_good_is_told_where_to_look()
    {
        var bench = _tool.File("closed.yaml", "format: 1\nbench: closed\nname: Closed\nzone: Europe/Berlin\nhours: {mon-fri: 08:00 to 17:00}\nclosed: [2026-01-01 to 2099-12-31]\n");

        var run = _tool.Run("plan", Repository.Otter, "--bench", bench, "--start", "2027-03-01T09:00");

        Assert.True(run.Exit == 1, run.ToString());
        var said = string.Join(' ', run.Out.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains("look at 'hours' and 'closed' in the bench file", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Another_bench_is_warned_of()
    {
        var bench = _tool.File("other.yaml", File.ReadAllText(Repository.SkerryPoint).Replace("name: Wet", "name: Dry", StringComparison.Ordinal));

        var run = _tool.Run("revise", Planned(), Log, "--bench", bench);

        Assert.Contains("warning other-bench", run.Error, StringComparison.Ordinal);
    }
}
