using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Specimens;

namespace Protocolist.Checks.Body;

/// <summary>Gas is let out of a bloated body before it lies in fixative.</summary>
internal static class BloatedNotVented
{
    private static readonly Phrase Closed = new("bloated-not-vented", "it is bloated, and nothing opens it before '{step}'");
    private static readonly Phrase PressOut = new(
        "bloated-not-vented.remedy", "press the gas out through a small slit under a cloth, in a hood; look again after 24 h");

    public static PlanCheck Check { get; } = new(
        "bloated-not-vented",
        "the specimen and people: gas keeps fluid out and the body afloat, and spurts at the first cut",
        "common practice; Simmons 2011, natural-history collections list (gas)",
        Find)
    {
        Severities = [new(Severity.Error, "the body came bloated, and no cut comes before it is immersed")],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        if (plan.Specimen.Condition != Condition.Bloated) return [];
        foreach (var step in plan.Steps)
        {
            if (step.Kind == StageKind.Slit) return [];
            if (step.Kind != StageKind.Immerse) continue;
            return [Finding.Error("bloated-not-vented", Closed.With(Argument.Id("step", step.Id)), PressOut).At(step).By("specimen.condition")];
        }

        return [];
    }
}
