using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches.Stock;
using Protocolist.Findings;
using Protocolist.Notation;
using Protocolist.Quantities;
using Protocolist.Reading;

namespace Protocolist.Benches;

/// <summary>What sort of thing a stock item is.</summary>
public enum StockKind
{
    /// <summary>A liquid that has a strength, or water.</summary>
    Fluid,

    /// <summary>A salt or another solid that is weighed.</summary>
    Salt,

    /// <summary>Something counted that is used up: needles, gloves, labels, lids.</summary>
    Consumable,

    /// <summary>Something counted that lasts: forceps, goggles, a hydrometer.</summary>
    Tool,
}

/// <summary>One line of the bench's stock: one bottle, bag or box (or several alike and equally old), and how more of it can be bought. Immutable.</summary>
/// <remarks>Two bottles of the same substance that differ in age, or of which one is opened, are two items. Nothing here names a maker or a shop.</remarks>
public sealed record StockItem
{
    /// <summary>The name by which plans and labels call it, kebab-case, unique on the bench.</summary>
    public required string Id { get; init; }

    /// <summary>The id as plans write it; fluids, salts, consumables and tools share one such name space.</summary>
    internal string PlanId => Slug.Of(Id);

    /// <summary>What sort of thing it is.</summary>
    public required StockKind Kind { get; init; }

    /// <summary>What it is, as people write it: <c>ethanol 96 %vol</c>, <c>sodium dihydrogen phosphate</c>, <c>needle 21 G</c>.</summary>
    public required string Substance { get; init; }

    /// <summary>The strength where <see cref="Substance"/> does not hold it: <c>37 %mass</c>, <c>pure</c>.</summary>
    public string? Strength { get; init; }

    /// <summary>Of a salt, its water: <c>monohydrate</c>, <c>anhydrous</c>; null where not said.</summary>
    public string? Hydrate { get; init; }

    /// <summary>
    /// Of a fixative, its buffer: <c>phosphate</c>, <c>borax</c>, <c>none</c>; null where not said. Fluids of two bufferings are never mixed.
    /// </summary>
    public string? Buffering { get; init; }

    /// <summary>What is there; zero where it can only be bought.</summary>
    public required Amount OnHand { get; init; }

    /// <summary>Of things, whether one of it is a pair, as gloves are sold and counted.</summary>
    public bool IsByThePair { get; init; }

    /// <summary>The day it was opened; null while it is full.</summary>
    public LocalDate? OpenedOn { get; init; }

    /// <summary>The last day on which it may be used; null where none is set.</summary>
    public LocalDate? Expires { get; init; }

    /// <summary>How often it has been used already (a fixative kept for another specimen); 0 for fresh stock.</summary>
    public int Uses { get; init; }

    /// <summary>How often this bench lets a fluid be used; null for no limit of its own.</summary>
    public int? UsesAllowed { get; init; }

    /// <summary>What was seen of a used fluid; null for fresh stock.</summary>
    public SpentFluid? Spent { get; init; }

    /// <summary>The sizes it can be bought in; none where it cannot be bought.</summary>
    public ImmutableArray<Pack> Packs { get; init => field = GivenList.Of(value); } = [];

    /// <summary>What the stock on hand is worth by unit; null takes the cheapest pack's.</summary>
    public Price? Worth { get; init; }

    /// <summary>How it wears, for consumables and tools; null for what is measured out.</summary>
    public Wear? Wear { get; init; }

    /// <summary>Its place in the bench file.</summary>
    public SourceSpan Where { get; init; }

    /// <summary>What is wrong with it, in the same words as of a bench file.</summary>
    /// <param name="on">The day on which it would be used; null where that is not known.</param>
    /// <returns>Findings at the item's place, each with the property's path, such as <c>packs[1].price</c>, as its subject; empty where nothing is
    /// wrong.</returns>
    public ImmutableArray<Finding> Validate(LocalDate? on = null) =>
        [.. ValidatorFindings.Of(new StockItemValidator(on), this).Select(f => f with { Where = Where }), .. Spent?.Doubts(this) ?? []];

    /// <summary>A part bottle.</summary>
    public bool IsOpened => OpenedOn is not null;

    /// <summary>Whether the last day of use lies before a day.</summary>
    /// <param name="on">The day of use.</param>
    /// <returns>True from the day after <see cref="Expires"/>.</returns>
    public bool IsExpired(LocalDate on) => Expires is { } last && last < on;

    /// <summary>Whether its strength is said anywhere; only fluids other than water need one.</summary>
    public bool IsStrengthKnown => Kind != StockKind.Fluid || IsWater || SaysStrength(Strength) || Substance?.Any(char.IsAsciiDigit) is true;

    /// <summary>Whether it may be drawn on for a plan on a day: something there, in date, of known strength, and fit where it was used before.</summary>
    /// <param name="on">The day of use.</param>
    /// <returns>Whether.</returns>
    public bool IsUsable(LocalDate on) =>
        IsFit && !IsExpired(on);

    /// <summary>Whether anything but its date keeps it from being used.</summary>
    internal bool IsFit => OnHand.Units > 0 && IsStrengthKnown && Spent?.IsFit(this) is not false;

    private bool IsWater => Substance?.EndsWith("water", StringComparison.OrdinalIgnoreCase) is true;

    private static bool SaysStrength(string? text) =>
        text is not null && (text.Any(char.IsAsciiDigit) || text.Trim() is "pure" or "undiluted" or "saturated");
}
