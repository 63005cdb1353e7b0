using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Protocols;
using Protocolist.Quantities;
using Protocolist.Specimens;
using UnitsNet;

namespace Protocolist.Planning;

/// <summary>
/// A dose shared out over the body: each region gets its share by mass, in as many places as keep each within the protocol's
/// volume for one site. Nothing is lost: the sites of all regions add up to the dose.
/// </summary>
internal static class Injection
{
    /// <summary>The name under which a protocol speaks of every region that it does not name.</summary>
    private const string Other = "other";

    public static DraftStep Plan(DraftStep step, BodyMeasure body, PlanInputs inputs, List<Finding> findings)
    {
        if (StepDraft.Quantity(step.Stage, "dose", inputs) is not { IsFinite: true, Low: >= 0 } dose) return step;
        var total = Volume.FromCubicMeters(dose.Middle);
        var perSite = PerSite(step.Stage, inputs);
        foreach (var region in perSite.Keys.Where(r => r != Other && !body.Group.Regions.Any(g => g.IsNamed(r))))
            findings.Add(Finding.Warning("unknown-region", $"a {body.Group.Name} has no region '{region}' that is known", $"known here: {string.Join(", ", body.Group.Regions.Select(r => r.Id))}", step.Stage.Find("sites")!.Span) with { Subject = step.Id });
        if (total.CubicMeters == 0) return step with { Volume = total };
        return step with { Volume = total, Sites = [.. body.Regions.Select(r => Region(r, total, perSite, body)).OfType<InjectionSite>()] };
    }

    private static Dictionary<string, QuantityRange> PerSite(StageDefinition stage, PlanInputs inputs) => stage.Find("sites") is SitesSetting sites
        ? sites.Sites.ToDictionary(s => s.Region, s => s.PerSite.Evaluate(inputs.AsFormulaInputs()).Quantity, StringComparer.Ordinal)
        : [];

    private static InjectionSite? Region(RegionMeasure region, Volume total, Dictionary<string, QuantityRange> perSite, BodyMeasure body)
    {
        var volume = total * region.Region.Share;
        var key = perSite.Keys.FirstOrDefault(region.Region.IsNamed) ?? (perSite.ContainsKey(Other) ? Other : null);
        var range = key is not null ? perSite[key] : new QuantityRange(0, volume.CubicMeters, Dimension.OfVolume);
        if (range.High <= 0 || !range.IsFinite || volume.CubicMeters <= 0) return null;

        // As few places as the largest volume for one place allows; never fewer than one, of a pair one in each.
        var sites = Math.Max(region.Region.Count, (int)Math.Min(10_000, Math.Ceiling((volume.CubicMeters / range.High) - 1e-9)));
        var each = volume / sites;
        return new(
            region.Region.Name,
            sites,
            Volume.FromCubicMeters(range.Low),
            each,
            Volume.FromCubicMeters(range.High),
            volume,
            Syringes.For(each, volume, region.HalfThickness.Nominal));
    }
}
