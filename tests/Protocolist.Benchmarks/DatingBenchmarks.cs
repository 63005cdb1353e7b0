using BenchmarkDotNet.Attributes;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Benches.Opening;
using Protocolist.Planning.Dating;
using Protocolist.Planning.Deciding;
using Protocolist.Planning.Provisioning;
using Protocolist.Specimens;

namespace Protocolist.Benchmarks;

/// <summary>The dating pass of a large mammal on a bench with closed days, with all at hand and with formalin that has to be bought.</summary>
[MemoryDiagnoser]
public class DatingBenchmarks
{
    private static readonly LocalDateTime Start = new(2027, 3, 1, 9, 0);

    private Bench _bench = null!;
    private OpenMinutes _hours = null!;
    private Provisioned _stocked = null!;
    private Provisioned _bought = null!;

    [GlobalSetup]
    public void Setup()
    {
        var file = PlanBenchmarks.Source(PlanBenchmarks.Repository("samples", "benches", "skerry-point.yaml"));
        _bench = BenchReader.Read(file, DateTimeZoneProviders.Tzdb).Value!;
        _hours = OpenMinutes.Of(_bench.Opening, new(2027, 1, 1), new(2029, 12, 31));
        _bought = Provision(_bench);
        _stocked = Provision(_bench with { Stock = [.. _bench.Stock.Select(i => i with { OnHand = new(i.OnHand.Kind, 20 * i.OnHand.Units) })] });
        foreach (var provisioned in new[] { _stocked, _bought })
        {
            var dated = SchedulePass.Run(provisioned, _bench, _hours, new(Start));
            var when = dated.Draft.Steps.Where(s => s.When is not null).Select(s => s.When!.Value).ToList();
            var days = (when[^1].End - when[0].Start).TotalDays;
            Console.WriteLine($"// {when.Count} steps dated, {days:F1} days, {dated.Findings.Length} findings, {provisioned.Books.Purchases.Length} purchases");
        }
    }

    [Benchmark]
    public object All_at_hand() => SchedulePass.Run(_stocked, _bench, _hours, new(Start));

    [Benchmark]
    public object Some_to_be_bought() => SchedulePass.Run(_bought, _bench, _hours, new(Start));

    [Benchmark]
    public object Unprepared() => SchedulePass.Run(_stocked, _bench, OpenMinutes.Of(_bench.Opening), new(Start));

    /// <summary>What the pass does for the dates alone: the steps as jobs, and their earliest dates.</summary>
    [Benchmark]
    public object Dates_alone()
    {
        var open = SchedulePass.Open(_stocked.Draft);
        return new StepChain(open, _stocked.Draft, _hours, Start.InZoneLeniently(_hours.Hours.Zone).ToInstant(), null, []).Earliest([])!;
    }

    private static Provisioned Provision(Bench bench)
    {
        var specimen = SpecimenReader.Read(PlanBenchmarks.Source(PlanBenchmarks.Repository("samples", "specimens", "harbour-otter.yaml"))).Value!;
        return new Planner(Shelf.Bundled()).Pipeline.Make(new(specimen, bench, Start)).Provisioned!;
    }
}
