using System.Collections.Immutable;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Plans;
using Protocolist.Protocols;
using Protocolist.Specimens;
using Protocolist.Vessels;
using UnitsNet;

namespace Protocolist.Planning.Provisioning;

/// <summary>Which vessel a step uses and how it is filled.</summary>
internal static class VesselChoice
{
    /// <summary>Longer than so many thicknesses, a body is laid in a coil: snakes, eels, worms. Common practice has no number; this is the project's choice.</summary>
    private const double CoiledFrom = 14;

    /// <summary>Wider than so many thicknesses, a body lies flat: rays, flatfishes, starfishes. The project's choice.</summary>
    private const double FlatFrom = 4;

    /// <summary>What came of looking for a vessel: the best fit, or every reason against, and what would do.</summary>
    public sealed record Outcome(FittedVessel? Fitted, NeededVessel? Needed, ImmutableArray<Finding> Reasons);

    /// <summary>The best of the free vessels; where none does, the best that can be bought.</summary>
    public static Outcome For(DraftStep step, BodyMeasure body, StockDay day)
    {
        var request = Request(step, body, day.Stock.Bench);
        if ((Best(request, step, day.FreeBySize) ?? Best(request, step, day.ForSaleBySize)) is { } best) return new(best, null, best.Findings);

        // The largest first: what keeps the body out of the largest is what the person has to know.
        var none = VesselFit.Choose(request, day.FreeVessels.OrderByDescending(v => v.Shape.Inside.CubicMeters).ThenBy(v => v.Id, StringComparer.Ordinal));
        return new(null, none.Value?.Needed, [.. none.Value?.Rejected.SelectMany(r => r.Reasons) ?? none.Findings]);
    }

    /// <summary>Every vessel that is to be had and does, the best first: fewest warnings, then least room.</summary>
    public static IEnumerable<FittedVessel> Fitting(DraftStep step, BodyMeasure body, StockDay day)
    {
        var request = Request(step, body, day.Stock.Bench);
        return day.FreeVessels.Concat(day.VesselsForSale).Select(v => Fit(request, step, v).Fitted).OfType<FittedVessel>()
            .OrderBy(Warnings)
            .ThenBy(f => f.Vessel.Shape.Inside.CubicMeters)
            .ThenBy(f => f.Vessel.Id, StringComparer.Ordinal);
    }

    /// <summary>One vessel filled for a step, or the reasons against it.</summary>
    public static (FittedVessel? Fitted, ImmutableArray<Finding> Reasons) Try(DraftStep step, BodyMeasure body, Bench bench, Vessel vessel) =>
        Fit(Request(step, body, bench), step, vessel);

    /// <summary>The one with the fewest warnings, among equals the first: vessels come from the least room to the most.</summary>
    private static FittedVessel? Best(FitRequest request, DraftStep step, ImmutableArray<Vessel> bySize)
    {
        // Body and fluid together take this much room, whatever the shape.
        var least = request.Specimen.Volume.CubicMeters * (1 + Math.Max(0, request.LeastRatio)) * (1 - 1e-6);
        FittedVessel? best = null;
        var fewest = int.MaxValue;
        foreach (var vessel in bySize)
        {
            if (vessel.Shape.Inside.CubicMeters < least || Fit(request, step, vessel).Fitted is not { } fitted) continue;
            var warnings = Warnings(fitted);
            if (warnings < fewest) (best, fewest) = (fitted, warnings);
            if (fewest == 0) break;
        }

        return best;
    }

    private static int Warnings(FittedVessel fitted)
    {
        var count = 0;
        foreach (var finding in fitted.Findings)
        {
            if (finding.Severity == Severity.Warning) count++;
        }

        return count;
    }

    private static (FittedVessel? Fitted, ImmutableArray<Finding> Reasons) Fit(FitRequest request, DraftStep step, Vessel vessel)
    {
        var belowBrim = step.Work is HouseWork { BelowBrim: { } gap } ? Length.FromMeters(gap.Middle) : Length.Zero;
        return VesselFit.One(WithGap(request, vessel, belowBrim), vessel);
    }

    private static FitRequest WithGap(FitRequest request, Vessel vessel, Length belowBrim) => belowBrim.Meters > 0 && vessel.Shape.Height.Meters > 0
        ? request with { HeadspaceShare = Math.Clamp(Math.Max(Headspace.Rule(request.Fluid), belowBrim.Meters / vessel.Shape.Height.Meters), 0, 0.9) }
        : request;

    private static FitRequest Request(DraftStep step, BodyMeasure body, Bench bench)
    {
        var fluid = step.Fluid ?? Fluid.TapWater;
        var use = step.Stage.Kind == StageKind.House ? VesselUse.Keeping : VesselUse.Treating;
        var request = FitRequest.For(Posed(step, body), fluid, use) with
        {
            FilledAt = bench.Temperatures.Room,
            Coldest = use == VesselUse.Keeping ? bench.Temperatures.Coldest : bench.Temperatures.Room,
            Hottest = use == VesselUse.Keeping ? bench.Temperatures.Hottest : bench.Temperatures.Room,
            Carriers = Math.Clamp(bench.People, 1, 2), // a third pair of hands finds no hold on a vessel
            ShelfBears = use == VesselUse.Keeping ? bench.ShelfBears : null,
        };
        if (step.Ratio is { } ratio) request = request with { LeastRatio = Math.Clamp(ratio.Low, 0, 1000) };
        else if (use == VesselUse.Treating) request = request with { LeastRatio = 1 };
        return step.Work is HouseWork { OverSpecimen: { } over }
            ? request with { Clearances = Clearances.For(body.TotalLength.Nominal) with { Above = Length.FromMeters(over.Middle) } }
            : request;
    }

    private static PosedSpecimen Posed(DraftStep step, BodyMeasure body)
    {
        var (name, volume) = (body.Specimen.Id, body.LotVolume.Nominal);
        var (length, width, height) = (body.TotalLength.Nominal, body.Width.Nominal, body.Height.Nominal);
        var across = Length.FromMeters(Math.Max(width.Meters, height.Meters));
        if (body.Count > 1) return new PosedSpecimen.Lot(name, volume, body.Count, length, width, height);
        if (length.Meters > CoiledFrom * across.Meters) return new PosedSpecimen.Coiled(name, volume, length, across);
        if (across.Meters > FlatFrom * 2 * body.HalfThickness.Nominal.Meters)
        {
            var hard = step.Stage.Kind is StageKind.Wash or StageKind.Bath or StageKind.House;
            return PosedSpecimen.Flat(name, volume, length, across, Length.FromMeters(Math.Min(width.Meters, height.Meters)), hard);
        }

        return new PosedSpecimen.Boxed(name, volume, length, width, height);
    }
}
