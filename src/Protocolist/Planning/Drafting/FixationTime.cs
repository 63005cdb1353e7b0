using System.Collections.Immutable;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Protocols;
using Protocolist.Quantities;
using Protocolist.Specimens;
using Protocolist.Specimens.Fixation;
using UnitsNet;
using static System.FormattableString;
using Duration = NodaTime.Duration;

namespace Protocolist.Planning.Drafting;

/// <summary>The model's word beside the protocol's: how long this body takes to be fixed to the core, as it is cut and injected.</summary>
internal static class FixationTime
{
    public const string FigureId = "model.fixation";

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
        return reckoned with
        {
            Findings =
            [
                .. reckoned.Findings.Where(f => !(opened && f.Id == "armour-closed") && !Unreached.Contains(f.Id)).Select(f => f with { Subject = fix.Id }),
                .. Slowest(reckoned, WaysOut(body, soaks, fixative, bench)).Select(f => f with { Subject = fix.Id }),
            ],
        };
    }

    /// <summary>Regions that fluid reaches too late, said once: by the slowest of them, the others named.</summary>
    private static IEnumerable<Finding> Slowest(Checked<BodyFixation> reckoned, string waysOut)
    {
        var late = reckoned.Findings.Where(f => Unreached.Contains(f.Id)).OrderByDescending(f => f.Severity).ThenByDescending(f => HoursOf(reckoned.Value, f.Subject)).ToList();
        if (late.Count == 0) yield break;
        string[] others = [.. late.Skip(1).Select(f => reckoned.Value!.Regions.First(r => r.Region.Id == f.Subject).Region.Name)];
        yield return late[0] with
        {
            Message = late[0].Message + (others.Length == 0 ? "" : $"; too late too: {string.Join(", ", others)}"),
            Remedy = waysOut.Length == 0 ? late[0].Remedy : $"{late[0].Remedy}; {waysOut}",
        };
    }

    private static double HoursOf(BodyFixation? fixation, string region) => fixation?.Regions.FirstOrDefault(r => r.Region.Id == region)?.Time.LowHours ?? 0;

    private static readonly ImmutableArray<string> Unreached = ["core-will-rot", "core-may-rot"];

    /// <summary>The reverse question: what would have to be cut or injected for the core to be reached within the time that the protocol allows.</summary>
    private static string WaysOut(BodyMeasure body, ImmutableArray<DraftStep> soaks, Fixative fixative, Bench bench)
    {
        // Two weeks is what custom gives a large body, where the protocol sets no end.
        var hours = Math.Min(soaks.Sum(s => s.Most?.TotalHours ?? CustomaryHours), CustomaryHours);
        if (SafeguardPlan.For(body, hours, fixative, bench.Temperatures.Room.DegreesCelsius).Value is not { IsSafeWhole: false } ways) return "";
        var needles = ways.Injections.IsEmpty ? "" : Invariant($", or {ways.Injections[0].Sites} injections of {ways.Injections[0].SiteMl:0.##} mL, {ways.Injections[0].SpacingMm:0} mm apart");
        return Invariant($"safe within {hours / 24:0} days: long cuts {ways.LongCutSpacingMm:0} mm apart and {ways.CutDepthMm:0} mm deep{needles}");
    }

    private const double CustomaryHours = 14 * 24;

    private static readonly Phrase Penetration = new("model.fixation", "penetration of {depth} in the slowest region ({region}, {by}), binding included");
    private static readonly Phrase Thumb = new("model.fixation.thumb", "{says}: {time}{over}");
    private static readonly Phrase OverPromises = new("model.fixation.over-promises", ", which over-promises here");
    private static readonly Phrase Thumbs = new("model.fixation.thumbs", "{thumbs:; }");

    public static Figure Figure(BodyFixation fixation)
    {
        var slowest = fixation.Slowest;
        return new FigureOrigin(FigureId, ["specimen.half-thickness", "bench.temperature"], PenetrationRate.Of(slowest.Region.Tissue, Fixative.Formaldehyde).Source)
        {
            Rule = Penetration.With(("depth", Length.FromMillimeters(slowest.DepthMm)), ("region", slowest.Region.Name), ("by", slowest.By)),
            Note = Thumbs.With(Argument.Messages("thumbs", fixation.Thumbs.Select(t =>
                Thumb.With(("says", t.Says), ("time", Duration.FromHours(t.Hours)), ("over", t.OverPromises ? OverPromises : default(Message)))))),
        }.Of(new QuantityRange(fixation.Time.LowHours * 3600, fixation.Time.HighHours * 3600, Dimension.OfTime));
    }
}
