using Protocolist.Findings;
using Protocolist.Protocols;

namespace Protocolist.Checks.Labels;

/// <summary>One label lies in the fluid and one is on the vessel.</summary>
internal static class InsideAndOutside
{
    public static PlanCheck Check { get; } = new(
        "label-inside-and-outside",
        "the specimen's worth: the outer one falls off, the inner one cannot be read without opening",
        "Meador, Cuffney and Gurtz 1993, USGS 93-104; Cuffney, Gurtz and Meador 1993, USGS 93-406",
        Find)
    {
        Speaks = [new(Severity.Warning, "no step labels the final vessel, or the one that does not say that one label goes inside and one outside")],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.House is not { } house) yield break;
        var label = plan.Steps.FirstOrDefault(s => s.Kind == StageKind.Label);
        if (label is null)
        {
            yield return Finding.Warning("label-inside-and-outside", $"no step labels what '{house.Id}' puts away", "label it inside and outside the same day").At(house);
            yield break;
        }

        var told = string.Join(' ', label.Step.Instructions);
        if (!told.Contains("inside", StringComparison.OrdinalIgnoreCase) || !told.Contains("outside", StringComparison.OrdinalIgnoreCase))
            yield return Finding.Warning("label-inside-and-outside", $"'{label.Id}' does not say that one label goes inside and one outside", "one in the fluid, facing out, and one on the vessel").At(label);
    }
}
