using System.Collections.Immutable;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Planning.Provisioning;
using Protocolist.Planning.Provisioning.Purchasing;
using Protocolist.Quantities;

namespace Protocolist.Tests.Planning.Provisioning.Purchasing;

/// <summary>One way to meet a need, by the names of products.</summary>
internal sealed record Way(string Id, params (string Product, Amount Amount)[] Takes);

/// <summary>Something wanted, and the ways to have it.</summary>
internal sealed record Want(string Id, params Way[] Ways);

/// <summary>What was chosen, by the names of wants, ways and products.</summary>
internal sealed record Choice(ImmutableArray<Want> Wants, Product[] Products, PurchasePlan Plan, ImmutableArray<Finding> Findings)
{
    public string[] Ways => [.. Wants.Select((w, i) => w.Ways[Plan.Ways[i]].Id)];

    public Purchase? Bought(string product) => Plan.Purchases[Shop.IndexOf(Products, product)];

    public Amount Wanted(string product) => new(Products[Shop.IndexOf(Products, product)].OnHand.Kind, Plan.Wanted[Shop.IndexOf(Products, product)]);

    public Purchase Only => Assert.Single(Plan.Purchases, p => p is not null)!;
}

/// <summary>Products and needs by name, as the search takes them by number.</summary>
internal static class Shop
{
    public static readonly ExchangeRates Euro = ExchangeRates.None("EUR");

    public static Product Product(string name, Amount onHand, params Pack[] packs) => Product(name, onHand, Euro, packs);

    public static Product Product(string name, Amount onHand, ExchangeRates rates, params Pack[] packs) =>
        new(Message.Text(name), onHand, Market.Of(Message.Text(name), onHand.Kind, packs, rates));

    public static Choice Choose(IEnumerable<Want> wants, params Product[] products)
    {
        var (all, findings) = (wants.ToImmutableArray(), products.SelectMany(p => p.Market.WithoutRate).ToList());
        Need[] needs = [.. all.Select(w => new Need([.. w.Ways.Select(way => Pooled(way, products))]))];
        var plan = Purchases.Choose(needs, new long[products.Length], products, findings);
        return new(all, products, plan, [.. findings]);
    }

    public static Choice Choose(Product product, Amount wanted) => Choose([new("it", new Way("it", (product.Name.ToString(), wanted)))], product);

    public static int IndexOf(Product[] products, string name) => Array.FindIndex(products, p => p.Name.ToString() == name);

    private static ImmutableArray<Demand> Pooled(Way way, Product[] products) =>
        [.. way.Takes.GroupBy(t => IndexOf(products, t.Product)).Select(g => new Demand(g.Key, g.Sum(t => t.Amount.Units)))];

    /// <summary>The books of one material of a bench on a day.</summary>
    public static (BookedMaterial Books, ImmutableArray<Finding> Findings) Book(IEnumerable<StockItem> items, Amount used, Amount reserve, Purchase? purchase, NodaTime.LocalDate day, ExchangeRates? rates = null)
    {
        var on = Assert.Single(StockMaterial.Of([.. items], rates ?? Euro, SubstanceCatalogue.Bundled)).On(day);
        return (on.Book(used.Units, reserve.Units, purchase, 0, ["step"]), on.Doubts);
    }

    public static string Euros(long minor) => Money.OfMinor(minor, "EUR").ToString();
}
