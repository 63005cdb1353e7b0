using System.Collections.Immutable;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Protocols;
using Protocolist.Quantities;
using Protocolist.Specimens;
using Protocolist.Specimens.Fixation;

namespace Protocolist.Planning;

/// <summary>The model's word beside the protocol's: how long this body takes to be fixed to the core, as it is cut and injected.</summary>
internal static class FixationReckoning
{
    public const string FigureId = "model.fixation";

    public static Checked<BodyFixation> Of(ImmutableArray<DraftStep> steps, BodyMeasure body, Bench bench)
    {
        if (steps.FirstOrDefault(s => s.Kind == StageKind.Immerse && s.Fluid is not null) is not { } fix) return new(null, []);
        var injections = steps.Select(s => s.Injections).FirstOrDefault(i => i is not null);
        var cuts = steps.Select(s => s.CutPlan).FirstOrDefault(c => c is not null);
        var fixative = fix.Fluid switch
        {
            { HasFormaldehyde: true } => Fixative.Formaldehyde,
            { AlcoholVolumePercent: >= 90 } => Fixative.StrongEthanol,
            _ => Fixative.Ethanol,
        };
        var reckoned = BodyFixation.Of(body, injections, cuts, fixative, bench.Temperatures.Room.DegreesCelsius);
        return reckoned with { Findings = [.. reckoned.Findings.Select(f => f with { Subject = fix.Id })] };
    }

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
            Exact = QuantityText.Exact(time),
            Note = string.Join("; ", fixation.Thumbs.Select(t => $"{t.Says}: {Measurable.Text(t.Hours * 3600, Dimension.OfTime)}{(t.OverPromises ? ", which over-promises here" : "")}")),
        };
    }
}
