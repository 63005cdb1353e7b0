using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Quantities;
using UnitsNet;

namespace Protocolist.Specimens.Fixation;

/// <summary>Injection of one region of one animal.</summary>
/// <param name="Region">Which region.</param>
/// <param name="Sites">Number of sites; of a pair, both sides together.</param>
/// <param name="SiteRange">Volume at one site as custom or the protocol has it.</param>
/// <param name="SiteMl">Volume chosen, mL.</param>
/// <param name="TotalMl">All sites together, mL.</param>
/// <param name="ReachMm">What is left to cross between depots, mm.</param>
/// <param name="NeedleGauge">Needle gauge.</param>
/// <param name="NeedleLengthMm">Needle length, mm.</param>
internal sealed record RegionInjection(
    BodyRegion Region, int Sites, SiteVolume SiteRange, double SiteMl, double TotalMl, double ReachMm, int NeedleGauge, int NeedleLengthMm);

/// <summary>Where, how much and with what one animal is injected.</summary>
internal sealed record InjectionPlan
{
    // Beyond some hours of work perfusion is the better way: judgement.
    internal const int ManySites = 150;

    /// <summary>The word for every region that is not named.</summary>
    private const string Other = "other";

    private static readonly Phrase NoDose = new("dose-not-positive", "the dose is {dose} mL/kg");
    private static readonly Phrase NoDoseRemedy = new("dose-not-positive.remedy", "give a dose above 0, or none for the group's own");
    private static readonly Phrase UnknownRegion = new("unknown-region.sites", "{group:a} has no region '{region}'");
    private static readonly Phrase NoRange = new("site-volume-not-positive", "{low} to {high} mL at a site of '{region}' is no range");
    private static readonly Phrase NoRangeRemedy = new("site-volume-not-positive.remedy", "give it as low to high, above 0");
    private static readonly Phrase NotInjected = new("not-injected-by-custom", "{group:a} is not injected by custom");
    private static readonly Phrase TooMuch = new(
        "dose-over-published", "{dose:0 mL/kg} is more than needle work puts in ({published:0 mL/kg}; perfusion 100 to 286)");
    private static readonly Phrase TooMuchRemedy = new("dose-over-published.remedy", "stop when firm; the body will bloat before all of it is in");
    private static readonly Phrase TooMany = new("many-sites", "{sites} sites of up to {most:0.## mL} are many for one animal");
    private static readonly Phrase TooManyRemedy = new(
        "many-sites.remedy", "perfuse by a neck or thigh artery with {volume:0.# L}, then inject what stayed soft");
    private static readonly Phrase Whole = new("left-whole", "with a half-thickness of {half:0.# mm} it is left whole by custom, up to {most:0.# mm}");
    private static readonly Phrase WholeRemedy = new("left-whole.remedy", "one small injection into the body cavity does no harm");

    /// <summary>The regions injected, in the order of the group's table; empty where the animal is left whole.</summary>
    public required ImmutableArray<RegionInjection> Regions { get; init; }

    /// <summary>All sites.</summary>
    public int Sites { get; private init; }

    /// <summary>All the fluid for one animal, mL.</summary>
    public double TotalMl { get; private init; }

    /// <summary>The dose reached, mL per kg of the whole animal.</summary>
    public required double DoseMlPerKg { get; init; }

    /// <summary>The dose asked for, and what is published.</summary>
    public required SourcedBand PublishedDose { get; init; }

    /// <summary>The syringe; null where nothing is injected.</summary>
    public Syringe? Syringe { get; init; }

    /// <summary>Plans the injection of an animal.</summary>
    /// <param name="body">Its measure.</param>
    /// <param name="doseMlPerKg">mL per kg; null for the group's own.</param>
    /// <param name="sites">Volume a site by region name, <c>other</c> for the rest; null for custom by thickness.</param>
    /// <returns>
    /// The plan for one animal. Findings: <c>unknown-region</c>, <c>dose-not-positive</c>, <c>site-volume-not-positive</c> (errors, no plan),
    /// <c>dose-over-published</c>, <c>many-sites</c> (warnings), <c>not-injected-by-custom</c>, <c>left-whole</c> (notes).
    /// </returns>
    public static Checked<InjectionPlan> For(BodyMeasure body, double? doseMlPerKg = null, IReadOnlyDictionary<string, SiteVolume>? sites = null)
    {
        ArgumentNullException.ThrowIfNull(body);
        var group = body.Group;
        var findings = new List<Finding>();
        FindFaults(group, doseMlPerKg, sites, findings);
        if (findings.Count > 0) return new(null, [.. findings]);

        var dose = doseMlPerKg ?? group.DoseMlPerKg.Nominal;
        var regions = LeftWhole(body, findings) ? [] : Injected(body, dose, sites);
        if (regions.IsEmpty && findings.Count == 0) findings.Add(Finding.Note("not-injected-by-custom", NotInjected.With(("group", group.Name))));

        var (count, total, most) = (0, 0.0, 0.0);
        foreach (var region in regions) (count, total, most) = (count + region.Sites, total + region.TotalMl, Math.Max(most, region.SiteMl));
        var plan = new InjectionPlan
        {
            Regions = regions,
            Sites = count,
            TotalMl = total,
            DoseMlPerKg = total / body.Mass.Nominal.Kilograms,
            PublishedDose = group.DoseMlPerKg,
            Syringe = regions.IsEmpty ? null : Syringe.For(most, total),
        };
        if (plan.DoseMlPerKg > group.DoseMlPerKg.High)
        {
            var (reached, published) = (PerKilogram(plan.DoseMlPerKg, plan.DoseMlPerKg), PerKilogram(group.DoseMlPerKg.Low, group.DoseMlPerKg.High));
            findings.Add(Finding.Warning("dose-over-published", TooMuch.With(("dose", reached), ("published", published)), TooMuchRemedy));
        }

        if (count > ManySites)
        {
            // 100 to 286 mL/kg: see the sources of the doses.
            var kg = body.Mass.Nominal.Kilograms;
            findings.Add(Finding.Warning(
                "many-sites",
                TooMany.With(("sites", count), ("most", Volume.FromMilliliters(most))),
                TooManyRemedy.With(("volume", new QuantityRange(0.1e-3 * kg, 0.286e-3 * kg, Dimension.OfVolume)))));
        }

        return new(plan, [.. findings]);
    }

    private static QuantityRange PerKilogram(double lowMl, double highMl) => new(lowMl * 1e-6, highMl * 1e-6, Dimension.OfSpecificVolume);

    private static void FindFaults(TaxonGroup group, double? dose, IReadOnlyDictionary<string, SiteVolume>? sites, List<Finding> findings)
    {
        if (dose is { } given && !(given > 0)) findings.Add(Finding.Error("dose-not-positive", NoDose.With(("dose", given)), NoDoseRemedy));
        if (sites is null) return;
        foreach (var (name, volume) in sites)
        {
            if (name != Other && !HasRegion(group, name))
            {
                string[] names = [.. group.Regions.SelectMany(r => r.Aliases.Add(r.Id)), Other];
                findings.Add(Finding.Error("unknown-region", UnknownRegion.With(("group", group.Name), ("region", name)), Suggestion.For(name, names)));
            }

            if (!(volume.LowMl > 0 && volume.LowMl <= volume.HighMl))
            {
                var message = NoRange.With(("low", volume.LowMl), ("high", volume.HighMl), ("region", name));
                findings.Add(Finding.Error("site-volume-not-positive", message, NoRangeRemedy));
            }
        }
    }

    private static bool HasRegion(TaxonGroup group, string name)
    {
        foreach (var region in group.Regions)
        {
            if (region.IsNamed(name)) return true;
        }

        return false;
    }

    private static ImmutableArray<RegionInjection> Injected(BodyMeasure body, double dose, IReadOnlyDictionary<string, SiteVolume>? sites)
    {
        var injected = new RegionInjection[body.Regions.Length];
        var count = 0;
        foreach (var part in body.Regions)
        {
            if (part.Region.InjectAt is null || IsThin(part, body.Group)) continue;
            injected[count++] = Inject(part, dose, body.Group.DensityKgPerM3.Nominal, Named(sites, part.Region));
        }

        return [.. injected.AsSpan(0, count)];
    }

    /// <summary>Whether the whole animal is thin enough to be left alone by custom.</summary>
    internal static bool LeftWhole(BodyMeasure body, List<Finding>? findings = null)
    {
        var half = body.HalfThickness.Nominal.Millimeters;
        if (half >= body.Group.WholeUpToMm.Nominal) return false;
        if (findings is null) return true;
        var hasCavity = false;
        foreach (var part in body.Regions) hasCavity |= part.Region is { IsCavity: true, InjectAt: not null };
        var message = Whole.With(("half", body.HalfThickness.Nominal), ("most", Length.FromMillimeters(body.Group.WholeUpToMm.Nominal)));
        findings.Add(Finding.Note("left-whole", message, hasCavity && half >= 3 ? WholeRemedy : default(Message)));
        return true;
    }

    /// <summary>Whether a part is so thin that custom spares it needle and knife; a cavity never is.</summary>
    internal static bool IsThin(in RegionMeasure part, TaxonGroup group) =>
        !part.Region.IsCavity && part.HalfThickness.Nominal.Millimeters < SparedUpToMm(part.Region, group);

    /// <summary>The half-thickness up to which a part is spared: muscle is left alone for longer than a cavity.</summary>
    /// <remarks>Mouse: cavities only; fish: muscle over 300 mm.</remarks>
    internal static double SparedUpToMm(BodyRegion region, TaxonGroup group) => region.IsCavity ? group.WholeUpToMm.Nominal : group.WholeUpToMm.High;

    private static RegionInjection Inject(in RegionMeasure part, double dose, double densityKgPerM3, SiteVolume? asked)
    {
        var half = part.HalfThickness.Nominal.Millimeters;
        var range = asked ?? SiteVolume.ByThickness(2 * half);
        var wanted = range.Choose(2 * half);
        var massG = part.Mass.Nominal.Grams / part.Region.Count;
        var doseMl = massG / 1000 * dose;

        // The part's own dose is shared evenly over its sites, so that a larger animal never gets less; fewer sites where a share would fall below the range.
        var sites = SiteVolume.Sites(massG, dose, wanted);
        if (doseMl / sites < range.LowMl) sites = Math.Max(1, (int)(doseMl / range.LowMl));
        var siteMl = doseMl / sites;

        // Tissue to a site by the dose alone, not by the whole number of sites: rounding up only does better, and time stays monotone in mass.
        var reach = EffectiveDepth.DepotsMm(wanted, wanted / (dose * densityKgPerM3 / 1e6));
        var all = sites * part.Region.Count;
        return new(part.Region, all, range, siteMl, siteMl * sites * part.Region.Count, reach, Syringe.Gauge(siteMl), Syringe.NeedleLengthMm(half));
    }

    private static SiteVolume? Named(IReadOnlyDictionary<string, SiteVolume>? sites, BodyRegion region)
    {
        if (sites is null) return null;
        if (sites.TryGetValue(region.Id, out var own)) return own;
        foreach (var name in region.Aliases)
        {
            if (sites.TryGetValue(name, out own)) return own;
        }

        return sites.TryGetValue(Other, out var rest) ? rest : null;
    }
}
