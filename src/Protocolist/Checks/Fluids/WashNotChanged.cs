using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Quantities;
using Protocolist.Rules;

namespace Protocolist.Checks.Fluids;

/// <summary>A standing wash is changed.</summary>
internal static class WashNotChanged
{
    private static readonly Phrase Stands = new(
        WashChanges.Id,
        "'{step}' is {volume} of standing water, never changed: "
        + "{left:0 % vs most} of the free formaldehyde stays in the body however long it lies; {most:0 %} is the most");

    private static readonly Phrase Change = new("wash-not-changed.remedy", "change the water once a day, or let it run slowly");

    public static PlanCheck Check { get; } = new(
        WashChanges.Id,
        "the specimen: water that stands takes formaldehyde up to its own strength and no further",
        WashChanges.Source,
        Find)
    {
        Severities = [new(Severity.Warning, "a wash stands, is never changed, and leaves more than a tenth of the free formaldehyde in the body")],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        ImmutableArray<Finding> found = [];
        foreach (var step in plan.FluidSteps)
        {
            if (step.Kind != StageKind.Wash || step.Step.Changes > 0 || step.Volume is not { } volume || step.Work is SoakWork { Runs: true }) continue;
            if (WashChanges.LeftBehind(plan.Water, volume) is not { } left) continue;
            var message = Stands.With(
                Argument.Id("step", step.Id),
                ("volume", volume),
                Argument.Of("left", left, Dimension.None),
                Argument.Of("most", WashChanges.MostLeft, Dimension.None));
            found = found.Add(Finding.Warning(WashChanges.Id, message, Change).At(step, "changes", "volume").By("specimen.lot-volume", "specimen.water-share"));
        }

        return found;
    }
}
