using FluentValidation;
using UnitsNet;
using static System.FormattableString;

namespace Protocolist.Vessels;

/// <summary>Checks a vessel that a program or a file describes. Error codes are finding ids; the remedy travels in <c>CustomState</c>.</summary>
internal sealed class VesselValidator : AbstractValidator<Vessel>
{
    /// <summary>Makes the validator; it holds no state and may be shared.</summary>
    public VesselValidator()
    {
        Include(new VesselLimits());
        RuleFor(v => v.Id)
            .Must(id => !string.IsNullOrWhiteSpace(id))
            .WithErrorCode("vessel-without-id")
            .WithMessage("a vessel has no id")
            .WithState(_ => "give each kind of vessel a short name of its own, such as jar-1-l");
        RuleFor(v => v.Count)
            .GreaterThanOrEqualTo(0)
            .WithErrorCode("vessel-count-negative")
            .WithMessage(v => Invariant($"vessel '{v.Id}' has a count of {v.Count}"))
            .WithState(_ => "give the number at hand, 0 when there is none");
        RuleFor(v => v.Shape)
            .NotNull()
            .WithErrorCode("vessel-without-dimensions")
            .WithMessage(v => Invariant($"vessel '{v.Id}' has no inside dimensions"))
            .WithState(_ => "measure inside diameter and height, or inside length, width and height")
            .DependentRules(Dimensions);
        RuleFor(v => v.EmptyMass)
            .Must(mass => mass is null or { Kilograms: > 0 and <= 2000 })
            .WithErrorCode("vessel-mass-absurd")
            .WithMessage(v => Invariant($"vessel '{v.Id}' is said to weigh {v.EmptyMass!.Value.Kilograms:0.###} kg empty"))
            .WithState(_ => "weigh it with its lid, or leave the mass out");
        Panes();
    }

    private void Panes() => RuleFor(v => v.Pane)
        .Must(pane => pane is null or { Millimeters: >= 1 and <= 60 })
        .WithErrorCode("vessel-pane-absurd")
        .WithMessage(v => Invariant($"the panes of '{v.Id}' are said to be {v.Pane!.Value.Millimeters:0.##} mm thick; 1 mm to 60 mm is glass"))
        .WithState(_ => "measure the edge of a wall, or leave it out");

    private void Dimensions()
    {
        RuleFor(v => v.Shape)
            .Must(shape => Sides(shape).All(side => side.Length.Meters is >= 0.005 and <= 5))
            .WithErrorCode("vessel-dimension-absurd")
            .WithMessage(v => Invariant($"vessel '{v.Id}' measures {string.Join(" x ", Sides(v.Shape).Select(s => Invariant($"{s.Name} {s.Length.Millimeters:0.##} mm")))} inside; 5 mm to 5 m is what a vessel can have"))
            .WithState(_ => "check the numbers and their units; inside dimensions are meant");

        // Makers round their capacities and leave room under the lid; shoulders and necks take some: half to one and a quarter is common practice.
        RuleFor(v => v.Capacity)
            .Must((vessel, capacity) => capacity is not { Liters: var litres } || (litres >= 0.5 * vessel.Shape.Inside.Liters && litres <= 1.25 * vessel.Shape.Inside.Liters))
            .WithErrorCode("vessel-capacity-contradicts-dimensions")
            .WithMessage(v => Invariant($"vessel '{v.Id}' is said to hold {v.Capacity!.Value.Milliliters:0.#} mL, but its inside comes to {v.Shape.Inside.Milliliters:0.#} mL"))
            .WithState(_ => "measure again, or fill it with water from a measuring cylinder; a radius given for a diameter makes it four times too small");
    }

    private static IEnumerable<(string Name, Length Length)> Sides(VesselShape shape) => shape switch
    {
        VesselShape.Cylinder jar => [("diameter", jar.Diameter), ("height", jar.Height)],
        VesselShape.Box box => [("length", box.Length), ("width", box.Width), ("height", box.Height)],
        _ => [],
    };
}
