using Protocolist.Findings;
using static System.FormattableString;

namespace Protocolist.Checks.Vessels;

/// <summary>The final vessel holds more fluid than animal.</summary>
internal static class Cramped
{
    public static PlanCheck Check { get; } = new(
        "cramped",
        "the specimen: a body that fills its jar weakens the fluid and is pressed out of shape",
        "common practice: at most half of the jar is animal, wanted a third; Bishop Museum (nothing forced in)",
        Find)
    {
        Speaks = [new(Severity.Warning, "more than half of what is in the final vessel is animal")],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.House is not { } house || house.RatioTo(plan.Body.LotVolume.Nominal) is not { } ratio) yield break;
        const double Half = 50;
        var share = 100 / (1 + ratio);
        if (ratio < 1)
            yield return Finding.Warning("cramped", Invariant($"the body is {Telling.Apart(share, Half).Value} % of what is in '{house.Id}', {plan.Body.LotVolume.Nominal.Text()} to {house.Step.Volume?.Text() ?? "no fluid"}; half is the most"), "take a larger vessel").At(house, "volume").By("specimen.lot-volume");
    }
}
