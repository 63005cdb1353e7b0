using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Quantities;
using UnitsNet;

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

    private static readonly Phrase PlateTheory = new(
        "glazier-has-the-last-word",
        "these figures come from plate theory for annealed float glass without flaws, bonded all along its edges and standing level");
    private static readonly Phrase PlateTheoryRemedy = new(
        "glazier-has-the-last-word.remedy",
        "have a glazier or a structural engineer confirm glass, joints and stand before anything is built or filled; test with water first, away from people");
    private static readonly Phrase AbsurdDensity = new(
        "tank-fluid-density-absurd", "a fluid of {density:0.## kg/m3} is none that preserves animals (600 to 2000 kg/m3)");
    private static readonly Phrase AbsurdDensityRemedy = new(
        "tank-fluid-density-absurd.remedy",
        "give the fluid's density at the coldest temperature, about 886 kg/m3 for ethanol 70 %vol and 1000 to 1030 for formalin");
    private static readonly Phrase AbsurdSide = new(
        "tank-dimension-absurd", "a {name} of {side:0.## mm} is outside what this can work out (20 mm to {most:0 mm})");
    private static readonly Phrase AbsurdSideRemedy =
        new("tank-dimension-absurd.remedy", "check the number and its unit; a larger tank is an engineer's work");
    private static readonly Phrase LengthName = new("tank.length", "length");
    private static readonly Phrase WidthName = new("tank.width", "width");
    private static readonly Phrase DepthName = new("tank.depth", "depth");
    private static readonly Phrase TooLong = new(
        "rimless-too-long",
        "a rimless pane {ratio:0.0#} times as long as the fluid is deep twists at its top corners and bulges along the free edge; "
        + "no thickness is offered past {most}");
    private static readonly Phrase TooLongRemedy = new("rimless-too-long.remedy", "frame or brace the top, or make the tank shorter");
    private static readonly Phrase NotThickEnough = new(
        "no-stock-glass-thick-enough", "the {pane} needs {needed:0.0 mm} of glass; the thickest in stock is {stock:0 mm}");
    private static readonly Phrase NotThickEnoughRemedy = new(
        "no-stock-glass-thick-enough.remedy", "make the tank shallower or shorter, frame it, or use a steel or plastic tank");
    private static readonly Phrase MustBeBedded = new("bottom-must-be-bedded", "held at its edges alone, " + NotThickEnough.English);
    private static readonly Phrase MustBeBeddedRemedy = new(
        "bottom-must-be-bedded.remedy",
        "bed it flat on a stiff board with a soft sheet between, all over; then the long pane's thickness will do, and the mass is counted so");
    private static readonly Phrase Fire = new("alcohol-tank-is-a-fire-question", "{volume:0 L} of flammable fluid would stand in one glass tank");
    private static readonly Phrase FireRemedy = new(
        "alcohol-tank-is-a-fire-question.remedy",
        "ask the fire authority and the insurer before the glazier; keep a tight lid, a tray that holds all of it below, no ignition sources near, "
        + "and consider a fluid that does not burn");
    private static readonly Phrase DeepRimless = new("deep-tank-needs-frame", "{depth:0 mm} of fluid in a rimless tank hang on the silicone alone");
    private static readonly Phrase DeepRimlessRemedy = new(
        "deep-tank-needs-frame.remedy", "past 500 mm use a frame that carries the edges, so that the silicone only seals");
    private static readonly Phrase DeepFramed = new(
        "deep-tank-needs-frame.framed",
        "with {depth:0 mm} of fluid the frame must carry all edges, top and sides; braces at the top alone leave the load on the silicone");
    private static readonly Phrase DeepFramedRemedy = new("deep-tank-needs-frame.remedy-framed", "have the frame designed for the force on the panes");
    private static readonly Phrase Bends = new(
        "pane-bends-too-far",
        "the {pane} of {thickness:0 mm} would bulge {sag:0.00 mm}; {limit:0.00 mm} is comfortable (1/300 of its span, half its thickness)");
    private static readonly Phrase BendsRemedy = new("pane-bends-too-far.remedy", "use thicker glass, or frame the top");
    private static readonly Phrase BottomBendsRemedy = new(
        "pane-bends-too-far.remedy-bottom", "bed the bottom flat on a stiff board with a soft sheet, or use thicker glass");
    private static readonly Phrase JointTooHigh = new(
        "joint-load-too-high",
        "the silicone along the {pane} would be pulled with {tension:0.00 MPa}; even for short loads structural glazing allows {limit:0.## MPa}");
    private static readonly Phrase JointTooHighRemedy = new("joint-load-too-high.remedy", "let a frame carry the edges");
    private static readonly Phrase JointForGood = new(
        "joint-load-past-permanent-value",
        "the silicone along the {pane} would be pulled with {tension:0.000 MPa} for good; structural glazing allows about {limit:0.### MPa}: "
        + "bonded tanks stand by long experience, not by the code");
    private static readonly Phrase JointForGoodRemedy = new(
        "joint-load-past-permanent-value.remedy",
        "joint at least 1 mm thick and as wide as the glass; a frame if people stand near. How silicone ages in alcohol is not known well: "
        + "inspect the joints every year");
    private static readonly Phrase Hobby = new(
        "hobby-table-too-thin",
        "the table that aquarium keepers use gives {table:0.0 mm} here, for it assumes a top that is held; rimless the pane needs {needed:0.0 mm}");
    private static readonly Phrase HobbyRemedy = new("hobby-table-too-thin.remedy", "do not use that table for a rimless tank");
    private static readonly Phrase Misses = new(
        "stock-glass-just-misses",
        "{stock:0 mm} misses the {needed:0.00 mm} of the {pane} by {short:0.0 %}: a safety factor of {factor:0.00} where {wanted} is wanted");
    private static readonly Phrase MissesRemedy = new(
        "stock-glass-just-misses.remedy", "a glazier may accept it; this calculation takes the next thickness");
    private static readonly Phrase OnTheFloor = new(
        "floor-load",
        "full, the tank weighs {mass:0 kg} and presses {load:0.0} kN/m2 on its footprint; a dwelling's floor is designed for about {usual:0} kN/m2 over all");
    private static readonly Phrase OnTheFloorRemedy = new(
        "floor-load.remedy", "ask whoever knows the building, spread the load, and never move the tank filled");

    /// <summary>The caution that goes with every tank.</summary>
    public static Finding LastWord { get; } = Finding.Note("glazier-has-the-last-word", PlateTheory, PlateTheoryRemedy);

    /// <summary>Errors of a specification that cannot be worked with.</summary>
    public static ImmutableArray<Finding> Unusable(TankSpec spec)
    {
        var found = ImmutableArray.CreateBuilder<Finding>();
        Side(LengthName, spec.Length, 5);
        Side(WidthName, spec.Width, 5);
        Side(DepthName, spec.Depth, 2);
        if (!(spec.FluidDensity.KilogramsPerCubicMeter is >= 600 and <= 2000))
        {
            var density = Argument.Of("density", spec.FluidDensity.KilogramsPerCubicMeter, Dimension.OfDensity);
            found.Add(Finding.Error("tank-fluid-density-absurd", AbsurdDensity.With(density), AbsurdDensityRemedy));
        }

        return found.ToImmutable();

        void Side(Phrase name, Length value, double most)
        {
            if (value.Meters is >= 0.02 && value.Meters <= most) return;
            var facts = AbsurdSide.With(("name", name), ("side", value), ("most", Length.FromMeters(most)));
            found.Add(Finding.Error(value.Meters > 0 ? "tank-dimension-absurd" : "tank-dimension-not-positive", facts, AbsurdSideRemedy));
        }
    }

    /// <summary>The refusal of a rimless tank that is too long for its depth.</summary>
    public static Finding? TooLongForRimless(TankSpec spec)
    {
        var ratio = Math.Max(spec.Length.Meters, spec.Width.Meters) / spec.Depth.Meters;
        return spec.Top == TankTop.Framed || ratio <= LongestRimless * (1 + 1e-9)
            ? null
            : Finding.Error("rimless-too-long", TooLong.With(("ratio", ratio), ("most", LongestRimless)), TooLongRemedy);
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
        return pane.Kind == PaneKind.Long ? length : width;
    }

    private static Finding? NoStock(PaneDesign pane, TankSpec spec)
    {
        if (pane.Stock is not null) return null;
        Argument[] facts = [("pane", pane.Name), ("needed", pane.Required), ("stock", spec.Glass.StockThicknesses[^1])];
        return pane.Kind == PaneKind.Bottom
            ? Finding.Warning("bottom-must-be-bedded", MustBeBedded.With(facts), MustBeBeddedRemedy)
            : Finding.Error("no-stock-glass-thick-enough", NotThickEnough.With(facts), NotThickEnoughRemedy);
    }

    private static Finding? FireQuestion(TankDesign tank)
    {
        if (!tank.Spec.Flammable) return null;
        var volume = Volume.FromCubicMeters(tank.FluidMass.Kilograms / tank.Spec.FluidDensity.KilogramsPerCubicMeter);
        return Finding.Warning("alcohol-tank-is-a-fire-question", Fire.With(("volume", volume)), FireRemedy);
    }

    private static Finding Deep(TankSpec spec) => spec.Top == TankTop.Free
        ? Finding.Warning("deep-tank-needs-frame", DeepRimless.With(("depth", spec.Depth)), DeepRimlessRemedy)
        : Finding.Note("deep-tank-needs-frame", DeepFramed.With(("depth", spec.Depth)), DeepFramedRemedy);

    private static Finding? BendsTooFar(PaneDesign pane, double span)
    {
        if (pane is not { Deflection: { } sag, Stock: { } thickness }) return null;
        var limit = Math.Min(span * MostSag, thickness.Meters * MostSagOfThickness);
        if (sag.Meters <= limit) return null;
        var facts = Bends.With(("pane", pane.Name), ("thickness", thickness), ("sag", sag), ("limit", Length.FromMeters(limit)));
        return Finding.Warning("pane-bends-too-far", facts, pane.Kind == PaneKind.Bottom ? BottomBendsRemedy : BendsRemedy);
    }

    private static Finding? Joint(PaneDesign pane)
    {
        if (pane.JointTension is not { Megapascals: var megapascals } tension || megapascals <= JointPermanent) return null;
        var limit = megapascals > JointShortTerm ? JointShortTerm : JointPermanent;
        Argument[] facts = [("pane", pane.Name), ("tension", tension), ("limit", Pressure.FromMegapascals(limit))];
        return megapascals > JointShortTerm
            ? Finding.Warning("joint-load-too-high", JointTooHigh.With(facts), JointTooHighRemedy)
            : Finding.Note("joint-load-past-permanent-value", JointForGood.With(facts), JointForGoodRemedy);
    }

    private static Finding? HobbyTooThin(TankDesign tank)
    {
        if (tank.Spec.Top == TankTop.Framed || tank.LongPane is not { Required: var needed }) return null;
        var longer = Math.Max(tank.Spec.Length.Millimeters, tank.Spec.Width.Millimeters);
        var (hobby, _) = HobbyTable.Side(longer, tank.Spec.Depth.Millimeters);
        return hobby >= needed.Millimeters
            ? null
            : Finding.Note("hobby-table-too-thin", Hobby.With(("table", Length.FromMillimeters(hobby)), ("needed", needed)), HobbyRemedy);
    }

    private static Finding? JustMissed(PaneDesign pane, TankSpec spec)
    {
        var thinner = spec.Glass.StockThicknesses.LastOrDefault(t => t < pane.Required);
        var share = pane.Required.Meters > 0 ? thinner.Meters / pane.Required.Meters : 0;
        if (pane.Stock is null || share < 0.98) return null;
        var facts = Misses.With(
            ("stock", thinner), ("needed", pane.Required), ("pane", pane.Name), Argument.Of("short", 1 - share, Dimension.None),
            ("factor", spec.Glass.SafetyFactor * share * share), ("wanted", spec.Glass.SafetyFactor));
        return Finding.Note("stock-glass-just-misses", facts, MissesRemedy);
    }

    private static Finding? Floor(TankDesign tank)
    {
        if (tank is not { FloorLoad: { Kilopascals: > FloorLoad and var load }, TotalMass: { } mass }) return null;
        return Finding.Note("floor-load", OnTheFloor.With(("mass", mass), ("load", load), ("usual", FloorLoad)), OnTheFloorRemedy);
    }
}
