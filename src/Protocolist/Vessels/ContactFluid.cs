namespace Protocolist.Vessels;

/// <summary>The fluids that differ in what they do to walls, lids and seals, and in how far they expand.</summary>
public enum ContactFluid
{
    /// <summary>Water, sea water and rinses.</summary>
    Water,

    /// <summary>Formalin, buffered or not; it expands as water does.</summary>
    Formalin,

    /// <summary>Ethanol or isopropanol of 60 % by volume and more.</summary>
    StrongAlcohol,

    /// <summary>Ethanol or isopropanol below 60 % by volume.</summary>
    WeakAlcohol,
}
