namespace Protocolist.Planning.Purchasing;

/// <summary>Depth-first search over the ways with bounding: what is bought for some of the needs never becomes cheaper by adding another.</summary>
/// <remarks>Needs that compete for no product are searched apart, so that their combinations add up instead of multiplying.</remarks>
internal sealed class WaySearch
{
    private readonly (int Product, long Units)[][][] demands;
    private readonly long[] totals;
    private int[] group = [];
    private int[] current = [];
    private int[]? best;
    private Outlay bestOutlay;
    private int nodes;

    public WaySearch(IReadOnlyList<Need> needs, IReadOnlyList<Product> products, ExchangeRates rates)
    {
        Markets = [.. products.Select(p => new ProductMarket(p, rates))];
        var byId = products.Select((p, i) => (p.Id, i)).ToDictionary(p => p.Id, p => p.i, StringComparer.Ordinal);
        demands = [.. needs.Select(n => n.Ways.IsDefaultOrEmpty
            ? throw new ArgumentException($"Need '{n.Id}' has no way.", nameof(needs))
            : n.Ways.Select(w => w.Demands.Select(Demanded).GroupBy(d => d.Product, d => d.Units).Select(g => (g.Key, g.Sum())).ToArray()).ToArray())];
        totals = new long[products.Count];
        Best = new int[needs.Count];

        (int Product, long Units) Demanded(Demand d) =>
            !byId.TryGetValue(d.ProductId, out var i) ? throw new ArgumentException($"No product '{d.ProductId}'.", nameof(products))
            : d.Amount.Kind != Markets[i].Kind || d.Amount.Units < 0 ? throw new ArgumentException($"{d.Amount} cannot be wanted of '{d.ProductId}'.", nameof(needs))
            : (i, d.Amount.Units);
    }

    public ProductMarket[] Markets { get; }

    /// <summary>The way chosen for each need.</summary>
    public int[] Best { get; }

    /// <summary>What the chosen ways want of each product.</summary>
    public long[] Totals
    {
        get
        {
            var sums = new long[Markets.Length];
            for (var need = 0; need < Best.Length; need++)
                foreach (var (product, units) in demands[need][Best[need]]) sums[product] += units;
            return sums;
        }
    }

    public bool EndedEarly { get; private set; }

    public void Run()
    {
        foreach (var together in Competing())
        {
            (group, current, best, nodes) = (together, new int[together.Length], null, 0);
            Visit(0, default);
            for (var i = 0; i < group.Length; i++) Best[group[i]] = best![i];
        }
    }

    /// <summary>Needs grouped so that no product which might run short on the shelf is wanted by two groups.</summary>
    private int[][] Competing()
    {
        var groupOf = Enumerable.Range(0, demands.Length).ToArray();
        for (var product = 0; product < Markets.Length; product++)
        {
            var most = demands.Select(ways => ways.Max(w => w.Where(d => d.Product == product).Sum(d => d.Units))).ToArray();
            if (Markets[product].ShelfHolds(most.Sum())) continue;
            var wanting = Enumerable.Range(0, most.Length).Where(n => most[n] > 0).Select(n => groupOf[n]).ToHashSet();
            for (var n = 0; n < groupOf.Length && wanting.Count > 1; n++)
                if (wanting.Contains(groupOf[n])) groupOf[n] = wanting.Min();
        }

        return [.. Enumerable.Range(0, demands.Length).GroupBy(n => groupOf[n]).Select(g => g.ToArray())];
    }

    private void Visit(int at, Outlay sofar)
    {
        if (at == group.Length)
        {
            var order = best is null ? -1 : sofar.CompareTo(bestOutlay);
            if (order < 0 || (order == 0 && current.AsSpan().SequenceCompareTo(best) < 0)) (bestOutlay, best) = (sofar, [.. current]);
            return;
        }

        // Cheapest first: the first leaf reached is then a good one, which bounds the rest and serves if the search must end early.
        var ways = demands[group[at]].Select((demand, way) => (way, outlay: sofar + Added(demand))).OrderBy(w => w.outlay).ThenBy(w => w.way).ToArray();
        foreach (var (way, outlay) in ways)
        {
            if (best is not null && outlay.IsBeyond(bestOutlay)) break;
            if (best is not null && (++nodes > Purchases.MostNodes || Markets.Sum(m => m.Solved) > Purchases.MostCovers))
            {
                EndedEarly = true;
                return;
            }

            current[at] = way;
            foreach (var (product, units) in demands[group[at]][way]) totals[product] += units;
            Visit(at + 1, outlay);
            foreach (var (product, units) in demands[group[at]][way]) totals[product] -= units;
        }
    }

    /// <summary>What a way's demands add to the outlay, on top of the totals so far. Worth of surplus and packs may go down.</summary>
    private Outlay Added((int Product, long Units)[] demand)
    {
        var sum = default(Outlay);
        foreach (var (product, units) in demand)
            sum += Markets[product].OutlayFor(totals[product] + units) - Markets[product].OutlayFor(totals[product]);
        return sum;
    }
}
