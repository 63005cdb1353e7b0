using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using BenchmarkDotNet.Attributes;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Planning;
using Protocolist.Planning.Drafting;
using Protocolist.Planning.Provisioning;
using Protocolist.Planning.Selecting;
using Protocolist.Plans;
using Protocolist.Protocols;
using Protocolist.Specimens;

namespace Protocolist.Benchmarks;

/// <summary>The fourth pass for the sample's otter: on a bench that was prepared, with the recipes of its fluids or without, and with the preparation.</summary>
/// <remarks>Aimed at: 25 µs and 15 kB on a prepared bench.</remarks>
[MemoryDiagnoser]
public class ProvisionBenchmarks
{
    private readonly Bench bench = BenchReader.Read(PlanBenchmarks.Source(PlanBenchmarks.Repository("samples", "benches", "skerry-point.yaml")), DateTimeZoneProviders.Tzdb).Value!;

    private Draft draft = null!;
    private StockDay day = null!;
    private StockDay bare = null!;
    private PreparedStock stock = null!;

    [GlobalSetup]
    public void Setup()
    {
        var specimen = SpecimenReader.Read(PlanBenchmarks.Source(PlanBenchmarks.Repository("samples", "specimens", "harbour-otter.yaml"))).Value!;
        var body = MeasurePass.Run(specimen).Value!;
        var planner = new Planner(Shelf.Bundled());
        draft = DraftPass.Run(body, planner.Prepared(SelectPass.Run(body, planner.Classes).Value!), bench, ImmutableSortedDictionary<string, string>.Empty).Value!;
        stock = PreparedStock.Of(bench);
        var on = new LocalDate(2027, 3, 1);
        (bare, day) = (stock.On(on), stock.On(on, draft.Steps.Select(s => s.Fluid).OfType<Fluids.Fluid>()));
        if (Environment.GetEnvironmentVariable("EACH_PART") is not null) EachPart();
    }

    [Benchmark(Baseline = true)]
    public object On_a_prepared_bench() => ProvisionPass.Run(draft, day, PlanWishes.None);

    [Benchmark]
    public object With_recipes_solved_when_asked() => ProvisionPass.Run(draft, bare, PlanWishes.None);

    [Benchmark]
    public object Preparing_the_bench_for_a_day() => PreparedStock.Of(bench).On(new LocalDate(2027, 3, 1));

    /// <summary>What each part of the pass costs, roughly: a hint where to look, not a measurement.</summary>
    private void EachPart()
    {
        var findings = new List<Findings.Finding>();
        var done = ProvisionPass.Run(draft, day, PlanWishes.None);
        var steps = done.Draft.Steps;
        var sundries = SundryUse.Of(steps, 1, stock.Sundries);
        var needs = FluidNeed.Of(steps, day);
        var books = MaterialBooks.Of(done.Choice, sundries, at => steps[at].Id, day, findings);
        Tell("all", () => ProvisionPass.Run(draft, day, PlanWishes.None));
        Tell("vessels", () =>
        {
            foreach (var step in draft.Steps)
            {
                if (ProvisionPass.NeedsVessel(step)) _ = VesselChoice.For(step, draft.Body, day);
            }
        });
        Tell("sundries", () => SundryUse.Of(steps, 1, stock.Sundries));
        Tell("needs", () => FluidNeed.Of(steps, day));
        Tell("recipes and purchases", () => RecipeChoice.Of(needs, sundries, day, PlanWishes.None.Supplies, findings));
        Tell("books", () => MaterialBooks.Of(done.Choice, sundries, at => steps[at].Id, day, findings));
        Tell("waste", () => WasteBook.Of(needs, done.Choice, sundries, steps, stock, findings));
        Tell("materials of steps", () =>
        {
            for (var i = 0; i < steps.Length; i++) _ = StepMaterials.Of(steps, i, done.Choice, sundries, day);
        });
        Tell("costs", () => CostBook.Of(CostParts.Of(done.Draft, books, sundries, done.Waste, CareFluid.Of(done.Draft, done.Choice, books, stock)), stock, findings));

        void Tell(string what, Action part)
        {
            const int Times = 5_000;
            for (var i = 0; i < Times; i++) Once();
            var (watch, bytes) = (Stopwatch.StartNew(), GC.GetAllocatedBytesForCurrentThread());
            for (var i = 0; i < Times; i++) Once();
            var (us, kB) = (watch.Elapsed.TotalMicroseconds / Times, (GC.GetAllocatedBytesForCurrentThread() - bytes) / 1024.0 / Times);
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"// {us,7:0.0} us {kB,7:0.0} kB {what}"));

            void Once()
            {
                findings.Clear();
                part();
            }
        }
    }
}
