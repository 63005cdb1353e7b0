namespace Protocolist.Fluids;

/// <summary>What a <see cref="Fluid"/> is.</summary>
public enum FluidKind
{
    /// <summary>Water of no stated make; distilled or deionised where alcohol is diluted with it.</summary>
    Water,

    /// <summary>Distilled, deionised or reverse-osmosis water.</summary>
    DistilledWater,

    /// <summary>Water from the tap: for washing, never for diluting alcohol (it turns cloudy).</summary>
    TapWater,

    /// <summary>Sea water of a practical salinity.</summary>
    SeaWater,

    /// <summary>Ethanol and water.</summary>
    Ethanol,

    /// <summary>Isopropanol (2-propanol) and water.</summary>
    Isopropanol,

    /// <summary>Formaldehyde as it is bought: 30 to 40 % by mass, with methanol.</summary>
    FormaldehydeStock,

    /// <summary>A working solution of formaldehyde ("formalin"), buffered or not.</summary>
    Formaldehyde,
}
