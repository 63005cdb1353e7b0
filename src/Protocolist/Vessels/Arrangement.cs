using static System.FormattableString;

namespace Protocolist.Vessels;

/// <summary>One way to lay a body into a shape: what to call it and how high it stands (m).</summary>
internal sealed record Arrangement(string Name, double Height)
{
    /// <summary>A coil tighter than three body diameters kinks the body. From memory; no published figure was found.</summary>
    private const double TightestCoil = 3;

    /// <summary>Loose heaps of irregular bodies fill about half of their room (random packing, from memory).</summary>
    private const double LooseHeap = 0.5;

    /// <summary>The lowest way in which the body fits the shape from wall to wall, or null.</summary>
    public static Arrangement? Lowest(PosedSpecimen specimen, VesselShape shape, double side) => specimen switch
    {
        PosedSpecimen.Boxed body => Boxed(body, shape, side),
        PosedSpecimen.Coiled body => Coiled(body, shape, side),
        PosedSpecimen.Lot lot => Heaped(lot, shape, side),
        _ => throw new InvalidOperationException("the kinds of posed specimen are closed"),
    };

    /// <summary>The longest side of one body as posed, a coil's counted as its tightest.</summary>
    public static double LongestSide(PosedSpecimen specimen) => specimen switch
    {
        PosedSpecimen.Boxed b => Math.Max(b.Length.Meters, Math.Max(b.Width.Meters, b.Height.Meters)),
        PosedSpecimen.Coiled c => (TightestCoil + 1) * c.BodyDiameter.Meters,
        PosedSpecimen.Lot l => Math.Max(l.Length.Meters, Math.Max(l.Width.Meters, l.Height.Meters)),
        _ => throw new InvalidOperationException("the kinds of posed specimen are closed"),
    };

    private static Arrangement? Boxed(PosedSpecimen.Boxed body, VesselShape shape, double side)
    {
        double l = body.Length.Meters, w = body.Width.Meters, h = body.Height.Meters;
        (Orientations Way, string Name, double A, double B, double Up)[] ways =
        [
            (Orientations.Lying, "lying", l, w, h),
            (Orientations.Upright, "upright", w, h, l),
            (Orientations.OnEdge, "on edge", l, h, w),
        ];
        return ways
            .Where(way => body.Allowed.HasFlag(way.Way) && shape.Encloses(way.A, way.B, side))
            .OrderBy(way => way.Up)
            .Select(way => new Arrangement(way.Name, way.Up))
            .FirstOrDefault();
    }

    /// <summary>Flat spirals, ring within ring as far as the body bends, laid one above the other.</summary>
    private static Arrangement? Coiled(PosedSpecimen.Coiled body, VesselShape shape, double side)
    {
        double diameter = body.BodyDiameter.Meters, length = body.BodyLength.Meters;
        if (shape.Encloses(length, diameter, side)) return new("stretched out", diameter);
        var ring = shape.InscribedCircle.Meters - 2 * side - diameter;
        var layer = 0.0;
        for (var turns = 0; turns < 1000 && ring >= TightestCoil * diameter * (1 - 1e-12); turns++)
        {
            layer += Math.PI * ring;
            ring -= 2 * diameter;
        }

        if (layer <= 0) return null;
        var layers = Math.Ceiling(length / layer);
        return new(Invariant($"coiled in {layers:0} layer{(layers > 1 ? "s" : "")}"), layers * diameter);
    }

    private static Arrangement? Heaped(PosedSpecimen.Lot lot, VesselShape shape, double side)
    {
        var any = Orientations.Lying | Orientations.Upright | Orientations.OnEdge;
        var one = Boxed(new(lot.Name, lot.Volume, lot.Length, lot.Width, lot.Height, any), shape, side);
        if (one is null) return null;
        var heap = lot.Volume.CubicMeters / LooseHeap / shape.Footprint.SquareMeters;
        return new("laid loosely", Math.Max(one.Height, heap));
    }
}
