namespace Protocolist.Fluids.Densities;

/// <summary>Density of isopropanol (2-propanol) and water, from a table, with the error that the table bears.</summary>
/// <remarks>
/// No formula like OIML R 22 exists for isopropanol. Source: Lebo 1921, J. Am. Chem. Soc. 43, 1005 (20 °C), with water from CIPM at its
/// lower end so that the two tables join; the CRC Handbook's 102nd edition differs from it by 1.4 kg/m³ at most, pure isopropanol by 0.8.
/// Strengths by volume have the base of 20 °C and Lebo's own pure value. The functions take fractions, not percent.
/// </remarks>
internal static class IsopropanolWater
{
    /// <summary>Lowest temperature at which the thermal expansion is offered, °C.</summary>
    public const double LowestCelsius = 0;

    /// <summary>Highest temperature at which the thermal expansion is offered, °C.</summary>
    public const double HighestCelsius = 40;

    /// <summary>Density of pure isopropanol at 20 °C, kg/m³ (Lebo 1921).</summary>
    public const double PureAt20 = 785.56;

    /// <summary>Half the width of the band around any density of the table at 20 °C, kg/m³: what Lebo and CRC differ by at most, rounded up.</summary>
    public const double TableError = 1.5;

    // Volume expansion near 20 to 30 °C, per K. Pure: 785.5 at 20 to 780.9-781.3 at 25 °C (CRC, TRC; from memory). Half by mass: 8.5e-4
    // (Perry's Handbook, from memory, unsure). Water is left to its own formula.
    private const double PureExpansion = 1.08e-3;
    private const double ExpansionDoubt = 0.15;

    // A share of 0.736 of the pure liquid's expansion, the rest water's (2.07e-4), makes 8.5e-4 at half by mass; a parabola through 0, that and 1.
    private const double ShareLinear = 1.944;

    private static readonly MonotoneCurve At20 = new(
        [0, 0.0958, 0.2139, 0.3317, 0.4302, 0.5307, 0.6522, 0.7435, 0.8509, 0.9035, 1],
        [WaterDensity.Of(20), 982.93, 968.47, 945.90, 924.18, 898.68, 870.03, 848.28, 822.82, 808.66, PureAt20]);

    private static readonly double WaterAt20 = WaterDensity.Of(20);

    /// <summary>Density, kg/m³; see <see cref="DensityError"/>.</summary>
    /// <param name="massFraction">Isopropanol by mass, 0 to 1.</param>
    /// <param name="celsius">Temperature, 0 to 40 °C.</param>
    public static double Density(double massFraction, double celsius)
    {
        var at20 = At20.At(massFraction);
        return celsius == 20 ? at20 : at20 * Shrinkage(massFraction, celsius);
    }

    /// <summary>Half the width of the band around <see cref="Density"/>, kg/m³: the table's error and 15 % of the thermal expansion.</summary>
    public static double DensityError(double massFraction, double celsius) =>
        TableError + ExpansionDoubt * Math.Abs(Density(massFraction, celsius) - At20.At(massFraction));

    /// <summary>The mass fraction whose density is <paramref name="density"/> (kg/m³), or NaN where no mixture has it.</summary>
    public static double MassFraction(double density, double celsius)
    {
        if (celsius == 20) return At20.Where(density);
        double low = 0, high = 1;
        if (!(density <= Density(low, celsius) && density >= Density(high, celsius))) return double.NaN;
        for (var step = 0; step < 50; step++)
        {
            var middle = (low + high) / 2;
            if (Density(middle, celsius) > density) low = middle;
            else high = middle;
        }

        return (low + high) / 2;
    }

    /// <summary>Strength by volume as a fraction (base 20 °C) of a mass fraction.</summary>
    public static double VolumeFraction(double massFraction) => massFraction * At20.At(massFraction) / PureAt20;

    /// <summary>Mass fraction of a strength by volume given as a fraction (base 20 °C).</summary>
    public static double MassFractionOfVolume(double volumeFraction)
    {
        double low = 0, high = 1;
        if (!(volumeFraction >= 0 && volumeFraction <= 1)) return double.NaN;
        for (var step = 0; step < 50; step++)
        {
            var middle = (low + high) / 2;
            if (VolumeFraction(middle) < volumeFraction) low = middle;
            else high = middle;
        }

        return (low + high) / 2;
    }

    /// <summary>Density at a temperature over density at 20 °C: water's own ratio and the pure liquid's, weighted.</summary>
    private static double Shrinkage(double massFraction, double celsius)
    {
        var share = massFraction * (ShareLinear - (ShareLinear - 1) * massFraction);
        return Math.Exp((1 - share) * Math.Log(WaterDensity.Of(celsius) / WaterAt20) - share * PureExpansion * (celsius - 20));
    }
}
