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
        Assert.True(ways.Count > 12);
        foreach (var way in ways)
            foreach (var key in (string[])["name", "choices", "vessels", "supplies", "wishes", "startable", "days", "handsOnHours", "costNowMinor", "costOverTenYearsMinor", "currency", "formaldehydeStockL", "flammableAlcoholL", "errors", "warnings", "findings", "remarks", "dominated"])
                Assert.True(way.TryGetProperty(key, out _), key);
        Assert.Equal(ways.Select(w => w.GetProperty("errors").GetInt32() + w.GetProperty("warnings").GetInt32()), ways.Select(w => w.GetProperty("findings").GetArrayLength()));
        Assert.False(json.RootElement.GetProperty("combined").GetBoolean());
    }

    [Fact]
    public void Compare_as_text_fits_the_page_and_says_that_one_thing_varies_at_a_time()
    {
        var run = Compare();
        Assert.Contains("one-at-a-time", run.Out, StringComparison.Ordinal);
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

    [Fact]
    public void A_stopped_batch_goes_on_without_doing_a_row_twice_and_ends_with_the_same_files()
    {
        var csv = "specimen,group,mass (g),length (mm)\n" + string.Concat(Enumerable.Range(1, 450).Select(n => $"S{n},gastropod,{10 + n % 9},{30 + n % 9}\n"));
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
