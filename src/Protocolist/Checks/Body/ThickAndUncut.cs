using Protocolist.Findings;
using UnitsNet;

namespace Protocolist.Checks.Body;

/// <summary>A thick body is cut or injected before it lies in fixative.</summary>
internal static class ThickAndUncut
{
    public static PlanCheck Check { get; } = new(
        "thick-and-uncut",
        "the specimen: fluid comes through the skin of a thick body too late for gut and muscle",
        "Meador, Cuffney and Gurtz 1993, USGS Open-File Report 93-104 (fishes over 150 mm are slit); the group's own limit, common practice",
        Find)
    {
        Speaks = [new(Severity.Warning, "the body is thicker than its group is fixed whole, and nothing cuts or injects it")],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.Opens || plan.FirstFixing is not { } first) yield break;
        var most = Length.FromMillimeters(plan.Group.WholeUpToMm.High);
        var half = plan.Body.HalfThickness.Nominal;
        if (half > most && Telling.Apart(half, most) is var (said, limit))
            yield return Finding.Warning("thick-and-uncut", $"{plan.Group.One()} {said} to the middle goes whole into '{first.Id}'; {limit} is the most that fluid reaches from outside in time", "slit or inject the gut region first").At(first).By("specimen.half-thickness");
    }
}
