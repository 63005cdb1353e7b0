using System.Collections.Immutable;
using Protocolist.Benches.Stock;
using Protocolist.Findings;
using Protocolist.Quantities;

namespace Protocolist.Planning.Purchasing;

/// <summary>Chooses what to buy.</summary>
public static class Purchases
{
    /// <summary>Nodes of the search; a plan has a handful of needs with two or three ways, far below it.</summary>
    internal const int MostNodes = 50_000;

    /// <summary>Pack problems solved in one search; each takes microseconds, at the very worst some milliseconds.</summary>
    internal const int MostCovers = 1_000;

    /// <summary>
    /// The cheapest combination: for each need one way, the demands of all chosen ways pooled by product, the shelf first, the rest in the cheapest packs.
    /// Least shortfalls, then least cash, then least worth of surplus, then fewest packs, then the earlier ways. Within a product the packs are
    /// the exact optimum: least cost, least surplus, fewest packs, more of the largest.
    /// </summary>
    /// <param name="needs">The needs; each with one way or more.</param>
    /// <param name="products">Every product that a way names; ids differ.</param>
    /// <param name="rates">The plan's currency and the rates into it; packs in a currency without a rate are passed over with an error.</param>
    /// <returns>
    /// The plan, always present. Findings: <c>lacking-and-not-for-sale</c> (error), <c>two-currencies</c> (error), <c>packs-in-wider-steps</c> (note),
    /// <c>ways-not-all-compared</c> (note: so many needs and ways that the search ended early with the best so far).
    /// </returns>
    /// <exception cref="ArgumentException">A need without a way, a product named twice or not at all, an amount of another kind than its product, a negative amount.</exception>
    public static Checked<PurchasePlan> Choose(IReadOnlyList<Need> needs, IReadOnlyList<Product> products, ExchangeRates rates)
    {
        var search = new WaySearch(needs, products, rates);
        search.Run();
        var findings = ImmutableArray.CreateBuilder<Finding>();
        findings.AddRange(search.Markets.SelectMany(m => m.CurrencyFindings));
        var totals = search.Totals;
        var lines = products.Select((p, i) => (Market: search.Markets[i], Wanted: totals[i])).Where(p => p.Wanted > 0)
            .Select(p => p.Market.PurchaseFor(p.Wanted, findings)).ToImmutableArray();
        if (search.EndedEarly)
            findings.Add(Finding.Note("ways-not-all-compared", $"{needs.Count} needs have too many combinations of ways to compare all; the best found so far was taken", "leave out ways that are never wanted"));
        var ways = needs.Select((n, i) => new ChosenWay(n.Id, n.Ways[search.Best[i]].Id)).ToImmutableArray();
        return new(new(ways, lines, Money.Sum(lines.Select(l => l.Cost), rates.Currency)), findings.ToImmutable());
    }

    /// <summary>The cheapest packs of one product.</summary>
    /// <param name="product">The product.</param>
    /// <param name="wanted">How much of it is wanted, reserve included.</param>
    /// <param name="rates">The plan's currency and rates.</param>
    /// <returns>The plan with at most one line; findings as for many needs.</returns>
    public static Checked<PurchasePlan> Choose(Product product, Amount wanted, ExchangeRates rates) =>
        Choose([new(product.Id, [new(product.Id, [new(product.Id, wanted)])])], [product], rates);
}
