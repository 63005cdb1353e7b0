using UnitsNet;
using static System.FormattableString;

namespace Protocolist.Vessels;

/// <summary>The smallest jar and tub that would do: grown in small steps from the body's outline until they can be filled as asked.</summary>
internal static class SmallestVessel
{
    private const double Step = 1.02;
    private const int MostSteps = 300;

    /// <summary>Inside dimensions are given in whole steps of 5 mm, rounded up; jars and glass are not cut finer.</summary>
    private const double Grain = 0.005;

    public static NeededVessel For(FitRequest request)
    {
        var clear = request.Clearances ?? Clearances.For(Length.FromMeters(Arrangement.LongestSide(request.Specimen)));
        double side = 2 * clear.Side.Meters, above = clear.Above.Meters + clear.Below.Meters;
        var (l, w, h, flat) = request.Specimen switch
        {
            PosedSpecimen.Boxed b => (b.Length.Meters, b.Width.Meters, b.Height.Meters, !b.Allowed.HasFlag(Orientations.Upright)),
            var other => (Arrangement.LongestSide(other), Arrangement.LongestSide(other), Arrangement.LongestSide(other), true),
        };
        var tub = Grow(s => new VesselShape.Box(Up(s * (l + side)), Up(s * (w + side)), Up(s * (h + above))), request);
        var across = flat ? Math.Sqrt(l * l + w * w) : Math.Sqrt(w * w + h * h);
        var jar = Grow(s => new VesselShape.Cylinder(Up(s * (across + side)), Up(s * ((flat ? h : l) + above))), request);
        return new(jar, tub, Advice(jar, tub, request));
    }

    private static T? Grow<T>(Func<double, T> scaled, FitRequest request)
        where T : VesselShape
    {
        var scale = 1.0;
        for (var i = 0; i < MostSteps; i++, scale *= Step)
        {
            var shape = scaled(scale);
            if (Filling.Of(shape, request).Filling is not null) return shape;
        }

        return null;
    }

    private static Length Up(double metres) => Length.FromMillimeters(Math.Ceiling(metres / Grain - 1e-9) * Grain * 1000);

    private static string Advice(VesselShape.Cylinder? jar, VesselShape.Box? tub, FitRequest request)
    {
        var round = jar is null ? null : Invariant($"a jar of at least {jar.Diameter.Millimeters:0} x {jar.Height.Millimeters:0} mm inside ({Size(jar)})");
        var square = tub is null ? null : Invariant($"a tub or tank of at least {tub.Length.Millimeters:0} x {tub.Width.Millimeters:0} x {tub.Height.Millimeters:0} mm inside ({Size(tub)})");
        var what = string.Join(", or ", new[] { round, square }.OfType<string>());
        if (what.Length == 0) return "no vessel of any size can be filled like this; lower the ratio or change the pose";
        var of = request.Use == VesselUse.Keeping
            ? "glass, closed with a polypropylene lid and foam or PTFE-faced liner, or with a ground glass lid"
            : "glass, polypropylene or polyethylene, with a lid that fits";
        return Invariant($"buy or build {what}; {of}");
    }

    private static string Size(VesselShape shape) => shape.Inside.Liters < 1 ? Invariant($"{shape.Inside.Milliliters:0} mL") : Invariant($"{shape.Inside.Liters:0.0} L");
}
