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
        ArgumentNullException.ThrowIfNull(spec);
        var unusable = TankFindings.Unusable(spec);
        if (unusable.Length > 0) return new(null, unusable);

        double length = Math.Max(spec.Length.Meters, spec.Width.Meters), width = Math.Min(spec.Length.Meters, spec.Width.Meters);
        var depth = spec.Depth.Meters;
        var pressure = spec.FluidDensity.KilogramsPerCubicMeter * Gravity * depth;
        var force = Force.FromNewtons(pressure * length * depth / 2);
        var fluid = Mass.FromKilograms(spec.FluidDensity.KilogramsPerCubicMeter * length * width * depth);

        if (TankFindings.TooLongForRimless(spec) is { } refusal)
        {
            return new(new(spec, null, null, null, force, fluid, null), [refusal, TankFindings.LastWord]);
        }

        var longPane = Pane(PaneKind.Long, length, depth, pressure, PaneLoad.Hydrostatic, spec);
        var endPane = Pane(PaneKind.End, width, depth, pressure, PaneLoad.Hydrostatic, spec);
        var bottom = Pane(PaneKind.Bottom, length, width, pressure, PaneLoad.Uniform, spec);
        Mass? total = longPane.Stock is { } side && endPane.Stock is { } end
            ? fluid + Mass.FromKilograms(spec.Glass.Density.KilogramsPerCubicMeter
                * (2 * depth * (length * side.Meters + width * end.Meters) + length * width * (bottom.Stock ?? side).Meters))
            : null;
        var design = new TankDesign(spec, longPane, endPane, bottom, force, fluid, total);
        return new(design, TankFindings.Of(design));
    }

    /// <summary>Thickness, stress and bulge of one pane; <paramref name="span"/> is the height of a wall or the short side of a bottom (m).</summary>
    private static PaneDesign Pane(PaneKind kind, double length, double span, double pressure, PaneLoad load, TankSpec spec)
    {
        // Past a length of 20 spans the pane is a strip between bottom and top and nothing changes any more; below a twentieth it is
        // a strip between its sides, and the coefficients of a twentieth are more than it needs.
        var plate = PlateCoefficients.Compute(Math.Clamp(length / span, 0.05, 20), load, spec.Top, spec.Glass.Poisson);
        var glass = spec.Glass;
        var required = span * Math.Sqrt(plate.Stress * pressure / glass.Allowed.Pascals);
        var stock = glass.StockThicknesses.Cast<Length?>().FirstOrDefault(t => t!.Value.Meters >= required);
        var pane = new PaneDesign(kind, plate, Length.FromMeters(required), stock, null, null, null, null);
        if (stock is not { Meters: var thickness }) return pane;

        var stress = plate.Stress * pressure * span * span / (thickness * thickness);
        var deflection = plate.Deflection * pressure * Math.Pow(span, 4) / (glass.Stiffness.Pascals * Math.Pow(thickness, 3));
        var reaction = Math.Max(plate.SideReaction, plate.BottomReaction) * pressure * span;
        return pane with
        {
            Stress = Pressure.FromPascals(stress),
            SafetyFactor = glass.Strength.Pascals / stress,
            Deflection = Length.FromMeters(deflection),
            JointTension = Pressure.FromPascals(load == PaneLoad.Hydrostatic ? reaction / thickness : 0),
        };
    }
}
