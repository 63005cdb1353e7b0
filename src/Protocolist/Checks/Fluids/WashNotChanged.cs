using Protocolist.Findings;
using Protocolist.Fluids.Infiltration;
using Protocolist.Plans;
using Protocolist.Protocols;
using static System.FormattableString;

namespace Protocolist.Checks.Fluids;

/// <summary>A standing wash is changed.</summary>
internal static class WashNotChanged
{
    /// <summary>What one wash may leave behind; the project's choice.</summary>
    private const double Tenth = 0.1;

    public static PlanCheck Check { get; } = new(
        "wash-not-changed",
        "the specimen: water that stands takes formaldehyde up to its own strength and no further",
        "Meador, Cuffney and Gurtz 1993, USGS Open-File Report 93-104 (one change in 48 h); the tenth is the project's choice",
        Find)
    {
        Speaks = [new(Severity.Warning, "a wash stands, is never changed, and leaves more than a tenth of the free formaldehyde in the body")],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        foreach (var step in plan.FluidSteps)
        {
            if (step.Kind != StageKind.Wash || step.Step.Changes > 0 || step.Work is SoakWork { Runs: true } || step.Step.Volume is not { } volume) continue;
            var left = Washout.Left(plan.Water, volume, 1);
            if (left > Tenth)
                yield return Finding.Warning("wash-not-changed", Invariant($"'{step.Id}' is {volume.Text()} of standing water, never changed: {Telling.Apart(100 * left, 100 * Tenth).Value} % of the free formaldehyde stays in the body however long it lies; {100 * Tenth:0} % is the most"), "change the water once a day, or let it run slowly").At(step, "changes", "volume").By("specimen.lot-volume", "specimen.water-share");
        }
    }
}
