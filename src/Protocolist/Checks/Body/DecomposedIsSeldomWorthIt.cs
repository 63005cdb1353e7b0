using Protocolist.Findings;
using Protocolist.Specimens;

namespace Protocolist.Checks.Body;

/// <summary>A rotting body is seldom worth keeping whole.</summary>
internal static class DecomposedIsSeldomWorthIt
{
    public static PlanCheck Check { get; } = new(
        "decomposed",
        "the person's work: fluid does not bring back what has rotted",
        "Western Australian Museum 2011 (decomposing specimens are refused); skeleton, hair and tissue: common practice",
        Find)
    {
        Speaks = [new(Severity.Warning, "the body came decomposed")],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.Specimen.Condition == Condition.Decomposed)
            yield return Finding.Warning("decomposed", $"it came decomposed, and {plan.Body.LotVolume.Nominal.Text()} of it would be fixed whole", "keep skeleton, skin, hair or feathers, and tissue").By("specimen.condition", "specimen.lot-volume");
    }
}
