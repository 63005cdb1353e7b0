using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Protocolist.Benches;
using Protocolist.Findings;

namespace Protocolist.Planning.Provisioning.Purchasing;

/// <summary>Chooses what to buy.</summary>
internal static class Purchases
{
    /// <summary>Nodes of the search; a plan has a handful of needs with two or three ways, far below it.</summary>
    public const int MostNodes = 50_000;

    /// <summary>Pack problems solved in one search; each takes microseconds, at the very worst some milliseconds.</summary>
    public const int MostCovers = 1_000;

    private static readonly Phrase Lacking = new(
        "lacking-and-not-for-sale", "{lacking:amount} of '{product}' {n|is|are} lacking, and no pack of it can be bought");

    private static readonly Phrase LackingRemedy = new("lacking-and-not-for-sale.remedy", "add a pack size with a price to the bench, or more stock");

    private static readonly Phrase WiderSteps = new(
        "packs-in-wider-steps",
        "the packs of '{product}' share no unit; they were compared in steps of {step:amount}, so the purchase covers but may not be the very cheapest");

    private static readonly Phrase WiderStepsRemedy = new("packs-in-wider-steps.remedy", "round the pack sizes to the label's figures");

    private static readonly Phrase NotAll = new(
        "ways-not-all-compared.needs", "{needs} needs have too many combinations of ways to compare all; the best found so far was taken");

    private static readonly Phrase NotAllRemedy = new("ways-not-all-compared.needs.remedy", "leave out ways that are never wanted");

    /// <summary>
    /// The cheapest combination: for each need one way, the demands of all chosen ways pooled by product, the shelf first, the rest in the cheapest packs.
    /// Least shortfalls, then least cash, then least worth of surplus, then fewest packs, then the earlier ways. Within a product the packs are
    /// the exact optimum: least cost, least surplus, fewest packs, more of the largest.
    /// </summary>
    /// <param name="needs">The needs; each with one way or more.</param>
    /// <param name="wanted">Of each product, what is wanted whatever way is chosen; 0 or more. Becomes the plan's own.</param>
    /// <param name="products">Every product that a way names.</param>
    /// <param name="findings">
    /// Takes <c>lacking-and-not-for-sale</c> (warning), <c>packs-in-wider-steps</c> (note), <c>ways-not-all-compared</c> (note: so many needs and ways that the
    /// search ended early with the best so far).
    /// </param>
    public static PurchasePlan Choose(ReadOnlySpan<Need> needs, long[] wanted, ReadOnlySpan<Product> products, List<Finding> findings)
    {
        var (totals, ways, open) = (wanted, new int[needs.Length], 0);
        foreach (var need in needs)
        {
            if (need.Ways.Length > 1) open++;
            else Add(need.Ways[0], totals);
        }

        var endedEarly = open > 0 && new WaySearch(needs, products, totals, ways).Run();
        for (var i = 0; i < needs.Length; i++)
        {
            if (needs[i].Ways.Length > 1) Add(needs[i].Ways[ways[i]], totals);
        }

        var purchases = new Purchase?[products.Length];
        for (var i = 0; i < purchases.Length; i++) purchases[i] = PurchaseOf(products[i], products[i].LackingOf(totals[i]), findings);
        if (endedEarly) findings.Add(Finding.Note("ways-not-all-compared", NotAll.With(("needs", needs.Length)), NotAllRemedy));
        return new(
            ImmutableCollectionsMarshal.AsImmutableArray(ways),
            ImmutableCollectionsMarshal.AsImmutableArray(totals),
            ImmutableCollectionsMarshal.AsImmutableArray(purchases));
    }

    private static void Add(ImmutableArray<Demand> way, long[] totals)
    {
        foreach (var demand in way) totals[demand.Product] += demand.Units;
    }

    /// <summary>The cheapest purchase of one product of which so much is wanted; null where the shelf suffices, or it cannot be bought.</summary>
    /// <param name="product">The product.</param>
    /// <param name="wanted">How much is wanted; 0 or more.</param>
    /// <param name="findings">Takes the same as of many.</param>
    public static Purchase? Of(Product product, long wanted, List<Finding> findings) => PurchaseOf(product, product.LackingOf(wanted), findings);

    private static Purchase? PurchaseOf(Product product, long lacking, List<Finding> findings)
    {
        if (lacking == 0) return null;
        if (product.Market.Cheapest(lacking) is not { } cover)
        {
            var amount = new Amount(product.OnHand.Kind, lacking);
            var n = amount.Kind == AmountKind.Count ? lacking : 1;
            findings.Add(Finding.Warning(Lacking.Id, Lacking.With(amount.Fact("lacking"), ("product", product.Name), ("n", n)), LackingRemedy));
            return null;
        }

        if (cover.Step > 1)
        {
            var step = new Amount(product.OnHand.Kind, cover.Step).Fact("step");
            findings.Add(Finding.Note(WiderSteps.Id, WiderSteps.With(("product", product.Name), step), WiderStepsRemedy));
        }

        var packs = ImmutableArray.CreateBuilder<PackCount>(cover.Counts.Length);
        for (var i = 0; i < cover.Counts.Length; i++)
        {
            var (pack, price) = product.Market.Offers[i];
            if (cover.Counts[i] <= 0) continue;
            var at = packs.Count;
            while (at > 0 && packs[at - 1].Pack.Size.Units < pack.Size.Units) at--;
            packs.Insert(at, new(pack, cover.Counts[i], price * cover.Counts[i]));
        }

        return new(packs.DrainToImmutable(), (long)cover.Total, (long)cover.Cost);
    }
}
