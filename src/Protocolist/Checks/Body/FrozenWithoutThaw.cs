using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Specimens;

namespace Protocolist.Checks.Body;

/// <summary>A frozen body thaws before knife, needle or fixative.</summary>
internal static class FrozenWithoutThaw
{
    private static readonly Phrase NeverThawed = new("frozen-without-thaw", "it is frozen, and no step thaws it before '{first}'");
    private static readonly Phrase ThawedAfter = new("frozen-without-thaw.after", "it is frozen, and '{thaw}' comes after '{first}'");
    private static readonly Phrase ThawFirst = new("frozen-without-thaw.remedy", "thaw it in cold water or in the fridge, never in warm water");

    public static PlanCheck Check { get; } = new(
        "frozen-without-thaw",
        "the specimen: the outside rots or hardens while the core is still ice",
        "Neumann 2011, natural-history collections list (cold water); schools differ: Simmons thaws in buffered formalin, Walker never fixes a frozen animal",
        Find)
    {
        Severities = [new(Severity.Error, "the body is frozen, and no step thaws it before the first fixing")],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        if (plan.Specimen.Condition != Condition.Frozen || plan.FirstFixing is not { } first) return [];
        var thaw = plan.First(StageKind.Thaw);
        if (thaw is not null && plan.IndexOf(thaw) < plan.IndexOf(first)) return [];
        var fixing = Argument.Id("first", first.Id);
        var message = thaw is null ? NeverThawed.With(fixing) : ThawedAfter.With(Argument.Id("thaw", thaw.Id), fixing);
        return [Finding.Error("frozen-without-thaw", message, ThawFirst).At(first).By("specimen.condition")];
    }
}
