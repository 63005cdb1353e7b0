using System.Text.Json;

namespace Protocolist.Tests.EndToEnd;

public sealed class PlanCommandTests : IDisposable
{
    private const string Start = "2027-03-01T09:00";

    private readonly Tool _tool = new();

    public void Dispose() => _tool.Dispose();

    private Run Plan(params string[] more) => _tool.Run(["plan", Repository.Otter, "--bench", Repository.SkerryPoint, "--start", Start, .. more]);

    [Fact]
    public void Plan_of_a_sample_is_a_sheet_with_findings_before_steps()
    {
        var run = Plan();

        Assert.True(run.Exit == 0, run.ToString());
        Assert.Empty(run.Error);
        Assert.StartsWith("Large mammal, whole body: SKP-2027-014, Lutra lutra\n", run.Out, StringComparison.Ordinal);
        Assert.Contains("From Mon 2027-03-01 09:00", run.Out, StringComparison.Ordinal);
        Assert.True(run.Out.IndexOf("What the checks say", StringComparison.Ordinal) < run.Out.IndexOf("\n1. ", StringComparison.Ordinal));
        Assert.Contains("Fix in formalin", run.Out, StringComparison.Ordinal);
        Assert.All(run.Out.Split('\n'), line => Assert.True(line.Length <= 100, line));
    }

    [Fact]
    public void Plan_as_json_has_what_the_contract_names()
    {
        var run = Plan("--format", "json");

        Assert.True(run.Exit == 0, run.ToString());
        Assert.Empty(run.Error);
        using var json = JsonDocument.Parse(run.Out);
        var plan = json.RootElement;
        foreach (var key in (string[])["formatVersion", "protocol", "specimen", "choices", "startable", "start", "end", "zone", "steps", "recipes", "purchases", "costs", "findings", "waste", "label", "care"])
            Assert.True(plan.TryGetProperty(key, out _), key);
        Assert.Equal("mammal-large", plan.GetProperty("protocol").GetProperty("id").GetString());
        Assert.True(plan.GetProperty("startable").GetBoolean());
        Assert.Equal("2027-03-01T09:00:00-01:00", plan.GetProperty("start").GetString());
        Assert.Equal("Atlantic/Azores", plan.GetProperty("zone").GetString());
        var fix = plan.GetProperty("steps").EnumerateArray().Single(s => s.GetProperty("id").GetString() == "fix");
        Assert.True(fix.GetProperty("volumeMl").GetDouble() > 10_000);
        Assert.Equal("neutral buffered formalin 10 %", fix.GetProperty("fluid").GetString());
    }

    [Fact]
    public void Json_switch_and_json_format_are_the_same() => Assert.Equal(Plan("--json").Out, Plan("--format", "json").Out);

    [Fact]
    public void Choice_changes_the_plan()
    {
        var run = Plan("--choose", "keeping=ethanol");

        Assert.Contains("keeping: ethanol", run.Out, StringComparison.Ordinal);
        Assert.Contains("Wash the formalin out", run.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("Wash the formalin out", Plan().Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_with_an_error_is_written_and_ends_with_1()
    {
        var specimen = _tool.File("nameless.yaml", "format: 1\nspecimen: X-1\ngroup: mammal\nmass: 7 kg\n");

        var run = _tool.Run("plan", specimen, "--bench", Repository.SkerryPoint, "--start", Start);

        Assert.True(run.Exit == 1, run.ToString());
        Assert.Empty(run.Error);
        Assert.Contains("DO NOT START", run.Out, StringComparison.Ordinal);
        Assert.Contains("ERROR missing-provenance", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_without_a_bench_is_a_plan()
    {
        var run = _tool.Run("plan", Repository.Otter, "--start", Start);

        Assert.True(run.Exit == 0, run.ToString());
        Assert.Contains("clocks of UTC", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Bench_without_stock_says_what_to_buy_or_get()
    {
        var bench = _tool.File("bare.yaml", "format: 1\nbench: bare\nzone: UTC\n");

        var run = _tool.Run("plan", Repository.Otter, "--bench", bench, "--start", Start);

        Assert.True(run.Exit == 0, run.ToString());
        Assert.Contains("formaldehyde stock", run.Out, StringComparison.Ordinal);
        Assert.Contains("the bench lists no vessel", string.Join(' ', run.Out.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
    }

    /// <summary>Closed to Friday 2 April, and the four hours of Saturday are too few to record, cut, inject and immerse in one go.</summary>
    [Fact]
    public void Closed_week_moves_the_start_to_the_first_day_that_is_long_enough()
    {
        var run = _tool.Run("plan", Repository.Otter, "--bench", Repository.SkerryPoint, "--start", "2027-03-29T09:00", "--json");

        using var json = JsonDocument.Parse(run.Out);
        Assert.Equal("2027-04-05T08:30:00Z", json.RootElement.GetProperty("start").GetString());
    }

    [Fact]
    public void Out_writes_the_same_bytes_into_a_file_and_nothing_else()
    {
        var path = Path.Combine(_tool.Folder, "plan.json");

        var run = Plan("--json", "--out", path);

        Assert.True(run.Exit == 0, run.ToString());
        Assert.Empty(run.Out);
        Assert.Equal(Plan("--json").Out, File.ReadAllText(path));
        Assert.Equal([path], Directory.GetFiles(_tool.Folder));
    }

    [Theory]
    [InlineData("Pacific/Kiritimati", "C")]
    [InlineData("America/St_Johns", "tr_TR.UTF-8")]
    [InlineData("Asia/Kathmandu", "ar_SA.UTF-8")]
    [InlineData("Australia/Lord_Howe", "de_DE.UTF-8")]
    public void Zone_and_language_of_the_machine_change_no_byte(string zone, string language)
    {
        (string, string)[] variables = [("TZ", zone), ("LANG", language), ("LC_ALL", language), ("DOTNET_SYSTEM_GLOBALIZATION_INVARIANT", "0")];
        string[] plan = ["plan", Repository.Otter, "--bench", Repository.SkerryPoint, "--start", Start];

        foreach (var format in (string[])["text", "json"])
            Assert.Equal(_tool.Run([.. plan, "--format", format]).Out, _tool.Start(variables, [.. plan, "--format", format]).Out.ReplaceLineEndings("\n"));
    }

    [Fact]
    public void Explain_goes_down_to_what_was_measured()
    {
        var path = Path.Combine(_tool.Folder, "plan.json");
        Plan("--json", "--out", path);

        var run = _tool.Run("explain", path, "fix.last");

        Assert.True(run.Exit == 0, run.ToString());
        Assert.Empty(run.Error);
        Assert.StartsWith("fix.last = ", run.Out, StringComparison.Ordinal);
        Assert.Contains("specimen.half-thickness = ", run.Out, StringComparison.Ordinal);
        Assert.Contains("source: ", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Explain_of_an_unknown_figure_names_the_nearest()
    {
        var path = Path.Combine(_tool.Folder, "plan.json");
        Plan("--json", "--out", path);

        var run = _tool.Run("explain", path, "fix.lats");

        Assert.True(run.Exit == 2, run.ToString());
        Assert.Contains("did you mean 'fix.last'?", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Explain_of_an_unknown_figure_of_a_known_step_names_that_step_s_figures()
    {
        var path = Path.Combine(_tool.Folder, "plan.json");
        Plan("--json", "--out", path);

        Assert.Contains("figures of 'fix': fix.", _tool.Run("explain", path, "fix.whatever-it-was").Error, StringComparison.Ordinal);
        Assert.Contains("figures are called after what they belong to, such as ", _tool.Run("explain", path, "nothing-of-the-kind").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Explain_of_a_finding_shows_the_limits_of_its_check_and_of_a_silent_check_that_it_is_silent()
    {
        var path = Path.Combine(_tool.Folder, "plan.json");
        Plan("--json", "--out", path);

        var found = _tool.Run("explain", path, "vessel-too-heavy-to-lift");
        var silent = _tool.Run("explain", path, "mixed-buffering");

        Assert.True(found.Exit == 0, found.ToString());
        Assert.Contains("kg full", found.Out, StringComparison.Ordinal);
        Assert.Contains("than 23 kg for one person", found.Out, StringComparison.Ordinal);
        Assert.True(silent.Exit == 0, silent.ToString());
        Assert.Contains("mixed-buffering: nothing found in this plan", silent.Out, StringComparison.Ordinal);
        Assert.Contains("error: formalin of two bufferings", silent.Out, StringComparison.Ordinal);
    }
}
