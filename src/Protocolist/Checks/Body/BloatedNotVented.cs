using Protocolist.Findings;
using Protocolist.Protocols;
using Protocolist.Specimens;

namespace Protocolist.Checks.Body;

/// <summary>Gas is let out of a bloated body before it lies in fixative.</summary>
internal static class BloatedNotVented
{
    public static PlanCheck Check { get; } = new(
        "bloated-not-vented",
        "the specimen and people: gas keeps fluid out and the body afloat, and spurts at the first cut",
        "common practice; Simmons 2011, natural-history collections list (gas)",
        Find)
    {
        Speaks = [new(Severity.Error, "the body came bloated, and no cut comes before it is immersed")],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.Specimen.Condition != Condition.Bloated || plan.Steps.FirstOrDefault(s => s.Kind == StageKind.Immerse) is not { } immerse) yield break;
        var slit = plan.Steps.FirstOrDefault(s => s.Kind == StageKind.Slit);
        if (slit is null || plan.IndexOf(slit) > plan.IndexOf(immerse))
            yield return Finding.Error("bloated-not-vented", $"it is bloated, and nothing opens it before '{immerse.Id}'", "press the gas out through a small slit under a cloth, in a hood; look again after 24 h").At(immerse).By("specimen.condition");
    }
}
