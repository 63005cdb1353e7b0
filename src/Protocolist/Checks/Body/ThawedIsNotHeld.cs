using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Rules;
using Protocolist.Specimens;

namespace Protocolist.Checks.Body;

/// <summary>A thawed body is fixed at once and not frozen again.</summary>
internal static class ThawedIsNotHeld
{
    private static readonly Phrase Held = new(
        "thawed-is-held", "it was frozen and is thawed, and '{step}' holds it for another {time:vs most}; {most} is the most");

    private static readonly Phrase FixAtOnce = new("thawed-is-held.remedy", "fix it at once; do not freeze it again");

    public static PlanCheck Check { get; } = new(
        "thawed-is-held",
        "the specimen: thawed tissue rots faster than fresh, and a second frost bursts what the first spared",
        "Bishop Museum, Invertebrate Specimen Handling (never refreeze); the day is common practice",
        Find)
    {
        Severities = [new(Severity.Warning, "the body came thawed, and is held for more than 24 h")],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        ImmutableArray<Finding> found = [];
        if (plan.Specimen.Condition != Condition.Thawed) return found;
        foreach (var step in plan.Steps)
        {
            if (step.Kind != StageKind.Hold || step.Lasts <= HoursBorne.Thawed) continue;
            var message = Held.With(Argument.Id("step", step.Id), ("time", step.Lasts), ("most", HoursBorne.Thawed));
            found = found.Add(Finding.Warning("thawed-is-held", message, FixAtOnce).At(step, "last").By("specimen.condition"));
        }

        return found;
    }
}
