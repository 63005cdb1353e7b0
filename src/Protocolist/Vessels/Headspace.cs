using Protocolist.Fluids;
using UnitsNet;

namespace Protocolist.Vessels;

/// <summary>How much room a fluid needs above it: its expansion up to the hottest day, and the pressure in a sealed rigid jar.</summary>
/// <remarks>
/// The fluid comes as its density in kg/m³ over temperature in °C (ethanol: OIML R 22). The specimen is counted as fluid; it expands less
/// than alcohol, so that is safe.
/// </remarks>
internal static class Headspace
{
    /// <summary>Volume growth of a soda-lime glass vessel per kelvin: three times 9e-6 (EN 572-1, from memory).</summary>
    public const double GlassGrowthPerKelvin = 27e-6;

    /// <summary>The atmosphere in kPa at which jars are closed (ISO 2533).</summary>
    private const double Atmosphere = 101.325;

    private const double Kelvin = 273.15; // 0 °C in kelvins (SI Brochure)

    /// <summary>The share of the inside kept empty: 5 % for fluids that are mostly water, 10 % for alcohol of 60 % by volume and more.</summary>
    /// <remarks>
    /// Worked out from the pressure in a sealed jar from 15 to 35 °C (<see cref="GaugePressure"/>): with 5 % of headspace water reaches 0.2 bar and 70 %
    /// alcohol 0.7 bar; with 10 % alcohol stays below 0.4 bar. Practice differs: 3 to 5 % is common, and some museums fill to the top.
    /// </remarks>
    /// <param name="fluid">The fluid.</param>
    /// <returns>A share, 0.05 or 0.10.</returns>
    public static double Rule(Fluid fluid) => fluid.Substance.NeedsWideHeadspace(fluid) ? 0.10 : 0.05;

    /// <summary>By what share a fluid grows between two temperatures.</summary>
    /// <param name="density">Density in kg/m³ of the temperature in °C.</param>
    /// <param name="cold">Temperature at filling.</param>
    /// <param name="hot">The hottest day.</param>
    /// <returns>Growth over the volume at filling; negative where the fluid shrinks, as water does from 0 to 4 °C.</returns>
    /// <exception cref="ArgumentNullException">The density is null.</exception>
    public static double Growth(Func<double, double> density, Temperature cold, Temperature hot)
    {
        ArgumentNullException.ThrowIfNull(density);
        return density(cold.DegreesCelsius) / density(hot.DegreesCelsius) - 1;
    }

    /// <summary>The fullest a vessel may be at filling so that nothing runs over on the hottest day.</summary>
    /// <param name="density">Density in kg/m³ of the temperature in °C.</param>
    /// <param name="cold">Temperature at filling.</param>
    /// <param name="hot">The hottest day.</param>
    /// <param name="wallGrowthPerKelvin">Volume growth of the vessel per kelvin; 0 is safe for any wall.</param>
    /// <returns>Share of the inside, at most 1.</returns>
    /// <exception cref="ArgumentNullException">The density is null.</exception>
    public static double FullestFill(
        Func<double, double> density, Temperature cold, Temperature hot, double wallGrowthPerKelvin = GlassGrowthPerKelvin)
    {
        var wall = 1 + wallGrowthPerKelvin * (hot.DegreesCelsius - cold.DegreesCelsius);
        return FullestFill(Growth(density, cold, hot), wall);
    }

    internal static double FullestFill(double growth, double wall) => Math.Min(1, wall / (1 + growth));

    /// <summary>The pressure above the atmosphere in a sealed rigid glass vessel that was closed cold.</summary>
    /// <remarks>The enclosed air by the ideal gas law, and the fluid's vapour.</remarks>
    /// <param name="headspace">Share of the inside left empty at closing, 0 to 1.</param>
    /// <param name="density">Density in kg/m³ of the temperature in °C.</param>
    /// <param name="vapour">Vapour pressure in kPa of the temperature in °C; see <see cref="Fluids.Contact.Vapour"/>.</param>
    /// <param name="cold">Temperature at closing.</param>
    /// <param name="hot">The hottest day.</param>
    /// <returns>The gauge pressure; <c>null</c> where the fluid would fill the vessel and burst it, or the seal gives way.</returns>
    /// <exception cref="ArgumentNullException">A function is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The headspace is no share.</exception>
    public static Pressure? GaugePressure(
        double headspace, Func<double, double> density, Func<double, double> vapour, Temperature cold, Temperature hot)
    {
        ArgumentNullException.ThrowIfNull(vapour);
        if (headspace is not (>= 0 and <= 1)) throw new ArgumentOutOfRangeException(nameof(headspace), headspace, "must be a share, 0 to 1");
        double fill = cold.DegreesCelsius, hottest = hot.DegreesCelsius;
        return GaugeKilopascals(headspace, Growth(density, cold, hot), vapour(fill), vapour(hottest), fill, hottest) is { } kilopascals
            ? Pressure.FromKilopascals(kilopascals)
            : null;
    }

    /// <summary>The same in kPa, of the fluid's growth between the two temperatures (°C) and its vapour pressures (kPa) at both.</summary>
    internal static double? GaugeKilopascals(double headspace, double growth, double vapourCold, double vapourHot, double coldC, double hotC)
    {
        var left = 1 + GlassGrowthPerKelvin * (hotC - coldC) - (1 - headspace) * (1 + growth);
        if (left <= 0) return null;
        var air = (Atmosphere - vapourCold) * headspace / left * (hotC + Kelvin) / (coldC + Kelvin);
        return air + vapourHot - Atmosphere;
    }
}
