namespace Protocolist.Fluids.Densities;

/// <summary>Density of glycerol and water by mass fraction and temperature.</summary>
/// <remarks>
/// Source: the relation of Volk and Kähler 2018, Experiments in Fluids 59, 75, fitted from 15 to 30 °C; its water is replaced by CIPM water, at most
/// 0.16 kg/m³ denser, so that the dilute end meets the other tables. It agrees within 0.4 kg/m³ with Bosart and Snoddy's specific gravities (Lange's
/// Handbook, 15th edition); the CRC Handbook's 102nd edition is lower by up to 1.0 from 10 to 60 %. Strengths by volume have the base of 20 °C.
/// The functions take fractions, not percent, and do not check their arguments. In the last hundredth of a percent the relation turns, by 0.02 kg/m³:
/// inverses are good to that.
/// </remarks>
internal static class GlycerolWater
{
    /// <summary>Half the width of the band around any density from 15 to 30 °C, kg/m³: what the three sources differ by at most.</summary>
    public const double SourcesDiffer = 1.0;

    // The contraction is fitted within these; beyond, it is carried on, and a tenth of a kilogram a kelvin is added to the doubt (estimate).
    private const double FittedFrom = 15, FittedTo = 30, DoubtPerKelvin = 0.1;

    /// <summary>Density of pure glycerol at 20 °C, kg/m³ (1261.06).</summary>
    public static readonly double PureAt20 = Density(1, 20);

    /// <summary>Density, kg/m³; see <see cref="DensityError"/>.</summary>
    /// <param name="massFraction">Glycerol by mass, 0 to 1.</param>
    /// <param name="celsius">Temperature, 0 to 40 °C.</param>
    public static double Density(double massFraction, double celsius)
    {
        var (w, t) = (massFraction, celsius);
        var glycerol = 1273.3 - 0.6121 * t;
        var a = 1.78e-6 * t * t - 1.82e-4 * t + 1.41e-2;
        // The sine is a hair below zero at the pure end.
        var contraction = 1 + a * Math.Pow(Math.Max(0, Math.Sin(Math.PI * Math.Pow(w, 1.31))), 0.81);
        return contraction / (w / glycerol + (1 - w) / WaterDensity.Of(t));
    }

    /// <summary>Half the width of the band around <see cref="Density"/>, kg/m³.</summary>
    public static double DensityError(double celsius) => SourcesDiffer + DoubtPerKelvin * Math.Max(0, Math.Max(FittedFrom - celsius, celsius - FittedTo));

    /// <summary>The mass fraction whose density is <paramref name="density"/> (kg/m³), or NaN where no mixture has it.</summary>
    public static double MassFraction(double density, double celsius) =>
        density >= Density(0, celsius) && density <= Density(1, celsius) ? Rising(w => Density(w, celsius), density) : double.NaN;

    /// <summary>Mass fraction of a strength by volume given as a fraction (base 20 °C).</summary>
    public static double MassFractionOfVolume(double volumeFraction) =>
        volumeFraction is >= 0 and <= 1 ? Rising(w => w * Density(w, 20) / PureAt20, volumeFraction) : double.NaN;

    private static double Rising(Func<double, double> of, double wanted)
    {
        double low = 0, high = 1;
        for (var step = 0; step < 50; step++)
        {
            var middle = (low + high) / 2;
            if (of(middle) < wanted) low = middle;
            else high = middle;
        }

        return (low + high) / 2;
    }
}
