using System.Collections.Immutable;
using System.Text;
using NodaTime;
using Protocolist.Benches.Disposal;
using Protocolist.Benches.Stock;
using Protocolist.Findings;
using Protocolist.Fluids.Safety;
using Protocolist.Notation;
using Protocolist.Planning.Purchasing;
using Protocolist.Quantities;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace Protocolist.Tests.Planning.Purchasing;

/// <summary>What buying and reckoning say where something is lacking, and what they reckon where a thing has no price of its own.</summary>
public class MoneyFindingsTests
{
    private static readonly LocalDate Day = new(2027, 3, 1);
    private static readonly ExchangeRates Euro = ExchangeRates.None("EUR");

    private static Amount L(double litres) => Amount.Of(Volume.FromLiters(litres));

    private static Pack Pack(double litres, decimal price, string currency = "EUR", int days = 0) => new(L(litres), Money.Of(price, currency), days);

    private static StockItem Bottle(params Pack[] packs) => new() { Id = "bottle", Kind = StockKind.Fluid, Substance = "ethanol 96 %vol", OnHand = L(2), Packs = [.. packs] };

    private static CostRates Rates(Price? labour, params (WasteClass Class, Price Price)[] disposal) => new(labour, disposal.ToImmutableDictionary(d => d.Class, d => d.Price), Euro);

    private static Waste Leaves(WasteClass @class, Amount amount, WasteWay way = WasteWay.CollectedAsHazardous) => new("something", @class, amount, way, "somewhere");

    [Fact]
    public void Every_finding_about_money_and_packs_was_read_and_kept()
    {
        var text = new StringBuilder();
        Tell("no pack to buy", Purchases.Choose(new Product("e96", L(0.5), []), L(2), Euro).Findings);
        Tell("a pack in pounds", Purchases.Choose(new Product("e96", L(0.5), [Pack(1, 8, "GBP")]), L(2), Euro).Findings);
        Tell("packs that share no unit", Purchases.Choose(new Product("e96", L(0), [new(new(AmountKind.Volume, 946_353), Money.Of(7, "EUR")), new(new(AmountKind.Volume, 18_927_059), Money.Of(90, "EUR"))]), L(200), Euro).Findings);
        Product[] two = [new("a", L(0), [Pack(1, 5)]), new("b", L(0), [Pack(1, 5)])];
        Tell("too many combinations", Purchases.Choose([.. Enumerable.Range(0, 60).Select(i => new Need($"n{i}", [new("a", [new("a", L(0.5 + (i * 0.013)))]), new("b", [new("b", L(0.6 + (i * 0.011)))])]))], two, Euro).Findings);
        Tell("stock of no worth", MaterialLine.Of("e96", [Bottle()], L(1), L(0), null, Day, Euro).Findings);
        Tell("stock worth pounds", MaterialLine.Of("e96", [Bottle(Pack(1, 8, "GBP"))], L(1), L(0), null, Day, Euro).Findings);
        Tell("work of no price", Rates(null).Sum([], [], Duration.FromMinutes(1), []).Findings);
        Tell("no work and no price", Rates(null).Sum([], [], Duration.Zero, []).Findings);
        Tell("work in pounds", Rates(Price.Of(30, "GBP", PriceUnit.Hour)).Sum([], [], Duration.FromMinutes(1), []).Findings);
        Tell("care in pounds", Rates(null).Sum([], [], Duration.Zero, [], Money.Of(4, "GBP")).Findings);
        Tell("topping up in pounds", Rates(null).Sum([], [], Duration.Zero, [], null, Money.Of(4, "GBP")).Findings);
        Tell("disposal in pounds", Rates(null, (WasteClass.Formaldehyde, Price.Of(2, "GBP", PriceUnit.Litre))).Sum([], [], Duration.Zero, [Leaves(WasteClass.Formaldehyde, L(1))]).Findings);
        Tell("a container in pounds", (Rates(null) with { ContainerPrices = ImmutableDictionary<WasteClass, ContainerPrice>.Empty.Add(WasteClass.Sharps, new(Amount.Of(60), Money.Of(9, "GBP"))) }).Sum([], [], Duration.Zero, [Leaves(WasteClass.Sharps, Amount.Of(3))]).Findings);
        Tell("waste of no price", Rates(null).Sum([], [], Duration.Zero, [Leaves(WasteClass.Formaldehyde, L(1.5)), Leaves(WasteClass.ContaminatedSolids, Amount.Of(4)), Leaves(WasteClass.Sharps, Amount.Of(0)), Leaves(WasteClass.RinseWater, L(9), WasteWay.DrainedWhereAllowed), Leaves(WasteClass.Formaldehyde, L(2), WasteWay.KeptForReuse)]).Findings);
        Tell("waste measured otherwise than priced", Rates(null, (WasteClass.ContaminatedSolids, Price.Of(3, "EUR", PriceUnit.Kilogram))).Sum([], [], Duration.Zero, [Leaves(WasteClass.ContaminatedSolids, Amount.Of(4))]).Findings);
        foreach (var fault in new Action[]
        {
            () => Purchases.Choose([new("n", [])], two, Euro),
            () => Purchases.Choose([new("n", [new("w", [new("wine", L(1))])])], two, Euro),
            () => Purchases.Choose(two[0], Amount.Of(1), Euro),
            () => Purchases.Choose(two[0], L(-1), Euro),
        })
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"a caller's mistake\n  {Assert.Throws<ArgumentException>(fault).Message.ToString()}\n\n");
        KeptText.Holds("Planning/Purchasing/kept/findings.txt", text.ToString());

        void Tell(string of, IEnumerable<Finding> findings)
        {
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"{of}\n");
            foreach (var f in findings) text.Append(System.Globalization.CultureInfo.InvariantCulture, $"  {f.Severity.ToString().ToLowerInvariant()} {f.Id}\n    {f.Message.ToString()}\n    remedy: {f.Remedy.ToString()}\n");
            text.Append('\n');
        }
    }

    [Fact]
    public void A_rate_of_nothing_is_no_rate()
    {
        Assert.Null(new ExchangeRates("EUR", ImmutableDictionary<string, decimal>.Empty.Add("GBP", 0)).Convert(Money.Of(1, "GBP")));
        Assert.Null(Euro.Convert(Money.Of(1, "GBP")));
        Assert.Equal("1.17 EUR", new ExchangeRates("EUR", ImmutableDictionary<string, decimal>.Empty.Add("GBP", 1.17m)).Convert(Money.Of(1, "GBP"))!.ToString());
    }

    [Fact]
    public void All_is_there_when_the_last_pack_is_and_at_once_where_nothing_is_bought()
    {
        var product = new Product("e96", L(0), [Pack(1, 9, days: 2), Pack(5, 30, days: 7)]);
        var both = Purchases.Choose(product, L(6), Euro).Value!;
        Assert.Equal((7, 7), (both.Purchases[0].LeadDays, both.LeadDays));
        Assert.Equal([5_000_000, 1_000_000], both.Purchases[0].Packs.Select(p => p.Pack.Size.Units));
        var two = Purchases.Choose([new("a", [new("a", [new("e96", L(1))])]), new("b", [new("b", [new("e70", L(5))])])], [product, new("e70", L(0), [Pack(5, 20, days: 3)])], Euro).Value!;
        Assert.Equal([2, 3], two.Purchases.Select(p => p.LeadDays));
        Assert.Equal(3, two.LeadDays);
        Assert.Equal(0, Purchases.Choose(product with { OnHand = L(9) }, L(6), Euro).Value!.Purchases[0].LeadDays);
        Assert.Equal(0, Purchases.Choose([], [product], Euro).Value!.LeadDays);
    }

    [Fact]
    public void What_is_not_wanted_has_no_line_and_what_is_wanted_as_nothing_is_allowed()
    {
        Assert.Empty(Purchases.Choose(new Product("e96", L(0), [Pack(1, 9)]), L(0), Euro).Value!.Purchases);
        Assert.Equal(["a"], Purchases.Choose([new("n", [new("w", [new("a", L(1))])])], [new("a", L(0), [Pack(1, 5)]), new("b", L(0), [Pack(1, 5)])], Euro).Value!.Purchases.Select(p => p.ProductId));
    }

    /// <summary>Two packs at the most that money holds cost more than it holds, so nothing is bought.</summary>
    [Fact]
    public void A_cost_beyond_what_money_holds_buys_nothing()
    {
        var dear = new Product("e96", L(0), [new(L(1), Money.Of(Money.MostMinor / 100m, "EUR"))]);
        Assert.Equal(Money.MostMinor, Purchases.Choose(dear, L(1), Euro).Value!.Cost.Minor);
        Assert.Equal(["lacking-and-not-for-sale"], Purchases.Choose(dear, L(1.5), Euro).Findings.Select(f => f.Id));
    }

    /// <summary>Opened bottles first, of the full ones the soonest to expire, then by name; nothing more is drawn than is asked for.</summary>
    [Fact]
    public void Of_bottles_alike_the_first_by_name_is_drawn_and_no_more_than_wanted()
    {
        StockItem[] shelf = [Bottle() with { Id = "c" }, Bottle() with { Id = "a" }, Bottle() with { Id = "b" }];
        Assert.Equal(["a"], ShelfDrawing.From(shelf, L(2), Day).Draws.Select(d => d.Item.Id));
        Assert.Equal(["a", "b"], ShelfDrawing.From(shelf, L(2.1), Day).Draws.Select(d => d.Item.Id));
        Assert.Empty(ShelfDrawing.From(shelf, L(0), Day).Draws);
    }

    /// <summary>2 L at 5 EUR/L; a pack that holds grams says nothing of litres, and one without a price nothing at all.</summary>
    [Fact]
    public void Stock_is_worth_its_cheapest_pack_of_its_own_kind()
    {
        var line = MaterialLine.Of("e96", [Bottle(Pack(1, 9), Pack(10, 50), new(L(10), null), new(Amount.Of(Mass.FromKilograms(100)), Money.Of(1, "EUR")))], L(0.5), L(0), null, Day, Euro).Value!;
        Assert.Equal(("10.00 EUR", "2.50 EUR", "7.50 EUR"), (line.WorthOnHand.ToString(), line.CostOfUsed.ToString(), line.WorthOfLeft.ToString()));
    }

    [Fact]
    public void What_cannot_be_used_is_counted_beside_and_a_debt_on_the_shelf_is_none()
    {
        var line = MaterialLine.Of("e96", [Bottle(Pack(1, 5)), Bottle() with { Id = "old", OnHand = L(3), Expires = new(2027, 2, 28) }, Bottle() with { Id = "debt", OnHand = L(-1) }], L(0.5), L(0), null, Day, Euro).Value!;
        Assert.Equal((L(2), L(3), L(1.5)), (line.OnHand, line.Unusable, line.Left));
    }

    /// <summary>60 pieces for 9 EUR are 15 cents each; 2 EUR a litre for 1.5 L and 0.25 L together.</summary>
    [Fact]
    public void Disposal_is_summed_by_class_and_a_container_is_shared_by_what_it_holds()
    {
        var rates = Rates(Price.Of(30, "EUR", PriceUnit.Hour), (WasteClass.Formaldehyde, Price.Of(2, "EUR", PriceUnit.Litre))) with { ContainerPrices = ImmutableDictionary<WasteClass, ContainerPrice>.Empty.Add(WasteClass.Sharps, new(Amount.Of(60), Money.Of(9, "EUR"))) };
        var costs = rates.Sum([], [], Duration.FromMinutes(10), [Leaves(WasteClass.Formaldehyde, L(1.5)), Leaves(WasteClass.Formaldehyde, L(0.25)), Leaves(WasteClass.Sharps, Amount.Of(4)), Leaves(WasteClass.FlammableAlcohol, L(0))], Money.Of(1.25m, "EUR"), Money.Of(0.75m, "EUR"));
        Assert.Empty(costs.Findings);
        Assert.Equal([(WasteClass.Formaldehyde, 350L), (WasteClass.Sharps, 60L)], costs.Value!.DisposalByClass.Select(d => (d.Key, d.Value.Minor)).OrderBy(d => d.Key));
        Assert.Equal((500, 910, 200, 125, 75), (costs.Value.Labour.Minor, costs.Value.Total.Minor, costs.Value.CareByYear.Minor, costs.Value.CareLabourByYear.Minor, costs.Value.CareFluidByYear.Minor));
        Assert.Equal(910 + (7 * 200), costs.Value.Over(7).Minor);
    }
}
