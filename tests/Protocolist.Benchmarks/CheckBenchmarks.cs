using System.Globalization;
using BenchmarkDotNet.Attributes;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Checks;
using Protocolist.Planning.Deciding;
using Protocolist.Specimens;
using UnitsNet;

namespace Protocolist.Benchmarks;

/// <summary>Every check over a plan of 40 steps, which gives few findings, and over that of the sample's otter. The target is 50 µs for all of them together.</summary>
[MemoryDiagnoser]
public class CheckBenchmarks
{
    private ReviewCase _plan = null!;

    [Params("forty steps", "otter")]
    public string Of { get; set; } = "";

    [GlobalSetup]
    public void Setup()
    {
        _plan = Of == "otter" ? Otter() : FortySteps();
        Console.WriteLine($"// {_plan.Steps.Length} steps, {AllChecks.All.Length} checks, {AllChecks.Review(_plan).Length} findings");
        if (Environment.GetEnvironmentVariable("EACH_CHECK") is not null) EachAlone();
    }

    [Benchmark]
    public object All_checks() => AllChecks.Review(_plan);

    /// <summary>What is prepared for the checks from the steps.</summary>
    [Benchmark]
    public object Prepare() => _plan with { Steps = _plan.Steps };

    /// <summary>What each check costs, roughly: a hint where to look, not a measurement.</summary>
    private void EachAlone()
    {
        foreach (var check in AllChecks.All)
        {
            for (var i = 0; i < 20_000; i++) _ = check.Find(_plan);
            var before = GC.GetAllocatedBytesForCurrentThread();
            var watch = System.Diagnostics.Stopwatch.StartNew();
            for (var i = 0; i < 20_000; i++) _ = check.Find(_plan);
            var (time, bytes) = (watch.Elapsed.TotalMicroseconds / 20_000, (GC.GetAllocatedBytesForCurrentThread() - before) / 20_000);
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"// {time:0.00} us {bytes} B {check.Id}"));
        }
    }

    private static ReviewCase FortySteps() => Case(Fish, Shelf.Of([new SourceText("long.yaml", Rules)]));

    private static ReviewCase Otter() =>
        Case(SpecimenReader.Read(PlanBenchmarks.Source(PlanBenchmarks.Repository("samples", "specimens", "harbour-otter.yaml"))).Value!, Shelf.Bundled());

    private static ReviewCase Case(Specimen specimen, Shelf shelf)
    {
        var bench = BenchReader.Read(PlanBenchmarks.Source(PlanBenchmarks.Repository("samples", "benches", "skerry-point.yaml")), DateTimeZoneProviders.Tzdb).Value!;
        return new Planner(shelf).Pipeline.Make(new(specimen, bench, new LocalDateTime(2027, 3, 1, 9, 0))).Review!;
    }

    private static Specimen Fish => new()
    {
        Id = "T-40",
        Group = "bony-fish",
        Mass = Mass.FromGrams(82),
        StandardLength = Length.FromMillimeters(155),
        Condition = Condition.Chilled,
        FoundOn = new LocalDate(2027, 2, 28),
        Where = "Skerry Point",
        HowObtained = "stranded at low water",
        CollectedBy = "M. Okafor",
        IntendedUse = IntendedUse.Research,
    };

    /// <summary>Forty stages: a fish slit, fixed, washed and taken up through many baths to 70 % ethanol, with tasks between.</summary>
    private static string Rules { get; } = string.Join('\n',
    [
        "format: 1",
        "protocol: long",
        "revision: 1",
        "title: Forty steps",
        "for: {group: bony-fish}",
        "stages:",
        "  - {stage: hold, id: cold, last: at most 24 h}",
        "  - {stage: sample, id: record, how: Photograph both sides for colour., covers: colours}",
        "  - {stage: slit, id: slit, places: [abdomen], length: 10 mm, depth: 5 mm, count: 1}",
        "  - {stage: pose, id: pose}",
        "  - {stage: immerse, id: fix, fluid: neutral buffered formalin 10 %, ratio: 10, last: 20 d, watch: {every: 1 d, signs: {soft: re-inject}}}",
        "  - {stage: wash, id: wash, fluid: tap water, ratio: 5, last: 5 d, changes: 3}",
        .. Enumerable.Range(1, 14).SelectMany(i => new[] { $"  - {{stage: bath, id: bath-{i}, fluid: ethanol {(5 * i).ToString(CultureInfo.InvariantCulture)} %vol, ratio: 5, last: 1 d}}", $"  - {{stage: task, id: look-{i}, how: Look at it.}}" }),
        "  - {stage: house, id: house, fluid: ethanol 70 %vol, ratio: 5}",
        "  - {stage: label, id: label, fields: [number]}",
        "  - {stage: seal, id: seal, closure: screw lid}",
        "  - {stage: discard, id: spent, of: fix, to: collected as hazardous waste}",
        "  - {stage: discard, id: spent-bath, of: bath-14, to: collected as hazardous waste}",
        "  - {stage: task, id: file, how: File the data sheet.}",
        "  - {stage: inspect, id: first-check, after: 28 d}",
        "  - {stage: inspect, id: round, every: 180 d}",
    ]);
}
