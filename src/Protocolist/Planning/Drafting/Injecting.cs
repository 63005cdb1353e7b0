using Protocolist.Formulas;
using Protocolist.Planning.Measuring;
using Protocolist.Plans;
using Protocolist.Protocols;
using Protocolist.Quantities;
using Protocolist.Specimens.Fixation;
using UnitsNet;

namespace Protocolist.Planning.Drafting;

/// <summary>The protocol's dose and sites, shared out over the regions of the body.</summary>
internal static class Injecting
{
    public static InjectWork Plan(StepDrafting step)
    {
        var dose = step.Quantity(StageKey.Dose);
        if (dose is { IsFinite: false } or { Low: <= 0 }) return new([], null);
        var body = step.Body;
        double? perKilogram = dose is { } d ? d.Middle * 1e6 / SpecimenValues.Measure(body, "specimen.lot-mass").Middle : null;
        var planned = InjectionPlan.For(body, perKilogram, Sites(step.Stage.Sites, step.Inputs));
        foreach (var finding in planned.Findings) step.Findings.Add(finding with { Subject = step.Stage.Id, Where = step.Stage.Span });
        return planned.Value is { } plan ? new([.. plan.Regions.Select(r => Site(r, plan.Syringe, body.Count))], plan) : new([], null);
    }

    private static Dictionary<string, SiteVolume>? Sites(SitesSetting? sites, FormulaInputs inputs) =>
        sites?.Sites.ToDictionary(s => s.Region, s => Millilitres(s.PerSite.Evaluate(inputs).Quantity), StringComparer.Ordinal);

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
            At = region.Region.InjectAt!,
        };
    }
}
