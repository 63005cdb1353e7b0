using Protocolist.Findings;
using UnitsNet;

namespace Protocolist.Fluids;

/// <summary>An alcohol's strength on every basis, found from its density.</summary>
/// <param name="Alcohol">Ethanol or isopropanol.</param>
/// <param name="VolumePercent">Percent by volume at 20 °C.</param>
/// <param name="MassPercent">Percent by mass.</param>
/// <param name="GramsPer100Millilitres">Grams of alcohol in 100 mL at 20 °C (% w/v).</param>
/// <param name="VolumePercentDoubt">Half the width of the band around <paramref name="VolumePercent"/> that comes from the density tables; a reading's own error comes on top.</param>
public sealed record AlcoholStrength(FluidKind Alcohol, double VolumePercent, double MassPercent, double GramsPer100Millilitres, double VolumePercentDoubt)
{
    /// <summary>The strength of an alcohol whose density is known.</summary>
    /// <param name="alcohol"><see cref="FluidKind.Ethanol"/> or <see cref="FluidKind.Isopropanol"/>.</param>
    /// <param name="density">True density at <paramref name="at"/>: of a density meter, or of a hydrometer after <see cref="HydrometerDensity"/>.</param>
    /// <param name="at">Temperature: -20 to 40 °C for ethanol, 0 to 40 °C for isopropanol.</param>
    /// <returns>The strength; or <c>temperature-out-of-range</c>, <c>density-out-of-range</c>.</returns>
    public static Checked<AlcoholStrength> FromDensity(FluidKind alcohol, Density density, Temperature at)
    {
        var isEthanol = IsEthanol(alcohol);
        double celsius = at.DegreesCelsius, kilograms = density.KilogramsPerCubicMeter;
        var lowest = isEthanol ? EthanolWater.LowestCelsius : IsopropanolWater.LowestCelsius;
        if (!(celsius >= lowest && celsius <= 40))
            return Fault("temperature-out-of-range", Invariant($"{celsius:0.#} degC is outside the {lowest:0} to 40 degC of the density tables"), "bring the sample to room temperature and measure again");

        var p = isEthanol ? EthanolWater.MassFraction(kilograms, celsius) : IsopropanolWater.MassFraction(kilograms, celsius);
        if (double.IsNaN(p))
        {
            double pure = isEthanol ? EthanolWater.Density(1, celsius) : IsopropanolWater.Density(1, celsius), water = isEthanol ? EthanolWater.Density(0, celsius) : Water.Density(celsius);
            return kilograms > water
                ? Fault("density-out-of-range", Invariant($"{kilograms:0.##} kg/m3 at {celsius:0.#} degC is more than water's {water:0.00}"), "something else is dissolved in it (formaldehyde, fat, salt, glycerol); a density tells no alcohol strength then")
                : Fault("density-out-of-range", Invariant($"{kilograms:0.##} kg/m3 at {celsius:0.#} degC is less than the pure alcohol's {pure:0.00}"), "check the temperature, the unit, and which alcohol it is");
        }

        return new(Of(alcohol, p, celsius), []);
    }

    /// <summary>The strength of an alcohol read off a glass alcoholometer that is marked in %vol at 20 °C, at another temperature.</summary>
    /// <param name="volumePercent">The reading, 0 to 100.</param>
    /// <param name="at">Temperature, -20 to 40 °C.</param>
    /// <returns>The true strength of ethanol; or <c>temperature-out-of-range</c>, <c>strength-out-of-range</c>, <c>density-out-of-range</c>.</returns>
    public static Checked<AlcoholStrength> FromAlcoholometer(double volumePercent, Temperature at)
    {
        if (!(volumePercent is >= 0 and <= 100)) return Fault("strength-out-of-range", Invariant($"a reading of {volumePercent:0.##} %vol is outside 0 to 100"), "read again");
        var marked = EthanolWater.Density(EthanolWater.MassFractionOfVolume(volumePercent / 100), 20);
        return FromDensity(FluidKind.Ethanol, HydrometerDensity(Density.FromKilogramsPerCubicMeter(marked), at), at);
    }

    /// <summary>True density from a glass hydrometer read away from the temperature of its scale.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="at">Temperature of liquid and hydrometer.</param>
    /// <param name="scale">Temperature for which the scale was made; 20 °C where none is given.</param>
    /// <returns>The true density.</returns>
    public static Density HydrometerDensity(Density reading, Temperature at, Temperature? scale = null) =>
        Density.FromKilogramsPerCubicMeter(Hydrometer.TrueDensity(reading.KilogramsPerCubicMeter, at.DegreesCelsius, scale?.DegreesCelsius ?? 20));

    private static AlcoholStrength Of(FluidKind alcohol, double p, double celsius)
    {
        if (alcohol is FluidKind.Ethanol)
            return new(alcohol, 100 * EthanolWater.VolumeFraction(p), 100 * p, EthanolWater.GramsPerLitre(p) / 10, 0.1);
        var volume = 100 * IsopropanolWater.VolumeFraction(p);
        // What the table's error moves the strength by, from the densities on either side.
        double error = IsopropanolWater.DensityError(p, celsius), density = IsopropanolWater.Density(p, celsius);
        var above = IsopropanolWater.MassFraction(density - error, celsius);
        var below = IsopropanolWater.MassFraction(density + error, celsius);
        double high = double.IsNaN(above) ? 100 : 100 * IsopropanolWater.VolumeFraction(above), low = double.IsNaN(below) ? 0 : 100 * IsopropanolWater.VolumeFraction(below);
        return new(alcohol, volume, 100 * p, p * IsopropanolWater.Density(p, 20) / 10, Math.Max(high - volume, volume - low));
    }

    private static bool IsEthanol(FluidKind alcohol) => alcohol switch
    {
        FluidKind.Ethanol => true,
        FluidKind.Isopropanol => false,
        _ => throw new ArgumentOutOfRangeException(nameof(alcohol), alcohol, "Only alcohols have a strength by density."),
    };

    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);

    private static Checked<AlcoholStrength> Fault(string id, string message, string remedy) => new(null, [Finding.Error(id, message, remedy)]);
}
