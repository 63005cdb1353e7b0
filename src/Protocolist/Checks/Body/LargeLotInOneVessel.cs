using Protocolist.Findings;
using static System.FormattableString;

namespace Protocolist.Checks.Body;

/// <summary>A lot in one jar is few enough to be found again.</summary>
internal static class LargeLotInOneVessel
{
    private const int Many = 50;
    private const double Roomy = 5;

    public static PlanCheck Check { get; } = new(
        "many-in-one-vessel",
        "the specimen: animals packed together take each other's fluid and lose their labels",
        "common practice: one lot a jar, never packed; plankton aside (at most a tenth of the volume, Steedman 1976, from memory)",
        Find)
    {
        Speaks = [new(Severity.Note, "more than 50 animals share a final vessel with less than 5 times their volume of fluid")],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.Specimen.Count > Many && plan.House?.Vessel is { Ratio: < Roomy } vessel)
            yield return Finding.Note("many-in-one-vessel", Invariant($"{plan.Specimen.Count} animals share the {vessel.Vessel.Name} with {Telling.Apart(vessel.Ratio, Roomy, 1).Value} times their volume of fluid; more than {Many} want {Roomy:0} times"), "divide the lot over several jars, each with its label").At(plan.House, "volume").By("specimen.count", "specimen.lot-volume");
    }
}
