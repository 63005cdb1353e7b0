using Protocolist.Findings;
using Protocolist.Quantities;
using Protocolist.Vessels;

namespace Protocolist.Plans;

/// <summary>Into the final vessel.</summary>
/// <param name="BelowBrim">How far below the brim the fluid stands.</param>
/// <param name="OverSpecimen">How much fluid stands over the specimen.</param>
internal sealed record HouseWork(QuantityRange? BelowBrim, QuantityRange? OverSpecimen) : StepWork
{
    /// <summary>Pressure on a lid that is worth telling, kPa: a hundredth of the air's. The project's choice.</summary>
    private const double Felt = 1;

    private static readonly Phrase Filled = new(
        "house.filled", "{vessel}, {arrangement}: {volume} of {fluid}, up to {level:0 mm} of {height:0 mm} inside height; fluid to specimen {ratio} : 1.");

    private static readonly Phrase Pressed = new("house.pressure", "Sealed tight, the hottest day puts about {pressure:0 kPa} on the lid.");
    private static readonly Phrase AtLeast = new("house.at-least", "At least {volume} of {fluid}.");

    private static readonly Phrase FillHalf = new("house.fill", "Fill about half.");
    private static readonly Phrase TopUp = new("house.top-up", "Top up to the level.");

    private static readonly Phrase KeepingFluid = new("house.keeping-fluid", "the keeping fluid");

    public override IEnumerable<Message> Instructions(StepFacts step)
    {
        Message fluid = step.Fluid is { } named ? Message.Text(named.Name) : KeepingFluid;
        if (step.Vessel is { } v)
        {
            yield return Filled.With(
                ("vessel", v.Vessel.Name),
                ("arrangement", v.Arrangement),
                ("volume", v.FluidVolume),
                ("fluid", fluid),
                ("level", v.LevelAfter),
                ("height", v.Vessel.Shape.Height),
                Argument.Of("ratio", v.Ratio, Dimension.None));
            foreach (var sentence in Mounting.FillingSteps(v, step.Body, step.Animals)) yield return sentence;
            if (v.SealedPressure is { } pressure && pressure.Kilopascals >= Felt) yield return Pressed.With(("pressure", pressure));
        }
        else if (step.Volume is { } volume)
        {
            yield return AtLeast.With(("volume", volume), ("fluid", fluid));
            yield return FillHalf;
            foreach (var sentence in Mounting.LettingIn(step.Body, step.Animals)) yield return sentence;
            yield return TopUp;
        }
    }
}
