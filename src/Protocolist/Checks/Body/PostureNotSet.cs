using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Specimens;

namespace Protocolist.Checks.Body;

/// <summary>The posture is set before it hardens.</summary>
internal static class PostureNotSet
{
    private static readonly Phrase TooLate = new("posture-not-set", "'{pose}' comes after '{immerse}', when the body is hard");
    private static readonly Phrase SetItFirst = new("posture-not-set.remedy", "set the posture before it goes into fixative");
    private static readonly Phrase Never = new("posture-not-set.never", "it is meant to be looked at, and no step sets its posture before '{immerse}'");

    public static PlanCheck Check { get; } = new(
        "posture-not-set",
        "the specimen: what hardens wrong breaks when it is bent",
        "Etheridge, O'Brien and Schneider 1996, University of Michigan Museum of Zoology; common practice",
        Find)
    {
        Severities = [new(Severity.Warning, "the posture is set after fixing, or never though the specimen is for display or teaching")],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        if (plan.FirstFixing is null || plan.First(StageKind.Immerse) is not { } immerse) return [];
        var into = Argument.Id("immerse", immerse.Id);
        if (plan.First(StageKind.Pose) is { } pose)
        {
            if (plan.IndexOf(pose) < plan.IndexOf(immerse)) return [];
            return [Finding.Warning("posture-not-set", TooLate.With(Argument.Id("pose", pose.Id), into), SetItFirst).At(pose)];
        }

        // What may not even be pinned, such as a jelly or an urchin, takes the posture that it has.
        if (plan.Specimen.IntendedUse is not (IntendedUse.Display or IntendedUse.Teaching) || !BodyKind.Of(plan.Body).Allows(Gestures.Pin)) return [];
        return [Finding.Warning("posture-not-set", Never.With(into), BodyKind.Of(plan.Body).Pose).At(immerse).By("specimen.intended-use")];
    }
}
