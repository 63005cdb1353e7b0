using Protocolist.Findings;
using Protocolist.Quantities;
using Protocolist.Specimens;
using UnitsNet;

namespace Protocolist.Plans;

/// <summary>Lying in a fluid: fixing, washing, one strength of alcohol, rinsing, thawing.</summary>
/// <param name="Runs">Whether the water runs.</param>
internal sealed record SoakWork(bool Runs) : StepWork
{
    public static SoakWork Standing { get; } = new(Runs: false);

    public static SoakWork Running { get; } = new(Runs: true);

    /// <summary>What the body does that floats, or may; null for one that sinks.</summary>
    public Afloat? Afloat { get; init; }

    /// <summary>The posture, where no step before sets it.</summary>
    public SetPosture? Posture { get; init; }

    /// <summary>The bath whose fluid serves here again, and how much of it; null where all is fresh.</summary>
    public BathAgain? Again { get; init; }

    /// <summary>The step in which this fluid serves again; empty where it does not.</summary>
    public string ServesAgainIn { get; init; } = "";

    private static readonly Phrase OfIt = new("soak.again", "Of it {volume} is the fluid of '{step}', used again.");
    private static readonly Phrase KeepIt = new("soak.serves-again", "Keep the fluid: it serves again in '{step}'.");
    private static readonly Phrase Fluid = new("soak.fluid", "{volume} of {fluid}{where}{running}{changes}.");
    private static readonly Phrase In = new("soak.in", " in {vessel}, {arrangement}");
    private static readonly Phrase Slowly = new("soak.running", ", slowly running");
    private static readonly Phrase Changed = new("soak.changed", ", changed {changes} times");
    private static readonly Phrase ChangedOnce = new("soak.changed-once", ", changed once");
    private static readonly Phrase FillTo = new(
        "soak.fill", "Fill to {before:0 mm}; with the body in, the level stands at {after:0 mm}. Nothing of the body may stand out.");

    private static readonly Phrase Floats = new(
        "soak.floats", "It floats: with the air in it about {body:0 g/L}, and the fluid has {in:0 g/L}. To keep it under, {how}.");

    private static readonly Phrase MayFloat = new(
        "soak.may-float", "With much air in it it floats: about {body:0 g/L}, and the fluid has {in:0 g/L}. If it does, {how}.");

    private static readonly Phrase Weight = new("soak.weight", "About {glass:two g} of glass holds it down.");
    private static readonly Phrase LookAgain = new("soak.look-again", "Look again after an hour and after a day, until it sinks by itself.");
    private static readonly Phrase WeightOff = new("soak.weight-off", "Then the weight comes off.");

    public override IEnumerable<Message> Instructions(StepFacts step)
    {
        if (step is { Fluid: { } fluid, Volume: { } volume })
        {
            yield return Fluid.With(
                ("volume", volume),
                ("fluid", fluid.Name),
                ("where", step.Vessel is { } v ? In.With(("vessel", v.Vessel.Name), ("arrangement", v.Arrangement)) : default),
                ("running", Runs ? Slowly : default(Message)),
                ("changes", step.Changes switch { 0 => default, 1 => ChangedOnce, var n => Changed.With(("changes", n)) }));
        }

        if (Again is { } again) yield return OfIt.With(("volume", again.Volume), Argument.Id("step", again.Step));
        if (ServesAgainIn.Length > 0) yield return KeepIt.With(Argument.Id("step", ServesAgainIn));
        foreach (var sentence in Posture?.Told ?? []) yield return sentence;
        if (Afloat is { } afloat)
        {
            yield return (afloat.Surely ? Floats : MayFloat).With(
                Argument.Of("body", afloat.BodyKgPerM3, Dimension.OfDensity),
                Argument.Of("in", afloat.FluidKgPerM3, Dimension.OfDensity),
                ("how", step.Animals > 1 ? BodyKind.KeepLotUnder : step.Body.KeepUnder));
            if (afloat.IsWeighted) yield return Weight.With(("glass", Mass.FromKilograms(afloat.GlassKg)));
            yield return LookAgain;
            if (afloat.IsWeighted) yield return WeightOff;
        }

        if (step.Vessel is { } fitted && step.Kind != StageKind.Wash) yield return FillTo.With(("before", fitted.LevelBefore), ("after", fitted.LevelAfter));
    }
}

/// <summary>Fluid that has served in one step and serves in another.</summary>
/// <param name="Step">The id of the step that it comes from.</param>
/// <param name="Volume">How much.</param>
internal sealed record BathAgain(string Step, Volume Volume);

/// <summary>A body that floats in a fluid.</summary>
/// <param name="Surely">Whether it does as it usually is; else only with much air in it.</param>
/// <param name="BodyKgPerM3">Its density with that air.</param>
/// <param name="FluidKgPerM3">The fluid's.</param>
/// <param name="GlassKg">Glass that holds all of it down, kg.</param>
/// <param name="IsWeighted">Whether a weight holds it: one body, of a kind that takes it, and enough to be felt.</param>
internal sealed record Afloat(bool Surely, double BodyKgPerM3, double FluidKgPerM3, double GlassKg, bool IsWeighted);
