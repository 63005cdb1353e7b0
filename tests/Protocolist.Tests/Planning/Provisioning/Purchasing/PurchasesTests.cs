using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Planning.Provisioning.Purchasing;
using Protocolist.Quantities;
using UnitsNet;
using static Protocolist.Tests.Planning.Provisioning.Purchasing.Shop;

namespace Protocolist.Tests.Planning.Provisioning.Purchasing;

public class PurchasesTests
{
    private static Amount L(double litres) => Amount.Of(Volume.FromLiters(litres));

    private static Amount G(double grams) => Amount.Of(Mass.FromGrams(grams));

    private static Pack Pack(Amount size, decimal price, int days = 0, string currency = "EUR") => new(size, Money.Of(price, currency), days);

    [Fact]
    public void The_shelf_comes_first_and_the_rest_is_bought()
    {
        var product = Product("ethanol-96", L(1.5), Pack(L(1), 9, 2), Pack(L(5), 30, 7));
        var chosen = Choose(product, L(3.2));
        Assert.Equal((L(3.2), L(2).Units, 1800), (chosen.Wanted("ethanol-96"), chosen.Only.Bought, chosen.Only.CostMinor));
        Assert.Equal(new PackCount(product.Market.Offers[0].Pack, 2, Money.Of(18, "EUR")), Assert.Single(chosen.Only.Packs));
        Assert.Equal(1800, chosen.Plan.CostMinor);
    }

    [Fact]
    public void A_full_shelf_buys_nothing()
    {
        var chosen = Choose(Product("water", L(20)), L(20));
        Assert.Null(chosen.Bought("water"));
        Assert.Equal((L(20), 0), (chosen.Wanted("water"), chosen.Plan.CostMinor));
    }

    /// <summary>10 L of neutral buffered formalin: 1 L of stock, 40 g and 65 g of phosphates (4.0 and 6.5 g/L), against ready-made.</summary>
    [Fact]
    public void Ready_made_wins_when_the_salts_must_be_bought_and_loses_when_they_are_there()
    {
        Product[] Shelf(double salts) =>
        [
            Product("formalin-stock", L(0), Pack(L(1), 14), Pack(L(2.5), 28)),
            Product("monobasic", G(salts), Pack(G(100), 12)),
            Product("dibasic", G(salts), Pack(G(100), 11)),
            Product("nbf", L(0), Pack(L(5), 17.50m), Pack(L(10), 34)),
        ];
        var want = new Want(
            "fixative",
            new Way("from-stock", ("formalin-stock", L(1)), ("monobasic", G(40)), ("dibasic", G(65))),
            new Way("ready-made", ("nbf", L(10))));

        var bought = Choose([want], Shelf(0));
        Assert.Equal(("ready-made", 3400), (bought.Ways[0], bought.Plan.CostMinor));

        var mixed = Choose([want], Shelf(100));
        Assert.Equal(("from-stock", 1400), (mixed.Ways[0], mixed.Plan.CostMinor));
    }

    /// <summary>Each need alone is cheaper from the 70 % litre; together one five-litre of 96 % serves both.</summary>
    [Fact]
    public void Pooling_changes_the_best_way()
    {
        Product[] products = [Product("e96", L(0), Pack(L(5), 30)), Product("e70", L(0), Pack(L(1), 8))];
        static Want Alcohol(string id) => new(id, new Way("diluted", ("e96", L(2))), new Way("ready", ("e70", L(2.74))));
        Assert.Equal(2400, Choose([Alcohol("a")], products).Plan.CostMinor);
        var both = Choose([Alcohol("a"), Alcohol("b")], products);
        Assert.Equal(["diluted", "diluted"], both.Ways);
        Assert.Equal(3000, both.Plan.CostMinor);
    }

    [Fact]
    public void Equal_ways_take_the_earlier()
    {
        Product[] products = [Product("a", L(0), Pack(L(1), 5)), Product("b", L(0), Pack(L(1), 5))];
        Assert.Equal("first", Choose([new Want("n", new Way("first", ("b", L(1))), new Way("second", ("a", L(1))))], products).Ways[0]);
    }

    /// <summary>What is wanted in any case is taken from the shelf first, and may leave too little for a way.</summary>
    [Fact]
    public void What_is_wanted_whatever_is_chosen_counts_with_every_way()
    {
        Product[] products = [Product("a", L(2), Pack(L(1), 5)), Product("b", L(1), Pack(L(1), 4))];
        Need need = new([[new(0, L(1).Units)], [new(1, L(1).Units)]]);
        var plan = Purchases.Choose([need], [L(1.5).Units, 0], products, []);
        Assert.Equal((1, 0), (plan.Ways[0], plan.CostMinor));
        Assert.Equal(0, Purchases.Choose([need], [L(1).Units, 0], products, []).Ways[0]);
    }

    [Fact]
    public void What_cannot_be_bought_is_told_and_another_way_is_preferred()
    {
        Product[] products = [Product("none", L(0.2), new Pack(L(1), null)), Product("dear", L(0), Pack(L(1), 500))];
        var lacking = Choose(products[0], L(1));
        var finding = Assert.Single(lacking.Findings);
        Assert.Equal(("lacking-and-not-for-sale", Severity.Warning), (finding.Id, finding.Severity));
        Assert.Contains("800 mL of 'none'", finding.Message.ToString(), StringComparison.Ordinal);
        Assert.Null(lacking.Bought("none"));

        var way = Choose([new Want("n", new Way("impossible", ("none", L(1))), new Way("dear", ("dear", L(1))))], products);
        Assert.Empty(way.Findings);
        Assert.Equal("dear", way.Ways[0]);
    }

    [Fact]
    public void Two_currencies_need_a_rate()
    {
        Pack[] packs = [Pack(L(1), 8, currency: "GBP"), Pack(L(1), 9.50m)];
        var without = Choose(Product("e96", L(0), packs), L(1));
        Assert.Equal("two-currencies", Assert.Single(without.Findings).Id);
        Assert.Equal(950, without.Plan.CostMinor);

        var with = Choose(Product("e96", L(0), Euro with { Rates = Euro.Rates.Add("GBP", 1.17m) }, packs), L(1));
        Assert.Empty(with.Findings);
        Assert.Equal(936, with.Plan.CostMinor);
    }

    [Fact]
    public void Needs_that_share_nothing_are_searched_apart()
    {
        Product[] products = [.. Enumerable.Range(0, 80).Select(i => Product($"p{i}", L(0), Pack(L(1), 5 + (i % 2))))];
        var wants = Enumerable.Range(0, 40).Select(i => new Want($"n{i}", new Way("x", ($"p{2 * i}", L(1))), new Way("y", ($"p{(2 * i) + 1}", L(1)))));
        var chosen = Choose(wants, products);
        Assert.Empty(chosen.Findings);
        Assert.Equal(20_000, chosen.Plan.CostMinor);
    }

    [Fact]
    public void Too_many_combinations_end_with_the_best_so_far_and_say_so()
    {
        Product[] products = [Product("a", L(0), Pack(L(1), 5)), Product("b", L(0), Pack(L(1), 5))];
        var wants = Enumerable.Range(0, 60).Select(i => new Want($"n{i}", new Way("a", ("a", L(0.5 + (i * 0.013)))), new Way("b", ("b", L(0.6 + (i * 0.011))))));
        var chosen = Choose(wants, products);
        Assert.Equal("ways-not-all-compared", Assert.Single(chosen.Findings).Id);
        Assert.All(products, p => Assert.True((chosen.Bought(p.Name.ToString())?.Bought ?? 0) >= chosen.Wanted(p.Name.ToString()).Units));
    }
}
