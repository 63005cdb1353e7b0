namespace Protocolist.Fluids.Densities;

/// <summary>What a glass hydrometer reads away from the temperature for which it was made.</summary>
/// <remarks>Cubic expansion of hydrometer glass 25e-6 per K: OIML R 44 (alcoholometers and alcohol hydrometers).</remarks>
internal static class Hydrometer
{
    private const double GlassExpansionPerKelvin = 25e-6;

    /// <summary>True density, kg/m³, from a glass hydrometer's reading: a warmer bulb is larger and floats higher, so it reads too much.</summary>
    /// <param name="reading">The scale's reading, kg/m³.</param>
    /// <param name="celsius">Temperature of liquid and hydrometer, °C.</param>
    /// <param name="scaleCelsius">Temperature for which the scale was made, °C; 20 on most, 15 or 15.56 on old ones.</param>
    public static double TrueDensity(double reading, double celsius, double scaleCelsius = 20) =>
        reading * (1 - GlassExpansionPerKelvin * (celsius - scaleCelsius));

    /// <summary>What the same hydrometer reads in a liquid of known density.</summary>
    public static double Reading(double trueDensity, double celsius, double scaleCelsius = 20) =>
        trueDensity / (1 - GlassExpansionPerKelvin * (celsius - scaleCelsius));

    /// <summary>Mass fraction of ethanol from an alcoholometer marked in %vol at 20 °C but read at another temperature.</summary>
    /// <param name="volumeFraction">The scale's reading, 0 to 1.</param>
    /// <param name="celsius">Temperature of the liquid, °C.</param>
    public static double EthanolMassFraction(double volumeFraction, double celsius)
    {
        var marked = EthanolWater.Density(EthanolWater.MassFractionOfVolume(volumeFraction), 20);
        return EthanolWater.MassFraction(TrueDensity(marked, celsius), celsius);
    }
}
