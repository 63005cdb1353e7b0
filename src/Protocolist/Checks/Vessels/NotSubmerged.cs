using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Checks.Vessels;

/// <summary>The whole body lies under the fluid, on the coldest day too.</summary>
internal static class NotSubmerged
{
    private const string Id = "not-submerged";
    private static readonly Phrase StandsOut = new(
        Id,
        "in '{step}' the fluid stands at {level:0 mm vs top} on the coldest day, and the body with its cover reaches {top:0 mm vs level}");

    private static readonly Phrase TooShallow = new("not-submerged.too-shallow", "no vessel at hand is deep enough for '{step}': {reason}");
    private static readonly Phrase Deeper = new("not-submerged.remedy", "take a deeper vessel or more fluid");

    public static PlanCheck Check { get; } = new(
        Id,
        "the specimen: what stands out of the fluid dries and rots",
        "Bishop Museum, Invertebrate Specimen Handling; common practice",
        Find)
    {
        Severities = [new(Severity.Error, "the body with its cover stands out of the fluid on the coldest day, or no vessel at hand is deep enough")],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        ImmutableArray<Finding> found = [];
        foreach (var step in plan.Steps)
        {
            if (step.Vessel is { } vessel)
            {
                if (vessel.LevelColdest >= vessel.CoveredTo * 0.999) continue;
                var message = StandsOut.With(Argument.Id("step", step.Id), ("level", vessel.LevelColdest), ("top", vessel.CoveredTo));
                found = found.Add(Error(step, message, Deeper));
            }
            else if (!step.VesselReasons.IsEmpty && VesselTooSmall.IsOnlyTooShallow(step))
            {
                var message = TooShallow.With(Argument.Id("step", step.Id), ("reason", step.VesselReasons[0].Message));
                found = found.Add(Error(step, message, step.VesselAdvice));
            }
        }

        return found;
    }

    private static Finding Error(ReviewStep step, Message message, Message remedy) =>
        Finding.Error(Id, message, remedy).At(step, "volume").By("specimen.half-thickness", "specimen.length");
}
