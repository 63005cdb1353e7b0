using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Checks.Body;

/// <summary>What was frozen twice is looked at before work is put into it.</summary>
internal static class Refrozen
{
    private static readonly Phrase FrozenTwice = new("frozen-twice", "it was frozen more than once, by its history ('{history:; }')");
    private static readonly Phrase LookFirst = new(
        "frozen-twice.remedy", "look at skin, eyes and gut before anything is mixed; expect soft tissue, and fix it at once when it is thawed");

    public static PlanCheck Check { get; } = new(
        "frozen-twice",
        "the specimen: a second frost bursts what the first spared",
        "Bishop Museum, Invertebrate Specimen Handling (never refreeze)",
        Find)
    {
        Severities = [new(Severity.Warning, "its history speaks of a second freezing")],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan) =>
        plan.HistoryHas(HistoryWords.FrozenAgain) ? [Finding.Warning("frozen-twice", FrozenTwice.With(plan.Specimen.History()), LookFirst)] : [];
}
