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
        Find);

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        foreach (var step in plan.Steps.Where(s => s.Vessel is null && s.VesselAdvice.Length > 0))
        {
            if (plan.Bench.Vessels.IsEmpty)
            {
                yield return Finding.Note("vessel-too-small", $"the bench lists no vessel for '{step.Id}'; its amounts follow from the ratio alone", step.VesselAdvice) with { Subject = step.Id };
            }
            else if (!step.VesselReasons.All(r => r.Id == "vessel-too-shallow"))
            {
                var reasons = string.Join("; ", step.VesselReasons.Select(r => r.Message).Distinct(StringComparer.Ordinal).Take(MostReasons));
                yield return Finding.Error("vessel-too-small", $"no vessel at hand will do for '{step.Id}': {reasons}", step.VesselAdvice) with { Subject = step.Id };
            }
        }
    }
}
