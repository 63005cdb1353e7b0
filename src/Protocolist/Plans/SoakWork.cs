using Protocolist.Findings;

namespace Protocolist.Plans;

/// <summary>Lying in a fluid: fixing, washing, one strength of alcohol, rinsing, thawing.</summary>
/// <param name="Runs">Whether the water runs.</param>
internal sealed record SoakWork(bool Runs) : StepWork
{
    public static SoakWork Standing { get; } = new(Runs: false);

    public static SoakWork Running { get; } = new(Runs: true);

    private static readonly Phrase Fluid = new("soak.fluid", "{volume} of {fluid}{where}{running}{changes}.");
    private static readonly Phrase In = new("soak.in", " in {vessel}, {arrangement}");
    private static readonly Phrase Slowly = new("soak.running", ", slowly running");
    private static readonly Phrase Changed = new("soak.changed", ", changed {changes} times");
    private static readonly Phrase ChangedOnce = new("soak.changed-once", ", changed once");
    private static readonly Phrase FillTo = new(
        "soak.fill", "Fill to {before:0 mm}; with the body in, the level stands at {after:0 mm}. Nothing of the body may stand out.");

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

        if (step.Vessel is { } fitted && step.Kind != StageKind.Wash) yield return FillTo.With(("before", fitted.LevelBefore), ("after", fitted.LevelAfter));
    }
}
