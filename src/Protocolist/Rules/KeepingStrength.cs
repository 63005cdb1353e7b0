using Protocolist.Fluids;

namespace Protocolist.Rules;

/// <summary>What is wrong with a fluid that an animal is kept in.</summary>
internal enum KeepingFault
{
    None,

    /// <summary>Alcohol so weak that it does not preserve.</summary>
    DoesNotPreserve,

    /// <summary>Alcohol outside what is right for keeping.</summary>
    OutOfBand,

    /// <summary>Formalin that lets mould grow, or only hardens.</summary>
    MouldsOrHardens,

    /// <summary>Water.</summary>
    Water,
}

/// <summary>The final fluid is neither too weak to keep nor too strong to handle. Strengths in %vol of alcohol.</summary>
internal static class KeepingStrength
{
    public const string Id = "keeping-strength-out-of-band";
    public const string Source =
        "ethanol 65 to 80 %vol: Museum of Vertebrate Zoology handbook (70), Ahlander 2021 (80 too strong), Western Australian Museum 2011 (above 75); "
        + "isopropanol 40 to 55: USGS 93-104, Simmons 2009; formalin above 12 g/L: Moore 2018 (mould in 2 to 3 % formalin); "
        + "ethanol to 100 %vol for DNA: Michonneau 2017, Bishop Museum";

    /// <summary>Formaldehyde in g/L: up to the first mould grows, above the second it only hardens.</summary>
    public const double Moulds = 12;
    public const double Hardens = 45;

    /// <summary>What is right for keeping in an alcohol. For DNA strong ethanol is wanted, stiff or not.</summary>
    public static KeepingBand Band(Fluid alcohol, bool isForDna)
    {
        var band = alcohol.Substance.Keeping!;
        return isForDna && alcohol.Substance == Substance.Ethanol ? band with { High = 100 } : band;
    }

    public static KeepingFault Of(Fluid fluid, bool isForDna)
    {
        if (fluid.IsWater) return KeepingFault.Water;
        if (fluid.FormaldehydeGramsPerLitre is { } grams) return grams is <= Moulds or > Hardens ? KeepingFault.MouldsOrHardens : KeepingFault.None;
        if (!fluid.IsAlcohol) return KeepingFault.None;
        var (strength, band) = (fluid.AlcoholVolumePercent, Band(fluid, isForDna));
        if (strength < band.Preserves) return KeepingFault.DoesNotPreserve;
        return strength < band.Low || strength > band.High ? KeepingFault.OutOfBand : KeepingFault.None;
    }
}
