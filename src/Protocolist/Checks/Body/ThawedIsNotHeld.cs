using Protocolist.Findings;
using Protocolist.Protocols;
using Protocolist.Rules;
using Protocolist.Specimens;

namespace Protocolist.Checks.Body;

/// <summary>A thawed body is fixed at once and not frozen again.</summary>
internal static class ThawedIsNotHeld
{
    public static PlanCheck Check { get; } = new(
        "thawed-is-held",
        "the specimen: thawed tissue rots faster than fresh, and a second frost bursts what the first spared",
        "Bishop Museum, Invertebrate Specimen Handling (never refreeze); the day is common practice",
        Find)
    {
        Speaks = [new(Severity.Warning, "the body came thawed, and is held for more than 24 h")],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.Specimen.Condition != Condition.Thawed) yield break;
        foreach (var step in plan.Steps)
        {
            if (step.Kind == StageKind.Hold && step.Lasts > HoursBorne.Thawed)
                yield return Finding.Warning("thawed-is-held", $"it was frozen and is thawed, and '{step.Id}' holds it for another {step.Lasts.Past(HoursBorne.Thawed)}; {HoursBorne.Thawed.Text()} is the most", "fix it at once; do not freeze it again").At(step, "last").By("specimen.condition");
        }
    }
}
