using System.Collections.Immutable;
using Protocolist.Findings;
using UnitsNet;
using static System.FormattableString;

namespace Protocolist.Vessels.Glass;

/// <summary>What has to be said about a glass tank.</summary>
internal static class TankFindings
{
    /// <summary>Rimless and longer than this many depths: twisting at the top corners governs, and the free edge waves. The project's own limit.</summary>
    public const double LongestRimless = 2.5;

    /// <summary>Deflection over length, and over thickness, up to which plate theory and the joints are comfortable: glazing practice, from memory.</summary>
    public const double MostSag = 1.0 / 300, MostSagOfThickness = 0.5;

    /// <summary>Silicone in structural glazing: short-term and permanent design stress in MPa (ASTM C1401 and ETAG 002, from memory).</summary>
    public const double JointShortTerm = 0.14, JointPermanent = 0.014;

    /// <summary>Depth from which a frame should carry the edges so that the silicone only seals (advice of glass makers).</summary>
    public const double DeepestUnframed = 0.5;

    /// <summary>Imposed load in kN/m² that a dwelling's floor is designed for (EN 1991-1-1, category A, from memory).</summary>
    public const double FloorLoad = 2.0;

    /// <summary>The caution that goes with every tank.</summary>
    public static Finding LastWord { get; } = Finding.Note(
        "glazier-has-the-last-word",
        "these figures come from plate theory for annealed float glass without flaws, bonded all along its edges and standing level",
        "have a glazier or a structural engineer confirm glass, joints and stand before anything is built or filled; test with water first, away from people");

    /// <summary>Errors of a specification that cannot be worked with.</summary>
    public static ImmutableArray<Finding> Unusable(TankSpec spec)
    {
        var found = ImmutableArray.CreateBuilder<Finding>();
        Dimension("length", spec.Length, 5);
        Dimension("width", spec.Width, 5);
        Dimension("depth", spec.Depth, 2);
        if (!(spec.FluidDensity.KilogramsPerCubicMeter is >= 600 and <= 2000))
        {
            found.Add(Finding.Error(
                "tank-fluid-density-absurd",
                Invariant($"a fluid of {spec.FluidDensity.KilogramsPerCubicMeter:0.##} kg/m3 is none that preserves animals (600 to 2000 kg/m3)"),
                "give the fluid's density at the coldest temperature, about 886 kg/m3 for ethanol 70 %vol and 1000 to 1030 for formalin"));
        }

        return found.ToImmutable();

        void Dimension(string name, Length value, double most)
        {
            if (value.Meters is >= 0.02 && value.Meters <= most) return;
            found.Add(Finding.Error(
                value.Meters > 0 ? "tank-dimension-absurd" : "tank-dimension-not-positive",
                Invariant($"a {name} of {value.Millimeters:0.##} mm is outside what this can work out (20 mm to {most * 1000:0} mm)"),
                "check the number and its unit; a larger tank is an engineer's work"));
        }
    }

    /// <summary>The refusal of a rimless tank that is too long for its depth.</summary>
    public static Finding? TooLongForRimless(TankSpec spec)
    {
        var ratio = Math.Max(spec.Length.Meters, spec.Width.Meters) / spec.Depth.Meters;
        return spec.Top == TankTop.Framed || ratio <= LongestRimless * (1 + 1e-9) ? null : Finding.Error(
            "rimless-too-long",
            Invariant($"a rimless pane {ratio:0.0#} times as long as the fluid is deep twists at its top corners and bulges along the free edge; no thickness is offered past {LongestRimless}"),
            "frame or brace the top, or make the tank shorter");
    }

    /// <summary>All findings of a tank that was worked out, weightiest first.</summary>
    public static ImmutableArray<Finding> Of(TankDesign tank)
    {
        PaneDesign[] panes = [tank.LongPane!, tank.EndPane!, tank.BottomPane!];
        Finding?[] all =
        [
            .. panes.Select(pane => NoStock(pane, tank.Spec)),
            FireQuestion(tank),
            tank.Spec.Depth.Meters <= DeepestUnframed ? null : Deep(tank.Spec),
            .. panes.Select(pane => BendsTooFar(pane, Span(pane, tank.Spec))),
            Joint(panes.MaxBy(pane => pane.JointTension?.Pascals ?? 0)!),
            HobbyTooThin(tank),
            .. panes.Select(pane => JustMissed(pane, tank.Spec)),
            Floor(tank),
            LastWord,
        ];
        return [.. all.OfType<Finding>()];
    }

    /// <summary>The length of pane that a bulge is compared with: the longer side of a wall, the short side of the bottom, which bends across.</summary>
    private static double Span(PaneDesign pane, TankSpec spec)
    {
        double length = Math.Max(spec.Length.Meters, spec.Width.Meters), width = Math.Min(spec.Length.Meters, spec.Width.Meters);
        return pane.Name == "long pane" ? length : width;
    }

    private static Finding? NoStock(PaneDesign pane, TankSpec spec)
    {
        if (pane.Stock is not null) return null;
        var message = Invariant($"the {pane.Name} needs {pane.Required.Millimeters:0.0} mm of glass; the thickest in stock is {spec.Glass.StockThicknesses[^1].Millimeters:0} mm");
        return pane.Name == "bottom pane"
            ? Finding.Warning(
                "bottom-must-be-bedded",
                Invariant($"held at its edges alone, {message}"),
                "bed it flat on a stiff board with a soft sheet between, all over; then the long pane's thickness will do, and the mass is counted so")
            : Finding.Error("no-stock-glass-thick-enough", message, "make the tank shallower or shorter, frame it, or use a steel or plastic tank");
    }

    private static Finding? FireQuestion(TankDesign tank) => !tank.Spec.Flammable ? null : Finding.Warning(
        "alcohol-tank-is-a-fire-question",
        Invariant($"{tank.FluidMass.Kilograms / tank.Spec.FluidDensity.KilogramsPerCubicMeter * 1000:0} L of flammable fluid would stand in one glass tank"),
        "ask the fire authority and the insurer before the glazier; keep a tight lid, a tray that holds all of it below, no ignition sources near, and consider a fluid that does not burn");

    private static Finding Deep(TankSpec spec) => spec.Top == TankTop.Free
        ? Finding.Warning(
            "deep-tank-needs-frame",
            Invariant($"{spec.Depth.Millimeters:0} mm of fluid in a rimless tank hang on the silicone alone"),
            "past 500 mm use a frame that carries the edges, so that the silicone only seals")
        : Finding.Note(
            "deep-tank-needs-frame",
            Invariant($"with {spec.Depth.Millimeters:0} mm of fluid the frame must carry all edges, top and sides; braces at the top alone leave the load on the silicone"),
            "have the frame designed for the force on the panes");

    private static Finding? BendsTooFar(PaneDesign pane, double span)
    {
        if (pane is not { Deflection: { Meters: var sag }, Stock: { Meters: var thickness } }) return null;
        if (sag <= span * MostSag && sag <= thickness * MostSagOfThickness) return null;
        var limit = Math.Min(span * MostSag, thickness * MostSagOfThickness);
        return Finding.Warning(
            "pane-bends-too-far",
            Invariant($"the {pane.Name} of {thickness * 1000:0} mm would bulge {sag * 1000:0.00} mm; {limit * 1000:0.00} mm is comfortable (1/300 of its span, half its thickness)"),
            pane.Name == "bottom pane" ? "bed the bottom flat on a stiff board with a soft sheet, or use thicker glass" : "use thicker glass, or frame the top");
    }

    private static Finding? Joint(PaneDesign pane)
    {
        if (pane.JointTension is not { Megapascals: var tension } || tension <= JointPermanent) return null;
        return tension > JointShortTerm
            ? Finding.Warning(
                "joint-load-too-high",
                Invariant($"the silicone along the {pane.Name} would be pulled with {tension:0.00} MPa; even for short loads structural glazing allows {JointShortTerm} MPa"),
                "let a frame carry the edges")
            : Finding.Note(
                "joint-load-past-permanent-value",
                Invariant($"the silicone along the {pane.Name} would be pulled with {tension:0.000} MPa for good; structural glazing allows about {JointPermanent} MPa: bonded tanks stand by long experience, not by the code"),
                "joint at least 1 mm thick and as wide as the glass; a frame if people stand near. How silicone ages in alcohol is not known well: inspect the joints every year");
    }

    private static Finding? HobbyTooThin(TankDesign tank)
    {
        if (tank.Spec.Top == TankTop.Framed || tank.LongPane is not { Required: { Millimeters: var needed } }) return null;
        var longer = Math.Max(tank.Spec.Length.Millimeters, tank.Spec.Width.Millimeters);
        var (hobby, _) = HobbyTable.Side(longer, tank.Spec.Depth.Millimeters);
        return hobby >= needed ? null : Finding.Note(
            "hobby-table-too-thin",
            Invariant($"the table that aquarium keepers use gives {hobby:0.0} mm here, for it assumes a top that is held; rimless the pane needs {needed:0.0} mm"),
            "do not use that table for a rimless tank");
    }

    private static Finding? JustMissed(PaneDesign pane, TankSpec spec)
    {
        var thinner = spec.Glass.StockThicknesses.LastOrDefault(t => t < pane.Required);
        var share = pane.Required.Meters > 0 ? thinner.Meters / pane.Required.Meters : 0;
        return pane.Stock is null || share < 0.98 ? null : Finding.Note(
            "stock-glass-just-misses",
            Invariant($"{thinner.Millimeters:0} mm misses the {pane.Required.Millimeters:0.00} mm of the {pane.Name} by {(1 - share) * 100:0.0} %: a safety factor of {spec.Glass.SafetyFactor * share * share:0.00} where {spec.Glass.SafetyFactor} is wanted"),
            "a glazier may accept it; this calculation takes the next thickness");
    }

    private static Finding? Floor(TankDesign tank) => tank.FloorLoad is not { Kilopascals: > FloorLoad } load ? null : Finding.Note(
        "floor-load",
        Invariant($"full, the tank weighs {tank.TotalMass!.Value.Kilograms:0} kg and presses {load.Kilopascals:0.0} kN/m2 on its footprint; a dwelling's floor is designed for about {FloorLoad:0} kN/m2 over all"),
        "ask whoever knows the building, spread the load, and never move the tank filled");
}
