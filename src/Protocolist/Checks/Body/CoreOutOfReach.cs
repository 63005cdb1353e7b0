using Protocolist.Findings;

namespace Protocolist.Checks.Body;

/// <summary>Fixative reaches the middle of every part before it rots.</summary>
internal static class CoreOutOfReach
{
    public static PlanCheck Check { get; } = new(
        "core-out-of-reach",
        "the specimen: what is not reached in time rots inside a hard shell",
        "Fick's law with rates measured in tissue (Steicke and others 2018; Start, Layton and Sommer 1992); the 5 and 14 d are judgement",
        Find)
    {
        Speaks =
        [
            new(Severity.Error, "fixative comes to the middle of a part so late that it will have rotted"),
            new(Severity.Warning, "it comes so late that the part may have rotted"),
        ],
        Absorbs = ["core-will-rot", "core-may-rot"],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        var worst = plan.Earlier.Where(f => f.Id is "core-will-rot" or "core-may-rot").OrderByDescending(f => f.Severity).ToList();
        if (worst.Count == 0) yield break;
        var others = worst.Count > 1 ? $" (and {worst.Count - 1} more {(worst.Count == 2 ? "part" : "parts")} of the body)" : "";
        yield return (worst[0] with { Id = "core-out-of-reach", Message = worst[0].Message + others }).By("model.fixation", "specimen.half-thickness");
    }
}
