using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Quantities;

namespace Protocolist.Checks.Vessels;

/// <summary>The final vessel holds more fluid than animal.</summary>
internal static class Cramped
{
    private const string Id = "cramped";
    private const double Half = 0.5;
    private static readonly Phrase TooFull = new(Id, "the body is {share:0 % vs half} of what is in '{step}', {body} to {fluid}; half is the most");
    private static readonly Phrase NoFluid = new("cramped.no-fluid", "no fluid");
    private static readonly Phrase Larger = new("cramped.remedy", "take a larger vessel");

    public static PlanCheck Check { get; } = new(
        Id,
        "the specimen: a body that fills its jar weakens the fluid and is pressed out of shape",
        "common practice: at most half of the jar is animal, wanted a third; Bishop Museum (nothing forced in)",
        Find)
    {
        Severities = [new(Severity.Warning, "more than half of what is in the final vessel is animal")],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        if (plan.House is not { } house || house.RatioTo(plan.Body.LotVolume.Nominal) is not { } ratio || ratio >= 1) return [];
        var message = TooFull.With(
            Argument.Of("share", 1 / (1 + ratio), Dimension.None),
            Argument.Of("half", Half, Dimension.None),
            Argument.Id("step", house.Id),
            ("body", plan.Body.LotVolume.Nominal),
            house.Volume is { } volume ? ("fluid", volume) : ("fluid", NoFluid));
        return [Finding.Warning(Id, message, Larger).At(house, "volume").By("specimen.lot-volume")];
    }
}
