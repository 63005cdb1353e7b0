using FluentValidation;
using Protocolist.Findings;
using Protocolist.Reading;
using UnitsNet;

namespace Protocolist.Vessels;

/// <summary>Checks a vessel that a program or a file describes. Error codes are finding ids; message and remedy travel in <c>CustomState</c>.</summary>
internal sealed class VesselValidator : AbstractValidator<Vessel>
{
    private static readonly Phrase NoId = new("vessel-without-id", "a vessel has no id");
    private static readonly Phrase NoIdRemedy = new("vessel-without-id.remedy", "give each kind of vessel a short name of its own, such as jar-1-l");
    private static readonly Phrase Negative = new("vessel-count-negative", "vessel '{vessel}' has a count of {count}");
    private static readonly Phrase NegativeRemedy = new("vessel-count-negative.remedy", "give the number at hand, 0 when there is none");
    private static readonly Phrase NoShape = new("vessel-without-dimensions", "vessel '{vessel}' has no inside dimensions");
    private static readonly Phrase NoShapeRemedy =
        new("vessel-without-dimensions.remedy", "measure inside diameter and height, or inside length, width and height");
    private static readonly Phrase AbsurdMass = new("vessel-mass-absurd", "vessel '{vessel}' is said to weigh {mass:0.### kg} empty");
    private static readonly Phrase AbsurdMassRemedy = new("vessel-mass-absurd.remedy", "weigh it with its lid, or leave the mass out");
    private static readonly Phrase AbsurdPane = new(
        "vessel-pane-absurd", "the panes of '{vessel}' are said to be {pane:0.## mm} thick; 1 mm to 60 mm is glass");
    private static readonly Phrase AbsurdPaneRemedy = new("vessel-pane-absurd.remedy", "measure the edge of a wall, or leave it out");
    private static readonly Phrase AbsurdSide = new(
        "vessel-dimension-absurd", "vessel '{vessel}' measures {sides: x } inside; 5 mm to 5 m is what a vessel can have");
    private static readonly Phrase AbsurdSideRemedy =
        new("vessel-dimension-absurd.remedy", "check the numbers and their units; inside dimensions are meant");
    private static readonly Phrase Contradiction = new(
        "vessel-capacity-contradicts-dimensions", "vessel '{vessel}' is said to hold {said:0.# mL}, but its inside comes to {inside:0.# mL}");
    private static readonly Phrase ContradictionRemedy = new(
        "vessel-capacity-contradicts-dimensions.remedy",
        "measure again, or fill it with water from a measuring cylinder; a radius given for a diameter makes it four times too small");

    private static readonly Phrase Diameter = new("vessel-side.diameter", "diameter {side:0.## mm}");
    private static readonly Phrase Height = new("vessel-side.height", "height {side:0.## mm}");
    private static readonly Phrase LongSide = new("vessel-side.length", "length {side:0.## mm}");
    private static readonly Phrase Width = new("vessel-side.width", "width {side:0.## mm}");

    /// <summary>Makes the validator; it holds no state and may be shared.</summary>
    public VesselValidator()
    {
        Include(new VesselLimits());
        RuleFor(v => v.Id).Must(id => !string.IsNullOrWhiteSpace(id)).Says("vessel-without-id", _ => NoId, _ => NoIdRemedy);
        RuleFor(v => v.Count).GreaterThanOrEqualTo(0).Says("vessel-count-negative", v => Negative.With(Id(v), ("count", v.Count)), _ => NegativeRemedy);
        RuleFor(v => v.Shape).NotNull().Says("vessel-without-dimensions", v => NoShape.With(Id(v)), _ => NoShapeRemedy).DependentRules(Dimensions);
        RuleFor(v => v.EmptyMass).Must(mass => mass is null or { Kilograms: > 0 and <= 2000 })
            .Says("vessel-mass-absurd", v => AbsurdMass.With(Id(v), ("mass", v.EmptyMass!.Value)), _ => AbsurdMassRemedy);
        RuleFor(v => v.Pane).Must(pane => pane is null or { Millimeters: >= 1 and <= 60 })
            .Says("vessel-pane-absurd", v => AbsurdPane.With(Id(v), ("pane", v.Pane!.Value)), _ => AbsurdPaneRemedy);
    }

    private void Dimensions()
    {
        RuleFor(v => v.Shape).Must(shape => Sides(shape).All(side => side.Length.Meters is >= 0.005 and <= 5)).Says(
            "vessel-dimension-absurd",
            v => AbsurdSide.With(Id(v), Argument.Messages("sides", Sides(v.Shape).Select(s => s.Name.With(("side", s.Length))))),
            _ => AbsurdSideRemedy);

        // Makers round their capacities and leave room under the lid; shoulders and necks take some: half to one and a quarter is common practice.
        RuleFor(v => v.Capacity)
            .Must((vessel, capacity) => capacity is null || (capacity.Value.Liters / vessel.Shape.Inside.Liters) is >= 0.5 and <= 1.25)
            .Says(
                "vessel-capacity-contradicts-dimensions",
                v => Contradiction.With(Id(v), ("said", v.Capacity!.Value), ("inside", v.Shape.Inside)),
                _ => ContradictionRemedy);
    }

    private static Argument Id(Vessel vessel) => Argument.Id("vessel", vessel.Id);

    private static IEnumerable<(Phrase Name, Length Length)> Sides(VesselShape shape) => shape switch
    {
        VesselShape.Cylinder jar => [(Diameter, jar.Diameter), (Height, jar.Height)],
        VesselShape.Box box => [(LongSide, box.Length), (Width, box.Width), (Height, box.Height)],
        _ => [],
    };
}
