using System.Collections.Immutable;
using Protocolist.Fluids.Buffers;
using UnitsNet;

namespace Protocolist.Fluids.Mixing;

/// <summary>What is to be mixed from what.</summary>
/// <param name="Target">The fluid wanted.</param>
/// <param name="Volume">How much of it, at <see cref="At"/>.</param>
/// <param name="Stocks">What is on hand. Water for dilution is added where none is listed.</param>
internal sealed record MixRequest(Fluid Target, Volume Volume, ImmutableArray<StockFluid> Stocks)
{
    /// <summary>The temperature at which everything is measured, 0 to 40 °C.</summary>
    public Temperature At { get; init; } = Temperature.FromDegreesCelsius(20);

    /// <summary>Salts on hand, by hydrate; empty to assume those the recipe calls for.</summary>
    public ImmutableArray<Salt> Salts { get; init; } = [];

    /// <summary>
    /// Whether a person named just these stocks for this target: each that must not go in is then spoken of. A whole shelf is passed over in silence.
    /// </summary>
    public bool StocksAreNamed { get; init; }
}
