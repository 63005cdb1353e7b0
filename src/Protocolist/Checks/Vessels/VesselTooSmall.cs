using Protocolist.Findings;

namespace Protocolist.Checks.Vessels;

/// <summary>Every step that needs a vessel has one that holds the body freely with enough fluid.</summary>
internal static class VesselTooSmall
{
    private const int MostReasons = 3;

    public static PlanCheck Check { get; } = new(
        "vessel-too-small",
        "the specimen: a body forced into a vessel, or with too little fluid, is fixed bent and badly",
        "Bishop Museum, Invertebrate Specimen Handling (nothing forced in); 10 : 1 of histology guidance (PMC9292019); common practice",
        Find)
    {
        Speaks =
        [
            new(Severity.Error, "no vessel at hand will do for a step"),
            new(Severity.Note, "the bench lists no vessel at all"),
        ],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (!plan.Steps.Any(Lacks)) yield break;
        foreach (var alike in plan.Steps.Where(Lacks).GroupBy(Reasons))
        {
            var first = alike.First();
            var steps = string.Join(", ", alike.Select(s => $"'{s.Id}'"));
            if (plan.Bench.Vessels.IsEmpty)
                yield return Finding.Note("vessel-too-small", $"the bench lists no vessel for {steps}; the amounts follow from the ratio alone", first.VesselAdvice).At(first).ByEach(alike, "volume").By("specimen.lot-volume", "specimen.length", "specimen.half-thickness");
            else if (!first.VesselReasons.All(r => r.Id == "vessel-too-shallow"))
                yield return Finding.Error("vessel-too-small", $"no vessel at hand will do for {steps}: {alike.Key}", first.VesselAdvice).At(first).ByEach(alike, "volume").By("specimen.lot-volume", "specimen.length", "specimen.half-thickness");
        }
    }

    private static bool Lacks(ReviewStep step) => step.Vessel is null && !step.VesselAdvice.IsEmpty;

    private static string Reasons(ReviewStep step) => string.Join("; ", step.VesselReasons.Select(r => r.Message.ToString()).Distinct(StringComparer.Ordinal).Take(MostReasons));
}
