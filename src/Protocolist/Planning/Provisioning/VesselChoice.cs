using System.Collections.Immutable;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Planning.Drafting;
using Protocolist.Plans;
using Protocolist.Specimens;
using Protocolist.Vessels;
using UnitsNet;

namespace Protocolist.Planning.Provisioning;

/// <summary>Which vessel a step uses and how it is filled.</summary>
internal static class VesselChoice
{
    /// <summary>Wider than so many thicknesses, a body lies flat: rays, flatfishes, starfishes. The project's choice.</summary>
    private const double FlatFrom = 4;

    /// <summary>The least harmful of the vessels that are free or can be bought.</summary>
    public static VesselOutcome For(DraftStep step, BodyMeasure body, PosedBody posed, StockDay day)
    {
        var request = Request(step, body, posed, day.Stock.Bench);
        if (VesselFit.Best(request, day.Vessels) is { } best) return new(best, null, best.Findings);

        // The largest first: what keeps the body out of the largest is what the person has to know.
        PreparedVessel[] all = [.. day.FreeVessels.OrderByDescending(v => v.Room.Volume).ThenBy(v => v.Vessel.Id, StringComparer.Ordinal)];
        var none = VesselFit.Among(request, all);
        return new(null, none.Value?.Needed, [.. none.Value?.Rejected.SelectMany(r => r.Reasons) ?? none.Findings]);
    }

    /// <summary>
    /// The fluid that a step takes in the vessel that it would have, m³, changes too, and how many warnings that vessel brings; null where none does.
    /// </summary>
    public static (double Fluid, int Warnings)? FluidFor(DraftStep step, BodyMeasure body, PosedBody posed, StockDay day, Vessel? wished)
    {
        var request = Request(step, body, posed, day.Stock.Bench);
        var best = wished is not null ? VesselFit.FluidInBest(request, [new PreparedVessel(wished)])
            : VesselFit.FluidInBest(request, day.Vessels);
        return best is var (fluid, warnings) ? (fluid * (1 + step.Changes), warnings) : null;
    }

    /// <summary>Every vessel that is to be had and does, the least harmful first.</summary>
    public static ImmutableArray<FittedVessel> Fitting(DraftStep step, BodyMeasure body, PosedBody posed, StockDay day) =>
        VesselFit.Fitting(Request(step, body, posed, day.Stock.Bench), day.Vessels);

    /// <summary>The vessels among which it is worth choosing: none is worse in everything than another. The best first.</summary>
    public static ImmutableArray<(Vessel Vessel, long Price, bool IsAsGood)> Worthwhile(DraftStep step, BodyMeasure body, PosedBody posed, StockDay day) =>
        VesselFit.Worthwhile(Request(step, body, posed, day.Stock.Bench), day.Vessels);

    /// <summary>One vessel filled for a step, or the reasons against it.</summary>
    public static (FittedVessel? Fitted, ImmutableArray<Finding> Reasons) Try(DraftStep step, BodyMeasure body, PosedBody posed, Bench bench, Vessel vessel) =>
        VesselFit.One(Request(step, body, posed, bench), vessel);

    private static FitRequest Request(DraftStep step, BodyMeasure body, PosedBody posed, Bench bench)
    {
        var fluid = step.Fluid ?? Fluid.TapWater;
        var use = step.Stage.Kind == StageKind.House ? VesselUse.Keeping : VesselUse.Treating;
        return new(Posed(step, body, posed), fluid, fluid.DensityAt, use)
        {
            FilledAt = bench.Temperatures.Room,
            Coldest = use == VesselUse.Keeping ? bench.Temperatures.Coldest : bench.Temperatures.Room,
            Hottest = use == VesselUse.Keeping ? bench.Temperatures.Hottest : bench.Temperatures.Room,
            Carriers = Math.Clamp(bench.People, 1, 2), // a third pair of hands finds no hold on a vessel
            ShelfBears = use == VesselUse.Keeping ? bench.ShelfBears : null,
            BelowBrim = step.Work is HouseWork { BelowBrim: { } gap } ? Length.FromMeters(gap.Middle) : null,
            LeastRatio = step.Ratio is { } ratio ? Math.Clamp(ratio.Low, 0, 1000) : use == VesselUse.Treating ? 1 : FitRequest.LeastForKeeping,
            Clearances = step.Work is HouseWork { OverSpecimen: { } over }
                ? Clearances.For(posed.Longest) with { Above = Length.FromMeters(over.Middle) }
                : null,
        };
    }

    private static PosedSpecimen Posed(DraftStep step, BodyMeasure body, PosedBody posed)
    {
        var (name, volume) = (body.Specimen.Id, body.LotVolume.Nominal);
        var (length, width, height) = (posed.Length, posed.Width, posed.Height);
        if (body.Count > 1) return new PosedSpecimen.Lot(name, volume, body.Count, length, width, height);
        if (posed.Layers > 0) return new PosedSpecimen.Coiled(name, volume, length, height, posed.Layers);
        var across = Length.FromMeters(Math.Max(width.Meters, height.Meters));
        if (across.Meters > FlatFrom * 2 * body.HalfThickness.Nominal.Meters)
        {
            var hard = step.Stage.Kind is StageKind.Wash or StageKind.Bath or StageKind.House;
            return PosedSpecimen.Flat(name, volume, length, across, Length.FromMeters(Math.Min(width.Meters, height.Meters)), hard);
        }

        return new PosedSpecimen.Boxed(name, volume, length, width, height);
    }
}
