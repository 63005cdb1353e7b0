using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Protocolist.Findings;
using Protocolist.Quantities;
using UnitsNet;

namespace Protocolist.Specimens.Fixation;

/// <summary>One way of injecting that makes a body safe by a time.</summary>
/// <param name="SiteMl">Fluid at one site, mL.</param>
/// <param name="Sites">Number of sites in the whole body.</param>
/// <param name="SpacingMm">Site to site, mm.</param>
/// <param name="TotalMl">All the fluid, mL.</param>
/// <param name="DoseMlPerKg">The same per kg.</param>
/// <param name="IsPractical">Whether the dose is one that needle work reaches, and the sites are no more than a person sets.</param>
internal sealed record InjectionOption(double SiteMl, int Sites, double SpacingMm, double TotalMl, double DoseMlPerKg, bool IsPractical);

/// <summary>The question turned round: which cuts, and how many injections, make a body safe by a given time.</summary>
internal sealed record SafeguardPlan
{
    private static readonly double[] SiteSizesMl = [0.1, 0.25, 0.5, 1, 2, 5, 10, 20];

    private static readonly Phrase NoTime =
        new("no-time-to-bind", "{time:0.# h} is no more than the {binding:0 h} that fixative needs to bind once it is there");
    private static readonly Phrase NoTimeRemedy = new("no-time-to-bind.remedy", "allow more time: no cut and no needle shortens the binding");
    private static readonly Phrase NotByNeedle = new(
        "no-needle-work-suffices",
        "to leave no more than {depth:0.# mm} to cross within {time:0.# days}, needle work would take {sites} sites and {dose:0 mL/kg}");
    private static readonly Phrase NotByNeedleRemedy = new("no-needle-work-suffices.remedy", "perfuse by an artery, cut as well, or allow more time");

    /// <summary>The depth that is surely fixed by then, mm.</summary>
    public required double SafeDepthMm { get; init; }

    /// <summary>Whether the body is safe by then even whole.</summary>
    public required bool IsSafeWhole { get; init; }

    /// <summary>Spacing of long cuts, mm: as long as the part is wide, or end to end.</summary>
    public required double LongCutSpacingMm { get; init; }

    /// <summary>Spacing of cuts of half an inch, mm, in rows set off by half.</summary>
    public required double ShortCutSpacingMm { get; init; }

    /// <summary>Least depth of the cuts in the thickest place, mm; 0 where none are needed.</summary>
    public required double CutDepthMm { get; init; }

    /// <summary>Ways to inject, the practical ones first, and of those the one with the fewest sites.</summary>
    public required ImmutableArray<InjectionOption> Injections { get; init; }

    /// <summary>Answers for a body and a time.</summary>
    /// <param name="body">Its measure.</param>
    /// <param name="hours">Time from the first fluid to the end of fixation, h.</param>
    /// <param name="fixative">The fixative.</param>
    /// <param name="temperatureC">Temperature of the bath, °C.</param>
    /// <returns>
    /// The ways; null where there is none. Findings: those of <see cref="Warmth.Check"/>, <c>no-time-to-bind</c> (errors),
    /// <c>no-needle-work-suffices</c> (warning).
    /// </returns>
    public static Checked<SafeguardPlan> For(BodyMeasure body, double hours, Fixative fixative = Fixative.Formaldehyde, double temperatureC = 20)
    {
        ArgumentNullException.ThrowIfNull(body);
        if (Warmth.Check(temperatureC) is { } unfit) return new(null, [unfit]);
        var bath = new FixingBath(fixative, temperatureC);

        // The slowest tissue in the body decides.
        var depth = double.PositiveInfinity;
        foreach (var part in body.Regions) depth = Math.Min(depth, bath.SafeDepthMm(hours, part.Region.Tissue));
        if (!(depth > 0))
        {
            var message = NoTime.With(Hours("time", hours), Hours("binding", bath.Binding.HighHours));
            return new(null, [Finding.Error("no-time-to-bind", message, NoTimeRemedy)]);
        }

        var half = body.HalfThickness.Nominal.Millimeters;
        var whole = half <= depth;
        var options = whole ? [] : Options(body, depth);
        var plan = new SafeguardPlan
        {
            SafeDepthMm = depth,
            IsSafeWhole = whole,
            LongCutSpacingMm = 2 * depth,
            ShortCutSpacingMm = EffectiveDepth.CutSpacingMm(depth, 12.5), // half an inch: common practice
            CutDepthMm = Math.Max(0, 2 * (half - depth)),
            Injections = options,
        };

        // The practical ones stand first.
        if (whole || options[0].IsPractical) return new(plan, []);
        var work = NotByNeedle.With(
            ("depth", Length.FromMillimeters(depth)), Hours("time", hours), ("sites", options[0].Sites),
            Argument.Of("dose", options[0].DoseMlPerKg * 1e-6, Dimension.OfSpecificVolume));
        return new(plan, [Finding.Warning("no-needle-work-suffices", work, NotByNeedleRemedy)]);
    }

    private static Argument Hours(string name, double hours) => Argument.Of(name, hours * 3600, Dimension.OfTime);

    private static ImmutableArray<InjectionOption> Options(BodyMeasure body, double depthMm)
    {
        var most = Math.Max(SiteVolume.ByThickness(body.HalfThickness.Nominal.Millimeters * 2).HighMl, SiteSizesMl[0]);
        var fitting = 0;
        while (fitting < SiteSizesMl.Length && SiteSizesMl[fitting] <= most) fitting++;
        var options = new InjectionOption[fitting];
        for (var i = 0; i < fitting; i++) options[i] = Option(body, depthMm, SiteSizesMl[i]);
        Array.Sort(options, Better);
        return ImmutableCollectionsMarshal.AsImmutableArray(options);
    }

    /// <summary>What a person can do before what nobody can; then fewer sites; then less fluid.</summary>
    private static int Better(InjectionOption a, InjectionOption b) =>
        a.IsPractical != b.IsPractical ? b.IsPractical.CompareTo(a.IsPractical)
        : a.Sites != b.Sites ? a.Sites.CompareTo(b.Sites)
        : a.TotalMl.CompareTo(b.TotalMl);

    private static InjectionOption Option(BodyMeasure body, double depthMm, double siteMl)
    {
        var spacing = EffectiveDepth.GridSpacingMm(depthMm, EffectiveDepth.DepotRadiusMm(siteMl));
        var sites = (int)Math.Ceiling(body.Volume.Nominal.Milliliters / Math.Pow(spacing / 10, 3));
        var dose = sites * siteMl / body.Mass.Nominal.Kilograms;
        return new(siteMl, sites, spacing, sites * siteMl, dose, dose <= body.Group.DoseMlPerKg.High && sites <= InjectionPlan.ManySites);
    }
}
