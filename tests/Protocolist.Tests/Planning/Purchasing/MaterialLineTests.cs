using NodaTime;
using Protocolist.Benches.Stock;
using Protocolist.Notation;
using Protocolist.Planning.Purchasing;
using Protocolist.Quantities;
using UnitsNet;

namespace Protocolist.Tests.Planning.Purchasing;

public class MaterialLineTests
{
    private static readonly LocalDate Day = new(2027, 3, 1);
    private static readonly ExchangeRates Euro = ExchangeRates.None("EUR");

    private static Amount L(double litres) => Amount.Of(Volume.FromLiters(litres));

    private static StockItem Bottle(string id, double litres, LocalDate? opened = null, LocalDate? expires = null) => new()
    {
        Id = id,
        Kind = StockKind.Fluid,
        Substance = "formaldehyde stock 37 %mass",
        OnHand = L(litres),
        OpenedOn = opened,
        Expires = expires,
        Packs = [new(L(1), Money.Of(14, "EUR")), new(L(2.5), Money.Of(28, "EUR"))],
    };

    private static readonly StockItem[] Shelf =
    [
        Bottle("full-late", 1, expires: new(2028, 6, 1)),
        Bottle("full-soon", 1, expires: new(2027, 6, 1)),
        Bottle("part-new", 0.4, new(2027, 2, 1)),
        Bottle("part-old", 0.3, new(2026, 9, 1), new(2027, 3, 1)),
        Bottle("expired", 0.9, new(2026, 1, 1), new(2027, 2, 28)),
        Bottle("unknown", 2) with { Substance = "formaldehyde stock" },
        Bottle("empty", 0),
    ];

    [Fact]
    public void Part_bottles_come_before_full_ones_and_old_before_new()
    {
        var drawing = ShelfDrawing.From(Shelf, L(1.9), Day);
        Assert.Equal(["part-old", "part-new", "full-soon", "full-late"], drawing.Draws.Select(d => d.Item.Id));
        Assert.Equal([L(0.3), L(0.4), L(1), L(0.2)], drawing.Draws.Select(d => d.Amount));
        Assert.Equal([true, true, true, false], drawing.Draws.Select(d => d.EmptiesIt));
        Assert.Equal(L(0), drawing.Lacking);
        Assert.Equal(L(0.3), ShelfDrawing.From(Shelf, L(3), Day).Lacking);
    }

    [Fact]
    public void The_reserve_is_stated_and_only_the_dead_volume_is_lost()
    {
        var reserve = new Reserve(0.05m, 20_000);
        Assert.Equal(L(2.04), reserve.Used(L(2), draws: 2));
        Assert.Equal(L(0.1), reserve.ForSpills(L(2)));
        Assert.Equal(L(2.14), reserve.ToProvide(L(2), draws: 2));
        Assert.Equal(Amount.Of(4), reserve.ToProvide(Amount.Of(3)));
        Assert.Equal(L(0), reserve.ToProvide(L(0)));
    }

    /// <summary>3 L used of 2.7 L on the shelf at 28 / 2.5 L = 11.20 EUR/L, and 2.5 L bought for 28.00.</summary>
    [Fact]
    public void The_books_of_a_material_balance()
    {
        var purchase = Purchases.Choose(new Product("stock", L(2.7), Shelf[0].Packs), L(3.15), Euro).Value!.Purchases[0];
        var line = MaterialLine.Of("stock", Shelf, L(3), L(0.15), purchase, Day, Euro);
        Assert.Empty(line.Findings);
        var books = line.Value!;
        Assert.Equal((L(2.7), L(2.9), L(1), L(3), L(0.7)), (books.OnHand, books.Unusable, books.Bought, books.Used, books.Left));
        Assert.Equal("30.24 EUR", books.WorthOnHand.ToString()); // 3.36 + 4.48 + 11.20 + 11.20
        Assert.Equal("14.00 EUR", books.CashNow.ToString());
        Assert.Equal("34.44 EUR", books.CostOfUsed.ToString()); // 30.24 + 0.3 of 14.00
        Assert.Equal("9.80 EUR", books.WorthOfLeft.ToString());
    }

    [Fact]
    public void Stock_of_no_worth_is_reckoned_as_free_and_said_so()
    {
        var line = MaterialLine.Of("stock", [Bottle("a", 1) with { Packs = [] }], L(0.5), L(0), null, Day, Euro);
        Assert.Equal("stock-without-worth", Assert.Single(line.Findings).Id);
        Assert.Equal("0.00 EUR", line.Value!.CostOfUsed.ToString());
        var worth = MaterialLine.Of("stock", [Bottle("a", 1) with { Packs = [], Worth = Price.Of(9, "EUR", PriceUnit.Litre) }], L(0.5), L(0), null, Day, Euro);
        Assert.Equal("4.50 EUR", worth.Value!.CostOfUsed.ToString());
    }

    [Fact]
    public void What_cannot_be_bought_shows_as_a_negative_rest()
    {
        var line = MaterialLine.Of("stock", [Bottle("a", 1)], L(1.5), L(0), null, Day, Euro).Value!;
        Assert.Equal(L(-0.5), line.Left);
        Assert.Equal(line.OnHand + line.Bought, line.Used + line.Left);
    }
}
