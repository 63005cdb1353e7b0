using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Quantities;
using Protocolist.Rules;

namespace Protocolist.Checks.Vessels;

/// <summary>There is fixative enough for so much body, changes counted.</summary>
internal static class RatioTooLow
{
    private static readonly Phrase BelowUsual = new(
        RatioFloor.Id,
        "'{step}' gives {volumes:0.# vs limit} volumes of {fluid} to one of body, changes counted; {limit:0.# vs volumes} to 10 is usual");

    private static readonly Phrase BelowLeast = new(
        "ratio-too-low.least",
        "'{step}' gives {volumes:0.# vs limit} volumes of {fluid} to one of body, changes counted; {limit:0.# vs volumes} is the least");

    private static readonly Phrase ChangeOnce = new("ratio-too-low.remedy", "change the fluid once more");
    private static readonly Phrase UseMore = new("ratio-too-low.remedy-least", "use more fluid, or change it");

    public static PlanCheck Check { get; } = new(
        RatioFloor.Id,
        "the specimen: the body uses the fixative up before it is fixed",
        RatioFloor.Source,
        Find)
    {
        Severities =
        [
            new(Severity.Error, "a fixing bath has less than 3 volumes of fluid to one of body, changes counted"),
            new(Severity.Warning, "it has less than 5"),
        ],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        ImmutableArray<Finding> found = [];
        foreach (var step in plan.FluidSteps)
        {
            if (step.Kind != StageKind.Immerse || step.RatioTo(plan.Body.LotVolume.Nominal) is not { } ratio) continue;
            var volumes = RatioFloor.Volumes(QuantityRange.Point(ratio, Dimension.None), QuantityRange.Point(step.Step.Changes, Dimension.None));
            if (!RatioFloor.IsBelow(RatioFloor.Usual, volumes)) continue;
            var isError = RatioFloor.IsBelow(RatioFloor.Least, volumes);
            var message = (isError ? BelowLeast : BelowUsual).With(
                Argument.Id("step", step.Id),
                ("volumes", volumes),
                ("limit", isError ? RatioFloor.Least : RatioFloor.Usual),
                ("fluid", step.Fluid!.Name));
            var finding = isError ? Finding.Error(RatioFloor.Id, message, UseMore) : Finding.Warning(RatioFloor.Id, message, ChangeOnce);
            found = found.Add(finding.At(step, "ratio", "changes", "volume").By("specimen.lot-volume"));
        }

        return found;
    }
}
