using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Checks.Body;

/// <summary>A lot in one jar is few enough to be found again.</summary>
internal static class LargeLotInOneVessel
{
    private const int Many = 50;
    private const double Roomy = 5;

    private static readonly Phrase Packed = new(
        "many-in-one-vessel",
        "{animals} animals share the {vessel} with {ratio:0.# vs roomy} times their volume of fluid; more than {many} want {roomy:0} times");

    private static readonly Phrase Divide = new("many-in-one-vessel.remedy", "divide the lot over several jars, each with its label");

    public static PlanCheck Check { get; } = new(
        "many-in-one-vessel",
        "the specimen: animals packed together take each other's fluid and lose their labels",
        "common practice: one lot a jar, never packed; plankton aside (at most a tenth of the volume, Steedman 1976, from memory)",
        Find)
    {
        Severities = [new(Severity.Note, "more than 50 animals share a final vessel with less than 5 times their volume of fluid")],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        if (plan.Specimen.Count <= Many || plan.House is not { Vessel: { Ratio: < Roomy } vessel } house) return [];
        var message = Packed.With(("animals", plan.Specimen.Count), ("vessel", vessel.Vessel.Name), ("ratio", vessel.Ratio), ("roomy", Roomy), ("many", Many));
        return [Finding.Note("many-in-one-vessel", message, Divide).At(house, "volume").By("specimen.count", "specimen.lot-volume")];
    }
}
