using NodaTime;
using Protocolist.Findings;
using Protocolist.Protocols;
using Protocolist.Quantities;
using Protocolist.Rules;
using static System.FormattableString;

namespace Protocolist.Checks.Body;

/// <summary>The body lies in fixative until its middle is fixed.</summary>
internal static class FixationTooShort
{
    public static PlanCheck Check { get; } = new(
        FixationTime.Id,
        "the specimen: washed too early, its middle rots in alcohol",
        FixationTime.Source,
        Find)
    {
        Speaks = [new(Severity.Warning, "all fixing baths together are shorter than the least time to the slowest part, and something else follows; a body crossed within 1 mm passes after 12 h")],
        Absorbs = ["rule-over-promises"],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.Fixation is not { } fixation || plan.Steps.FirstOrDefault(s => s.Kind == StageKind.Immerse) is not { } immerse) yield break;
        var steps = plan.Steps.Where(s => s.Kind == StageKind.Immerse).ToList();
        var lies = steps.Aggregate(Duration.Zero, (sum, s) => sum + s.Lasts);
        if (FixationTime.IsTooShort(QuantityRange.Point(lies.TotalSeconds, Dimension.OfTime), fixation) && plan.House?.Fluid?.Kind != immerse.Fluid?.Kind)
        {
            var (said, least) = Telling.Apart(lies.TotalHours, fixation.Time.LowHours);
            yield return Finding.Warning(
                FixationTime.Id,
                Invariant($"it lies {said} h in fixative; to the middle of the {fixation.Slowest.Region.Name}, {fixation.Slowest.DepthMm:0.#} mm, it takes {least} h at the least and perhaps {fixation.Time.HighHours:0} h"),
                "leave it longer, or cut or inject it; cut a trial into the thickest place before washing").At(immerse).ByEach(steps, "last").By("model.fixation");
        }
    }
}
