using System.Collections.Immutable;
using BenchmarkDotNet.Attributes;
using Protocolist.Benchmarks.Table;
using Protocolist.Planning.Drafting;
using Protocolist.Planning.Measuring;
using Protocolist.Planning.Provisioning;
using Protocolist.Planning.Selecting;
using Protocolist.Plans;
using Protocolist.Specimens;

namespace Protocolist.Benchmarks;

/// <summary>The fourth pass for a large mammal on a prepared bench, and what it costs to prepare the bench.</summary>
/// <remarks>Aimed at: 40 µs and 25 kB on a prepared bench.</remarks>
[MemoryDiagnoser]
public class ProvisionBenchmarks
{
    private Draft draft = null!;

    [GlobalSetup]
    public void Setup()
    {
        var planner = new Planner(Shelf.Bundled());
        var body = MeasurePass.Run(Fixture.LargeMammal, Kinds.Bundled).Value!;
        var protocol = planner.Pipeline.Prepared(SelectPass.Run(body, planner.Pipeline.Classes).Value!);
        draft = DraftPass.Run(body, protocol, Fixture.Bench, ImmutableSortedDictionary<string, string>.Empty).Value!;
    }

    [Benchmark(Baseline = true)]
    public object On_a_prepared_bench() => ProvisionPass.Run(draft, Fixture.Prepared.On(Fixture.Start.Date), PlanWishes.None);

    [Benchmark]
    public object With_the_bench_prepared() => ProvisionPass.Run(draft, PreparedStock.Of(Fixture.Bench).On(Fixture.Start.Date), PlanWishes.None);
}
