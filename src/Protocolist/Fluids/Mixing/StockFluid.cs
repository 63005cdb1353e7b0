using UnitsNet;

namespace Protocolist.Fluids.Mixing;

/// <summary>The state of a stock as somebody has seen it.</summary>
internal enum StockCondition
{
    /// <summary>Clear and within its date.</summary>
    Sound,

    /// <summary>Past its date; usable once its strength is measured.</summary>
    Expired,

    /// <summary>Cloudy or with a sediment: its strength is unknown.</summary>
    Cloudy,
}

/// <summary>A fluid on hand for mixing: a bottle, a part bottle, spent fixative, weak alcohol from a jar.</summary>
/// <param name="Fluid">What it is, at the strength it has now.</param>
internal sealed record StockFluid(Fluid Fluid)
{
    /// <summary>How much there is; null for as much as is wanted.</summary>
    public Volume? OnHand { get; init; }

    /// <summary>Whether all of it goes in: weak alcohol that is to be raised, spent fixative that is to be restored. Needs <see cref="OnHand"/>.</summary>
    public bool UseUp { get; init; }

    /// <summary>Price of a litre, in any one currency for all stocks of a request.</summary>
    public double CostPerLitre { get; init; }

    /// <summary>Its state.</summary>
    public StockCondition Condition { get; init; }

    /// <summary>What stands on the bottle, where that is more than the fluid's name.</summary>
    public string? Label { get; init; }

    /// <summary>How recipes call it.</summary>
    public string Name => Label ?? Fluid.Name;
}
