using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Specimens;

namespace Protocolist.Checks.Body;

/// <summary>A rotting body is seldom worth keeping whole.</summary>
internal static class DecomposedIsSeldomWorthIt
{
    private static readonly Phrase Decomposed = new("decomposed", "it came decomposed, and {volume} of it would be fixed whole");
    private static readonly Phrase KeepParts = new("decomposed.remedy", "keep skeleton, skin, hair or feathers, and tissue");

    public static PlanCheck Check { get; } = new(
        "decomposed",
        "the person's work: fluid does not bring back what has rotted",
        "Western Australian Museum 2011 (decomposing specimens are refused); skeleton, hair and tissue: common practice",
        Find)
    {
        Severities = [new(Severity.Warning, "the body came decomposed")],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        if (plan.Specimen.Condition != Condition.Decomposed) return [];
        var message = Decomposed.With(("volume", plan.Body.LotVolume.Nominal));
        return [Finding.Warning("decomposed", message, KeepParts).By("specimen.condition", "specimen.lot-volume")];
    }
}
