using Protocolist.Findings;
using UnitsNet;

namespace Protocolist.Vessels.Glass;

/// <summary>Works out the glass of a tank by plate theory. A glazier or engineer has the last word.</summary>
internal static class TankDesigner
{
    /// <summary>Standard gravity in m/s² (ISO 80000-3).</summary>
    internal const double Gravity = 9.80665;

    /// <summary>Designs a tank.</summary>
    /// <param name="spec">The inside dimensions, the fluid and the top.</param>
    /// <returns>
    /// The design with its findings. No value where a dimension or the density cannot be used. A tank that must not be built has an error
    /// and no panes (<c>rimless-too-long</c>) or a wall without stock thickness (<c>no-stock-glass-thick-enough</c>). A bottom without one must be bedded
    /// (<c>bottom-must-be-bedded</c>).
    /// </returns>
    /// <exception cref="ArgumentNullException">The specification is null.</exception>
    public static Checked<TankDesign> Design(TankSpec spec)
    {
        var worked = Panes(spec);
        return worked.Value is { LongPane: not null } design ? worked with { Findings = TankFindings.Of(design) } : worked;
    }

    /// <summary>The same without what is to be said of a tank that can be built, for whoever asks the panes alone.</summary>
    public static Checked<TankDesign> Panes(TankSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        var unusable = TankFindings.Unusable(spec);
        if (unusable.Length > 0) return new(null, unusable);

        double length = Math.Max(spec.Length.Meters, spec.Width.Meters), width = Math.Min(spec.Length.Meters, spec.Width.Meters);
        var depth = spec.Depth.Meters;
        var pressure = spec.FluidDensity.KilogramsPerCubicMeter * Gravity * depth;
        var force = Force.FromNewtons(pressure * length * depth / 2);
        var fluid = Mass.FromKilograms(spec.FluidDensity.KilogramsPerCubicMeter * length * width * depth);
        if (TankFindings.TooLongForRimless(spec) is { } refusal) return new(new(spec, null, null, null, force, fluid), [refusal, TankFindings.LastWord]);
        return new(
            new(
                spec,
                Pane(PaneKind.Long, length, depth, pressure, spec),
                Pane(PaneKind.End, width, depth, pressure, spec),
                Pane(PaneKind.Bottom, length, width, pressure, spec),
                force,
                fluid),
            []);
    }

    /// <summary>One pane; <paramref name="span"/> is the height of a wall or the short side of a bottom (m).</summary>
    private static PaneDesign Pane(PaneKind kind, double length, double span, double pressure, TankSpec spec)
    {
        // Past a length of 20 spans the pane is a strip between bottom and top and nothing changes any more; below a twentieth it is
        // a strip between its sides, and the coefficients of a twentieth are more than it needs.
        var load = kind == PaneKind.Bottom ? PaneLoad.Uniform : PaneLoad.Hydrostatic;
        var plate = PlateCoefficients.Compute(Math.Clamp(length / span, 0.05, 20), load, spec.Top, spec.Glass.Poisson);
        return new(kind, plate, span, pressure, spec.Glass);
    }
}
