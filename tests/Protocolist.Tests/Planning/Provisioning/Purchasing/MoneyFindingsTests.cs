using System.Collections.Immutable;
using System.Text;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Planning.Provisioning;
using Protocolist.Planning.Provisioning.Purchasing;
using Protocolist.Plans;
using Protocolist.Quantities;
using UnitsNet;
using static Protocolist.Tests.Planning.Provisioning.Purchasing.Shop;
using Duration = NodaTime.Duration;

namespace Protocolist.Tests.Planning.Provisioning.Purchasing;

/// <summary>What buying and summing say where something is lacking, and what they take where a thing has no price of its own.</summary>
public class MoneyFindingsTests
{
    private static readonly LocalDate Day = new(2027, 3, 1);

    private static Amount L(double litres) => Amount.Of(Volume.FromLiters(litres));

    private static Pack Pack(double litres, decimal price, string currency = "EUR", int days = 0) => new(L(litres), Money.Of(price, currency), days);

    private static StockItem Bottle(params Pack[] packs) => new() { Id = "bottle", Kind = StockKind.Fluid, Substance = "ethanol 96 %vol", OnHand = L(2), Packs = [.. packs] };

    private static Bench Rates(Price? labour, params (WasteClass Class, Price Price)[] disposal) =>
        Bench.Empty(DateTimeZone.Utc) with { Currency = "EUR", Labour = labour, DisposalPrices = disposal.ToImmutableDictionary(d => d.Class, d => d.Price) };

    private static Bench Boxes(Bench bench, WasteClass @class, ContainerPrice price) =>
        bench with { WasteRules = bench.WasteRules with { ContainerPrices = ImmutableDictionary<WasteClass, ContainerPrice>.Empty.Add(@class, price) } };

    private static PlannedWaste Leaves(WasteClass @class, Amount amount, WasteWay way = WasteWay.CollectedAsHazardous) => new(@class, amount, way, Message.Text("somewhere"), "step");

    private static (PlanCosts Costs, List<Finding> Findings) Sum(Bench bench, CostParts parts)
    {
        var findings = new List<Finding>();
        return (CostBook.Of(parts, PreparedStock.Of(bench), findings), findings);
    }

    private static List<Finding> Said(Bench bench, Duration handsOn, params PlannedWaste[] waste) => Sum(bench, new() { HandsOn = handsOn, Waste = [.. waste] }).Findings;

    [Fact]
    public void Every_finding_about_money_and_packs_was_read_and_kept()
    {
        var text = new StringBuilder();
        Tell("no pack to buy", Choose(Product("e96", L(0.5)), L(2)).Findings);
        Tell("a pack in pounds", Choose(Product("e96", L(0.5), Pack(1, 8, "GBP")), L(2)).Findings);
        Pack[] odd = [new(new(AmountKind.Volume, 946_353), Money.Of(7, "EUR")), new(new(AmountKind.Volume, 18_927_059), Money.Of(90, "EUR"))];
        Tell("packs that share no unit", Choose(Product("e96", L(0), odd), L(200)).Findings);
        Product[] two = [Product("a", L(0), Pack(1, 5)), Product("b", L(0), Pack(1, 5))];
        var many = Enumerable.Range(0, 60).Select(i => new Want($"n{i}", new Way("a", ("a", L(0.5 + (i * 0.013)))), new Way("b", ("b", L(0.6 + (i * 0.011))))));
        Tell("too many combinations", Choose(many, two).Findings);
        Tell("stock of no worth", Book([Bottle()], L(1), L(0), null, Day).Findings);
        Tell("stock worth pounds", Book([Bottle(Pack(1, 8, "GBP"))], L(1), L(0), null, Day).Findings);
        Tell("work of no price", Said(Rates(null), Duration.FromMinutes(1)));
        Tell("no work and no price", Said(Rates(null), Duration.Zero));
        Tell("work in pounds", Said(Rates(Price.Of(30, "GBP", PriceUnit.Hour)), Duration.FromMinutes(1)).Take(1));
        Tell("care in pounds", Said(Rates(Price.Of(30, "GBP", PriceUnit.Hour)), Duration.FromMinutes(1)).Skip(1));
        Tell("disposal in pounds", Said(Rates(null, (WasteClass.Formaldehyde, Price.Of(2, "GBP", PriceUnit.Litre))), Duration.Zero, Leaves(WasteClass.Formaldehyde, L(1))));
        Tell("a container in pounds", Said(Boxes(Rates(null), WasteClass.Sharps, new(Amount.Of(60), Money.Of(9, "GBP"))), Duration.Zero, Leaves(WasteClass.Sharps, Amount.Of(3))));
        Tell("waste of no price", Said(
            Rates(null),
            Duration.Zero,
            Leaves(WasteClass.Formaldehyde, L(1.5)),
            Leaves(WasteClass.ContaminatedSolids, Amount.Of(4)),
            Leaves(WasteClass.RinseWater, L(9), WasteWay.DrainedWhereAllowed),
            Leaves(WasteClass.Formaldehyde, L(2), WasteWay.KeptForReuse)));
        Tell("waste measured otherwise than priced", Said(
            Rates(null, (WasteClass.ContaminatedSolids, Price.Of(3, "EUR", PriceUnit.Kilogram))), Duration.Zero, Leaves(WasteClass.ContaminatedSolids, Amount.Of(4))));
        KeptText.Holds("Planning/Provisioning/Purchasing/kept/findings.txt", text.ToString());

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
    public void Of_what_is_bought_the_largest_packs_come_first()
    {
        var chosen = Choose(Product("e96", L(0), Pack(1, 9, days: 2), Pack(5, 30, days: 7)), L(6));
        Assert.Equal([(5_000_000, 7), (1_000_000, 2)], chosen.Only.Packs.Select(p => (p.Pack.Size.Units, p.Pack.LeadDays)));
        Assert.Equal([2000], Choose([new Want("b", new Way("b", ("e70", L(5))))], Product("e70", L(0), Pack(5, 20, days: 3))).Only.Packs.Select(p => p.Cost.Minor));
    }

    [Fact]
    public void What_is_not_wanted_is_not_bought_and_what_is_wanted_as_nothing_is_allowed()
    {
        Assert.Null(Choose(Product("e96", L(0), Pack(1, 9)), L(0)).Bought("e96"));
        var chosen = Choose([new Want("n", new Way("w", ("a", L(1))))], Product("a", L(0), Pack(1, 5)), Product("b", L(0), Pack(1, 5)));
        Assert.NotNull(chosen.Bought("a"));
        Assert.Null(chosen.Bought("b"));
        Assert.Equal(0, Choose([], Product("a", L(0), Pack(1, 5))).Plan.CostMinor);
    }

    /// <summary>Two packs at the most that money holds cost more than it holds, so nothing is bought.</summary>
    [Fact]
    public void A_cost_beyond_what_money_holds_buys_nothing()
    {
        var dear = Product("e96", L(0), new Pack(L(1), Money.Of(Money.MostMinor / 100m, "EUR")));
        Assert.Equal(Money.MostMinor, Choose(dear, L(1)).Plan.CostMinor);
        Assert.Equal(["lacking-and-not-for-sale"], Choose(dear, L(1.5)).Findings.Select(f => f.Id));
    }

    /// <summary>Opened bottles first, of the full ones the soonest to expire, then by name; nothing more is drawn than is asked for.</summary>
    [Fact]
    public void Of_bottles_alike_the_first_by_name_is_drawn_and_no_more_than_wanted()
    {
        StockItem[] shelf = [Bottle() with { Id = "c" }, Bottle() with { Id = "a" }, Bottle() with { Id = "b" }];
        Assert.Equal(["a"], Book(shelf, L(2), L(0), null, Day).Books.Material.Draws.Select(d => d.Stock));
        Assert.Equal(["a", "b"], Book(shelf, L(2.1), L(0), null, Day).Books.Material.Draws.Select(d => d.Stock));
        Assert.Empty(Book(shelf, L(0), L(0), null, Day).Books.Material.Draws);
    }

    /// <summary>2 L at 5 EUR/L; a pack that holds grams says nothing of litres, and one without a price nothing at all.</summary>
    [Fact]
    public void Stock_is_worth_its_cheapest_pack_of_its_own_kind()
    {
        var packs = Bottle(Pack(1, 9), Pack(10, 50), new(L(10), null), new(Amount.Of(Mass.FromKilograms(100)), Money.Of(1, "EUR")));
        var books = Book([packs], L(0.5), L(0), null, Day).Books;
        Assert.Equal((1000, 250, 750), (books.WorthOnHandMinor, books.CostOfUsedMinor, books.WorthOfLeftMinor));
    }

    [Fact]
    public void What_cannot_be_used_is_counted_beside_and_a_debt_on_the_shelf_is_none()
    {
        StockItem[] shelf = [Bottle(Pack(1, 5)), Bottle() with { Id = "old", OnHand = L(3), Expires = new(2027, 2, 28) }, Bottle() with { Id = "debt", OnHand = L(-1) }];
        var line = Book(shelf, L(0.5), L(0), null, Day).Books.Material;
        Assert.Equal((L(2), L(3), L(1.5)), (line.OnHand, line.Unusable, line.Left));
    }

    /// <summary>60 pieces for 9 EUR are 15 cents each; 2 EUR a litre for 1.5 L and 0.25 L together.</summary>
    [Fact]
    public void Disposal_is_summed_by_class_and_a_container_is_shared_by_what_it_holds()
    {
        var bench = Boxes(
            Rates(Price.Of(30, "EUR", PriceUnit.Hour), (WasteClass.Formaldehyde, Price.Of(2, "EUR", PriceUnit.Litre))), WasteClass.Sharps, new(Amount.Of(60), Money.Of(9, "EUR")));
        var (costs, findings) = Sum(bench, new()
        {
            HandsOn = Duration.FromMinutes(10),
            Waste = [Leaves(WasteClass.Formaldehyde, L(1.5)), Leaves(WasteClass.Formaldehyde, L(0.25)), Leaves(WasteClass.Sharps, Amount.Of(4))],
            CareByYear = Duration.FromMinutes(2.5),
            CareFluid = new(Volume.FromMilliliters(40), Money.Of(0.75m, "EUR")),
        });
        Assert.Empty(findings);
        Assert.Equal([(WasteClass.Formaldehyde, 350L), (WasteClass.Sharps, 60L)], costs.DisposalByClass.Select(d => (d.Class, d.Cost.Minor)));
        Assert.Equal(
            (500, 910, 200, 125, 75),
            (costs.Labour!.Minor, costs.Total!.Minor, costs.CareByYear!.Minor, costs.CareLabourByYear!.Minor, costs.CareFluidByYear!.Minor));
        Assert.Equal(910 + (10 * 200), costs.OverTenYears!.Minor);
    }
}
