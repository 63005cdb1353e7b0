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

/// <summary>One pane: how thick it has to be, and how it does in the stock thickness chosen.</summary>
/// <param name="Kind">Which pane.</param>
/// <param name="Coefficients">The plate coefficients used.</param>
/// <param name="Required">The thickness at which the stress is just the one allowed.</param>
/// <param name="Stock">The next stock thickness; <c>null</c> where none is thick enough.</param>
/// <param name="Stress">Greatest tensile stress in the stock thickness.</param>
/// <param name="SafetyFactor">Strength over that stress.</param>
/// <param name="Deflection">How far the pane bulges in the stock thickness.</param>
/// <param name="JointTension">
/// Tension in a silicone joint as wide as the stock thickness at the edge that carries most; zero for the bottom pane, which stands.
/// </param>
internal sealed record PaneDesign(
    PaneKind Kind,
    PlateCoefficients Coefficients,
    Length Required,
    Length? Stock,
    Pressure? Stress,
    double? SafetyFactor,
    Length? Deflection,
    Pressure? JointTension)
{
    private static readonly Phrase LongWall = new("pane.long", "long pane");
    private static readonly Phrase EndWall = new("pane.end", "end pane");
    private static readonly Phrase BottomName = new("pane.bottom", "bottom pane");

    /// <summary>What it is called.</summary>
    public Phrase Name => Kind switch { PaneKind.Long => LongWall, PaneKind.End => EndWall, _ => BottomName };
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
/// <param name="TotalMass">Fluid and glass in the stock thicknesses; without lid, frame, mount and specimen.</param>
internal sealed record TankDesign(
    TankSpec Spec, PaneDesign? LongPane, PaneDesign? EndPane, PaneDesign? BottomPane, Force Force, Mass FluidMass, Mass? TotalMass)
{
    /// <summary>What the floor or shelf below must bear on the tank's own footprint, full.</summary>
    public Pressure? FloorLoad => TotalMass is { } mass
        ? Pressure.FromPascals(mass.Kilograms * TankDesigner.Gravity / (Spec.Length.Meters * Spec.Width.Meters))
        : null;
}
