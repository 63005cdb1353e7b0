using System.Collections.Immutable;
using NodaTime;
using Protocolist.Findings;
using Protocolist.Protocols;
using Protocolist.Quantities;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace Protocolist.Checks.Body;

/// <summary>The body lies in fixative until its middle is fixed.</summary>
internal static class FixationShorterThanPenetration
{
    /// <summary>Handbooks fix flatworms, larvae and embryos of this thickness for 12 to 24 h (common practice).</summary>
    private const double FilmMm = 1;
    private static readonly Duration Overnight = Duration.FromHours(12);

    private static readonly Phrase TooShort = new(
        "fixation-shorter-than-penetration",
        "it lies {lies:0 h vs least} in fixative; to the middle of the {region}, {depth:0.# mm}, it takes {least:0 h vs lies} at the least "
        + "and perhaps {most:0 h}");

    private static readonly Phrase LeaveItLonger = new(
        "fixation-shorter-than-penetration.remedy", "leave it longer, or cut or inject it; cut a trial into the thickest place before washing");

    public static PlanCheck Check { get; } = new(
        "fixation-shorter-than-penetration",
        "the specimen: washed too early, its middle rots in alcohol",
        "Fick's law with the fastest rates measured in tissue (Steicke and others 2018); "
        + "handbooks give less for whole small fishes (USGS 93-104: 2 d to a week)",
        Find)
    {
        Severities =
        [
            new(
                Severity.Warning,
                "all fixing baths together are shorter than the least time to the slowest part, and something else follows; "
                + "a body crossed within 1 mm passes after 12 h"),
        ],
        Absorbs = ["rule-over-promises"],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        if (plan.Fixation is not { } fixation || plan.First(StageKind.Immerse) is not { } immerse) return [];
        var lies = Duration.Zero;
        foreach (var step in plan.Steps)
        {
            if (step.Kind == StageKind.Immerse) lies += step.Lasts;
        }

        // A film of tissue is crossed in minutes; what the model waits for is binding, and handbooks fix such bodies overnight.
        if (fixation.Slowest.DepthMm < FilmMm && lies >= Overnight) return [];
        if (lies.TotalHours >= fixation.Time.LowHours || plan.House?.Fluid?.Substance == immerse.Fluid?.Substance) return [];
        var message = TooShort.With(
            ("lies", lies),
            ("region", fixation.Slowest.Region.Name),
            ("depth", Length.FromMillimeters(fixation.Slowest.DepthMm)),
            Argument.Of("least", fixation.Time.LowHours * NodaConstants.SecondsPerHour, Dimension.OfTime),
            Argument.Of("most", fixation.Time.HighHours * NodaConstants.SecondsPerHour, Dimension.OfTime));
        var steps = plan.Steps.Where(s => s.Kind == StageKind.Immerse);
        return [Finding.Warning("fixation-shorter-than-penetration", message, LeaveItLonger).At(immerse).ByEach(steps, "last").By("model.fixation")];
    }
}
