using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches.Stock;
using Protocolist.Findings;
using Protocolist.Fluids.Safety;
using Protocolist.Planning.Purchasing;

namespace Protocolist.Planning.Provisioning;

/// <summary>One thing over the whole plan: the stock lines that serve it, how often it is used, and what that wears out.</summary>
/// <param name="Id">Its name in the plan.</param>
/// <param name="Name">What it is called.</param>
/// <param name="Items">The stock lines that serve; none where the bench lists none.</param>
/// <param name="Uses">Times that a piece is used, by step.</param>
internal sealed record Thing(string Id, string Name, ImmutableArray<StockItem> Items, ImmutableArray<(string Step, long Uses)> Uses)
{
    public WasteClass? Waste { get; init; }

    public long AllUses => Uses.Sum(u => u.Uses);

    public bool IsListed => !Items.IsEmpty;

    /// <summary>A tool of which nothing says how long it lasts does not wear; a consumable is used once.</summary>
    public Wear? Wear => Items.IsEmpty || Items[0].Kind == StockKind.Consumable ? Items.Select(i => i.Wear).FirstOrDefault() ?? Benches.Stock.Wear.SingleUse : Items[0].Wear;

    /// <summary>Pieces that have to be there.</summary>
    public long Needed => AllUses == 0 ? 0 : Wear is { } wear ? (SeenAlready + AllUses + wear.LastsUses - 1) / wear.LastsUses : 1;

    /// <summary>Pieces that are used up.</summary>
    public long UsedUp => Wear is { } wear ? (SeenAlready + AllUses) / wear.LastsUses : 0;

    /// <summary>Uses of the piece in hand that the plan begins with and of the one that it ends with, where it is not used up: for its cost.</summary>
    public long UsesBeyond => Wear is not { LastsUses: > 1 } wear ? 0 : UsedUp == 0 ? AllUses : (SeenAlready + AllUses) % wear.LastsUses;

    private long SeenAlready => Items.FirstOrDefault(i => i.OnHand.Units > 0)?.Wear?.UsedSoFar ?? 0;

    public Amount OnHand(LocalDate on) => Items.Where(i => i.IsUsable(on)).Aggregate(Amount.Zero(AmountKind.Count), (sum, i) => sum + i.OnHand);

    public ImmutableArray<Pack> Packs => [.. Items.SelectMany(i => i.Packs).Distinct()];

    public Product AsProduct(LocalDate on) => new(Id, OnHand(on), Packs);

    public Purchasing.Need AsNeed() => new(Id, [new(Id, [new(Id, Amount.Of(Needed))])]);
}

/// <summary>All things of a plan.</summary>
internal static class ThingBook
{
    public static ImmutableArray<Thing> Of(IEnumerable<DraftStep> steps, int animals, ImmutableArray<StockItem> stock)
    {
        var shelf = stock.Where(i => i.Kind is StockKind.Consumable or StockKind.Tool && i.OnHand.Kind == AmountKind.Count).ToList();
        return
        [
            .. steps.Where(s => !s.IsCare).SelectMany(s => ThingNeeds.Of(s, animals).Select(n => (Step: s.Id, Need: n, Items: Serving(n, shelf))))
                .GroupBy(x => (Id: x.Items.IsEmpty ? x.Need.Id : "", Item: x.Items.IsEmpty ? "" : x.Items[0].Id))
                .Select(g => new Thing(
                    g.Key.Item.Length > 0 ? g.Key.Item : g.Key.Id,
                    g.First().Need.Name,
                    g.First().Items,
                    [.. g.Select(x => (x.Step, Pieces(x.Need.Uses, x.Items)))])
                { Waste = g.First().Need.Waste }),
        ];
    }

    /// <summary>What the bench's list lacks, in one note, so that somebody sees that it is at hand.</summary>
    public static IEnumerable<Finding> Unlisted(IEnumerable<Thing> things, ImmutableArray<StockItem> stock)
    {
        var names = things.Where(t => !t.IsListed).Select(t => t.Name).Distinct(StringComparer.Ordinal).ToList();
        if (names.Count > 0 && !stock.IsEmpty)
            yield return Finding.Note("not-on-the-bench-list", $"the bench lists none of: {string.Join("; ", names)}", "see that they are at hand, or list them with 'consumable:' and 'tool:' so that they are counted");
    }

    /// <summary>Items of one kind only are taken together: those of the wanted size where there are such, else all that are called alike.</summary>
    private static ImmutableArray<StockItem> Serving(ThingNeed need, IEnumerable<StockItem> shelf)
    {
        var alike = shelf.Where(i => need.Words.Any(w => i.Substance.Contains(w, StringComparison.OrdinalIgnoreCase))).ToList();
        var sized = alike.Where(i => need.Sizes.Any(s => i.Substance.Contains(s, StringComparison.OrdinalIgnoreCase))).ToList();
        var fitting = sized.Count > 0 ? sized : alike;
        return fitting.Count == 0 ? [] : [.. fitting.Where(i => i.Substance == fitting[0].Substance && i.Kind == fitting[0].Kind)];
    }

    /// <summary>Gloves are listed by the piece or by the pair.</summary>
    private static long Pieces(long uses, ImmutableArray<StockItem> items) =>
        !items.IsEmpty && items[0].Substance.Contains("pair", StringComparison.OrdinalIgnoreCase) ? (uses + 1) / 2 : uses;
}
