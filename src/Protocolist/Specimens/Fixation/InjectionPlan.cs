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
/// <param name="Needle">The needle.</param>
/// <param name="NeedleLengthMm">Its length, mm.</param>
/// <param name="SyringeMl">Size of the syringe, mL.</param>
internal sealed record RegionInjection(
    BodyRegion Region, int Sites, SiteVolume SiteRange, double SiteMl, double TotalMl, double ReachMm, Needle Needle, int NeedleLengthMm, int SyringeMl);

/// <summary>What a protocol asks of an injection.</summary>
/// <param name="DoseMlPerKg">All the fluid, mL per kg of the whole animal; null for the group's own, each part by its mass.</param>
/// <param name="Sites">Volume a site by region name, <c>other</c> for the rest; null for custom by thickness.</param>
/// <param name="SpacingMm">From site to site along a part, mm; null where the dose alone decides.</param>
internal sealed record InjectionWish(double? DoseMlPerKg, IReadOnlyDictionary<string, SiteVolume>? Sites = null, double? SpacingMm = null);

/// <summary>Where, how much and with what one animal is injected.</summary>
internal sealed record InjectionPlan
{
    // Two to three hours of needle work; beyond it perfusion is the better way: judgement.
    internal const int ManySites = 150;

    /// <summary>The most that one part takes, mL per kg of it: the upper end of what is published for perfusion; see the sources of the doses.</summary>
    private const double MostMlPerKgOfPart = 286;

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
    private static readonly Phrase TooMany = new(
        "many-sites", "{sites} sites of up to {most:0.## mL} are {work:0.# h} of needle work on one animal, more than one person does at a stretch");
    private static readonly Phrase TooManyRemedy = new(
        "many-sites.remedy",
        "perfuse by a neck or thigh artery with {volume:0.# L}, the fluid standing 1.2 to 1.5 m above the heart, fill the cavities, "
        + "then inject what stayed soft; where no artery takes it, share the sites out among several people");
    private static readonly Phrase TooSmall = new("too-small-to-inject", "{all} in all is less than a syringe doses ({least}): it is not injected");
    private static readonly Phrase TooSmallRemedy = new("too-small-to-inject.remedy", "fluid reaches the middle of so small a body from outside");
    private static readonly Phrase Whole = new("left-whole", "with a half-thickness of {half:0.# mm} it is left whole by custom, up to {most:0.# mm}");
    private static readonly Phrase WholeRemedy = new("left-whole.remedy", "one small injection into the body cavity does no harm");

    /// <summary>The regions injected, in the order of the group's table; empty where the animal is left whole.</summary>
    public required ImmutableArray<RegionInjection> Regions { get; init; }

    /// <summary>All sites.</summary>
    public int Sites { get; private init; }

    /// <summary>Needle work on one animal, min.</summary>
    public double Minutes { get; private init; }

    /// <summary>All the fluid for one animal, mL.</summary>
    public double TotalMl { get; private init; }

    /// <summary>The dose reached, mL per kg of the whole animal.</summary>
    public required double DoseMlPerKg { get; init; }

    /// <summary>The dose asked for, and what is published.</summary>
    public required SourcedBand PublishedDose { get; init; }

    /// <summary>Plans the injection of an animal.</summary>
    /// <param name="body">Its measure.</param>
    /// <param name="wish">What a protocol asks; null for custom alone.</param>
    /// <returns>
    /// The plan for one animal. What custom leaves whole has one filling of its cavity where a protocol asks for injection. Findings:
    /// <c>unknown-region</c>, <c>dose-not-positive</c>, <c>site-volume-not-positive</c> (errors, no plan), <c>dose-over-published</c>, <c>many-sites</c>
    /// (warnings), <c>not-injected-by-custom</c>, <c>left-whole</c>, <c>too-small-to-inject</c> (notes).
    /// </returns>
    public static Checked<InjectionPlan> For(BodyMeasure body, InjectionWish? wish = null)
    {
        ArgumentNullException.ThrowIfNull(body);
        var group = body.Group;
        var findings = new List<Finding>();
        FindFaults(group, wish, findings);
        if (findings.Count > 0) return new(null, [.. findings]);

        var whole = LeftWhole(body);
        var regions = whole && wish is null ? [] : Injected(body, wish ?? new(null), whole, findings);
        if (whole && regions.IsEmpty && findings.Count == 0) TellWhole(body, findings);
        if (regions.IsEmpty && findings.Count == 0) findings.Add(Finding.Note("not-injected-by-custom", NotInjected.With(("group", group.Name))));

        var (count, total, most, minutes) = (0, 0.0, 0.0, 0.0);
        foreach (var region in regions)
            (count, total, most, minutes) = (
                count + region.Sites, total + region.TotalMl, Math.Max(most, region.SiteMl), minutes + (region.Sites * NeedleMinutes(region.SiteMl)));
        var plan = new InjectionPlan
        {
            Regions = regions,
            Sites = count,
            TotalMl = total,
            Minutes = minutes,
            DoseMlPerKg = total / body.Mass.Nominal.Kilograms,
            PublishedDose = group.DoseMlPerKg,
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
                TooMany.With(("sites", count), ("most", Volume.FromMilliliters(most)), Argument.Of("work", minutes * 60, Dimension.OfTime)),
                TooManyRemedy.With(("volume", new QuantityRange(0.1e-3 * kg, 0.286e-3 * kg, Dimension.OfVolume)))));
        }

        return new(plan, [.. findings]);
    }

    /// <summary>Work at one site, min: half a minute for a little fluid, a minute up to 10 mL, more above, refilling counted. Common practice.</summary>
    private static double NeedleMinutes(double siteMl) => siteMl switch { < 2 => 0.5, < 10 => 1, < 20 => 1.5, _ => 1 + (siteMl / 40) };

    private static QuantityRange PerKilogram(double lowMl, double highMl) => new(lowMl * 1e-6, highMl * 1e-6, Dimension.OfSpecificVolume);

    private static void FindFaults(TaxonGroup group, InjectionWish? wish, List<Finding> findings)
    {
        if (wish?.DoseMlPerKg is { } given && !(given > 0)) findings.Add(Finding.Error("dose-not-positive", NoDose.With(("dose", given)), NoDoseRemedy));
        if (wish?.Sites is not { } sites) return;
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

    /// <param name="body">The measure of one animal.</param>
    /// <param name="wish">What is asked.</param>
    /// <param name="cavityOnly">Whether it is so thin that its cavity alone is filled.</param>
    /// <param name="findings">Takes what is found.</param>
    private static ImmutableArray<RegionInjection> Injected(BodyMeasure body, InjectionWish wish, bool cavityOnly, List<Finding> findings)
    {
        var dose = wish.DoseMlPerKg ?? body.Group.DoseMlPerKg.Nominal;
        Span<bool> takes = stackalloc bool[body.Regions.Length];
        var (share, ofCavities, largest, can) = (0.0, 0.0, -1, false);
        for (var i = 0; i < takes.Length; i++)
        {
            var part = body.Regions[i];
            if (part.Region.InjectAt is null || IsThin(part, body.Group) || (cavityOnly && !part.Region.IsCavity)) continue;
            can = true;
            if (part.Region.IsCavity && (largest < 0 || part.Region.Share > body.Regions[largest].Region.Share)) largest = i;
            if (part.Mass.Nominal.Kilograms / part.Region.Count * dose < Syringe.LeastMl) continue;
            (takes[i], share) = (true, share + part.Region.Share);
            if (part.Region.IsCavity) ofCavities += part.Region.Share;
        }

        if (!can) return [];

        // Too little for every part by itself is one filling of the largest cavity.
        if (share == 0 && largest >= 0 && body.Regions[largest] is { Region: { Share: var own, Count: var pieces } }
            && body.Mass.Nominal.Kilograms * own / pieces * IntoCavities(own, own) >= Syringe.LeastMl)
            (takes[largest], share, ofCavities) = (true, own, own);
        if (share == 0)
        {
            var (all, least) = (Volume.FromMilliliters(body.Mass.Nominal.Kilograms * dose), Volume.FromMilliliters(Syringe.LeastMl));
            findings.Add(Finding.Note("too-small-to-inject", TooSmall.With(("all", all), ("least", least)), TooSmallRemedy));
            return [];
        }

        var cavityDose = ofCavities > 0 ? IntoCavities(share, ofCavities) : dose;
        var injected = ImmutableArray.CreateBuilder<RegionInjection>(takes.Length);
        for (var i = 0; i < takes.Length; i++)
        {
            if (takes[i]) injected.Add(Inject(body.Regions[i], body, body.Regions[i].Region.IsCavity ? cavityDose : dose, wish));
        }

        return injected.DrainToImmutable();

        // A protocol's dose is all the fluid: what the parts that are spared would have had goes into the cavities, as far as they take it.
        double IntoCavities(double taken, double cavities) =>
            wish.DoseMlPerKg is null ? dose : Math.Max(dose, Math.Min(dose * (1 - taken + cavities) / cavities, MostMlPerKgOfPart));
    }

    /// <summary>Whether the whole animal is thin enough to be left alone by custom.</summary>
    internal static bool LeftWhole(BodyMeasure body) => body.HalfThickness.Nominal.Millimeters < body.Group.WholeUpToMm.Nominal;

    /// <summary>Says that it is left whole.</summary>
    internal static void TellWhole(BodyMeasure body, List<Finding> findings)
    {
        var hasCavity = false;
        foreach (var part in body.Regions) hasCavity |= part.Region is { IsCavity: true, InjectAt: not null };
        var message = Whole.With(("half", body.HalfThickness.Nominal), ("most", Length.FromMillimeters(body.Group.WholeUpToMm.Nominal)));
        findings.Add(Finding.Note("left-whole", message, hasCavity && body.HalfThickness.Nominal.Millimeters >= 3 ? WholeRemedy : default(Message)));
    }

    /// <summary>Whether a part is so thin that custom spares it needle and knife; a cavity never is.</summary>
    internal static bool IsThin(in RegionMeasure part, TaxonGroup group) =>
        !part.Region.IsCavity && part.HalfThickness.Nominal.Millimeters < SparedUpToMm(part.Region, group);

    /// <summary>The half-thickness up to which a part is spared: muscle is left alone for longer than a cavity.</summary>
    /// <remarks>Mouse: cavities only; fish: muscle over 300 mm.</remarks>
    internal static double SparedUpToMm(BodyRegion region, TaxonGroup group) => region.IsCavity ? group.WholeUpToMm.Nominal : group.WholeUpToMm.High;

    private static RegionInjection Inject(in RegionMeasure part, BodyMeasure body, double dose, InjectionWish wish)
    {
        var half = part.HalfThickness.Nominal.Millimeters;
        var range = Named(wish.Sites, part.Region) ?? SiteVolume.ByThickness(2 * half);
        var wanted = range.Choose(2 * half);
        var massG = part.Mass.Nominal.Grams / part.Region.Count;
        var doseMl = massG / 1000 * dose;

        // The part's own dose is shared evenly over its sites, so that a larger animal never gets less; fewer sites where a share would fall below the range.
        var sites = SiteVolume.Sites(massG, dose, wanted);
        if (doseMl / sites < range.LowMl) sites = Math.Max(1, (int)(doseMl / range.LowMl));

        // Tissue to a site by the dose alone, not by the whole number of sites: rounding up only does better, and time stays monotone in mass.
        var reach = EffectiveDepth.DepotsMm(wanted, wanted / (dose * body.Group.DensityKgPerM3.Nominal / 1e6));
        if (wish.SpacingMm is > 0 and var apart && PartSize.AlongMm(part, body) is var along && along > apart)
        {
            // Site after site along the part, as many as a syringe can dose and none above what a site takes.
            var row = (int)Math.Min(Math.Ceiling((along / apart) - 1e-9), Math.Max(1, Math.Floor(doseMl / Syringe.LeastMl)));
            sites = Math.Max(row, SiteVolume.Sites(massG, dose, range.HighMl));
            reach = Math.Max(reach, EffectiveDepth.DepotsMm(doseMl / sites, massG / body.Group.DensityKgPerM3.Nominal * 1000 / sites));
        }

        // A body that is one cavity, as a sea urchin is, is filled through one opening.
        if (part.Region is { IsCavity: true, Share: 1 }) sites = 1;
        var siteMl = doseMl / sites;
        var (needle, length) = Needle.For(part, siteMl, PartSize.WallMm(part, body));
        return new(
            part.Region, sites * part.Region.Count, range, siteMl, siteMl * sites * part.Region.Count, reach, needle, length,
            Syringe.For(siteMl, sites * part.Region.Count));
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
