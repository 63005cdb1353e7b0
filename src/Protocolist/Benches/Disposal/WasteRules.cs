using System.Collections.Immutable;
using Protocolist.Benches.Stock;
using Protocolist.Findings;
using Protocolist.Fluids.Safety;
using Protocolist.Quantities;

namespace Protocolist.Benches.Disposal;

/// <summary>What a bench says about its waste. Where it says nothing, everything is collected.</summary>
/// <param name="Containers">Of a class, the drum or bin it is collected in.</param>
/// <param name="DrainPermits">Of a class, the local permission by which it may go to the drain; a class without one is never drained.</param>
public sealed record WasteRules(ImmutableDictionary<WasteClass, string> Containers, ImmutableDictionary<WasteClass, string> DrainPermits)
{
    private static readonly Phrase DrainedUnderPermit = new("drained-under-permit", "{amount} {what} goes to the drain under '{permit}'");
    private static readonly Phrase DrainedUnderPermitRemedy = new("drained-under-permit.remedy", "see that the permission is in writing and still holds");
    private static readonly Phrase WasteNeedsAContainer = new(
        "waste-needs-a-container",
        "the bench names no container for {class} waste ({amount} {what})");
    private static readonly Phrase WasteNeedsAContainerRemedy = new(
        "waste-needs-a-container.remedy",
        "set one up, closed and labelled, before the first step");

    /// <summary>Nothing said: all is collected, in closed and labelled containers of its class.</summary>
    public static WasteRules CollectAll { get; } = new(ImmutableDictionary<WasteClass, string>.Empty, ImmutableDictionary<WasteClass, string>.Empty);

    /// <summary>Of a class, what its container holds and what it costs to have it taken away full; waste of a class without a price of its own bears its share of that.</summary>
    public ImmutableDictionary<WasteClass, ContainerPrice> ContainerPrices { get; init; } = ImmutableDictionary<WasteClass, ContainerPrice>.Empty;

    /// <summary>The vessel in which spent formalin is kept for another specimen; null where it is never kept.</summary>
    public string? FixativeKeptIn { get; init; }

    /// <summary>How many specimens one fixative may serve: 3, the project's choice, because no handbook gives a number.</summary>
    public int FixativeUses { get; init; } = 3;

    /// <summary>Sends a lot where it belongs.</summary>
    /// <param name="what">What it is, for people.</param>
    /// <param name="class">Its class.</param>
    /// <param name="amount">How much.</param>
    /// <param name="keptIn">The vessel in which it is kept for another specimen; null where it is not kept.</param>
    /// <returns>The lot with a named destination; findings <c>drained-under-permit</c> (note), or <c>waste-needs-a-container</c> (note) where the bench names none for its class.</returns>
    public Checked<Waste> Route(string what, WasteClass @class, Amount amount, string? keptIn = null)
    {
        if (!string.IsNullOrWhiteSpace(keptIn)) return new(new(what, @class, amount, WasteWay.KeptForReuse, keptIn), []);
        if (DrainPermits.GetValueOrDefault(@class) is { } permit && !string.IsNullOrWhiteSpace(permit))
        {
            var note = Finding.Note("drained-under-permit", DrainedUnderPermit.With(("amount", amount.ToString()), ("what", what), ("permit", permit)), DrainedUnderPermitRemedy);
            return new(new(what, @class, amount, WasteWay.DrainedWhereAllowed, permit), [note]);
        }

        var way = @class is WasteClass.Sharps or WasteClass.Tissue ? WasteWay.CollectedAsClinical : WasteWay.CollectedAsHazardous;
        if (Containers.GetValueOrDefault(@class) is { } container && !string.IsNullOrWhiteSpace(container)) return new(new(what, @class, amount, way, container), []);
        var unnamed = Finding.Note("waste-needs-a-container", WasteNeedsAContainer.With(("class", Waste.Words(@class.ToString())), ("amount", amount.ToString()), ("what", what)), WasteNeedsAContainerRemedy);
        return new(new(what, @class, amount, way, $"a closed container labelled '{Waste.Words(@class.ToString())} waste'"), [unnamed]);
    }
}

/// <summary>What a container of waste costs.</summary>
/// <param name="Holds">What is in it when it is full: a volume, or a number of pieces; above zero.</param>
/// <param name="Price">What it costs to have it taken away, the container included.</param>
public sealed record ContainerPrice(Amount Holds, Money Price)
{
    /// <summary>The share of a lot, rounded to a coin.</summary>
    /// <param name="amount">How much waste; of the same kind as <see cref="Holds"/>.</param>
    /// <returns>Its part of the price.</returns>
    public Money For(Amount amount) => Money.Rounded(Price.Amount * amount.Units / Holds.Units, Price.Currency);
}
