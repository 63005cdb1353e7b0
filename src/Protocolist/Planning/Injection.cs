using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Protocols;
using Protocolist.Quantities;
using Protocolist.Specimens;
using Protocolist.Specimens.Fixation;
using UnitsNet;

namespace Protocolist.Planning;

/// <summary>The protocol's dose and sites, shared out over the regions of the body.</summary>
internal static class Injection
{
    public static DraftStep Plan(DraftStep step, BodyMeasure body, PlanInputs inputs, List<Finding> findings)
    {
        var dose = StepDraft.Quantity(step.Stage, "dose", inputs);
        if (dose is { IsFinite: false } or { Low: <= 0 }) return step;
        double? perKilogram = dose is { } d ? d.Middle * 1e6 / PlanInputs.Measure(body, "specimen.lot-mass").Middle : null;
        var planned = InjectionPlan.For(body, perKilogram, Sites(step.Stage, inputs));
        findings.AddRange(planned.Findings.Select(f => f with { Subject = step.Id, Where = step.Span }));
        if (planned.Value is not { } plan) return step;
        return step with
        {
            Injections = plan,
            Volume = Volume.FromMilliliters(plan.TotalMl * body.Count),
            Sites = [.. plan.Regions.Select(r => Site(r, plan.Syringe, body.Count))],
        };
    }

    private static Dictionary<string, SiteVolume>? Sites(StageDefinition stage, PlanInputs inputs) => stage.Find("sites") is SitesSetting sites
        ? sites.Sites.ToDictionary(s => s.Region, s => Millilitres(s.PerSite.Evaluate(inputs.AsFormulaInputs()).Quantity), StringComparer.Ordinal)
        : null;

    private static SiteVolume Millilitres(QuantityRange volume) => new(volume.Low * 1e6, volume.High * 1e6);

    private static InjectionSite Site(RegionInjection region, Syringe? syringe, int count)
    {
        var fills = Syringe.For(region.SiteMl, region.TotalMl);
        return new(
            region.Region.Name,
            region.Sites * count,
            Volume.FromMilliliters(region.SiteRange.LowMl),
            Volume.FromMilliliters(region.SiteMl),
            Volume.FromMilliliters(region.SiteRange.HighMl),
            Volume.FromMilliliters(region.TotalMl * count),
            (syringe ?? fills).SizeMl,
            region.NeedleGauge,
            region.NeedleLengthMm)
        {
            At = region.Region.InjectAt,
        };
    }
}
