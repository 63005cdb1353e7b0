using System.Collections.Immutable;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Quantities;
using Protocolist.Specimens;
using Protocolist.Specimens.Fixation;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace Protocolist.Planning.Drafting;

/// <summary>The model's word beside the protocol's: how long this body takes to be fixed to the core, as it is cut and injected.</summary>
internal static class FixationTime
{
    public const string FigureId = "model.fixation";

    private static readonly Phrase WaysOut = new(
        "core-will-rot.remedy-ways-out",
        "{remedy}; safe within {time:0 days}: long cuts {apart:0 mm} apart and {deep:0 mm} deep, "
        + "or {sites} injections of {each:0.## mL}, {spacing:0 mm} apart");

    public static Checked<BodyFixation> Of(ImmutableArray<DraftStep> steps, BodyMeasure body, Bench bench)
    {
        // Of several immersions the longest fixes; a short first one only hardens the skin.
        ImmutableArray<DraftStep> soaks = [.. steps.Where(s => s.Kind == StageKind.Immerse && s.Fluid is not null)];
        if (soaks.MaxBy(s => (s.Most ?? s.Least).TotalHours) is not { } fix) return new(null, []);
        var injections = steps.Select(s => (s.Work as InjectWork)?.Plan).FirstOrDefault(i => i is not null);
        var cuts = steps.Select(s => (s.Work as CutWork)?.Opens).FirstOrDefault(c => c is not null);
        var fixative = fix.Fluid switch
        {
            { HasFormaldehyde: true } => Fixative.Formaldehyde,
            { AlcoholVolumePercent: >= 90 } => Fixative.StrongEthanol,
            _ => Fixative.Ethanol,
        };
        var reckoned = BodyFixation.Of(body, injections, cuts, fixative, bench.Temperatures.Room.DegreesCelsius);
        var opened = steps.Any(s => !s.Cuts.IsEmpty);
        var findings = ImmutableArray.CreateBuilder<Finding>();
        foreach (var finding in reckoned.Findings)
        {
            if (opened && finding.Id == "armour-closed") continue;
            var isLate = finding.Id is "core-will-rot" or "core-may-rot";
            var remedy = isLate && BodyKind.Of(body).Allows(Gestures.Cut) ? WithWaysOut(finding.Remedy, body, soaks, fixative, bench) : finding.Remedy;
            findings.Add(finding with { Subject = fix.Id, Remedy = remedy });
        }

        return reckoned with { Findings = findings.ToImmutable() };
    }

    /// <summary>The reverse question: what would have to be cut or injected for the core to be reached within the time that the protocol allows.</summary>
    private static Message WithWaysOut(Message remedy, BodyMeasure body, ImmutableArray<DraftStep> soaks, Fixative fixative, Bench bench)
    {
        // Two weeks is what custom gives a large body, where the protocol sets no end.
        var hours = Math.Min(soaks.Sum(s => s.Most?.TotalHours ?? CustomaryHours), CustomaryHours);
        if (SafeguardPlan.For(body, hours, fixative, bench.Temperatures.Room.DegreesCelsius).Value is not { IsSafeWhole: false } ways) return remedy;
        var needles = ways.Injections[0];
        return WaysOut.With(
            ("remedy", remedy),
            Argument.Of("time", hours * 3600, Dimension.OfTime),
            ("apart", Length.FromMillimeters(ways.LongCutSpacingMm)),
            ("deep", Length.FromMillimeters(ways.CutDepthMm)),
            ("sites", needles.Sites),
            ("each", Volume.FromMilliliters(needles.SiteMl)),
            ("spacing", Length.FromMillimeters(needles.SpacingMm)));
    }

    private const double CustomaryHours = 14 * 24;

    private static readonly Phrase Penetration = new("model.fixation", "penetration of {depth} in the slowest region ({region}, {by}), binding included");
    private static readonly Phrase Thumb = new("model.fixation.thumb", "{says}: {time}{over}");
    private static readonly Phrase OverPromises = new("model.fixation.over-promises", ", which over-promises here");
    private static readonly Phrase Thumbs = new("model.fixation.thumbs", "{thumbs:; }");

    private static readonly ImmutableArray<string> MadeFrom = ["specimen.half-thickness", "bench.temperature"];

    public static Figure Figure(BodyFixation fixation) =>
        new Model(fixation).Of(new QuantityRange(fixation.Time.LowHours * 3600, fixation.Time.HighHours * 3600, Dimension.OfTime));

    /// <summary>How the model came to its time, to be put into words when somebody asks.</summary>
    private sealed record Model(BodyFixation Fixation)
        : FigureOrigin(FigureId, MadeFrom, PenetrationRate.Of(Fixation.Slowest.Region.Tissue, Fixative.Formaldehyde).Source)
    {
        public override Message Rule => Penetration.With(
            ("depth", Length.FromMillimeters(Fixation.Slowest.DepthMm)), ("region", Fixation.Slowest.Region.Name), ("by", Fixation.Slowest.By));

        public override Message Note => Thumbs.With(Argument.Messages("thumbs", Fixation.Thumbs.Select(t =>
            Thumb.With(("says", t.Says), ("time", Duration.FromHours(t.Hours)), ("over", t.OverPromises ? OverPromises : default(Message))))));
    }
}
