using System.Collections.Immutable;
using Protocolist.Findings;
using static System.FormattableString;

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
public sealed record RegionInjection(
    BodyRegion Region, int Sites, SiteVolume SiteRange, double SiteMl, double TotalMl, double ReachMm, int NeedleGauge, int NeedleLengthMm);

/// <summary>Where, how much and with what one animal is injected.</summary>
public sealed record InjectionPlan
{
    // Beyond some hours of work perfusion is the better way: judgement.
    internal const int ManySites = 150;

    /// <summary>The regions injected, in the order of the group's table; empty where the animal is left whole.</summary>
    public required ImmutableArray<RegionInjection> Regions { get; init; }

    /// <summary>All sites.</summary>
    public int Sites => Regions.Sum(r => r.Sites);

    /// <summary>All the fluid for one animal, mL.</summary>
    public double TotalMl => Regions.Sum(r => r.TotalMl);

    /// <summary>The dose reached, mL per kg of the whole animal.</summary>
    public required double DoseMlPerKg { get; init; }

    /// <summary>The dose asked for, and what is published.</summary>
    public required SourcedBand PublishedDose { get; init; }

    /// <summary>The syringe; null where nothing is injected.</summary>
    public Syringe? Syringe { get; init; }

    /// <summary>What to watch while injecting: common practice.</summary>
    public static string Caution => "Stop when the part is firm or fluid runs back: fill, do not bloat. Work over a tray and collect what runs back with the fixative waste. Gloves, goggles, extraction.";

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
        var group = body.Group;
        var findings = Faults(group, doseMlPerKg, sites).ToImmutableArray().ToBuilder();
        if (findings.Count > 0) return new(null, findings.ToImmutable());

        var dose = doseMlPerKg ?? group.DoseMlPerKg.Nominal;
        var regions = LeftWhole(body, findings) ? [] : body.Regions
            .Where(r => r.Region.InjectAt.Length > 0 && !IsThin(r, group))
            .Select(r => Inject(r, dose, group.DensityKgPerM3.Nominal, Named(sites, r.Region)))
            .ToImmutableArray();
        if (regions.IsEmpty && findings.Count == 0)
        {
            findings.Add(Finding.Note("not-injected-by-custom", $"a {group.Name} is not injected by custom"));
        }

        var total = regions.Sum(r => r.TotalMl);
        var plan = new InjectionPlan
        {
            Regions = regions,
            DoseMlPerKg = total / body.Mass.Nominal.Kilograms,
            PublishedDose = group.DoseMlPerKg,
            Syringe = regions.IsEmpty ? null : Syringe.For(regions.Max(r => r.SiteMl), total),
        };
        if (plan.DoseMlPerKg > group.DoseMlPerKg.High)
        {
            findings.Add(Finding.Warning(
                "dose-over-published",
                Invariant($"{plan.DoseMlPerKg:0} mL/kg is more than needle work puts in ({group.DoseMlPerKg.Low:0} to {group.DoseMlPerKg.High:0} mL/kg; perfusion 100 to 286)"),
                "stop when firm; the body will bloat before all of it is in"));
        }

        if (plan.Sites > ManySites)
        {
            findings.Add(Finding.Warning(
                "many-sites",
                Invariant($"{plan.Sites} sites of up to {regions.Max(r => r.SiteMl):0.##} mL are many for one animal"),
                Invariant($"perfuse by a neck or thigh artery with {0.1 * body.Mass.Nominal.Kilograms:0.#} to {0.286 * body.Mass.Nominal.Kilograms:0.#} L, then inject what stayed soft")));
        }

        return new(plan, findings.ToImmutable());
    }

    private static IEnumerable<Finding> Faults(TaxonGroup group, double? dose, IReadOnlyDictionary<string, SiteVolume>? sites)
    {
        if (dose is not null and not > 0)
        {
            yield return Finding.Error("dose-not-positive", Invariant($"the dose is {dose} mL/kg"), "give a dose above 0, or none for the group's own");
        }

        var names = group.Regions.SelectMany(r => r.Aliases.Add(r.Id)).Append("other").ToImmutableArray();
        foreach (var (name, volume) in sites ?? ImmutableDictionary<string, SiteVolume>.Empty)
        {
            if (!names.Contains(name, StringComparer.Ordinal))
                yield return Finding.Error("unknown-region", $"a {group.Name} has no region '{name}'", Suggestion.For(name, names));
            if (!(volume.LowMl > 0 && volume.LowMl <= volume.HighMl))
                yield return Finding.Error("site-volume-not-positive", Invariant($"{volume.LowMl} to {volume.HighMl} mL at a site of '{name}' is no range"), "give it as low to high, above 0");
        }
    }

    /// <summary>Whether the whole animal is thin enough to be left alone by custom.</summary>
    internal static bool LeftWhole(BodyMeasure body, ImmutableArray<Finding>.Builder? findings = null)
    {
        var half = body.HalfThickness.Nominal.Millimeters;
        if (half >= body.Group.WholeUpToMm.Nominal) return false;
        findings?.Add(Finding.Note(
            "left-whole",
            Invariant($"with a half-thickness of {half:0.#} mm it is left whole by custom, up to {body.Group.WholeUpToMm.Nominal:0.#} mm"),
            body.Regions.Any(r => r.Region is { IsCavity: true, InjectAt.Length: > 0 }) && half >= 3 ? "one small injection into the body cavity does no harm" : ""));
        return true;
    }

    /// <summary>Whether a part is so thin that custom spares it needle and knife; a cavity never is.</summary>
    internal static bool IsThin(RegionMeasure part, TaxonGroup group) =>
        !part.Region.IsCavity && part.HalfThickness.Nominal.Millimeters < SparedUpToMm(part.Region, group);

    /// <summary>The half-thickness up to which a part is spared: muscle is left alone for longer than a cavity (mouse: cavities only; fish: muscle over 300 mm).</summary>
    internal static double SparedUpToMm(BodyRegion region, TaxonGroup group) => region.IsCavity ? group.WholeUpToMm.Nominal : group.WholeUpToMm.High;

    private static RegionInjection Inject(RegionMeasure part, double dose, double densityKgPerM3, SiteVolume? asked)
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
        return new(
            part.Region, sites * part.Region.Count, range, siteMl, siteMl * sites * part.Region.Count, reach, Syringe.Gauge(siteMl), Syringe.NeedleLengthMm(half));
    }

    private static SiteVolume? Named(IReadOnlyDictionary<string, SiteVolume>? sites, BodyRegion region)
    {
        if (sites is null) return null;
        foreach (var name in region.Aliases.Insert(0, region.Id))
        {
            if (sites.TryGetValue(name, out var own)) return own;
        }

        return sites.TryGetValue("other", out var rest) ? rest : null;
    }
}
