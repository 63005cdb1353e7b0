namespace Protocolist.Fluids.Contact;

/// <summary>Vapour pressures over water and over ethanol in water, in kPa of the temperature in °C. Good to some percent from 0 to 60 °C.</summary>
/// <remarks>
/// Antoine's equation with the constants for mmHg and °C of the usual tables (from memory), and van Laar's activities 1.6798 and 0.9227
/// (Perry's Chemical Engineers' Handbook, a fit at 1 atm, from memory): approximate at room temperature.
/// </remarks>
internal static class Vapour
{
    private const double KilopascalsPerMmHg = 0.133322; // ISO 80000-4
    private const double EthanolInWater = 1.6798, WaterInEthanol = 0.9227;

    /// <summary>Molar masses in g/mol (IUPAC).</summary>
    internal const double EthanolMolar = 46.069, WaterMolar = 18.015;

    /// <summary>Over water; 10 % formalin is close to it.</summary>
    /// <param name="temperatureC">Temperature in °C, 0 to 100.</param>
    /// <returns>Vapour pressure in kPa.</returns>
    public static double Water(double temperatureC) => Antoine(8.07131, 1730.63, 233.426, temperatureC);

    /// <summary>Over pure ethanol.</summary>
    /// <param name="temperatureC">Temperature in °C, 0 to 80.</param>
    /// <returns>Vapour pressure in kPa.</returns>
    public static double Ethanol(double temperatureC) => Antoine(8.20417, 1642.89, 230.300, temperatureC);

    /// <summary>Both vapours over a mixture.</summary>
    /// <param name="ethanolMassFraction">Mass of ethanol over mass of fluid, 0 to 1.</param>
    /// <param name="temperatureC">Temperature in °C, 0 to 80.</param>
    /// <returns>The partial pressures in kPa; their sum is what a sealed jar feels.</returns>
    public static (double Ethanol, double Water) OverMixture(double ethanolMassFraction, double temperatureC) =>
        OverMixture(ethanolMassFraction, Ethanol(temperatureC), Water(temperatureC));

    /// <summary>The same from the pressures over pure ethanol and over water, where many mixtures of one temperature are asked for.</summary>
    public static (double Ethanol, double Water) OverMixture(double ethanolMassFraction, double pureEthanol, double pureWater)
    {
        double e = ethanolMassFraction / EthanolMolar, w = (1 - ethanolMassFraction) / WaterMolar;
        double x = e / (e + w), y = 1 - x;
        var share = EthanolInWater * x + WaterInEthanol * y;
        var ethanolActivity = Math.Exp(EthanolInWater * Square(WaterInEthanol * y / share));
        var waterActivity = Math.Exp(WaterInEthanol * Square(EthanolInWater * x / share));
        return (x * ethanolActivity * pureEthanol, y * waterActivity * pureWater);
    }

    private static double Square(double value) => value * value;

    private static double Antoine(double a, double b, double c, double temperatureC) =>
        Math.Pow(10, a - b / (c + temperatureC)) * KilopascalsPerMmHg;
}

/// <summary>The vapours over a fluid, kPa.</summary>
/// <param name="Alcohol">Of the alcohol in it.</param>
/// <param name="Water">Of its water.</param>
internal readonly record struct Vapours(double Alcohol, double Water)
{
    /// <summary>What a sealed vessel feels.</summary>
    public double Sum => Alcohol + Water;
}
