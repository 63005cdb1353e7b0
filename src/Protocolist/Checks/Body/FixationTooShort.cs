using System.Collections.Immutable;
using NodaTime;
using Protocolist.Findings;
using Protocolist.Quantities;
using Protocolist.Rules;
using Protocolist.Specimens;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace Protocolist.Checks.Body;

/// <summary>The body lies in fixative until its middle is fixed.</summary>
internal static class FixationTooShort
{
    private static readonly Phrase TooShort = new(
        FixationTime.Id,
        "it lies {lies:0 h vs least} in fixative; to the middle of the {region}, {depth:0.# mm}, it takes {least:0 h vs lies} at the least "
        + "and perhaps {most:0 h}");

    private static readonly Phrase LeaveItLonger = new(
        "fixation-too-short.remedy", "leave it longer, or cut or inject it; cut a trial into the thickest place before washing");

    private static readonly Phrase LeaveItWhole = new("fixation-too-short.remedy-whole", "leave it longer, in fresh fluid and much of it; it stays whole");

    public static PlanCheck Check { get; } = new(
        FixationTime.Id,
        "the specimen: washed too early, its middle rots in alcohol",
        FixationTime.Source,
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

        if (plan.House?.Fluid?.Substance == immerse.Fluid?.Substance) return [];
        if (!FixationTime.IsTooShort(QuantityRange.Point(lies.TotalSeconds, Dimension.OfTime), fixation)) return [];
        var message = TooShort.With(
            ("lies", lies),
            ("region", fixation.Slowest.Region.Name),
            ("depth", Length.FromMillimeters(fixation.Slowest.DepthMm)),
            Argument.Of("least", fixation.Time.LowHours * NodaConstants.SecondsPerHour, Dimension.OfTime),
            Argument.Of("most", fixation.Time.HighHours * NodaConstants.SecondsPerHour, Dimension.OfTime));
        var remedy = BodyKind.Of(plan.Body).Allows(Gestures.Cut | Gestures.Inject) ? LeaveItLonger : LeaveItWhole;
        var steps = plan.Steps.Where(s => s.Kind == StageKind.Immerse);
        return [Finding.Warning(FixationTime.Id, message, remedy).At(immerse).ByEach(steps, "last").By("model.fixation")];
    }
}
