using Protocolist.Findings;
using Protocolist.Protocols;
using Protocolist.Specimens;

namespace Protocolist.Checks.Body;

/// <summary>A frozen body thaws before knife, needle or fixative.</summary>
internal static class FrozenWithoutThaw
{
    public static PlanCheck Check { get; } = new(
        "frozen-without-thaw",
        "the specimen: the outside rots or hardens while the core is still ice",
        "Neumann 2011, natural-history collections list (cold water); schools differ: Simmons thaws in buffered formalin, Walker never fixes a frozen animal",
        Find)
    {
        Speaks = [new(Severity.Error, "the body is frozen, and no step thaws it before the first fixing")],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.Specimen.Condition != Condition.Frozen || plan.FirstFixing is not { } first) yield break;
        var thaw = plan.Steps.FirstOrDefault(s => s.Kind == StageKind.Thaw);
        if (thaw is null || plan.IndexOf(thaw) > plan.IndexOf(first))
            yield return Finding.Error("frozen-without-thaw", thaw is null ? $"it is frozen, and no step thaws it before '{first.Id}'" : $"it is frozen, and '{thaw.Id}' comes after '{first.Id}'", "thaw it in cold water or in the fridge, never in warm water").At(first).By("specimen.condition");
    }
}
