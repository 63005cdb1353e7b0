using Protocolist.Findings;
using UnitsNet;

namespace Protocolist.Vessels;

/// <summary>The smallest jar and tub that would do: grown in small steps from the body's outline until they can be filled as asked.</summary>
internal static class SmallestVessel
{
    private const double Step = 1.02;
    private const int MostSteps = 300;

    /// <summary>Inside dimensions are given in whole steps of 5 mm, rounded up; jars and glass are not cut finer.</summary>
    private const double Grain = 0.005;

    private static readonly Phrase Nothing = new("needed-vessel.none", "no vessel of any size can be filled like this; lower the ratio or change the pose");
    private static readonly Phrase ForKeeping = new(
        "needed-vessel.keeping",
        "buy or build {sizes:, or }; glass, closed with a polypropylene lid and foam or PTFE-faced liner, or with a ground glass lid");
    private static readonly Phrase ForTreating = new(
        "needed-vessel.treating", "buy or build {sizes:, or }; glass, polypropylene or polyethylene, with a lid that fits");
    private static readonly Phrase JarOf = new("needed-vessel.jar", "a jar of at least {diameter:0} x {height:0} mm inside ({holds})");
    private static readonly Phrase TubOf = new("needed-vessel.tub", "a tub or tank of at least {length:0} x {width:0} x {height:0} mm inside ({holds})");
    private static readonly Phrase Millilitres = new("needed-vessel.holds-ml", "{volume:0 mL}");
    private static readonly Phrase Litres = new("needed-vessel.holds-litres", "{volume:0.0 L}");

    public static NeededVessel For(FitDemand demand)
    {
        var (body, side, above) = (demand.Body, 2 * demand.Side, demand.Above + demand.Below);
        var lies = body.Kind != OutlineKind.Boxed || !body.Allowed.HasFlag(Orientations.Upright);
        var (l, w, h) = body.Kind == OutlineKind.Boxed ? (body.Length, body.Width, body.Height) : (body.LongestSide, body.LongestSide, body.LongestSide);
        var tub = Grow(s => new VesselShape.Box(Up(s * (l + side)), Up(s * (w + side)), Up(s * (h + above))), demand);
        var across = lies ? Math.Sqrt(l * l + w * w) : Math.Sqrt(w * w + h * h);
        var jar = Grow(s => new VesselShape.Cylinder(Up(s * (across + side)), Up(s * ((lies ? h : l) + above))), demand);
        return new(jar, tub, Advice(jar, tub, demand.Request.Use));
    }

    private static T? Grow<T>(Func<double, T> scaled, FitDemand demand)
        where T : VesselShape
    {
        var scale = 1.0;
        for (var i = 0; i < MostSteps; i++, scale *= Step)
        {
            var shape = scaled(scale);
            if (Filling.Of(Room.Of(shape), demand).Against == FitRemark.None) return shape;
        }

        return null;
    }

    private static Length Up(double metres) => Length.FromMillimeters(Math.Ceiling(metres / Grain - 1e-9) * Grain * 1000);

    private static Message Advice(VesselShape.Cylinder? jar, VesselShape.Box? tub, VesselUse use)
    {
        var sizes = new List<Message>();
        if (jar is not null) sizes.Add(JarOf.With(("diameter", jar.Diameter.Millimeters), ("height", jar.Height.Millimeters), ("holds", Holds(jar))));
        if (tub is not null)
        {
            sizes.Add(TubOf.With(
                ("length", tub.Length.Millimeters), ("width", tub.Width.Millimeters), ("height", tub.Height.Millimeters), ("holds", Holds(tub))));
        }

        if (sizes.Count == 0) return Nothing;
        return (use == VesselUse.Keeping ? ForKeeping : ForTreating).With(Argument.Messages("sizes", sizes));
    }

    private static Message Holds(VesselShape shape) => (shape.Inside.Liters < 1 ? Millilitres : Litres).With(("volume", shape.Inside));
}
