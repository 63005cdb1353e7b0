using Protocolist.Findings;

namespace Protocolist.Checks.Vessels;

/// <summary>The whole body lies under the fluid, on the coldest day too.</summary>
internal static class NotSubmerged
{
    public static PlanCheck Check { get; } = new(
        "not-submerged",
        "the specimen: what stands out of the fluid dries and rots",
        "Bishop Museum, Invertebrate Specimen Handling; common practice",
        Find)
    {
        Speaks = [new(Severity.Error, "the body with its cover stands out of the fluid on the coldest day, or no vessel at hand is deep enough")],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        foreach (var step in plan.Steps)
        {
            if (step.Vessel is { } vessel && vessel.LevelColdest < vessel.CoveredTo * 0.999)
            {
                var (level, top) = Telling.Apart(vessel.LevelColdest.Millimeters, vessel.CoveredTo.Millimeters);
                yield return Finding.Error("not-submerged", $"in '{step.Id}' the fluid stands at {level} mm on the coldest day, and the body with its cover reaches {top} mm", "take a deeper vessel or more fluid").At(step, "volume").By("specimen.half-thickness", "specimen.length");
            }
            else if (step.Vessel is null && step.VesselReasons.FirstOrDefault(r => r.Id == "vessel-too-shallow") is { } shallow && step.VesselReasons.All(r => r.Id == "vessel-too-shallow"))
            {
                yield return Finding.Error("not-submerged", $"no vessel at hand is deep enough for '{step.Id}': {shallow.Message}", step.VesselAdvice).At(step, "volume").By("specimen.half-thickness", "specimen.length");
            }
        }
    }
}
