using System.Collections.Immutable;

namespace Protocolist.Planning.Provisioning.Purchasing;

/// <summary>What the cheapest packs come to, so that ways can be compared.</summary>
/// <param name="Shortfalls">How many products are lacking and cannot be bought.</param>
/// <param name="Cost">Smallest coins.</param>
/// <param name="SurplusWorth">What is bought and not wanted, at what it cost, in smallest coins.</param>
/// <param name="Packs">The number of packs.</param>
internal readonly record struct Outlay(int Shortfalls, long Cost, decimal SurplusWorth, long Packs) : IComparable<Outlay>
{
    public static Outlay operator +(Outlay a, Outlay b) =>
        new(a.Shortfalls + b.Shortfalls, a.Cost + b.Cost, a.SurplusWorth + b.SurplusWorth, a.Packs + b.Packs);

    public static Outlay operator -(Outlay a, Outlay b) =>
        new(a.Shortfalls - b.Shortfalls, a.Cost - b.Cost, a.SurplusWorth - b.SurplusWorth, a.Packs - b.Packs);

    public int CompareTo(Outlay other) => (Shortfalls, Cost, SurplusWorth, Packs).CompareTo((other.Shortfalls, other.Cost, other.SurplusWorth, other.Packs));

    /// <summary>Whether no addition can bring this below another: shortfalls and cost only grow with demand.</summary>
    public bool IsBeyond(Outlay other) => (Shortfalls, Cost).CompareTo((other.Shortfalls, other.Cost)) > 0;
}

/// <summary>Depth-first search over the ways with bounding: what is bought for some of the needs never becomes cheaper by adding another.</summary>
/// <remarks>Needs that compete for no product are searched apart, so that their combinations add up instead of multiplying.</remarks>
internal ref struct WaySearch
{
    /// <summary>So many ways are put in order without taking memory.</summary>
    private const int FewWays = 16;

    /// <summary>So many amounts, of each need by product, likewise.</summary>
    private const int FewCells = 256;

    private readonly ReadOnlySpan<Need> needs;
    private readonly ReadOnlySpan<Product> products;
    private readonly long[] totals;
    private readonly int[] best;
    private readonly Dictionary<(int Product, long Lacking), Outlay>? known;
    private int[] group = [];
    private int[] current = [];
    private int[]? bestOfGroup;
    private Outlay bestOutlay;
    private int nodes;
    private bool endedEarly;

    /// <summary>Prepares the search over the needs that have several ways.</summary>
    /// <param name="needs">All needs.</param>
    /// <param name="products">The products.</param>
    /// <param name="wanted">Of each product, what is wanted in any case; the same again when the search is over.</param>
    /// <param name="best">Takes the way of each need; as it is, the first, where the shelf holds whatever is taken.</param>
    public WaySearch(ReadOnlySpan<Need> needs, ReadOnlySpan<Product> products, long[] wanted, int[] best)
    {
        this.needs = needs;
        this.products = products;
        (totals, this.best) = (wanted, best);

        // What one need alone wants is hardly asked for twice.
        known = needs.Length > 1 ? [] : null;
    }

    /// <summary>Searches; says whether it ended early with the best so far.</summary>
    public bool Run()
    {
        foreach (var together in Competing())
        {
            (group, current, bestOfGroup, nodes) = (together, new int[together.Length], null, 0);
            Visit(0, default);
            for (var i = 0; i < group.Length; i++) best[group[i]] = bestOfGroup![i];
        }

        return endedEarly;
    }

    /// <summary>
    /// The needs with several ways that may run short on the shelf, grouped so that no product which might run short is wanted by two groups.
    /// </summary>
    private List<int[]> Competing()
    {
        var (groupOf, cells) = (new int[needs.Length], needs.Length * products.Length);
        Span<long> most = cells <= FewCells ? stackalloc long[cells] : new long[cells];
        groupOf.AsSpan().Fill(-1);
        for (var n = 0; n < needs.Length; n++)
        {
            if (needs[n].Ways.Length > 1) needs[n].MostOf(most.Slice(n * products.Length, products.Length));
        }

        for (var product = 0; product < products.Length; product++)
        {
            var sum = totals[product];
            for (var n = 0; n < needs.Length; n++) sum += most[(n * products.Length) + product];
            if (products[product].LackingOf(sum) == 0) continue;
            var first = -1;
            for (var n = 0; n < needs.Length; n++)
            {
                if (most[(n * products.Length) + product] == 0) continue;
                if (groupOf[n] < 0) groupOf[n] = n;
                if (first < 0) first = n;
                else Join(groupOf, groupOf[first], groupOf[n]);
            }
        }

        var groups = new List<int[]>();
        for (var of = 0; of < groupOf.Length; of++)
        {
            if (groupOf[of] == of) groups.Add([.. MembersOf(of, groupOf)]);
        }

        return groups;
    }

    private static IEnumerable<int> MembersOf(int group, int[] groupOf)
    {
        for (var n = 0; n < groupOf.Length; n++)
        {
            if (groupOf[n] == group) yield return n;
        }
    }

    private static void Join(int[] groupOf, int one, int other)
    {
        var (to, from) = (Math.Min(one, other), Math.Max(one, other));
        for (var n = 0; n < groupOf.Length; n++)
        {
            if (groupOf[n] == from) groupOf[n] = to;
        }
    }

    private void Visit(int at, Outlay sofar)
    {
        if (at == group.Length)
        {
            var order = bestOfGroup is null ? -1 : sofar.CompareTo(bestOutlay);
            if (order < 0 || (order == 0 && current.AsSpan().SequenceCompareTo(bestOfGroup) < 0)) (bestOutlay, bestOfGroup) = (sofar, [.. current]);
            return;
        }

        // Cheapest first: the first leaf reached is then a good one, which bounds the rest and serves if the search must end early.
        var ways = needs[group[at]].Ways;
        Span<(Outlay Outlay, int Way)> outlays = ways.Length <= FewWays ? stackalloc (Outlay, int)[ways.Length] : new (Outlay, int)[ways.Length];
        for (var way = 0; way < ways.Length; way++) outlays[way] = (sofar + Added(ways[way]), way);
        outlays.Sort();
        foreach (var (outlay, way) in outlays)
        {
            if (bestOfGroup is not null && outlay.IsBeyond(bestOutlay)) break;
            if (bestOfGroup is not null && (++nodes > Purchases.MostNodes || known?.Count > Purchases.MostCovers))
            {
                endedEarly = true;
                return;
            }

            current[at] = way;
            foreach (var demand in ways[way]) totals[demand.Product] += demand.Units;
            Visit(at + 1, outlay);
            foreach (var demand in ways[way]) totals[demand.Product] -= demand.Units;
        }
    }

    /// <summary>What a way's demands add to the outlay, on top of the totals so far. Worth of surplus and packs may go down.</summary>
    private Outlay Added(ImmutableArray<Demand> way)
    {
        var sum = default(Outlay);
        foreach (var (product, units) in way) sum += OutlayFor(product, totals[product] + units) - OutlayFor(product, totals[product]);
        return sum;
    }

    private Outlay OutlayFor(int product, long wanted)
    {
        var lacking = products[product].LackingOf(wanted);
        if (lacking == 0) return default;
        if (known is null) return OutlayOf(product, lacking);
        if (!known.TryGetValue((product, lacking), out var outlay)) known[(product, lacking)] = outlay = OutlayOf(product, lacking);
        return outlay;
    }

    private readonly Outlay OutlayOf(int product, long lacking)
    {
        if (products[product].Market.Cheapest(lacking) is not { } cover) return new(1, 0, 0, 0);
        var packs = 0L;
        foreach (var count in cover.Counts) packs += count;
        return new(0, (long)cover.Cost, (decimal)cover.Cost * ((decimal)cover.Total - lacking) / Math.Max(1, (decimal)cover.Total), packs);
    }
}
