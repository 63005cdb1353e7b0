using Protocolist.Findings;
using Protocolist.Fluids.Densities;
using Protocolist.Fluids.Substances;
using UnitsNet;

namespace Protocolist.Fluids;

/// <summary>The strength of an alcohol, or of another liquid that mixes with water, on every basis, found from its density.</summary>
/// <param name="Alcohol">Ethanol, isopropanol or glycerol.</param>
/// <param name="VolumePercent">Percent by volume at 20 °C.</param>
/// <param name="MassPercent">Percent by mass.</param>
/// <param name="GramsPer100Millilitres">Grams of the pure liquid in 100 mL at 20 °C (% w/v).</param>
/// <param name="VolumePercentDoubt">
/// Half the width of the band around <paramref name="VolumePercent"/> that comes from the density tables; a reading's own error comes on top.
/// </param>
internal sealed record AlcoholStrength(Substance Alcohol, double VolumePercent, double MassPercent, double GramsPer100Millilitres, double VolumePercentDoubt)
{
    private static readonly Phrase OutsideTables = new(
        "temperature-out-of-range.strength", "{at:0.#} degC is outside the {lowest:0} to {highest:0} degC of the density tables");

    private static readonly Phrase MeasureAgain = new(
        "temperature-out-of-range.strength.remedy", "bring the sample to room temperature and measure again");

    private static readonly Phrase TooDense = new("density-out-of-range", "{density:0.##} kg/m3 at {at:0.#} degC is more than {liquid}'s {most:0.00}");
    private static readonly Phrase SomethingElse = new(
        "density-out-of-range.remedy-dense", "something else is dissolved in it (formaldehyde, fat, salt, glycerol); a density tells no alcohol strength then");

    private static readonly Phrase TooLight = new("density-out-of-range.light", "{density:0.##} kg/m3 at {at:0.#} degC is less than {liquid}'s {least:0.00}");
    private static readonly Phrase CheckTheReading = new("density-out-of-range.light.remedy", "check the temperature, the unit, and which alcohol it is");
    private static readonly Phrase Water = new("density-out-of-range.water", "water");
    private static readonly Phrase PureAlcohol = new("density-out-of-range.pure-alcohol", "the pure alcohol");
    private static readonly Phrase NoReading = new("strength-out-of-range.reading", "a reading of {reading:0.##} %vol is outside 0 to 100");
    private static readonly Phrase ReadAgain = new("strength-out-of-range.reading.remedy", "read again");

    /// <summary>The strength of an alcohol whose density is known.</summary>
    /// <param name="alcohol"><see cref="Substance.Ethanol"/>, <see cref="Substance.Isopropanol"/> or <see cref="Substance.Glycerol"/>.</param>
    /// <param name="density">True density at <paramref name="at"/>: of a density meter, or of a hydrometer after <see cref="HydrometerDensity"/>.</param>
    /// <param name="at">Temperature: -20 to 40 °C for ethanol, 0 to 40 °C for isopropanol, 15 to 30 °C for glycerol.</param>
    /// <returns>The strength; or <c>temperature-out-of-range</c>, <c>density-out-of-range</c>.</returns>
    /// <exception cref="ArgumentException">The strength of that substance is not told by a density.</exception>
    public static Checked<AlcoholStrength> FromDensity(Substance alcohol, Density density, Temperature at)
    {
        var liquid = alcohol as LiquidInWater ?? throw new ArgumentException($"The strength of {alcohol} is not told by a density.", nameof(alcohol));
        double celsius = at.DegreesCelsius, kilograms = density.KilogramsPerCubicMeter;
        if (!(celsius >= liquid.LowestCelsius && celsius <= liquid.HighestCelsius))
        {
            return Fault(
                "temperature-out-of-range",
                OutsideTables.With(("at", celsius), ("lowest", liquid.LowestCelsius), ("highest", liquid.HighestCelsius)),
                MeasureAgain);
        }

        var p = liquid.MassFractionOfDensity(kilograms, celsius);
        if (double.IsNaN(p)) return OutOfRange(liquid, kilograms, celsius);
        return new(
            new(alcohol, 100 * liquid.VolumeFraction(p), 100 * p, p * liquid.DensityOf(p, 20) / 10, liquid.VolumePercentDoubt(p, celsius)),
            []);
    }

    /// <summary>The strength of an alcohol read off a glass alcoholometer that is marked in %vol at 20 °C, at another temperature.</summary>
    /// <param name="volumePercent">The reading, 0 to 100.</param>
    /// <param name="at">Temperature, -20 to 40 °C.</param>
    /// <returns>The true strength of ethanol; or <c>temperature-out-of-range</c>, <c>strength-out-of-range</c>, <c>density-out-of-range</c>.</returns>
    public static Checked<AlcoholStrength> FromAlcoholometer(double volumePercent, Temperature at)
    {
        if (!(volumePercent is >= 0 and <= 100)) return Fault("strength-out-of-range", NoReading.With(("reading", volumePercent)), ReadAgain);
        var marked = EthanolWater.Density(EthanolWater.MassFractionOfVolume(volumePercent / 100), 20);
        return FromDensity(Substance.Ethanol, HydrometerDensity(Density.FromKilogramsPerCubicMeter(marked), at), at);
    }

    /// <summary>True density from a glass hydrometer read away from the temperature of its scale.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="at">Temperature of liquid and hydrometer.</param>
    /// <param name="scale">Temperature for which the scale was made; 20 °C where none is given.</param>
    /// <returns>The true density.</returns>
    public static Density HydrometerDensity(Density reading, Temperature at, Temperature? scale = null) =>
        Density.FromKilogramsPerCubicMeter(Hydrometer.TrueDensity(reading.KilogramsPerCubicMeter, at.DegreesCelsius, scale?.DegreesCelsius ?? 20));

    private static Checked<AlcoholStrength> OutOfRange(LiquidInWater liquid, double kilograms, double celsius)
    {
        var pure = (Name: liquid.IsAlcohol ? PureAlcohol : liquid.Noun, Density: liquid.DensityOf(1, celsius));
        var water = (Name: Water, Density: liquid.DensityOf(0, celsius));
        var (light, dense) = pure.Density < water.Density ? (pure, water) : (water, pure);
        Argument density = ("density", kilograms), at = ("at", celsius);
        return kilograms > dense.Density
            ? Fault("density-out-of-range", TooDense.With(density, at, ("liquid", dense.Name), ("most", dense.Density)), SomethingElse)
            : Fault("density-out-of-range", TooLight.With(density, at, ("liquid", light.Name), ("least", light.Density)), CheckTheReading);
    }

    private static Checked<AlcoholStrength> Fault(string id, Message message, Message remedy) => new(null, [Finding.Error(id, message, remedy)]);
}
