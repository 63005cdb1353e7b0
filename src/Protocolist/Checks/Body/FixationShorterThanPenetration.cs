using NodaTime;
using Protocolist.Findings;
using Protocolist.Protocols;
using static System.FormattableString;

namespace Protocolist.Checks.Body;

/// <summary>The body lies in fixative until its middle is fixed.</summary>
internal static class FixationShorterThanPenetration
{
    /// <summary>Handbooks fix flatworms, larvae and embryos of this thickness for 12 to 24 h (common practice).</summary>
    private const double FilmMm = 1;
    private static readonly Duration Overnight = Duration.FromHours(12);

    public static PlanCheck Check { get; } = new(
        "fixation-shorter-than-penetration",
        "the specimen: washed too early, its middle rots in alcohol",
        "Fick's law with the fastest rates measured in tissue (Steicke and others 2018); handbooks give less for whole small fishes (USGS 93-104: 2 d to a week)",
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
        // A film of tissue is crossed in minutes; what the model waits for is binding, and handbooks fix such bodies overnight.
        if (fixation.Slowest.DepthMm < FilmMm && lies >= Overnight) yield break;
        if (lies.TotalHours < fixation.Time.LowHours && plan.House?.Fluid?.Substance != immerse.Fluid?.Substance)
        {
            var (said, least) = Telling.Apart(lies.TotalHours, fixation.Time.LowHours);
            yield return Finding.Warning(
                "fixation-shorter-than-penetration",
                Invariant($"it lies {said} h in fixative; to the middle of the {fixation.Slowest.Region.Name}, {fixation.Slowest.DepthMm:0.#} mm, it takes {least} h at the least and perhaps {fixation.Time.HighHours:0} h"),
                "leave it longer, or cut or inject it; cut a trial into the thickest place before washing").At(immerse).ByEach(steps, "last").By("model.fixation");
        }
    }
}
