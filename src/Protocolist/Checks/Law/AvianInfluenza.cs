using Protocolist.Findings;
using static System.FormattableString;

namespace Protocolist.Checks.Law;

/// <summary>A bird dead of unknown cause is reported before it is handled.</summary>
internal static class AvianInfluenza
{
    public static PlanCheck Check { get; } = new(
        "avian-influenza",
        "people and birds: avian influenza",
        "CDC guidance on dead birds (archived); common practice",
        Find)
    {
        Speaks = [new(Severity.Warning, "a bird died of a cause that nobody knows")],
        ProtectsPeople = true,
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.Group.IsA("bird") && plan.DiedOfUnknown())
            yield return Finding.Warning("avian-influenza", $"{(plan.Specimen.Count == 1 ? plan.Group.One() : Invariant($"{plan.Specimen.Count} animals ({plan.Group.Name})"))} dead of unknown cause{(string.IsNullOrWhiteSpace(plan.Specimen.Where) ? "" : $" at '{plan.Specimen.Where}'")}", "gloves, mask and eye protection; ask the authority before work begins, at once where several died together").By("specimen.count");
    }
}
