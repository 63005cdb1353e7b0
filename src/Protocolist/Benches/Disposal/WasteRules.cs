using System.Collections.Immutable;
using Protocolist.Benches.Disposal;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Quantities;

namespace Protocolist.Benches;

/// <summary>What a bench says about its waste. Where it says nothing, everything is collected.</summary>
/// <param name="Containers">Of a class, the drum or bin it is collected in.</param>
/// <param name="DrainPermits">Of a class, the local permission by which it may go to the drain; a class without one is never drained.</param>
public sealed record WasteRules(ImmutableDictionary<WasteClass, string> Containers, ImmutableDictionary<WasteClass, string> DrainPermits)
{
    private static readonly Phrase Unnamed = new("waste-container-unnamed", "a closed container labelled '{class} waste'");

    /// <summary>Of a class, the drum or bin it is collected in.</summary>
    public ImmutableDictionary<WasteClass, string> Containers { get; init; } = Containers ?? throw new ArgumentNullException(nameof(Containers));

    /// <summary>Of a class, the local permission by which it may go to the drain; a class without one is never drained.</summary>
    public ImmutableDictionary<WasteClass, string> DrainPermits { get; init; } = DrainPermits ?? throw new ArgumentNullException(nameof(DrainPermits));

    /// <summary>Nothing said: all is collected, in closed and labelled containers of its class.</summary>
    public static WasteRules CollectAll { get; } = new(ImmutableDictionary<WasteClass, string>.Empty, ImmutableDictionary<WasteClass, string>.Empty);

    /// <summary>
    /// Of a class, what its container holds and what it costs to have it taken away full; waste of a class without a price of its own bears its share of that.
    /// </summary>
    public ImmutableDictionary<WasteClass, ContainerPrice> ContainerPrices { get; init; } = ImmutableDictionary<WasteClass, ContainerPrice>.Empty;

    /// <summary>The vessel in which spent formalin is kept for another specimen; null where it is never kept.</summary>
    public string? FixativeKeptIn { get; init; }

    /// <summary>How many specimens one fixative may serve: 3, the project's choice, because no handbook gives a number.</summary>
    public int FixativeUses { get; init; } = 3;

    /// <summary>Where waste of a class goes that is not kept.</summary>
    internal WasteRoute RouteOf(WasteClass @class)
    {
        if (DrainPermits.GetValueOrDefault(@class) is { } permit && !string.IsNullOrWhiteSpace(permit))
            return new(WasteWay.DrainedWhereAllowed, Message.Text(permit));
        var way = @class is WasteClass.Sharps or WasteClass.Tissue ? WasteWay.CollectedAsClinical : WasteWay.CollectedAsHazardous;
        return Containers.GetValueOrDefault(@class) is { } container && !string.IsNullOrWhiteSpace(container)
            ? new(way, Message.Text(container))
            : new(way, Unnamed.With(("class", Waste.Words(@class)))) { IsNamed = false };
    }

    /// <summary>Where fixative goes that may serve another specimen; null where it is never kept.</summary>
    internal WasteRoute? RouteOfKept => string.IsNullOrWhiteSpace(FixativeKeptIn) ? null : new(WasteWay.KeptForReuse, Message.Text(FixativeKeptIn));
}

/// <summary>What becomes of one class of waste, and where it goes.</summary>
/// <param name="Way">What becomes of it.</param>
/// <param name="Destination">The vessel, drum or permission; never empty.</param>
internal sealed record WasteRoute(WasteWay Way, Message Destination)
{
    /// <summary>Whether the bench itself names the place.</summary>
    public bool IsNamed { get; init; } = true;
}

/// <summary>What a container of waste costs.</summary>
/// <param name="Holds">What is in it when it is full: a volume, or a number of pieces; above zero.</param>
/// <param name="Price">What it costs to have it taken away, the container included.</param>
public sealed record ContainerPrice(Amount Holds, Money Price)
{
    /// <summary>The share of a lot, rounded to a coin.</summary>
    /// <param name="amount">How much waste; of the same kind as <see cref="Holds"/>.</param>
    /// <returns>Its part of the price.</returns>
    internal Money For(Amount amount) => Money.Rounded(Price.Amount * amount.Units / Holds.Units, Price.Currency);
}
