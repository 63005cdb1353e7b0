using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Quantities;
using static System.FormattableString;

namespace Protocolist.Vessels;

/// <summary>How a shape is filled around a body; lengths in m, volumes in m³, at the filling temperature.</summary>
internal sealed record Filling(Arrangement Arrangement, double Fluid, double CoveredTo, double Headspace)
{
    /// <summary>Fills a shape, or says why it cannot be done.</summary>
    public static (Filling? Filling, ImmutableArray<Finding> Reasons) Of(VesselShape shape, FitRequest request)
    {
        var clear = request.Clearances ?? Clearances.For(UnitsNet.Length.FromMeters(Arrangement.LongestSide(request.Specimen)));
        if (Arrangement.Lowest(request.Specimen, shape, clear.Side.Meters) is not { } lie)
        {
            return (null, [TooNarrow(shape, request.Specimen, clear)]);
        }

        double body = request.Specimen.Volume.CubicMeters, area = shape.Footprint.SquareMeters, inside = shape.Inside.CubicMeters;
        var headspace = HeadspaceOf(request);
        var covered = clear.Below.Meters + lie.Height + clear.Above.Meters;
        var most = (1 - headspace) * inside - body;

        // The level falls on the coldest day; the body must still be covered then.
        var toCover = Math.Max(0, covered * area - body) * ShrinkingBy(request);
        var forRatio = request.LeastRatio * body;
        var reasons = ImmutableArray.CreateBuilder<Finding>();
        if (toCover > most * (1 + 1e-9))
        {
            reasons.Add(Finding.Error(
                "vessel-too-shallow",
                Invariant($"{lie.Name}, the specimen needs fluid to {covered * 1000:0} mm on the coldest day; with {headspace * 100:0.#} % of headspace the vessel can be filled to {(most + body) / area * 1000:0} mm"),
                "take a deeper vessel"));
        }

        if (forRatio > most * (1 + 1e-9))
        {
            reasons.Add(Finding.Error(
                "vessel-too-small-for-ratio",
                Invariant($"it takes {Measurable.Text(Math.Max(0, most), Dimension.OfVolume)} of fluid beside the specimen's {Measurable.Text(body, Dimension.OfVolume)}, {Measurable.Text(Math.Max(0, most) / body, Dimension.None)} : 1; {request.LeastRatio:0.#} : 1 is wanted"),
                "take a larger vessel, or change the fluid more often where the protocol allows it"));
        }

        if (reasons.Count > 0) return (null, reasons.ToImmutable());
        var fluid = request.Use == VesselUse.Keeping ? most : Math.Max(toCover, forRatio);
        return (new(lie, fluid, covered, inside - body - fluid), []);
    }

    /// <summary>The share of the inside that stays empty at filling: at least what the hottest day needs, whatever was asked for.</summary>
    public static double HeadspaceOf(FitRequest request) => Math.Max(
        request.HeadspaceShare ?? Vessels.Headspace.Rule(request.Fluid),
        1 - Vessels.Headspace.FullestFill(request.Density, request.FilledAt, request.Hottest, wallGrowthPerKelvin: 0));

    /// <summary>How much more fluid must go in at filling than stands there on the coldest day.</summary>
    private static double ShrinkingBy(FitRequest request) =>
        Math.Max(1, request.Density(request.Coldest.DegreesCelsius) / request.Density(request.FilledAt.DegreesCelsius));

    private static string Ways(Orientations allowed)
    {
        (Orientations Way, string Words)[] all = [(Orientations.Lying, "lying"), (Orientations.Upright, "upright"), (Orientations.OnEdge, "on edge")];
        return string.Join(" or ", all.Where(a => allowed.HasFlag(a.Way)).Select(a => a.Words));
    }

    private static Finding TooNarrow(VesselShape shape, PosedSpecimen specimen, Clearances clear)
    {
        var size = specimen switch
        {
            PosedSpecimen.Boxed b => Invariant($"{b.Length.Millimeters:0} x {b.Width.Millimeters:0} x {b.Height.Millimeters:0} mm as posed, {Ways(b.Allowed)}"),
            PosedSpecimen.Coiled c => Invariant($"a body {c.BodyDiameter.Millimeters:0} mm thick, which does not coil tighter than {Arrangement.LongestSide(c) * 1000:0} mm across"),
            PosedSpecimen.Lot l => Invariant($"the largest {l.Length.Millimeters:0} x {l.Width.Millimeters:0} x {l.Height.Millimeters:0} mm"),
            _ => "",
        };
        var room = shape switch
        {
            VesselShape.Cylinder jar => Invariant($"{jar.Diameter.Millimeters:0} mm across"),
            VesselShape.Box box => Invariant($"{box.Length.Millimeters:0} x {box.Width.Millimeters:0} mm"),
            _ => "",
        };
        return Finding.Error(
            "vessel-too-narrow",
            Invariant($"{specimen.Name} ({size}) does not lie free in {room} with {clear.Side.Millimeters:0.#} mm to the walls; nothing is forced into a vessel"),
            "take a wider vessel, or pose the body otherwise while it is soft");
    }
}
