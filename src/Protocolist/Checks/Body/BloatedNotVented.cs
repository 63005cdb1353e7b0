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
    private static readonly Phrase LetOut = new(
        "bloated-not-vented.remedy-unpressed", "let the gas out through a small slit under a cloth, in a hood; look again after 24 h");
    private static readonly Phrase NeverOpened = new("bloated-not-vented.whole", "it is bloated, and such a body is never opened before '{step}'");
    private static readonly Phrase TurnIt = new(
        "bloated-not-vented.remedy-whole", "turn it slowly under the fluid, in a hood, until no more gas comes; look again after 24 h");

    public static PlanCheck Check { get; } = new(
        "bloated-not-vented",
        "the specimen and people: gas keeps fluid out and the body afloat, and spurts at the first cut",
        "common practice; Simmons 2011, natural-history collections list (gas)",
        Find)
    {
        Severities =
        [
            new(Severity.Error, "the body came bloated, and no cut comes before it is immersed"),
            new(Severity.Warning, "the same of a body that is never cut"),
        ],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        if (plan.Specimen.Condition != Condition.Bloated) return [];
        foreach (var step in plan.Steps)
        {
            if (step.Kind == StageKind.Slit) return [];
            if (step.Kind != StageKind.Immerse) continue;
            var (kind, into) = (BodyKind.Of(plan.Body), Argument.Id("step", step.Id));
            var finding = !kind.Allows(Gestures.Cut) ? Finding.Warning("bloated-not-vented", NeverOpened.With(into), TurnIt)
                : Finding.Error("bloated-not-vented", Closed.With(into), kind.Allows(Gestures.Press) ? PressOut : LetOut);
            return [finding.At(step).By("specimen.condition")];
        }

        return [];
    }
}
