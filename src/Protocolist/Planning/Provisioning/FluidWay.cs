using System.Collections.Immutable;
using Protocolist.Checks.Cautions;
using Protocolist.Findings;
using Protocolist.Fluids.Buffers;
using Protocolist.Fluids.Mixing;
using Protocolist.Notation;
using UnitsNet;

namespace Protocolist.Planning.Provisioning;

/// <summary>What a fluid is made from.</summary>
internal enum SupplyKind
{
    /// <summary>One stock of the bench, with the bench's water.</summary>
    Stock,

    /// <summary>One stock of the bench, with water from the tap.</summary>
    StockAndTap,

    /// <summary>Used fixative, brought back to its strength with stock.</summary>
    Restored,

    /// <summary>All that stands on the shelf, part bottles too.</summary>
    Together,

    /// <summary>Water that stands on the shelf.</summary>
    OwnWater,

    /// <summary>The usual stock, which the bench does not list.</summary>
    Usual,
}

/// <summary>What a fluid is made from.</summary>
/// <param name="Kind">How it comes about.</param>
/// <param name="Stock">The stock that it is made from, or restored with.</param>
/// <param name="Spent">The used fixative.</param>
/// <param name="First">The hydrate of its first salt, where there is a choice.</param>
/// <param name="Second">The hydrate of its second salt, where there is a choice.</param>
internal sealed record Supply(SupplyKind Kind, StockMaterial? Stock = null, StockMaterial? Spent = null, Salt? First = null, Salt? Second = null)
{
    /// <summary>The word by which a person insists on it, the same in every language: ids of stock of the bench, and what else goes in.</summary>
    public string Id => string.Join('+', (IEnumerable<string>)[.. Sources, .. new[] { First, Second }.OfType<Salt>().Select(s => Slug.Of(s.Name))]);

    private IEnumerable<string> Sources => Kind switch
    {
        SupplyKind.Restored => [Spent!.Items[0].Id, Stock!.Items[0].Id],
        SupplyKind.StockAndTap => [Stock!.Items[0].Id, "tap"],
        SupplyKind.Together => ["shelf"],
        SupplyKind.Usual => ["usual"],
        _ => [Stock!.Items[0].Id],
    };
}

/// <summary>A part of a recipe, and the material of the bench that it is taken from.</summary>
/// <param name="Part">The part.</param>
/// <param name="Material">The material; null for what the bench does not list.</param>
internal readonly record struct SuppliedPart(RecipePart Part, StockMaterial? Material)
{
    /// <summary>Its id in the plan.</summary>
    public string Id { get; } = Material?.Id ?? Slug.Of(Part.Name);

    /// <summary>What people call it.</summary>
    public Message Name { get; } = Material?.Name ?? Message.Text(Part.Name);

    /// <summary>What to be careful of when mixing from it, where that is more than of the fluid that is made; else empty.</summary>
    public Message WhenMixing { get; } = Part.Fluid is { HasFormaldehyde: true, Substance.IsConcentrate: true } stock ? FluidCautions.OfStock(stock) : default;

    /// <summary>The name in English, by which lists are sorted.</summary>
    public string Text => Material?.Text ?? Part.Name;
}

/// <summary>One way to make a fluid, its recipe solved for a litre, or for a certain volume where the shelf is what limits it.</summary>
/// <param name="Supply">What it is made from.</param>
/// <param name="Parts">What to measure out.</param>
/// <param name="Volume">For how much.</param>
/// <param name="Findings">What is to be said of it.</param>
internal sealed record FluidWay(Supply Supply, ImmutableArray<SuppliedPart> Parts, Volume Volume, ImmutableArray<Finding> Findings);
