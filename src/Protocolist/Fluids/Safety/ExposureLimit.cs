using System.Collections.Immutable;

namespace Protocolist.Fluids.Safety;

/// <summary>A limit for the air that people breathe, of one authority.</summary>
/// <param name="Substance">The vapour.</param>
/// <param name="Authority">Who set it, where, and in which edition.</param>
/// <param name="Kind">Which average it limits.</param>
/// <param name="Ppm">The limit, parts per million by volume.</param>
/// <param name="MilligramsPerCubicMetre">The same in mg/m³.</param>
/// <param name="Year">Year of the rule or of the edition that was read.</param>
public sealed record ExposureLimit(string Substance, string Authority, ExposureKind Kind, double Ppm, double MilligramsPerCubicMetre, int Year);

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
public static class ExposureLimits
{
    // mg/m³ per ppm at 25 °C: molar mass over 24.45 L/mol.
    private const double PerPpmFormaldehyde = 30.026 / 24.45;
    private const double PerPpmEthanol = 46.069 / 24.45;
    private const double PerPpmIsopropanol = 60.096 / 24.45;
    private const double PerPpmMethanol = 32.042 / 24.45;

    /// <summary>All of them. The years of rules and editions other than the EU directive's are from memory.</summary>
    public static ImmutableArray<ExposureLimit> All { get; } =
    [
        // 29 CFR 1910.1048.
        Formaldehyde("OSHA 29 CFR 1910.1048 (USA)", ExposureKind.WorkingDay, 0.75, 1992),
        Formaldehyde("OSHA 29 CFR 1910.1048 (USA)", ExposureKind.FifteenMinutes, 2, 1992),
        Formaldehyde("OSHA 29 CFR 1910.1048 (USA)", ExposureKind.ActionLevel, 0.5, 1992),
        // NIOSH Pocket Guide 0293.
        Formaldehyde("NIOSH Pocket Guide (USA, recommended)", ExposureKind.WorkingDay, 0.016, 2019),
        Formaldehyde("NIOSH Pocket Guide (USA, recommended)", ExposureKind.Ceiling, 0.1, 2019),
        Formaldehyde("NIOSH Pocket Guide (USA, recommended)", ExposureKind.ImmediateDanger, 20, 2019),
        // Read as the notice of intended changes of 2016; that it was adopted in 2017 is from memory.
        Formaldehyde("ACGIH (recommended; read as the 2016 notice)", ExposureKind.WorkingDay, 0.1, 2017),
        Formaldehyde("ACGIH (recommended; read as the 2016 notice)", ExposureKind.FifteenMinutes, 0.3, 2017),
        new("formaldehyde", "Directive (EU) 2019/983", ExposureKind.WorkingDay, 0.3, 0.37, 2019),
        new("formaldehyde", "Directive (EU) 2019/983", ExposureKind.FifteenMinutes, 0.6, 0.74, 2019),
        Ethanol("OSHA and NIOSH (USA)", ExposureKind.WorkingDay, 1000, 2019),
        Ethanol("NIOSH Pocket Guide (USA)", ExposureKind.ImmediateDanger, 3300, 2019),
        // From memory.
        Ethanol("ACGIH (recommended)", ExposureKind.FifteenMinutes, 1000, 2009),
        // NIOSH Pocket Guide 0359.
        Isopropanol("OSHA and NIOSH (USA)", ExposureKind.WorkingDay, 400, 2019),
        Isopropanol("NIOSH Pocket Guide (USA, recommended)", ExposureKind.FifteenMinutes, 500, 2019),
        Isopropanol("NIOSH Pocket Guide (USA)", ExposureKind.ImmediateDanger, 2000, 2019),
        // From memory.
        Isopropanol("ACGIH (recommended)", ExposureKind.WorkingDay, 200, 2003),
        Isopropanol("ACGIH (recommended)", ExposureKind.FifteenMinutes, 400, 2003),
        // From memory: OSHA table Z-1.
        new("methanol", "OSHA table Z-1 (USA)", ExposureKind.WorkingDay, 200, 200 * PerPpmMethanol, 1993),
    ];

    /// <summary>The limits that concern a fluid's vapours.</summary>
    /// <param name="fluid">The fluid.</param>
    /// <returns>Its limits; none for water.</returns>
    public static ImmutableArray<ExposureLimit> Of(Fluid fluid)
    {
        ArgumentNullException.ThrowIfNull(fluid);
        return [.. All.Where(l => l.Substance switch
        {
            "formaldehyde" => fluid.HasFormaldehyde,
            "methanol" => fluid.MethanolMassPercent >= 3,
            "ethanol" => fluid.Kind is FluidKind.Ethanol,
            _ => fluid.Kind is FluidKind.Isopropanol,
        })];
    }

    private static ExposureLimit Formaldehyde(string authority, ExposureKind kind, double ppm, int year) => new("formaldehyde", authority, kind, ppm, ppm * PerPpmFormaldehyde, year);

    private static ExposureLimit Ethanol(string authority, ExposureKind kind, double ppm, int year) => new("ethanol", authority, kind, ppm, ppm * PerPpmEthanol, year);

    private static ExposureLimit Isopropanol(string authority, ExposureKind kind, double ppm, int year) => new("isopropanol", authority, kind, ppm, ppm * PerPpmIsopropanol, year);
}
