using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Checks.Fluids;

/// <summary>Fixative that has served before is clear, not acid, and within the uses that the bench allows.</summary>
internal static class ReusedFixativeDoubtful
{
    private const string Id = "reused-fixative-doubtful";

    public static PlanCheck Check { get; } = new(
        Id,
        "the specimen: tired fixative does not fix",
        "reuse: American Museum of Natural History, Congo Project; Museum of Vertebrate Zoology prep lab notes; limits (clear, pH 6.5 or more) common practice",
        Find)
    {
        Severities = [new(Severity.Warning, "used formalin on the shelf is not clear, below pH 6.5, used as often as is allowed, or of unknown pH")],
        Absorbs = ["spent-fluid-not-clear", "spent-fluid-too-acid", "spent-fluid-used-up", "spent-fluid-ph-unknown"],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        ImmutableArray<Finding> found = [];
        if (plan.Formalin.IsEmpty) return found;
        foreach (var item in plan.Bench.Stock)
        {
            if (item.Spent is not { } spent || item.OnHand.Units == 0) continue;
            foreach (var doubt in spent.Doubts(item))
                found = found.Add(Finding.Warning(Id, doubt.Message, doubt.Remedy, item.Where));
        }

        return found;
    }
}
