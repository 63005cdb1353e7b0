using Protocolist.Benches.Stock;
using Protocolist.Findings;
using Protocolist.Planning.Purchasing;
using Protocolist.Quantities;
using UnitsNet;

namespace Protocolist.Tests.Planning.Purchasing;

public class PurchasesTests
{
    private static readonly ExchangeRates Euro = ExchangeRates.None("EUR");

    private static Amount L(double litres) => Amount.Of(Volume.FromLiters(litres));

    private static Amount G(double grams) => Amount.Of(Mass.FromGrams(grams));

    private static Pack Pack(Amount size, decimal price, int days = 0, string currency = "EUR") => new(size, Money.Of(price, currency), days);

    [Fact]
    public void The_shelf_comes_first_and_the_rest_is_bought()
    {
        var product = new Product("ethanol-96", L(1.5), [Pack(L(1), 9, 2), Pack(L(5), 30, 7)]);
        var plan = Purchases.Choose(product, L(3.2), Euro).Value!;
        var line = Assert.Single(plan.Purchases);
        Assert.Equal((L(1.5), L(1.7), L(2), L(0.3)), (line.FromShelf, line.Lacking, line.Bought, line.Surplus));
        Assert.Equal(new PackCount(product.Packs[0], 2, Money.Of(18, "EUR")), Assert.Single(line.Packs));
        Assert.Equal((2, Money.Of(18, "EUR")), (plan.LeadDays, plan.Cost));
    }

    [Fact]
    public void A_full_shelf_buys_nothing()
    {
        var line = Assert.Single(Purchases.Choose(new("water", L(20), []), L(20), Euro).Value!.Purchases);
        Assert.Empty(line.Packs);
        Assert.Equal("0.00 EUR", line.Cost.ToString());
    }

    /// <summary>10 L of neutral buffered formalin: 1 L of stock, 40 g and 65 g of phosphates (4.0 and 6.5 g/L), against ready-made.</summary>
    [Fact]
    public void Ready_made_wins_when_the_salts_must_be_bought_and_loses_when_they_are_there()
    {
        Product[] Shelf(double salts) =>
        [
            new("formalin-stock", L(0), [Pack(L(1), 14), Pack(L(2.5), 28)]),
            new("monobasic", G(salts), [Pack(G(100), 12)]),
            new("dibasic", G(salts), [Pack(G(100), 11)]),
            new("nbf", L(0), [Pack(L(5), 17.50m), Pack(L(10), 34)]),
        ];
        Need need = new("fixative", [
            new("from-stock", [new("formalin-stock", L(1)), new("monobasic", G(40)), new("dibasic", G(65))]),
            new("ready-made", [new("nbf", L(10))])]);

        var bought = Purchases.Choose([need], Shelf(0), Euro).Value!;
        Assert.Equal(("ready-made", "34.00 EUR"), (bought.Ways[0].WayId, bought.Cost.ToString()));

        var mixed = Purchases.Choose([need], Shelf(100), Euro).Value!;
        Assert.Equal(("from-stock", "14.00 EUR"), (mixed.Ways[0].WayId, mixed.Cost.ToString()));
    }

    /// <summary>Each need alone is cheaper from the 70 % litre; together one five-litre of 96 % serves both.</summary>
    [Fact]
    public void Pooling_changes_the_best_way()
    {
        Product[] products = [new("e96", L(0), [Pack(L(5), 30)]), new("e70", L(0), [Pack(L(1), 8)])];
        Need Alcohol(string id) => new(id, [new("diluted", [new("e96", L(2))]), new("ready", [new("e70", L(2.74))])]);
        Assert.Equal("24.00 EUR", Purchases.Choose([Alcohol("a")], products, Euro).Value!.Cost.ToString());
        var both = Purchases.Choose([Alcohol("a"), Alcohol("b")], products, Euro).Value!;
        Assert.Equal(["diluted", "diluted"], both.Ways.Select(w => w.WayId));
        Assert.Equal("30.00 EUR", both.Cost.ToString());
    }

    [Fact]
    public void Equal_ways_take_the_earlier()
    {
        Product[] products = [new("a", L(0), [Pack(L(1), 5)]), new("b", L(0), [Pack(L(1), 5)])];
        Need need = new("n", [new("first", [new("b", L(1))]), new("second", [new("a", L(1))])]);
        Assert.Equal("first", Purchases.Choose([need], products, Euro).Value!.Ways[0].WayId);
    }

    [Fact]
    public void What_cannot_be_bought_is_an_error_and_another_way_is_preferred()
    {
        Product[] products = [new("none", L(0.2), [new(L(1), null)]), new("dear", L(0), [Pack(L(1), 500)])];
        var lacking = Purchases.Choose(products[0], L(1), Euro);
        var finding = Assert.Single(lacking.Findings);
        Assert.Equal(("lacking-and-not-for-sale", Severity.Error), (finding.Id, finding.Severity));
        Assert.Contains("800 mL of 'none'", finding.Message.ToString(), StringComparison.Ordinal);
        Assert.Equal(L(-0.8), lacking.Value!.Purchases[0].Surplus);

        var way = Purchases.Choose([new("n", [new("impossible", [new("none", L(1))]), new("dear", [new("dear", L(1))])])], products, Euro);
        Assert.Empty(way.Findings);
        Assert.Equal("dear", way.Value!.Ways[0].WayId);
    }

    [Fact]
    public void Two_currencies_need_a_rate()
    {
        var product = new Product("e96", L(0), [Pack(L(1), 8, currency: "GBP"), Pack(L(1), 9.50m)]);
        var without = Purchases.Choose(product, L(1), Euro);
        Assert.Equal("two-currencies", Assert.Single(without.Findings).Id);
        Assert.Equal("9.50 EUR", without.Value!.Cost.ToString());

        var with = Purchases.Choose(product, L(1), Euro with { Rates = Euro.Rates.Add("GBP", 1.17m) });
        Assert.Empty(with.Findings);
        Assert.Equal("9.36 EUR", with.Value!.Cost.ToString());
    }

    [Fact]
    public void Needs_that_share_nothing_are_searched_apart()
    {
        Product[] products = [.. Enumerable.Range(0, 80).Select(i => new Product($"p{i}", L(0), [Pack(L(1), 5 + (i % 2))]))];
        Need[] needs = [.. Enumerable.Range(0, 40).Select(i => new Need($"n{i}", [new("x", [new($"p{2 * i}", L(1))]), new("y", [new($"p{(2 * i) + 1}", L(1))])]))];
        var plan = Purchases.Choose(needs, products, Euro);
        Assert.Empty(plan.Findings);
        Assert.Equal("200.00 EUR", plan.Value!.Cost.ToString());
    }

    [Fact]
    public void Too_many_combinations_end_with_the_best_so_far_and_say_so()
    {
        Product[] products = [new("a", L(0), [Pack(L(1), 5)]), new("b", L(0), [Pack(L(1), 5)])];
        Need[] needs = [.. Enumerable.Range(0, 60).Select(i => new Need($"n{i}", [new("a", [new("a", L(0.5 + (i * 0.013)))]), new("b", [new("b", L(0.6 + (i * 0.011)))])]))];
        var plan = Purchases.Choose(needs, products, Euro);
        Assert.Equal("ways-not-all-compared", Assert.Single(plan.Findings).Id);
        Assert.All(plan.Value!.Purchases, p => Assert.True(p.Surplus.Units >= 0));
    }

    [Fact]
    public void A_callers_mistake_throws()
    {
        Product water = new("water", L(1), []);
        Assert.Throws<ArgumentException>(() => Purchases.Choose(water, G(1), Euro));
        Assert.Throws<ArgumentException>(() => Purchases.Choose([new("n", [])], [water], Euro));
        Assert.Throws<ArgumentException>(() => Purchases.Choose([new("n", [new("w", [new("wine", L(1))])])], [water], Euro));
    }
}
