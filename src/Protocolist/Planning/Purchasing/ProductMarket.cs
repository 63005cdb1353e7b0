using System.Collections.Immutable;
using Protocolist.Benches.Stock;
using Protocolist.Findings;
using Protocolist.Quantities;

namespace Protocolist.Planning.Purchasing;

/// <summary>What the cheapest packs of one product come to, so that ways can be compared.</summary>
/// <param name="Shortfalls">1 where something is lacking and cannot be bought.</param>
/// <param name="Cost">Smallest coins.</param>
/// <param name="SurplusWorth">What is bought and not wanted, at what it cost, in smallest coins.</param>
/// <param name="Packs">The number of packs.</param>
internal readonly record struct Outlay(int Shortfalls, long Cost, decimal SurplusWorth, long Packs) : IComparable<Outlay>
{
    public static Outlay operator +(Outlay a, Outlay b) =>
        new(a.Shortfalls + b.Shortfalls, a.Cost + b.Cost, a.SurplusWorth + b.SurplusWorth, a.Packs + b.Packs);

    public static Outlay operator -(Outlay a, Outlay b) =>
        new(a.Shortfalls - b.Shortfalls, a.Cost - b.Cost, a.SurplusWorth - b.SurplusWorth, a.Packs - b.Packs);

    public int CompareTo(Outlay other) =>
        (Shortfalls, Cost, SurplusWorth, Packs).CompareTo((other.Shortfalls, other.Cost, other.SurplusWorth, other.Packs));

    /// <summary>Whether no addition can bring this below another: shortfalls and cost only grow with demand.</summary>
    public bool IsBeyond(Outlay other) => (Shortfalls, Cost).CompareTo((other.Shortfalls, other.Cost)) > 0;
}

/// <summary>One product's packs in the plan's currency, remembering what was worked out for each demand.</summary>
internal sealed class ProductMarket
{
    private readonly Product product;
    private readonly ImmutableArray<(Pack Pack, Money Price)> packs;
    private readonly SizeAndCost[] sizes;
    private readonly ExchangeRates rates;
    private readonly Dictionary<long, Cover?> covers = [];

    public ProductMarket(Product product, ExchangeRates rates)
    {
        this.product = product;
        this.rates = rates;
        packs = [.. product.Packs.Where(p => p.CanBeBought && p.Size.Kind == product.OnHand.Kind)
            .Select(p => (Pack: p, Price: rates.Convert(p.Price!))).Where(p => p.Price is not null).Select(p => (p.Pack, p.Price!))];
        sizes = [.. packs.Select(p => new SizeAndCost(p.Pack.Size.Units, p.Price.Minor))];
    }

    /// <summary>Covers worked out, not remembered: the measure of work done.</summary>
    public int Solved => covers.Count;

    public AmountKind Kind => product.OnHand.Kind;

    public IEnumerable<Finding> CurrencyFindings => product.Packs.Where(p => p.CanBeBought && rates.Convert(p.Price!) is null)
        .Select(p => p.Price!.Currency).Distinct().Select(c => rates.Lacking(c, $"'{product.Id}'"));

    public bool ShelfHolds(long wanted) => Lacking(wanted) == 0;

    public Outlay OutlayFor(long wanted)
    {
        var lacking = Lacking(wanted);
        return CoverFor(lacking) is not { } cover ? new(1, 0, 0, 0)
            : new(0, (long)cover.Cost, lacking == 0 ? 0 : (decimal)cover.Cost * ((decimal)cover.Total - lacking) / Math.Max(1, (decimal)cover.Total), cover.Counts.Sum());
    }

    public Purchase PurchaseFor(long wanted, ImmutableArray<Finding>.Builder findings)
    {
        var (kind, lacking) = (Kind, Lacking(wanted));
        var cover = CoverFor(lacking);
        if (cover is null)
            findings.Add(Finding.Error("lacking-and-not-for-sale", $"{new Amount(kind, lacking)} of '{product.Id}' {(kind == AmountKind.Count && lacking != 1 ? "are" : "is")} lacking, and no pack of it can be bought", "add a pack size with a price to the bench, or more stock"));
        if (cover is { Step: > 1 })
            findings.Add(Finding.Note("packs-in-wider-steps", $"the packs of '{product.Id}' share no unit; they were compared in steps of {new Amount(kind, cover.Step)}, so the purchase covers but may not be the very cheapest", "round the pack sizes to the label's figures"));
        var counts = cover is null ? [] : cover.Counts.Select((n, i) => (packs[i].Pack, Count: n, packs[i].Price)).Where(p => p.Count > 0)
            .OrderByDescending(p => p.Pack.Size).Select(p => new PackCount(p.Pack, p.Count, p.Price * p.Count)).ToImmutableArray();
        return new(product.Id, new(kind, wanted), new(kind, wanted - lacking), counts,
            new(kind, (long)(cover?.Total ?? 0)), Money.Sum(counts.Select(c => c.Cost), rates.Currency));
    }

    private long Lacking(long wanted) => Math.Max(0, wanted - Math.Max(0, product.OnHand.Units));

    private Cover? CoverFor(long lacking)
    {
        if (covers.TryGetValue(lacking, out var known)) return known;
        var cover = PackCover.Cheapest(sizes, lacking);
        return covers[lacking] = cover is { Cost: var cost } && cost > Money.MostMinor ? null : cover;
    }
}
