using System.Runtime.CompilerServices;
using Protocolist.Fluids.Densities;

namespace Protocolist.Fluids;

public sealed partial record Fluid
{
    /// <summary>Water of no stated make.</summary>
    public static Fluid Water { get; } = Substance.Water.Of(0, StrengthBasis.None);

    /// <summary>Distilled or deionised water.</summary>
    public static Fluid DistilledWater { get; } = Substance.DistilledWater.Of(0, StrengthBasis.None);

    /// <summary>Water from the tap.</summary>
    public static Fluid TapWater { get; } = Substance.TapWater.Of(0, StrengthBasis.None);

    /// <summary>Ocean water of practical salinity 35.</summary>
    public static Fluid OceanWater { get; } = SeaWater(SeaWaterDensity.OceanSalinity);

    /// <summary>The formaldehyde stock that "parts of stock" refer to: 37 % by mass with 12 % methanol.</summary>
    public static Fluid ReferenceStock { get; } = FormaldehydeStock(100 * FormaldehydeWater.ReferenceStock);

    /// <summary>Sea water.</summary>
    /// <param name="salinity">Practical salinity, 2 to 42.</param>
    /// <returns>The fluid.</returns>
    public static Fluid SeaWater(double salinity) => Substances.SeaWater.OfSalinity(salinity);

    /// <summary>Ethanol and water.</summary>
    /// <param name="percent">Strength, above 0 to 100.</param>
    /// <param name="basis">By volume at 20 °C or by mass.</param>
    /// <returns>The fluid.</returns>
    public static Fluid Ethanol(double percent, StrengthBasis basis = StrengthBasis.Volume) => Substance.Ethanol.Of(percent, basis);

    /// <summary>Isopropanol and water.</summary>
    /// <param name="percent">Strength, above 0 to 100.</param>
    /// <param name="basis">By volume at 20 °C or by mass.</param>
    /// <returns>The fluid.</returns>
    public static Fluid Isopropanol(double percent, StrengthBasis basis = StrengthBasis.Volume) => Substance.Isopropanol.Of(percent, basis);

    /// <summary>Formaldehyde as it is bought.</summary>
    /// <param name="percent">Strength: 10 to 50 % by mass, or 10 to 57 % w/v.</param>
    /// <param name="basis">By mass or w/v.</param>
    /// <param name="methanolMassPercent">Methanol, 0 to 20 % by mass.</param>
    /// <returns>The fluid.</returns>
    public static Fluid FormaldehydeStock(
        double percent, StrengthBasis basis = StrengthBasis.Mass, double methanolMassPercent = 100 * FormaldehydeWater.ReferenceMethanol) =>
        Substances.FormaldehydeStock.Of(percent, basis, methanolMassPercent);

    /// <summary>Formalin by parts of the 37 % stock: <c>formalin 10 %</c> is 10 volumes made up to 100, about 40 g/L formaldehyde.</summary>
    /// <param name="partsInHundred">Volumes of stock in 100 volumes, above 0 to 30.</param>
    /// <param name="buffering">What it is buffered with.</param>
    /// <param name="salinity">Practical salinity of the sea water, where that is the diluent.</param>
    /// <returns>The fluid.</returns>
    public static Fluid Formalin(double partsInHundred, Buffering buffering = Buffering.None, double salinity = SeaWaterDensity.OceanSalinity) =>
        Substances.Formaldehyde.Of(partsInHundred, StrengthBasis.PartsOfStock, buffering, salinity);

    /// <summary>Working formaldehyde by its own content.</summary>
    /// <param name="percent">Grams CH2O in 100 mL at 20 °C, above 0 to 30.</param>
    /// <param name="buffering">What it is buffered with.</param>
    /// <param name="salinity">Practical salinity of the sea water, where that is the diluent.</param>
    /// <returns>The fluid.</returns>
    public static Fluid FormaldehydeWeightPerVolume(double percent, Buffering buffering = Buffering.None, double salinity = SeaWaterDensity.OceanSalinity) =>
        Substances.Formaldehyde.Of(percent, StrengthBasis.WeightPerVolume, buffering, salinity);

    /// <summary>A number to a thousandth, as fluids keep it, within its limits.</summary>
    internal static double Rounded(double value, double least, double most, [CallerArgumentExpression(nameof(value))] string? name = null)
    {
        var rounded = Math.Round(value, 3);
        return rounded >= least && rounded <= most
            ? rounded
            : throw new ArgumentOutOfRangeException(name, value, $"Out of range: {least} to {most}.");
    }
}
