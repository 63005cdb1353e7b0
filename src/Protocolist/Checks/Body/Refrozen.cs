using Protocolist.Findings;

namespace Protocolist.Checks.Body;

/// <summary>What was frozen twice is looked at before work is put into it.</summary>
internal static class Refrozen
{
    public static PlanCheck Check { get; } = new(
        "frozen-twice",
        "the specimen: a second frost bursts what the first spared",
        "Bishop Museum, Invertebrate Specimen Handling (never refreeze)",
        Find)
    {
        Speaks = [new(Severity.Warning, "its history speaks of a second freezing")],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.Tells(HistoryWords.FrozenAgain))
            yield return Finding.Warning("frozen-twice", $"it was frozen more than once, as is told ({plan.Specimen.History()})", "look at skin, eyes and gut before anything is mixed; expect soft tissue, and fix it at once when it is thawed");
    }
}
