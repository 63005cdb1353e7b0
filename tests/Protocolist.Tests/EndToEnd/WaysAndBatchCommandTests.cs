using System.Text.Json;

namespace Protocolist.Tests.EndToEnd;

public sealed class WaysAndBatchCommandTests : IDisposable
{
    private const string Start = "2027-03-01T09:00";

    private readonly Tool _tool = new();

    public void Dispose() => _tool.Dispose();

    private Run Compare(params string[] more) => _tool.Run(["compare", Repository.Otter, "--bench", Repository.SkerryPoint, "--start", Start, .. more]);

    private Run Batch(string csv, params string[] more) => _tool.Run(["batch", _tool.File("finds.csv", csv), "--bench", Repository.SkerryPoint, "--start", Start, .. more]);

    [Fact]
    public void Compare_as_json_has_every_way_with_its_numbers_vessels_stock_and_findings()
    {
        var run = Compare("--json");
        Assert.True(run.Exit == 0, run.ToString());
        using var json = JsonDocument.Parse(run.Out);
        var ways = json.RootElement.GetProperty("ways").EnumerateArray().ToList();
        Assert.True(ways.Count > 5);
        foreach (var way in ways)
            foreach (var key in (string[])["name", "choices", "vessels", "supplies", "wishes", "startable", "days", "handsOnHours", "costNowMinor", "costOverTenYearsMinor", "currency", "formaldehydeStockL", "flammableAlcoholL", "errors", "warnings", "findings", "remarks", "dominated"])
                Assert.True(way.TryGetProperty(key, out _), key);
        Assert.Equal(ways.Select(w => w.GetProperty("errors").GetInt32() + w.GetProperty("warnings").GetInt32()), ways.Select(w => w.GetProperty("findings").GetArrayLength()));
        Assert.True(json.RootElement.GetProperty("weighed").GetInt32() >= ways.Count);
        Assert.All(ways.Skip(1), w => Assert.NotEmpty(w.GetProperty("goodFor").GetString()!));
    }

    [Fact]
    public void Compare_as_text_fits_the_page_and_says_what_each_way_is_good_for()
    {
        var run = Compare();
        Assert.Contains("good for:", run.Out, StringComparison.Ordinal);
        Assert.Contains("as A, but house in tub-90", run.Out, StringComparison.Ordinal);
        Assert.All(run.Out.Split('\n'), line => Assert.True(line.Length <= 100, line));
    }

    [Fact]
    public void Vessel_and_supply_of_a_compared_way_give_its_plan()
    {
        var run = _tool.Run("plan", Repository.Otter, "--bench", Repository.SkerryPoint, "--start", Start, "--vessel", "house=tub-90", "--json");
        using var json = JsonDocument.Parse(run.Out);
        Assert.Equal("90 L tub", json.RootElement.GetProperty("steps").EnumerateArray().Single(s => s.GetProperty("id").GetString() == "house").GetProperty("vessel").GetString());
        Assert.Equal(2, _tool.Run("plan", Repository.Otter, "--vessel", "tub").Exit);
    }

    [Theory]
    [InlineData("html", "<!DOCTYPE html>")]
    [InlineData("csv", "specimen,number,step")]
    public void Plan_is_written_as_page_and_table(string format, string begins)
    {
        var run = _tool.Run("plan", Repository.Otter, "--bench", Repository.SkerryPoint, "--start", Start, "--format", format);
        Assert.True(run.Exit == 0, run.ToString());
        Assert.StartsWith(begins, run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Sample_plan_has_no_note_of_things_that_the_bench_lacks()
    {
        var run = _tool.Run("plan", Repository.Otter, "--bench", Repository.SkerryPoint, "--start", Start);
        foreach (var id in (string[])["not-on-the-bench-list", "waste-needs-a-container", "disposal-without-price", "top-up-not-reckoned", "safety-equipment-not-on-shelf"])
            Assert.DoesNotContain(id, run.Out, StringComparison.Ordinal);
    }

    private static string Snails(int count, string prefix = "S") => "specimen,group,mass (g),length (mm)\n"
        + string.Concat(Enumerable.Range(1, count).Select(n => $"{prefix}{n},gastropod,{10 + n % 9},{30 + n % 9}\n"));

    private string Text(string name) => File.ReadAllText(Path.Combine(_tool.Folder, name));

    [Fact]
    public void A_table_without_a_row_is_told()
    {
        var run = Batch(Snails(0));
        Assert.Equal(1, run.Exit);
        Assert.Contains("finds.csv:1:1: error empty-table: the table has a heading and no specimen below it; give a row for each specimen", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_batch_that_is_asked_to_stop_ends_with_1_and_goes_on_to_the_same_files()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "signals are sent by a shell");

        // Far more than a pipe holds, in long lines, so that the program still waits to be read when it is asked to stop, however fast it plans.
        var csv = Snails(3000, new string('S', 150));
        Assert.Equal(1, Batch(csv, "--out", "whole").Exit);
        var rows = 0;
        foreach (var signal in (string[])["TERM", "INT"])
        {
            using var process = _tool.Begin(["batch", Path.Combine(_tool.Folder, "finds.csv"), "--bench", Repository.SkerryPoint, "--start", Start, "--out", "half", .. signal == "INT" ? (string[])["--resume"] : []]);
            var errors = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
            for (var i = 0; i < 20; i++) Assert.NotNull(process.StandardOutput.ReadLine());
            using (var kill = System.Diagnostics.Process.Start("kill", [$"-{signal}", $"{process.Id}"])) kill.WaitForExit();
            var output = process.StandardOutput.ReadToEnd();
            Assert.True(process.WaitForExit(60_000));
            Assert.Equal(1, process.ExitCode);
            rows += 20 + output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length;
            Assert.Contains($"protocolist: stopped after row {rows}; --resume goes on from there", await errors, StringComparison.Ordinal);
            Assert.False(File.Exists(Path.Combine(_tool.Folder, "half.rows.csv")));
        }

        Assert.InRange(rows, 40, 2999);
        var anew = Batch(csv, "--out", "half");
        Assert.Contains("error unfinished-run", anew.Error, StringComparison.Ordinal);
        Assert.Equal(3000 - rows, Batch(csv, "--out", "half", "--resume").Out.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
        foreach (var kind in (string[])["rows.csv", "shopping.csv", "progress.json"]) Assert.Equal(Text($"whole.{kind}"), Text($"half.{kind}"));
        Assert.DoesNotContain(Directory.GetFiles(_tool.Folder), f => f.Contains("unfinished", StringComparison.Ordinal) || f.EndsWith(".part", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("S2,gastropod,12,32\n", "S2,gastropod,12,33\n", "finds.csv:3:1: error edited-row: row 2")]
    [InlineData("S2,gastropod,12,32\n", "", "finds.csv:3:1: error edited-row: row 2")]
    [InlineData("S2,gastropod,12,32\n", "S2,gastropod,12,32\nS2,gastropod,12,32\n", "finds.csv:4:1: error edited-row: row 3")]
    [InlineData("S3,gastropod,13,33\nS4,gastropod,14,34\n", "S3,gastropod,13,33\n", "finds.csv:1:1: error missing-rows: the table ends after row 3")]
    [InlineData("mass (g)", "mass (mg)", "error other-inputs")]
    public void Rows_that_are_done_and_were_edited_are_told(string from, string to, string says)
    {
        Batch(Snails(4), "--out", "done");
        var (rows, progress) = (Text("done.rows.csv"), Text("done.progress.json"));

        var run = Batch(Snails(4).Replace(from, to, StringComparison.Ordinal), "--out", "done", "--resume");

        Assert.True(run.Exit == 2, run.ToString());
        Assert.Contains(says, run.Error, StringComparison.Ordinal);
        Assert.Empty(run.Out);
        Assert.Equal((rows, progress), (Text("done.rows.csv"), Text("done.progress.json")));
        Assert.Equal(2, Batch(Snails(6), "--out", "done", "--resume").Out.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
    }

    [Theory]
    [InlineData("\"rows\": 4", "\"rows\": 2")]
    [InlineData("\"rows\": 4", "\"rows\": -4")]
    [InlineData("\"rows\": 4", "\"rows\": 4000000000")]
    [InlineData("\"rowsFileBytes\": ", "\"rowsFileBytes\": -")]
    [InlineData("\"ethanol", "\"metanol")]
    [InlineData("\"uses\": {", "\"uses\": null, \"x\": {")]
    [InlineData("\"needs\": {", "\"needs\": null, \"x\": {")]
    [InlineData("\"format\": 2", "\"format\": 3")]
    [InlineData("{", "")]
    [InlineData("{", "[")]
    public void A_record_of_progress_that_was_changed_is_refused(string from, string to)
    {
        Batch(Snails(4), "--out", "done");
        var path = Path.Combine(_tool.Folder, "done.progress.json");
        var changed = Text("done.progress.json").Replace(from, to, StringComparison.Ordinal);
        Assert.NotEqual(changed, Text("done.progress.json"));
        File.WriteAllText(path, changed);

        var run = Batch(Snails(4), "--out", "done", "--resume");

        Assert.True(run.Exit == 2, run.ToString());
        Assert.Contains("done.progress.json:1:1: error bad-progress", run.Error, StringComparison.Ordinal);
        Assert.Equal(changed, Text("done.progress.json"));
    }

    [Fact]
    public void Rows_that_are_done_and_were_changed_are_told()
    {
        Batch(Snails(4), "--out", "done");
        File.WriteAllText(Path.Combine(_tool.Folder, "done.rows.csv"), Text("done.rows.csv").Replace("S3", "S5", StringComparison.Ordinal));

        Assert.Contains("error rows-file-changed", Batch(Snails(4), "--out", "done", "--resume").Error, StringComparison.Ordinal);
        Assert.Equal(4, Directory.GetFiles(_tool.Folder).Length);
    }

    [Fact]
    public void Bench_protocols_and_choices_of_a_batch_that_goes_on_are_those_it_began_with()
    {
        _tool.File("house/a.yaml", "format: 1\nprotocol: a\nrevision: 1\ntitle: A\nextends: gastropod-marine\n");
        Batch(Snails(2), "--out", "done", "--protocols", "house");
        _tool.File("house/a.yaml", "format: 1\nprotocol: a\nrevision: 2\ntitle: A\nextends: gastropod-marine\n");

        foreach (var more in (string[][])[["--protocols", "house"], ["--choose", "keeping=ethanol", "--protocols", "house"], []])
            Assert.Contains("error other-inputs", Batch(Snails(2), ["--out", "done", "--resume", .. more]).Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_batches_never_write_the_same_rows()
    {
        var csv = _tool.File("finds.csv", Snails(600));
        using var first = _tool.Begin("batch", csv, "--bench", Repository.SkerryPoint, "--start", Start, "--out", "one");
        var errors = first.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        Assert.NotNull(first.StandardOutput.ReadLine());

        var second = _tool.Run("batch", csv, "--bench", Repository.SkerryPoint, "--start", Start, "--out", "one");

        Assert.True(second.Exit == 2, second.ToString());
        Assert.Contains("error batch-in-progress", second.Error, StringComparison.Ordinal);
        Assert.Equal(599, first.StandardOutput.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
        first.WaitForExit();
        Assert.Equal(1, first.ExitCode);
        Assert.Equal(601, Text("one.rows.csv").Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
    }

    [Fact]
    public void A_stopped_batch_goes_on_without_doing_a_row_twice_and_ends_with_the_same_files()
    {
        var csv = Snails(450);
        var whole = Batch(csv, "--out", "whole");
        Assert.True(whole.Exit is 0 or 1, whole.ToString());
        foreach (var kind in (string[])["rows.csv", "progress.json"]) File.Copy(Path.Combine(_tool.Folder, $"whole.{kind}"), Path.Combine(_tool.Folder, $"half.{kind}"));

        // As a crash after row 250 would leave it: rows are there that the last record of progress, at row 200, does not count.
        var first = Batch(string.Join('\n', csv.Split('\n').Take(201)) + "\n", "--out", "half");
        Assert.True(first.Exit is 0 or 1, first.ToString());
        File.AppendAllText(Path.Combine(_tool.Folder, "half.rows.csv"), "half a row that was never counted");
        var second = Batch(csv, "--out", "half", "--resume");
        Assert.Equal(250, second.Out.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
        foreach (var kind in (string[])["rows.csv", "shopping.csv", "progress.json"])
            Assert.Equal(File.ReadAllText(Path.Combine(_tool.Folder, $"whole.{kind}")), File.ReadAllText(Path.Combine(_tool.Folder, $"half.{kind}")));
    }

    [Fact]
    public void Bad_rows_are_told_with_row_and_column_and_the_good_ones_planned()
    {
        var run = Batch("specimen,group,mass (g),length (mm),notes\n=1+1,gastropod,14,38,\"two\nlines\"\nB,gastropod,-3,38,\nC,gastropod,12,36,\nC,gastropod,12,36,\n", "--json", "--out", "bad");
        Assert.True(run.Exit == 1, run.ToString());
        var rows = run.Out.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(l => JsonDocument.Parse(l).RootElement).ToList();
        Assert.Equal([true, false, true, true], rows.Select(r => r.TryGetProperty("protocol", out _)));
        Assert.Contains("finds.csv:4:13", run.Error, StringComparison.Ordinal);
        Assert.Contains(rows[3].GetProperty("findings").EnumerateArray(), f => f.GetProperty("id").GetString() == "repeated-number");
        Assert.Contains("\n1,2,'=1+1,", File.ReadAllText(Path.Combine(_tool.Folder, "bad.rows.csv")).Replace("\r", "", StringComparison.Ordinal), StringComparison.Ordinal);
        using var shopping = JsonDocument.Parse(File.ReadAllText(Path.Combine(_tool.Folder, "bad.shopping.json")));
        Assert.True(shopping.RootElement.TryGetProperty("purchases", out _));
    }
}
