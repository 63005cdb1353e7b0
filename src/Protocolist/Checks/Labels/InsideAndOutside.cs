using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Checks.Labels;

/// <summary>One label lies in the fluid and one is on the vessel: every step that labels asks for both.</summary>
internal static class InsideAndOutside
{
    private static readonly Phrase Unlabelled = new("label-inside-and-outside", "no step labels what '{step}' puts away");
    private static readonly Phrase LabelIt = new("label-inside-and-outside.remedy", "label it inside and outside the same day");

    public static PlanCheck Check { get; } = new(
        "label-inside-and-outside",
        "the specimen's worth: the outer one falls off, the inner one cannot be read without opening",
        "Meador, Cuffney and Gurtz 1993, USGS 93-104; Cuffney, Gurtz and Meador 1993, USGS 93-406",
        Find)
    {
        Severities = [new(Severity.Warning, "no step labels the final vessel")],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        if (plan.House is not { } house || plan.First(StageKind.Label) is not null) return [];
        return [Finding.Warning("label-inside-and-outside", Unlabelled.With(Argument.Id("step", house.Id)), LabelIt).At(house)];
    }
}
