using BenchmarkDotNet.Attributes;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Fluids;
using Protocolist.Specimens;
using Protocolist.Specimens.Fixation;
using Protocolist.Vessels;
using Protocolist.Vessels.Glass;
using UnitsNet;

namespace Protocolist.Benchmarks;

/// <summary>What planning asks of a body and of a bench's vessels, each some times for one plan.</summary>
[MemoryDiagnoser]
public class BodiesBenchmarks
{
    private Specimen specimen = null!;
    private BodyMeasure body = null!;
    private InjectionPlan injections = null!;
    private CutPlan cuts = null!;
    private Bench bench = null!;
    private PreparedVessel[] prepared = null!;
    private FitRequest frog = null!;
    private FitRequest otter = null!;
    private TankSpec tank = null!;

    [GlobalSetup]
    public void Setup()
    {
        specimen = SpecimenReader.Read(PlanBenchmarks.Source(PlanBenchmarks.Repository("samples", "specimens", "harbour-otter.yaml"))).Value!;
        bench = BenchReader.Read(PlanBenchmarks.Source(PlanBenchmarks.Repository("samples", "benches", "skerry-point.yaml")), DateTimeZoneProviders.Tzdb).Value!;
        body = BodyMeasure.Of(specimen).Value!;
        injections = InjectionPlan.For(body).Value!;
        cuts = CutPlan.For(body).Value!;
        prepared = PreparedVessel.Of(bench.Vessels);
        var ethanol = Fluid.Ethanol(70);
        var small = new PosedSpecimen.Boxed(
            "frog", Volume.FromMilliliters(45), Length.FromMillimeters(80), Length.FromMillimeters(35), Length.FromMillimeters(30));
        var large = new PosedSpecimen.Boxed("otter", body.LotVolume.Nominal, body.TotalLength.Nominal, body.Width.Nominal, body.Height.Nominal);
        frog = FitRequest.For(small, ethanol, VesselUse.Keeping) with { Coldest = bench.Temperatures.Coldest, Hottest = bench.Temperatures.Hottest };
        otter = FitRequest.For(large, Fluid.Formalin(10), VesselUse.Treating) with { LeastRatio = 3 };
        tank = TankSpec.For(Length.FromMillimeters(1240), Length.FromMillimeters(240), Length.FromMillimeters(306), ethanol, TankTop.Framed);
    }

    [Benchmark]
    public object Measure() => BodyMeasure.Of(specimen);

    [Benchmark]
    public object Inject() => InjectionPlan.For(body);

    [Benchmark]
    public object Cut() => CutPlan.For(body);

    [Benchmark]
    public object Fix() => BodyFixation.Of(body, injections, cuts);

    [Benchmark]
    public object Fix_whole() => BodyFixation.Of(body);

    [Benchmark]
    public object Safeguard() => SafeguardPlan.For(body, 336);

    /// <summary>What a prepared bench spares.</summary>
    [Benchmark]
    public object Prepare_vessels() => PreparedVessel.Of(bench.Vessels);

    [Benchmark]
    public object? Choose_for_a_frog_kept() => VesselFit.Best(frog, prepared);

    [Benchmark]
    public object? Choose_for_an_otter_fixed() => VesselFit.Best(otter, prepared);

    [Benchmark]
    public object Choose_and_tell_all() => VesselFit.Choose(otter, bench.Vessels);

    [Benchmark]
    public object Glass_of_a_tank() => TankDesigner.Design(tank);
}
