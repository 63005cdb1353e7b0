namespace Protocolist.Fluids.Densities;

/// <summary>Density of air-free water at 101.325 kPa, the CIPM formula.</summary>
/// <remarks>Source: Tanaka, Girard, Davis, Peuto and Bignell 2001, Metrologia 38, 301 (recommended by the CIPM); 0 to 40 °C, within 0.001 kg/m³.</remarks>
internal static class WaterDensity
{
    /// <summary>Lowest temperature of the formula, °C.</summary>
    public const double LowestCelsius = 0;

    /// <summary>Highest temperature of the formula, °C.</summary>
    public const double HighestCelsius = 40;

    /// <summary>Half the width of the band around the density of any water on a bench, kg/m³: air in it and a trace of salts (estimate).</summary>
    public const double Doubt = 0.02;

    /// <summary>Density in kg/m³ at <paramref name="celsius"/> (0 to 40).</summary>
    public static double Of(double celsius)
    {
        // The five constants of Tanaka et al. 2001, table 1.
        const double a1 = -3.983035, a2 = 301.797, a3 = 522528.9, a4 = 69.34881, a5 = 999.974950;
        var fromMaximum = celsius + a1;
        return a5 * (1 - fromMaximum * fromMaximum * (celsius + a2) / (a3 * (celsius + a4)));
    }
}
