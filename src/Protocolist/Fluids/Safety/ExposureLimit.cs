using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Fluids;

/// <summary>A limit for the air that people breathe, of one authority.</summary>
/// <param name="Substance">The vapour, by the id of its <see cref="Solute"/>.</param>
/// <param name="Authority">Who set it, where, and in which edition.</param>
/// <param name="Kind">Which average it limits.</param>
/// <param name="Ppm">The limit, parts per million by volume.</param>
/// <param name="MilligramsPerCubicMetre">The same in mg/m³.</param>
/// <param name="Year">Year of the rule or of the edition that was read; but for the EU directive from memory.</param>
public sealed record ExposureLimit(string Substance, string Authority, ExposureKind Kind, double Ppm, double MilligramsPerCubicMetre, int Year)
{
    /// <summary>Whether it is law where its authority rules; else it is recommended.</summary>
    public bool IsLaw { get; init; }
}

/// <summary>What an exposure limit is an average over.</summary>
public enum ExposureKind
{
    /// <summary>Over 8 hours (10 for NIOSH).</summary>
    WorkingDay,

    /// <summary>Over 15 minutes.</summary>
    FifteenMinutes,

    /// <summary>Never to be exceeded.</summary>
    Ceiling,

    /// <summary>From here on measures have to be taken, over 8 hours.</summary>
    ActionLevel,

    /// <summary>Immediately dangerous to life or health.</summary>
    ImmediateDanger,
}

/// <summary>Exposure limits of the vapours of preservation fluids. Facts for information: the law of the place and the current edition prevail.</summary>
internal static class ExposureLimits
{
    private static readonly Phrase Limits = new("caution.limits", "Limits for {substance} in air, ppm: {limits:; }.");
    private static readonly Phrase Authority = new("caution.limits.authority", "{authority}, {year}: {limits}");
    private static readonly Phrase ADay = new("caution.limits.day", "{ppm:0.###} a day");
    private static readonly Phrase Never = new("caution.limits.ceiling", "never above {ppm:0.###}");
    private static readonly Phrase Briefly = new("caution.limits.briefly", "{ppm:0.###} for 15 minutes");

    /// <summary>The limits of every authority for one substance, dated; empty where it has none.</summary>
    public static Message Said(Phrase substance, ImmutableArray<ExposureLimit> all)
    {
        var authorities = all
            .Where(l => l.Kind is ExposureKind.WorkingDay or ExposureKind.FifteenMinutes or ExposureKind.Ceiling)
            .GroupBy(l => (l.Authority, l.Year))
            .Select(g => Authority.With(("authority", g.Key.Authority), ("year", g.Key.Year), Argument.Messages("limits", g.Select(Said))));
        return all.IsEmpty ? default : Limits.With(("substance", substance), Argument.Messages("limits", authorities));
    }

    private static Message Said(ExposureLimit limit) => (limit.Kind switch
    {
        ExposureKind.WorkingDay => ADay,
        ExposureKind.Ceiling => Never,
        _ => Briefly,
    }).With(("ppm", limit.Ppm));

    /// <summary>The limits that concern a fluid's vapours.</summary>
    /// <param name="fluid">The fluid.</param>
    /// <returns>Its limits; none for water.</returns>
    public static ImmutableArray<ExposureLimit> Of(Fluid fluid)
    {
        ArgumentNullException.ThrowIfNull(fluid);
        var limits = ImmutableArray.CreateBuilder<ExposureLimit>();
        foreach (var (what, share) in fluid.Composition.Shares)
        {
            if (100 * share >= what.ToldFromMassPercent) limits.AddRange(what.Limits);
        }

        return limits.DrainToImmutable();
    }
}
