using System.Collections.Immutable;
using Protocolist.Findings;
using static System.FormattableString;

namespace Protocolist.Specimens.Fixation;

/// <summary>One way of injecting that makes a body safe by a time.</summary>
/// <param name="SiteMl">Fluid at one site, mL.</param>
/// <param name="Sites">Number of sites in the whole body.</param>
/// <param name="SpacingMm">Site to site, mm.</param>
/// <param name="TotalMl">All the fluid, mL.</param>
/// <param name="DoseMlPerKg">The same per kg.</param>
/// <param name="IsPractical">Whether the dose is one that needle work reaches, and the sites are no more than a person sets.</param>
public sealed record InjectionOption(double SiteMl, int Sites, double SpacingMm, double TotalMl, double DoseMlPerKg, bool IsPractical);

/// <summary>The question turned round: which cuts, and how many injections, make a body safe by a given time.</summary>
public sealed record SafeguardPlan
{
    private static readonly double[] SiteSizesMl = [0.1, 0.25, 0.5, 1, 2, 5, 10, 20];

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
        if (Warmth.Check(temperatureC) is { } unfit) return new(null, [unfit]);
        // The slowest tissue in the body decides.
        var depth = body.Regions.Min(r => Penetration.SafeDepthMm(hours, r.Region.Tissue, fixative, temperatureC));
        if (!(depth > 0))
        {
            var binding = Warmth.Binding(fixative, temperatureC).HighHours;
            return new(null, [Finding.Error(
                "no-time-to-bind", Invariant($"{hours:0.#} h is no more than the {binding:0} h that fixative needs to bind once it is there"),
                "allow more time: no cut and no needle shortens the binding")]);
        }

        var half = body.HalfThickness.Nominal.Millimeters;
        var whole = half <= depth;
        var options = whole ? [] : Options(body, depth);
        ImmutableArray<Finding> findings = whole || options.Any(o => o.IsPractical) ? [] :
        [
            Finding.Warning(
                "no-needle-work-suffices",
                Invariant($"to leave no more than {depth:0.#} mm to cross within {hours / 24:0.#} days, needle work would take {options[0].Sites} sites and {options[0].DoseMlPerKg:0} mL/kg"),
                "perfuse by an artery, cut as well, or allow more time"),
        ];
        return new(
            new()
            {
                SafeDepthMm = depth,
                IsSafeWhole = whole,
                LongCutSpacingMm = 2 * depth,
                ShortCutSpacingMm = EffectiveDepth.CutSpacingMm(depth, 12.5), // half an inch: common practice
                CutDepthMm = Math.Max(0, 2 * (half - depth)),
                Injections = options,
            },
            findings);
    }

    private static ImmutableArray<InjectionOption> Options(BodyMeasure body, double depthMm)
    {
        var most = SiteVolume.ByThickness(body.HalfThickness.Nominal.Millimeters * 2).HighMl;
        return
        [
            .. SiteSizesMl.Where(v => v <= Math.Max(most, SiteSizesMl[0])).Select(v => Option(body, depthMm, v))
                .OrderByDescending(o => o.IsPractical).ThenBy(o => o.Sites).ThenBy(o => o.TotalMl),
        ];
    }

    private static InjectionOption Option(BodyMeasure body, double depthMm, double siteMl)
    {
        var spacing = EffectiveDepth.GridSpacingMm(depthMm, EffectiveDepth.DepotRadiusMm(siteMl));
        var sites = (int)Math.Ceiling(body.Volume.Nominal.Milliliters / Math.Pow(spacing / 10, 3));
        var dose = sites * siteMl / body.Mass.Nominal.Kilograms;
        return new(siteMl, sites, spacing, sites * siteMl, dose, dose <= body.Group.DoseMlPerKg.High && sites <= InjectionPlan.ManySites);
    }
}
