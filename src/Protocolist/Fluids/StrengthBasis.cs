namespace Protocolist.Fluids;

/// <summary>What a percentage is a percentage of.</summary>
public enum StrengthBasis
{
    /// <summary>No strength: water, sea water.</summary>
    None,

    /// <summary>Volume of the pure liquid at 20 °C in 100 volumes of the mixture at 20 °C (%vol).</summary>
    Volume,

    /// <summary>Mass in 100 parts by mass (%mass).</summary>
    Mass,

    /// <summary>Grams in 100 mL at 20 °C (% w/v).</summary>
    WeightPerVolume,

    /// <summary>Volumes of the 37 % formaldehyde stock in 100 volumes ("formalin 10 %").</summary>
    PartsOfStock,
}
