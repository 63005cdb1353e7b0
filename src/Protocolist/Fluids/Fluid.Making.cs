using System.Runtime.CompilerServices;
using Protocolist.Fluids.Buffers;

namespace Protocolist.Fluids;

public sealed partial record Fluid
{
    /// <summary>Water of no stated make.</summary>
    public static Fluid Water { get; } = Plain(FluidKind.Water);

    /// <summary>Distilled or deionised water.</summary>
    public static Fluid DistilledWater { get; } = Plain(FluidKind.DistilledWater);

    /// <summary>Water from the tap.</summary>
    public static Fluid TapWater { get; } = Plain(FluidKind.TapWater);

    /// <summary>Ocean water of practical salinity 35.</summary>
    public static Fluid OceanWater { get; } = SeaWater(Fluids.SeaWater.OceanSalinity);

    /// <summary>The formaldehyde stock that "parts of stock" refer to: 37 % by mass with 12 % methanol.</summary>
    public static Fluid ReferenceStock { get; } = FormaldehydeStock(100 * Formaldehyde.ReferenceStock);

    /// <summary>Sea water.</summary>
    /// <param name="salinity">Practical salinity, 2 to 42.</param>
    /// <returns>The fluid.</returns>
    public static Fluid SeaWater(double salinity)
    {
        salinity = Kept(salinity, 2, Fluids.SeaWater.HighestSalinity);
        return new(FluidKind.SeaWater, 0, StrengthBasis.None, Buffering.None, salinity, new(SeaSalt: salinity / 1000));
    }

    /// <summary>Ethanol and water.</summary>
    /// <param name="percent">Strength, above 0 to 100.</param>
    /// <param name="basis">By volume at 20 °C or by mass.</param>
    /// <returns>The fluid.</returns>
    public static Fluid Ethanol(double percent, StrengthBasis basis = StrengthBasis.Volume)
    {
        percent = Kept(percent, 0.001, 100);
        var mass = OfVolumeOrMass(basis) ? EthanolWater.MassFractionOfVolume(percent / 100) : percent / 100;
        return new(FluidKind.Ethanol, percent, basis, Buffering.None, 0, new(Ethanol: mass));
    }

    /// <summary>Isopropanol and water.</summary>
    /// <param name="percent">Strength, above 0 to 100.</param>
    /// <param name="basis">By volume at 20 °C or by mass.</param>
    /// <returns>The fluid.</returns>
    public static Fluid Isopropanol(double percent, StrengthBasis basis = StrengthBasis.Volume)
    {
        percent = Kept(percent, 0.001, 100);
        var mass = OfVolumeOrMass(basis) ? IsopropanolWater.MassFractionOfVolume(percent / 100) : percent / 100;
        return new(FluidKind.Isopropanol, percent, basis, Buffering.None, 0, new(Isopropanol: mass));
    }

    /// <summary>Formaldehyde as it is bought.</summary>
    /// <param name="percent">Strength: 10 to 50 % by mass, or 10 to 57 % w/v.</param>
    /// <param name="basis">By mass or w/v.</param>
    /// <param name="methanolMassPercent">Methanol, 0 to 20 % by mass.</param>
    /// <returns>The fluid.</returns>
    public static Fluid FormaldehydeStock(double percent, StrengthBasis basis = StrengthBasis.Mass, double methanolMassPercent = 100 * Formaldehyde.ReferenceMethanol)
    {
        percent = Kept(percent, WeakestStock, basis is StrengthBasis.Mass ? 50 : 57);
        var methanol = Kept(methanolMassPercent, 0, 20);
        var mass = basis switch
        {
            StrengthBasis.Mass => percent / 100,
            StrengthBasis.WeightPerVolume => Formaldehyde.MassFractionOfGramsPerLitre(10 * percent, methanol / 100, 20),
            _ => throw new ArgumentOutOfRangeException(nameof(basis), basis, "A stock's strength is by mass or weight per volume."),
        };
        if (double.IsNaN(mass)) throw new ArgumentOutOfRangeException(nameof(percent), percent, "No stock of this methanol content is so strong.");
        return new(FluidKind.FormaldehydeStock, percent, basis, Buffering.None, methanol, new(Formaldehyde: mass, Methanol: methanol / 100));
    }

    /// <summary>Formalin by parts of the 37 % stock: <c>formalin 10 %</c> is 10 volumes made up to 100, about 40 g/L formaldehyde.</summary>
    /// <param name="partsInHundred">Volumes of stock in 100 volumes, above 0 to 30.</param>
    /// <param name="buffering">What it is buffered with.</param>
    /// <param name="salinity">Practical salinity of the sea water, where that is the diluent.</param>
    /// <returns>The fluid.</returns>
    public static Fluid Formalin(double partsInHundred, Buffering buffering = Buffering.None, double salinity = Fluids.SeaWater.OceanSalinity)
    {
        partsInHundred = Kept(partsInHundred, 0.001, StrongestWorking);
        var stock = ReferenceStock;
        var gramsPerLitre = partsInHundred / 100 * stock.Composition.Formaldehyde * stock.DensityAt(20);
        return Working(partsInHundred, StrengthBasis.PartsOfStock, gramsPerLitre, buffering, salinity);
    }

    /// <summary>Working formaldehyde by its own content.</summary>
    /// <param name="percent">Grams CH2O in 100 mL at 20 °C, above 0 to 30.</param>
    /// <param name="buffering">What it is buffered with.</param>
    /// <param name="salinity">Practical salinity of the sea water, where that is the diluent.</param>
    /// <returns>The fluid.</returns>
    public static Fluid FormaldehydeWeightPerVolume(double percent, Buffering buffering = Buffering.None, double salinity = Fluids.SeaWater.OceanSalinity)
    {
        percent = Kept(percent, 0.001, StrongestWorking);
        return Working(percent, StrengthBasis.WeightPerVolume, 10 * percent, buffering, salinity);
    }

    /// <summary>Weakest solution that is taken as a stock, in percent.</summary>
    internal const double WeakestStock = 10;

    /// <summary>Strongest working solution, in percent: a "formalin" above this is somebody's stock.</summary>
    internal const double StrongestWorking = 30;

    /// <summary>Methanol rides along from the stock, 12 parts for 37 of formaldehyde; the mass of a litre comes from its own density.</summary>
    private static Fluid Working(double strength, StrengthBasis basis, double gramsPerLitre, Buffering buffering, double salinity)
    {
        salinity = buffering is Buffering.SeaWater ? Kept(salinity, 2, Fluids.SeaWater.HighestSalinity) : 0;
        var saltGramsPerLitre = BufferRecipe.AnhydrousGramsPerLitre(buffering, gramsPerLitre);
        const double methanolPerFormaldehyde = Formaldehyde.ReferenceMethanol / Formaldehyde.ReferenceStock;
        var perLitre = 1000.0;
        Composition composition = default;
        // The mass of a litre hangs on its composition and that on the mass; each round gains two digits or more.
        for (var round = 0; round < 12; round++)
        {
            var formaldehyde = gramsPerLitre / perLitre;
            var stock = formaldehyde / Formaldehyde.ReferenceStock;
            composition = new(
                Formaldehyde: formaldehyde,
                Methanol: formaldehyde * methanolPerFormaldehyde,
                SeaSalt: Math.Max(0, 1 - stock) * salinity / 1000,
                BufferSalts: saltGramsPerLitre / perLitre);
            perLitre = composition.Density(20);
        }

        return new(FluidKind.Formaldehyde, strength, basis, buffering, salinity, composition);
    }

    private static Fluid Plain(FluidKind kind) => new(kind, 0, StrengthBasis.None, Buffering.None, 0, default);

    private static bool OfVolumeOrMass(StrengthBasis basis) => basis switch
    {
        StrengthBasis.Volume => true,
        StrengthBasis.Mass => false,
        _ => throw new ArgumentOutOfRangeException(nameof(basis), basis, "An alcohol's strength is by volume or by mass."),
    };

    private static double Kept(double value, double least, double most, [CallerArgumentExpression(nameof(value))] string? name = null)
    {
        var kept = Math.Round(value, 3);
        return kept >= least && kept <= most
            ? kept
            : throw new ArgumentOutOfRangeException(name, value, $"Out of range: {least} to {most}.");
    }
}
