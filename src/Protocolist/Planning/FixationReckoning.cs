using System.Collections.Immutable;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Protocols;
using Protocolist.Quantities;
using Protocolist.Specimens;
using Protocolist.Specimens.Fixation;
using UnitsNet;

namespace Protocolist.Planning;

/// <summary>The model's word beside the protocol's: how long this body takes to be fixed to the core, as it is cut and injected.</summary>
internal static class FixationReckoning
{
    public const string FigureId = "model.fixation";

    private static readonly Phrase WaysOut = new(
        "core-will-rot.remedy-ways-out",
        "{remedy}; safe within {time:0 days}: long cuts {apart:0 mm} apart and {deep:0 mm} deep, or {sites} injections of {each:0.## mL}, {spacing:0 mm} apart");

    public static Checked<BodyFixation> Of(ImmutableArray<DraftStep> steps, BodyMeasure body, Bench bench)
    {
        // Of several immersions the longest fixes; a short first one only hardens the skin.
        ImmutableArray<DraftStep> soaks = [.. steps.Where(s => s.Kind == StageKind.Immerse && s.Fluid is not null)];
        if (soaks.MaxBy(s => (s.Most ?? s.Least).TotalHours) is not { } fix) return new(null, []);
        var injections = steps.Select(s => s.Injections).FirstOrDefault(i => i is not null);
        var cuts = steps.Select(s => s.CutPlan).FirstOrDefault(c => c is not null);
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
            var remedy = isLate ? WithWaysOut(finding.Remedy, body, soaks, fixative, bench) : finding.Remedy;
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

    public static Figure Figure(BodyFixation fixation)
    {
        var time = new QuantityRange(fixation.Time.LowHours * 3600, fixation.Time.HighHours * 3600, Dimension.OfTime);
        var slowest = fixation.Slowest;
        return new(
            FigureId,
            Measurable.Text(time),
            $"penetration of {Measurable.Text(slowest.DepthMm / 1e3, Dimension.OfLength)} in the slowest region ({slowest.Region.Name}, {slowest.By}), binding included",
            ["specimen.half-thickness", "bench.temperature"],
            PenetrationRate.Of(slowest.Region.Tissue, Fixative.Formaldehyde).Source)
        {
            Exact = ExactText.Of(time),
            Note = string.Join("; ", fixation.Thumbs.Select(t => $"{t.Says}: {Measurable.Text(t.Hours * 3600, Dimension.OfTime)}{(t.OverPromises ? ", which over-promises here" : "")}")),
        };
    }
}
