using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Checks.Law;

/// <summary>A bird dead of unknown cause is reported before it is handled.</summary>
internal static class AvianInfluenza
{
    private static readonly Phrase OneDead = new("avian-influenza", "{group:a} dead of unknown cause{place}");
    private static readonly Phrase SeveralDead = new("avian-influenza.several", "{animals} animals ({group}) dead of unknown cause{place}");
    private static readonly Phrase AskFirst = new(
        "avian-influenza.remedy", "gloves, mask and eye protection; ask the authority before work begins, at once where several died together");

    public static PlanCheck Check { get; } = new(
        "avian-influenza",
        "people and birds: avian influenza",
        "CDC guidance on dead birds (archived); common practice",
        Find)
    {
        Severities = [new(Severity.Warning, "a bird died of a cause that nobody knows")],
        ProtectsPeople = true,
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        if (!plan.Group.IsA("bird") || !plan.DiedOfUnknown()) return [];
        var count = plan.Specimen.Count;
        var message = (count == 1 ? OneDead : SeveralDead).With(("group", plan.Group.Name), ("animals", count), ("place", plan.Specimen.Place()));
        return [Finding.Warning("avian-influenza", message, AskFirst).By("specimen.count")];
    }
}
