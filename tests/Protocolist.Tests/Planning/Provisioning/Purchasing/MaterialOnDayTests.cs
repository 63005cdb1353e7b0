using NodaTime;
using Protocolist.Benches;
using Protocolist.Planning.Provisioning.Purchasing;
using Protocolist.Plans;
using Protocolist.Quantities;
using UnitsNet;
using static Protocolist.Tests.Planning.Provisioning.Purchasing.Shop;

namespace Protocolist.Tests.Planning.Provisioning.Purchasing;

/// <summary>What is drawn from the bottles of one material, and its books.</summary>
public class MaterialOnDayTests
{
    private static readonly LocalDate Day = new(2027, 3, 1);

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
        Bottle("spent", 2) with { UsesAllowed = 0, Spent = new(7, true) },
        Bottle("empty", 0),
    ];

    private static PlannedMaterial Drawn(IEnumerable<StockItem> shelf, double litres, LocalDate? day = null) => Book(shelf, L(litres), L(0), null, day ?? Day).Books.Material;

    [Fact]
    public void Part_bottles_come_before_full_ones_and_old_before_new()
    {
        var drawn = Drawn(Shelf, 1.9);
        Assert.Equal(["part-old", "part-new", "full-soon", "full-late"], drawn.Draws.Select(d => d.Stock));
        Assert.Equal([L(0.3), L(0.4), L(1), L(0.2)], drawn.Draws.Select(d => d.Amount));
        Assert.All(drawn.Draws, d => Assert.Equal(MaterialOrigin.Shelf, d.From));
        Assert.Equal(new(MaterialOrigin.Lacking, "", L(0.3)), Drawn(Shelf, 3).Draws[^1]);
    }

    /// <summary>A last day of use is a day of use; on the next one the bottle is left alone.</summary>
    [Fact]
    public void Each_day_has_its_own_shelf()
    {
        Assert.Equal((L(2.7), L(2.9)), (Drawn(Shelf, 1).OnHand, Drawn(Shelf, 1).Unusable));
        Assert.Equal((L(3.6), L(2)), (Drawn(Shelf, 1, new(2027, 2, 28)).OnHand, Drawn(Shelf, 1, new(2027, 2, 28)).Unusable));
        Assert.Equal(L(2.4), Drawn(Shelf, 1, new(2027, 3, 2)).OnHand);
        Assert.Equal(L(0.4), Drawn(Shelf, 1, new(2029, 1, 1)).OnHand);
        Assert.Equal(L(1), Drawn([Bottle("for-ever", 1, expires: LocalDate.MaxIsoValue)], 1, LocalDate.MaxIsoValue).OnHand);
    }

    [Fact]
    public void The_reserve_is_stated_and_only_the_dead_volume_is_lost()
    {
        var reserve = new Reserve(0.05m, 20_000);
        Assert.Equal(L(2.04), reserve.Used(L(2), draws: 2));
        Assert.Equal(L(0.1), reserve.ForSpills(L(2)));
        Assert.Equal(Amount.Of(3), reserve.Used(Amount.Of(3)));
        Assert.Equal(L(0), reserve.Used(L(0)));
    }

    /// <summary>3 L used of 2.7 L on the shelf at 28 / 2.5 L = 11.20 EUR/L, and 1 L bought for 14.00.</summary>
    [Fact]
    public void The_books_of_a_material_balance()
    {
        var purchase = Choose(Product("stock", L(2.7), [.. Shelf[0].Packs]), L(3.15)).Only;
        var (books, findings) = Book(Shelf, L(3), L(0.15), purchase, Day);
        Assert.Empty(findings);
        var m = books.Material;
        Assert.Equal((L(2.7), L(2.9), L(1), L(3), L(0.7)), (m.OnHand, m.Unusable, m.Bought, m.Used, m.Left));
        Assert.Equal((L(0.15), MaterialOrigin.Purchase), (m.Reserve, m.Draws[^1].From));
        Assert.Equal(3024, books.WorthOnHandMinor); // 3.36 + 4.48 + 11.20 + 11.20
        Assert.Equal(1400, books.CashMinor);
        Assert.Equal(3444, books.CostOfUsedMinor); // 30.24 + 0.3 of 14.00
        Assert.Equal(980, books.WorthOfLeftMinor);
    }

    [Fact]
    public void Stock_of_no_worth_is_reckoned_as_free_and_said_so()
    {
        var (books, findings) = Book([Bottle("a", 1) with { Packs = [] }], L(0.5), L(0), null, Day);
        Assert.Equal("stock-without-worth", Assert.Single(findings).Id);
        Assert.Equal(0, books.CostOfUsedMinor);
        Assert.Equal(450, Book([Bottle("a", 1) with { Packs = [], Worth = Price.Of(9, "EUR", PriceUnit.Litre) }], L(0.5), L(0), null, Day).Books.CostOfUsedMinor);
    }

    [Fact]
    public void What_cannot_be_bought_shows_as_a_negative_rest()
    {
        var line = Drawn([Bottle("a", 1)], 1.5);
        Assert.Equal(L(-0.5), line.Left);
        Assert.Equal(line.OnHand + line.Bought, line.Used + line.Left);
    }
}
