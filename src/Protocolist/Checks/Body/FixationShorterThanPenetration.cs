using NodaTime;
using Protocolist.Findings;
using Protocolist.Protocols;
using static System.FormattableString;

namespace Protocolist.Checks.Body;

/// <summary>The body lies in fixative until its middle is fixed.</summary>
internal static class FixationShorterThanPenetration
{
    public static PlanCheck Check { get; } = new(
        "fixation-shorter-than-penetration",
        "the specimen: washed too early, its middle rots in alcohol",
        "Fick's law with the fastest rates measured in tissue (Steicke and others 2018); handbooks give less for whole small fishes (USGS 93-104: 2 d to a week)",
        Find)
    {
        Absorbs = ["rule-over-promises"],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.Fixation is not { } fixation || plan.Steps.FirstOrDefault(s => s.Kind == StageKind.Immerse) is not { } immerse) yield break;
        var lies = plan.Steps.Where(s => s.Kind == StageKind.Immerse).Aggregate(Duration.Zero, (sum, s) => sum + s.Lasts);
        if (lies.TotalHours < fixation.Time.LowHours && plan.House?.Fluid?.Kind != immerse.Fluid?.Kind)
        {
            yield return Finding.Warning(
                "fixation-shorter-than-penetration",
                Invariant($"it lies {lies.Text()} in fixative; to the middle of the {fixation.Slowest.Region.Name}, {fixation.Slowest.DepthMm:0} mm, it takes {Duration.FromHours(fixation.Time.LowHours).Text()} at the least and perhaps {Duration.FromHours(fixation.Time.HighHours).Text()}"),
                "leave it longer, or cut or inject it; cut a trial into the thickest place before washing").At(immerse, "last").By("model.fixation");
        }
    }
}
