using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Fluids.Buffers;
using Protocolist.Fluids.Mixing;
using Protocolist.Notation;
using Protocolist.Planning.Provisioning.Purchasing;
using Protocolist.Plans;

namespace Protocolist.Planning.Provisioning;

/// <summary>One material of a bench: all bottles and bags of one substance, or all boxes of one sort of thing. Made once of a bench. Immutable.</summary>
/// <remarks>Used fixative is never one with fresh; each lot of it stands alone.</remarks>
internal sealed class StockMaterial
{
    private static readonly Phrase UsedLot = new("stock-used-lot", "{substance} ({stock}, used {uses} {uses|time|times})");

    private readonly ExchangeRates rates;

    private StockMaterial(int index, ImmutableArray<StockItem> items, Message name, Message product, ExchangeRates rates)
    {
        (Index, Items, Name, Product, Text, this.rates) = (index, items, name, product, name.ToString(), rates);
        Packs = [.. items.SelectMany(i => i.Packs).Distinct()];
        CanBeBought = items.Any(i => i.Packs.Any(p => p.CanBeBought));
        MostUses = items.Max(i => i.Uses);
        Market = Market.Of(product, Measure, Packs, rates);
    }

    /// <summary>Its place among the bench's materials.</summary>
    public int Index { get; }

    /// <summary>Its id in the plan.</summary>
    public required string Id { get; init; }

    /// <summary>What people call it.</summary>
    public Message Name { get; }

    /// <summary>What findings call it: things by the id of their stock.</summary>
    public Message Product { get; }

    /// <summary>The name in English, by which recipes label it.</summary>
    public string Text { get; }

    public required MaterialKind Kind { get; init; }

    public AmountKind Measure => Items[0].OnHand.Kind;

    /// <summary>In the order of the bench file.</summary>
    public ImmutableArray<StockItem> Items { get; }

    /// <summary>The pack sizes of all its items together.</summary>
    public ImmutableArray<Pack> Packs { get; }

    public Market Market { get; }

    public bool CanBeBought { get; }

    /// <summary>The fluid; null for what is none, or of which nobody can tell.</summary>
    public Fluid? Fluid { get; private init; }

    /// <summary>The fluid as the recipe solver sees it, as if there were as much as is wanted.</summary>
    public StockFluid? Liquid { get; private init; }

    /// <summary>What makes it count where fluids are stored.</summary>
    public StoredHazard Hazard { get; private init; }

    /// <summary>The salt; null for what is none, or of which nobody can tell.</summary>
    public Salt? Salt { get; private init; }

    /// <summary>Whether it has served a specimen before.</summary>
    public bool IsSpent => Items[0].Uses > 0;

    /// <summary>Whether it is used fixative that a fluid may be made from: of the same buffering.</summary>
    public bool Restores(Fluid fluid) =>
        IsSpent && Fluid is { HasFormaldehyde: true, Substance.IsConcentrate: false } spent && spent.Buffering == fluid.Buffering;

    /// <summary>How often the most used bottle has served.</summary>
    public int MostUses { get; }

    /// <summary>Whether one of it is a pair.</summary>
    public bool IsByThePair { get; private init; }

    /// <summary>Its shelf on a day.</summary>
    public MaterialOnDay On(LocalDate day) => MaterialOnDay.Of(this, day, rates);

    /// <summary>The fluids and salts of a bench by substance, then its consumables and tools by what they are; each in the order of the bench file.</summary>
    public static ImmutableArray<StockMaterial> Of(ImmutableArray<StockItem> stock, ExchangeRates rates, SubstanceCatalogue known)
    {
        var materials = ImmutableArray.CreateBuilder<StockMaterial>();
        var fluidsAndSalts = stock.Where(i => i.Kind is StockKind.Fluid or StockKind.Salt).Select(item => Identity(item, known));
        foreach (var lines in fluidsAndSalts.GroupBy(i => i.Key, i => i))
        {
            var ((_, item, fluid, salt), name) = (lines.First(), Message.Text(Written(lines.First().Item)));
            ImmutableArray<StockItem> items = [.. lines.Select(l => l.Item)];
            materials.Add(fluid is not null ? OfFluid(materials.Count, items, fluid, rates) : new(materials.Count, items, name, name, rates)
            {
                Id = Slug.Of(Written(item)),
                Kind = item.Kind == StockKind.Salt ? MaterialKind.Salt : MaterialKind.Fluid,
                Salt = salt,
            });
        }

        var things = stock.Where(i => i.Kind is StockKind.Consumable or StockKind.Tool && i.OnHand.Kind == AmountKind.Count);
        foreach (var lines in things.GroupBy(i => (i.Substance, i.Kind)))
        {
            materials.Add(new(materials.Count, [.. lines], Message.Text(lines.Key.Substance), Message.Text(lines.First().Id), rates)
            {
                Id = lines.First().Id,
                Kind = lines.Key.Kind == StockKind.Tool ? MaterialKind.Tool : MaterialKind.Consumable,
                IsByThePair = lines.Any(l => l.IsByThePair),
            });
        }

        return materials.ToImmutable();
    }

    private static StockMaterial OfFluid(int index, ImmutableArray<StockItem> items, Fluid fluid, ExchangeRates rates)
    {
        var (item, written) = (items[0], items[0].Buffering is null ? Written(items[0]) : fluid.Name);
        var name = item.Uses > 0 ? UsedLot.With(("substance", Written(item)), Argument.Id("stock", item.Id), ("uses", item.Uses)) : Message.Text(written);
        var packs = items.SelectMany(i => i.Packs).Where(p => p.CanBeBought && p.Size.Kind == AmountKind.Volume);
        return new(index, items, name, name, rates)
        {
            Id = item.Uses > 0 ? $"{Slug.Of(Written(item))}-{item.PlanId}" : Slug.Of(written),
            Kind = fluid.IsWater ? MaterialKind.Water : MaterialKind.Fluid,
            Fluid = fluid,
            Hazard = StoredHazard.Of(fluid),
            Liquid = new(fluid)
            {
                Label = name.ToString(),
                CostPerLitre = packs.Select(p => (double)p.Price!.Amount / p.Size.Volume.Liters).DefaultIfEmpty(0).Min(),
            },
        };
    }

    /// <summary>What makes two lines of stock one material, read from the bench file once.</summary>
    private static (object Key, StockItem Item, Fluid? Fluid, Salt? Salt) Identity(StockItem item, SubstanceCatalogue known)
    {
        var (fluid, salt) = Held(item, known);
        object key = item is { Kind: StockKind.Fluid, Uses: > 0 } ? item
            : fluid is not null ? (fluid, item.OnHand.Kind)
            : salt is not null ? (salt, item.OnHand.Kind)
            : (Written(item), item.OnHand.Kind);
        return (key, item, fluid, salt);
    }

    /// <summary>What an item holds; what is measured as no fluid or salt of a recipe is can be listed, and no more.</summary>
    public static (Fluid? Fluid, Salt? Salt) Held(StockItem item, SubstanceCatalogue known) =>
    (
        item is { Kind: StockKind.Fluid, OnHand.Kind: AmountKind.Volume } ? FluidOf(item, known) : null,
        item is { Kind: StockKind.Salt, OnHand.Kind: AmountKind.Mass } ? Salts.Read(Written(item)).Value : null
    );

    /// <summary>The fluid of a bottle; a buffering that stands beside the name is part of it.</summary>
    private static Fluid? FluidOf(StockItem item, SubstanceCatalogue known)
    {
        var written = Written(item);
        var plain = Fluid.Read(written, known: known).Value;
        if (item.Buffering is not { } buffering || plain is null or { Buffering: not Buffering.None } || buffering == "none") return plain;
        var word = buffering == "phosphate" ? "neutral buffered" : $"{buffering}-buffered";
        return Fluid.Read($"{word} {written}", known: known).Value ?? plain;
    }

    private static string Written(StockItem item) =>
        string.Join(' ', ((string?[])[item.Substance, item.Strength, item.Hydrate]).Where(t => !string.IsNullOrWhiteSpace(t)));
}
