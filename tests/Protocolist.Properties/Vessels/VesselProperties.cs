using FsCheck;
using FsCheck.Fluent;
using Protocolist.Fluids;
using Protocolist.Vessels;
using UnitsNet;

namespace Protocolist.Properties.Vessels;

/// <summary>What must hold for every vessel that is chosen, whatever is put in it.</summary>
public class VesselProperties
{
    /// <summary>Bodies of 1 to 600 mm and jars and tubs of 20 to 900 mm, in fluids that grow as water to strong alcohol do.</summary>
    public static Arbitrary<Case> Cases()
    {
        var body = Gen.Choose(1, 600).Select(mm => mm / 1000.0);
        var side = Gen.Choose(20, 900).Select(mm => mm / 1000.0);
        var share = Gen.Choose(1, 100).Select(percent => percent / 100.0);
        return (
            from l in body
            from w in body
            from h in body
            from full in share
            from a in side
            from b in side
            from height in side
            from round in Gen.Elements(true, false)
            from growth in Gen.Choose(20, 120).Select(g => g * 1e-5)
            from use in Gen.Elements(VesselUse.Treating, VesselUse.Keeping)
            from ratio in Gen.Choose(0, 20)
            from cold in Gen.Choose(4, 20)
            from hot in Gen.Choose(20, 45)
            from headspace in Gen.Choose(0, 10).Select(percent => percent / 100.0)
            select new Case
            {
                Body = new PosedSpecimen.Boxed("body", Volume.FromCubicMeters(l * w * h * full), Length.FromMeters(l), Length.FromMeters(w), Length.FromMeters(h)),
                Shape = round ? new VesselShape.Cylinder(Length.FromMeters(a), Length.FromMeters(height)) : new VesselShape.Box(Length.FromMeters(a), Length.FromMeters(b), Length.FromMeters(height)),
                Growth = growth,
                Use = use,
                Ratio = ratio,
                Cold = cold,
                Hot = hot,
                Headspace = headspace,
            }).ToArbitrary();
    }

    [Property(Arbitrary = [typeof(VesselProperties)], MaxTest = 2000)]
    public bool Fluid_specimen_and_headspace_make_up_the_vessel(Case @case) => Fit(@case) is not { } fit
        || Near(fit.FluidVolume + @case.Body.Volume + fit.HeadspaceVolume, fit.Vessel.Shape.Inside);

    [Property(Arbitrary = [typeof(VesselProperties)], MaxTest = 2000)]
    public bool A_covered_body_stays_covered_and_nothing_runs_over_between_the_coldest_and_the_hottest_day(Case @case) => Fit(@case) is not { } fit
        || (fit.LevelColdest >= fit.CoveredTo * (1 - 1e-9)
            && fit.LevelColdest <= fit.LevelAfter * (1 + 1e-9)
            && fit.LevelAfter <= fit.LevelHottest * (1 + 1e-9)
            && fit.LevelHottest <= fit.Vessel.Shape.Height * (1 + 1e-9));

    [Property(Arbitrary = [typeof(VesselProperties)], MaxTest = 2000)]
    public bool The_ratio_asked_for_is_reached(Case @case) => Fit(@case) is not { } fit || fit.Ratio >= @case.Ratio * (1 - 1e-9);

    [Property(Arbitrary = [typeof(VesselProperties)], MaxTest = 300)]
    public bool What_is_to_be_bought_would_do(Case @case)
    {
        var needed = VesselFit.Choose(Request(@case), []).Value!.Needed!;
        return new VesselShape?[] { needed.Jar, needed.Tub }.OfType<VesselShape>()
            .All(shape => VesselFit.Choose(Request(@case), [new("new", "new", shape, VesselMaterial.Glass, 1)]).Value!.Chosen is not null);
    }

    /// <summary>A bench prepared once chooses as one that is looked at anew, and a request that makes no sense has no vessel.</summary>
    [Property(Arbitrary = [typeof(VesselProperties)], MaxTest = 500)]
    public bool Prepared_vessels_are_chosen_as_bare_ones_are(Case @case)
    {
        Vessel[] bench =
        [
            new("one", "one", @case.Shape, VesselMaterial.Glass, 1) { Closure = Closure.ScrewLid, EmptyMass = Mass.FromKilograms(1) },
            new("tub", "tub", new VesselShape.Box(Length.FromMeters(0.7), Length.FromMeters(0.4), Length.FromMeters(0.4)), VesselMaterial.Polyethylene, 2),
            new("jar", "jar", new VesselShape.Cylinder(Length.FromMeters(0.2), Length.FromMeters(0.3)), VesselMaterial.Glass, 0),
            new("twin", "twin", @case.Shape, VesselMaterial.Glass, 1) { Closure = Closure.ScrewLid, EmptyMass = Mass.FromKilograms(1) },
        ];
        var chosen = VesselFit.Choose(Request(@case), bench).Value;
        var best = VesselFit.Best(Request(@case), PreparedVessel.Of(bench));
        var all = VesselFit.Fitting(Request(@case), PreparedVessel.Of(bench));
        return best?.Vessel == chosen?.Chosen?.Vessel
            && (best?.Findings ?? []).SequenceEqual(chosen?.Chosen?.Findings ?? [])
            && all.Select(f => f.Vessel.Id).SequenceEqual(chosen?.Chosen is { } first ? chosen.AlsoFit.Prepend(first).Select(f => f.Vessel.Id) : [])
            && (chosen is null || all.Length + chosen.Rejected.Length == bench.Length && chosen.Rejected.All(r => r.Reasons.Length > 0));
    }

    /// <summary>Else the properties above could hold for want of any vessel that fits.</summary>
    [Fact]
    public void A_good_part_of_the_cases_fits() =>
        Assert.InRange(Cases().Generator.Some(1000).Count(c => Fit(c) is not null), 100, 1000);

    private static FittedVessel? Fit(Case @case) =>
        VesselFit.Choose(Request(@case), [new("one", "one", @case.Shape, VesselMaterial.Glass, 1)]).Value!.Chosen;

    private static FitRequest Request(Case @case) => new(@case.Body, Fluid.Formalin(10), t => 1000 / (1 + @case.Growth * (t - 20)), @case.Use)
    {
        LeastRatio = @case.Ratio,
        Coldest = Temperature.FromDegreesCelsius(@case.Cold),
        Hottest = Temperature.FromDegreesCelsius(@case.Hot),
        HeadspaceShare = @case.Headspace,
    };

    private static bool Near(Volume a, Volume b) => Math.Abs(a.CubicMeters - b.CubicMeters) <= 1e-9 * b.CubicMeters;

    public sealed class Case
    {
        internal PosedSpecimen.Boxed Body { get; init; } = null!;

        internal VesselShape Shape { get; init; } = null!;

        internal double Growth { get; init; }

        internal VesselUse Use { get; init; }

        internal double Ratio { get; init; }

        internal double Cold { get; init; }

        internal double Hot { get; init; }

        internal double Headspace { get; init; }

        public override string ToString() => $"{Body} in {Shape}, {nameof(Growth)} {Growth}, {Use}, ratio {Ratio}, {Cold} to {Hot} degC, headspace {Headspace}";
    }
}
