using Protocolist.Findings;
using Protocolist.Protocols;
using Protocolist.Specimens;

namespace Protocolist.Checks.Body;

/// <summary>The posture is set before it hardens.</summary>
internal static class PostureNotSet
{
    public static PlanCheck Check { get; } = new(
        "posture-not-set",
        "the specimen: what hardens wrong breaks when it is bent",
        "Etheridge, O'Brien and Schneider 1996, University of Michigan Museum of Zoology; common practice",
        Find)
    {
        Speaks = [new(Severity.Warning, "the posture is set after fixing, or never though the specimen is for display or teaching")],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.FirstFixing is null || plan.Steps.FirstOrDefault(s => s.Kind == StageKind.Immerse) is not { } immerse) yield break;
        var pose = plan.Steps.FirstOrDefault(s => s.Kind == StageKind.Pose);
        if (pose is not null && plan.IndexOf(pose) > plan.IndexOf(immerse))
            yield return Finding.Warning("posture-not-set", $"'{pose.Id}' comes after '{immerse.Id}', when the body is hard", "set the posture before it goes into fixative").At(pose);
        else if (pose is null && plan.Specimen.IntendedUse is IntendedUse.Display or IntendedUse.Teaching)
            yield return Finding.Warning("posture-not-set", $"it is meant to be looked at, and no step sets its posture before '{immerse.Id}'", "pin or tie it on a tray in the posture that the final vessel needs").At(immerse).By("specimen.intended-use");
    }
}
