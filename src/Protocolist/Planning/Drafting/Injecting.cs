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
    /// <summary>The injection; null where nothing is injected.</summary>
    public static InjectWork? Plan(StepDrafting step)
    {
        var dose = step.Quantity(StageKey.Dose);
        if (dose is { IsFinite: false } or { Low: <= 0 }) return null;
        var body = step.Body;
        double? perKilogram = dose is { } d ? d.Middle * 1e6 / SpecimenValues.Measure(body, "specimen.lot-mass").Middle : null;
        var spacing = step.Length(StageKey.Spacing)?.Middle * 1e3;
        var planned = InjectionPlan.For(body, new(perKilogram, Sites(step.Stage.Sites, step.Inputs), spacing));
        foreach (var finding in planned.Findings) step.Findings.Add(finding with { Subject = step.Stage.Id, Where = step.Stage.Span });
        return planned.Value is { Regions.IsEmpty: false } plan ? new([.. plan.Regions.Select(r => Site(r, body.Count))], plan) : null;
    }

    private static Dictionary<string, SiteVolume>? Sites(SitesSetting? sites, FormulaInputs inputs) =>
        sites?.Sites.ToDictionary(s => s.Region, s => Millilitres(s.PerSite.Evaluate(inputs).Quantity), StringComparer.Ordinal);

    private static SiteVolume Millilitres(QuantityRange volume) => new(volume.Low * 1e6, volume.High * 1e6);

    /// <summary>What a syringe doses at one site is rounded as it is read, once; all the sites together are so many of that.</summary>
    private static InjectionSite Site(RegionInjection region, int count)
    {
        var each = Measurable.Rounded(region.SiteMl / 1e6, Dimension.OfVolume) * 1e6;
        return new(
            region.Region.Name,
            region.Sites * count,
            Volume.FromMilliliters(region.SiteRange.LowMl),
            Volume.FromMilliliters(each),
            Volume.FromMilliliters(region.SiteRange.HighMl),
            Volume.FromMilliliters(each * region.Sites * count),
            region.SyringeMl,
            region.Needle.Gauge,
            region.NeedleLengthMm)
        {
            At = region.Region.InjectAt!,
        };
    }
}
