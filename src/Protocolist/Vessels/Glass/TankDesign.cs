using Protocolist.Findings;
using UnitsNet;

namespace Protocolist.Vessels.Glass;

/// <summary>The panes of a tank.</summary>
internal enum PaneKind
{
    /// <summary>A long wall.</summary>
    Long,

    /// <summary>A short wall.</summary>
    End,

    /// <summary>The bottom.</summary>
    Bottom,
}

/// <summary>One pane: how thick it has to be, and how it does in the stock thickness chosen. What nobody asks for is not worked out.</summary>
/// <param name="kind">Which pane.</param>
/// <param name="plate">The plate coefficients used.</param>
/// <param name="span">The height of a wall, the short side of a bottom, m.</param>
/// <param name="pressure">The pressure at the bottom, Pa.</param>
/// <param name="glass">The glass.</param>
internal sealed class PaneDesign(PaneKind kind, PlateCoefficients plate, double span, double pressure, FloatGlass glass)
{
    private static readonly Phrase LongWall = new("pane.long", "long pane");
    private static readonly Phrase EndWall = new("pane.end", "end pane");
    private static readonly Phrase BottomName = new("pane.bottom", "bottom pane");

    /// <summary>Which pane.</summary>
    public PaneKind Kind => kind;

    /// <summary>What it is called.</summary>
    public Phrase Name => kind switch { PaneKind.Long => LongWall, PaneKind.End => EndWall, _ => BottomName };

    /// <summary>The thickness at which the stress is just the one allowed.</summary>
    public Length Required => Length.FromMeters(span * Math.Sqrt(plate.Stress * pressure / glass.Allowed.Pascals));

    /// <summary>The next stock thickness; <c>null</c> where none is thick enough.</summary>
    public Length? Stock
    {
        get
        {
            var required = Required.Meters;
            foreach (var thickness in glass.StockThicknesses)
            {
                if (thickness.Meters >= required) return thickness;
            }

            return null;
        }
    }

    /// <summary>Greatest tensile stress in the stock thickness.</summary>
    public Pressure? Stress => Stock is { Meters: var t } ? Pressure.FromPascals(plate.Stress * pressure * span * span / (t * t)) : null;

    /// <summary>Strength over that stress.</summary>
    public double? SafetyFactor => glass.Strength.Pascals / Stress?.Pascals;

    /// <summary>How far the pane bulges in the stock thickness.</summary>
    public Length? Deflection => Stock is { Meters: var t }
        ? Length.FromMeters(plate.Deflection * pressure * Math.Pow(span, 4) / (glass.Stiffness.Pascals * Math.Pow(t, 3)))
        : null;

    /// <summary>
    /// Tension in a silicone joint as wide as the stock thickness at the edge that carries most; zero for the bottom pane, which stands.
    /// </summary>
    public Pressure? JointTension => Stock is { } stock ? TensionIn(stock) : null;

    /// <summary>The same in a joint of another width.</summary>
    /// <param name="joint">The width, that of the glass.</param>
    public Pressure TensionIn(Length joint) =>
        Pressure.FromPascals(kind == PaneKind.Bottom ? 0 : Math.Max(plate.SideReaction, plate.BottomReaction) * pressure * span / joint.Meters);
}

/// <summary>A tank worked out. Where it is refused the panes are <c>null</c> and only force and mass of the fluid remain.</summary>
/// <param name="Spec">What was asked for.</param>
/// <param name="LongPane">The two long walls.</param>
/// <param name="EndPane">The two short walls.</param>
/// <param name="BottomPane">
/// The bottom, held at its four edges and hollow below. Bedded flat on a stiff board it bends hardly at all, and the long pane's thickness will do.
/// </param>
/// <param name="Force">Push of the fluid on one long wall; it acts at a third of the depth above the bottom.</param>
/// <param name="FluidMass">Mass of the fluid.</param>
internal sealed record TankDesign(TankSpec Spec, PaneDesign? LongPane, PaneDesign? EndPane, PaneDesign? BottomPane, Force Force, Mass FluidMass)
{
    /// <summary>Fluid and glass in the stock thicknesses; without lid, frame, mount and specimen. Null where a wall has none.</summary>
    public Mass? TotalMass
    {
        get
        {
            if (LongPane?.Stock is not { } side || EndPane?.Stock is not { } end) return null;
            var (length, width, depth) = (Math.Max(Spec.Length.Meters, Spec.Width.Meters), Math.Min(Spec.Length.Meters, Spec.Width.Meters), Spec.Depth.Meters);
            return FluidMass + Mass.FromKilograms(Spec.Glass.Density.KilogramsPerCubicMeter
                * (2 * depth * (length * side.Meters + width * end.Meters) + length * width * (BottomPane?.Stock ?? side).Meters));
        }
    }

    /// <summary>What the floor or shelf below must bear on the tank's own footprint, full.</summary>
    public Pressure? FloorLoad => TotalMass is { } mass
        ? Pressure.FromPascals(mass.Kilograms * TankDesigner.Gravity / (Spec.Length.Meters * Spec.Width.Meters))
        : null;
}
