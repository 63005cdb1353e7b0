using System.Globalization;
using NodaTime;
using Protocolist.Benchmarks.Floors;
using Protocolist.Plans;
using Protocolist.Sheets;
using YamlDotNet.Core;

namespace Protocolist.Benchmarks.Table;

/// <summary>All figures in one run: ours, the floor, the ratio, what is asked.</summary>
internal static class Measured
{
    public static string Table(int rows)
    {
        var sheet = new Sheet();
        Plans(sheet);
        Shelves(sheet);
        Batches(sheet, rows);
        Growth(sheet);
        return $"{sheet}\nOn {Environment.ProcessorCount} processors, .NET {Environment.Version}. A process's figures are those of `processes.sh`.\n";
    }

    private static void Plans(Sheet sheet)
    {
        var (planner, request) = (new Planner(Shelf.Bundled()), new PlanRequest(Fixture.LargeMammal, Fixture.Prepared, Fixture.Start));
        var plan = planner.Plan(request).Value!;
        var (flat, start) = (new FlatBench(new(2027, 1, 1), 12), (long)(Fixture.Start.ToDateTimeUnspecified() - DateTime.UnixEpoch).TotalMinutes);
        var amiss = Agreement.Differences(ByHand.Plan(start, flat), plan);
        foreach (var difference in amiss) Console.Error.WriteLine($"the floor differs: {difference}");

        var ours = Cost.Of(() => planner.Plan(request));
        var numbers = Cost.Of(() => ByHand.Plan(start, flat));
        var records = Cost.Of(() => Records.Again(plan));
        var both = new Cost(numbers.Clock + records.Clock, numbers.Processor + records.Processor, numbers.Bytes + records.Bytes);
        var name = amiss.Count == 0 ? "the same numbers by hand" : $"by hand ({amiss.Count} numbers differ)";
        sheet.Row("one plan of a large mammal on a bench, warm", ours, name, numbers, "≤ 100 µs, ≤ 64 kB; aim 25 µs, 24 kB");
        sheet.Row("the same", ours, "its records alone", records);
        sheet.Row("the same", ours, "numbers and records", both, "told; aim ≤ 8 ×");
        sheet.Row("written as text", Sheet.Text(Cost.Of(() => TextSheet.Write(plan))), asked: "≤ 1 ms with JSON");
        sheet.Row("written as JSON", Sheet.Text(Cost.Of(() => AsJson(plan))));
        sheet.Row("written as page", Sheet.Text(Cost.Of(() => HtmlSheet.Write(plan))), asked: "≤ 5 ms");
    }

    /// <summary>As the command line writes it: bytes, and no text between.</summary>
    private static object? AsJson(Plan plan)
    {
        PlanJson.Write(plan, Stream.Null);
        return null;
    }

    private static void Shelves(Sheet sheet)
    {
        var (whole, bare) = (Fixture.Protocols, Fixture.WithoutExamples(Fixture.Protocols));
        var (events, bareEvents) = (Cost.Of(() => Events(whole)), Cost.Of(() => Events(bare)));
        sheet.Row("load the whole shelf", Cost.Of(() => Shelf.Of([whole])), "bare parser events", events);
        sheet.Row("load and prove the whole shelf, examples aside", Proof(bare), "bare parser events of the same", bareEvents, "≤ 5 ×; aim 3 ×");
        sheet.Row("load and prove the whole shelf, examples and all", Proof(whole), "bare parser events", events);
    }

    private static void Batches(Sheet sheet, int rows)
    {
        var said = BatchRun.InAProcess(rows);
        sheet.Row(
            string.Create(CultureInfo.InvariantCulture, $"batch, {rows} mixed rows, {said[4]} plans"),
            $"{Sheet.Time(said[1])} CPU a row, {Sheet.Time(said[2])} by the clock a row, {Sheet.Time(said[2] * rows)} in all, peak {Sheet.Size(said[3])}",
            asked: "≤ 200 µs CPU a row; 10^6 rows: < 200 MB, aim 60 s");
    }

    private static void Growth(Sheet sheet)
    {
        var shelf = Shelf.Bundled();
        BatchRun.Run(Rows(1000), shelf);
        Grows(sheet, "rows of a batch", [250, 1000, 4000], n => Once(() => BatchRun.Run(Rows(n), shelf)));
        Grows(sheet, "stages of a protocol, one plan", [16, 32, 64, 128], n =>
        {
            var (planner, request) = (new Planner(Shelf.Of([[Fixture.Chain((int)n)]])), new PlanRequest(Fixture.SmallMammal, Fixture.Prepared, Fixture.Start));
            return Cost.Of(() => planner.Plan(request)).Processor;
        });
        SourceText[][] shelves = [.. ((int[])[16, 8, 4, 2, 1]).Select(share => Fixture.OneIn(share).ToArray())];
        double[] bytes = [.. shelves.Select(s => (double)s.Sum(f => f.Text.Length))];
        Grows(sheet, "bytes of a shelf, load and proof", bytes, n => Proof(shelves[Array.IndexOf(bytes, n)]).Processor);
        Grows(sheet, "bytes of a shelf, one plan", bytes, n =>
        {
            var (planner, request) = (new Planner(Shelf.Of([shelves[Array.IndexOf(bytes, n)]])), new PlanRequest(Fixture.LargeMammal, Fixture.Prepared, Fixture.Start));
            return Cost.Of(() => planner.Plan(request)).Processor;
        });
    }

    private static Cost Proof(IEnumerable<SourceText> sources) => Cost.Of(() => FileCheck.Run(sources, DateTimeZoneProviders.Tzdb));

    private static StringReader Rows(double count) => new(string.Join('\n', Fixture.Rows((int)count)));

    private static double Once(Action work)
    {
        var before = Environment.CpuUsage.TotalTime;
        work();
        return (Environment.CpuUsage.TotalTime - before).TotalMicroseconds;
    }

    /// <summary>The exponent by which processor time grows: the slope of the best line through the logarithms.</summary>
    private static void Grows(Sheet sheet, string what, double[] sizes, Func<double, double> cost)
    {
        double[] costs = [.. sizes.Select(cost)];
        double[] x = [.. sizes.Select(s => Math.Log(s))], y = [.. costs.Select(c => Math.Log(c))];
        var (meanX, meanY) = (x.Average(), y.Average());
        var slope = x.Zip(y).Sum(p => (p.First - meanX) * (p.Second - meanY)) / x.Sum(v => (v - meanX) * (v - meanX));
        var points = string.Join(", ", sizes.Zip(costs).Select(p => string.Create(CultureInfo.InvariantCulture, $"{p.First:0}: {Sheet.Time(p.Second)}")));
        sheet.Row($"growth with {what}", string.Create(CultureInfo.InvariantCulture, $"exponent {slope:0.00} ({points})"), asked: "linear");
    }

    private static int Events(IEnumerable<SourceText> sources)
    {
        var events = 0;
        foreach (var source in sources)
        {
            var parser = new Parser(new StringReader(source.Text));
            while (parser.MoveNext()) events++;
        }

        return events;
    }
}
