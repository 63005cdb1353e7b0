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

/// <summary>What a fluid is made from: the facts behind the words in which a person may insist on it.</summary>
/// <param name="Kind">How it comes about.</param>
/// <param name="Stock">The stock that it is made from, or restored with.</param>
/// <param name="Spent">The used fixative.</param>
/// <param name="First">The hydrate of its first salt, where there is a choice.</param>
/// <param name="Second">The hydrate of its second salt, where there is a choice.</param>
internal sealed record Supply(SupplyKind Kind, StockMaterial? Stock = null, StockMaterial? Spent = null, Salt? First = null, Salt? Second = null)
{
    private static readonly Phrase OneStock = new("supply-stock", "{stock}{salts}");
    private static readonly Phrase Restored = new("supply-restored", "{spent} restored with {stock}{salts}");
    private static readonly Phrase Tap = new("supply-stock-and-tap", "{stock}{salts}, water from the tap");
    private static readonly Phrase Together = new("supply-together", "the shelf together{salts}");
    private static readonly Phrase Usual = new("supply-usual", "the usual stock, which the bench does not list");
    private static readonly Phrase With = new("supply-salts", " with {salts: and }");

    /// <summary>In the words of a comparison.</summary>
    public Message Words => Kind switch
    {
        SupplyKind.Restored => Restored.With(("spent", Spent!.Name), ("stock", Stock!.Name), ("salts", Salts)),
        SupplyKind.StockAndTap => Tap.With(("stock", Stock!.Name), ("salts", Salts)),
        SupplyKind.Together => Together.With(("salts", Salts)),
        SupplyKind.Usual => Usual,
        _ => OneStock.With(("stock", Stock!.Name), ("salts", Salts)),
    };

    private Message Salts => First is null ? default
        : With.With(Argument.Texts("salts", Second is null ? [First.Name] : [First.Name, Second.Name]));
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
