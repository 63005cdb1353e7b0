using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Specimens;
using UnitsNet;

namespace Protocolist.Checks.Body;

/// <summary>A thick body is cut or injected before it lies in fixative.</summary>
internal static class ThickAndUncut
{
    private static readonly Phrase GoesWhole = new(
        "thick-and-uncut",
        "{group:a} {half:vs most} to the middle goes whole into '{step}'; {most:vs half} is the most that fluid reaches from outside in time");

    private static readonly Phrase OpenFirst = new("thick-and-uncut.remedy", "slit or inject the gut region first");

    public static PlanCheck Check { get; } = new(
        "thick-and-uncut",
        "the specimen: fluid comes through the skin of a thick body too late for gut and muscle",
        "Meador, Cuffney and Gurtz 1993, USGS Open-File Report 93-104 (fishes over 150 mm are slit); the group's own limit, common practice",
        Find)
    {
        Severities = [new(Severity.Warning, "the body is thicker than its group is fixed whole, and nothing cuts or injects it")],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        if (plan.Opens || plan.FirstFixing is not { } first || !BodyKind.Of(plan.Body).Allows(Gestures.Cut)) return [];
        var most = Length.FromMillimeters(plan.Group.WholeUpToMm.High);
        var half = plan.Body.HalfThickness.Nominal;
        if (half <= most) return [];
        var message = GoesWhole.With(("group", plan.Group.Name), ("half", half), Argument.Id("step", first.Id), ("most", most));
        return [Finding.Warning("thick-and-uncut", message, OpenFirst).At(first).By("specimen.half-thickness")];
    }
}
