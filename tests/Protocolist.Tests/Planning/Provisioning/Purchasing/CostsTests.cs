using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Planning.Provisioning;
using Protocolist.Plans;
using Protocolist.Quantities;
using UnitsNet;
using static Protocolist.Tests.Planning.Provisioning.Purchasing.Shop;
using Duration = NodaTime.Duration;

namespace Protocolist.Tests.Planning.Provisioning.Purchasing;

public class CostsTests
{
    private static readonly LocalDate Day = new(2027, 3, 1);

    private static readonly StockItem Goggles = new()
    {
        Id = "goggles",
        Kind = StockKind.Tool,
        Substance = "splash goggles",
        OnHand = Amount.Of(1),
        Wear = new(200),
        Packs = [new(Amount.Of(2), Money.Of(19, "EUR"))],
    };

    private static Amount L(double litres) => Amount.Of(Volume.FromLiters(litres));

    private static StockItem Alcohol(double litres) => new()
    {
        Id = "e70",
        Kind = StockKind.Fluid,
        Substance = "ethanol 70 %vol",
        OnHand = L(litres),
        Packs = [new(L(5), Money.Of(30, "EUR"))],
    };

    private static PlannedWaste Lot(WasteClass @class, Amount amount, WasteWay way, string to) => new(@class, amount, way, Message.Text(to), "step");

    private static readonly ImmutableArray<PlannedWaste> Leaving =
    [
        Lot(WasteClass.Formaldehyde, L(2), WasteWay.CollectedAsHazardous, "drum F1"),
        Lot(WasteClass.Formaldehyde, L(1.5), WasteWay.CollectedAsHazardous, "drum F1"),
        Lot(WasteClass.ContaminatedSolids, Amount.Of(Mass.FromGrams(150)), WasteWay.CollectedAsHazardous, "bin S1"),
        Lot(WasteClass.Formaldehyde, L(1), WasteWay.KeptForReuse, "jar R2"),
        Lot(WasteClass.RinseWater, L(4), WasteWay.DrainedWhereAllowed, "permit of the invented station, 2026"),
    ];

    private static readonly Bench Priced = Bench.Empty(DateTimeZone.Utc) with
    {
        Currency = "EUR",
        Labour = Price.Of(30, "EUR", PriceUnit.Hour),
        DisposalPrices = ImmutableDictionary<WasteClass, Price>.Empty
            .Add(WasteClass.Formaldehyde, Price.Of(2.50m, "EUR", PriceUnit.Litre))
            .Add(WasteClass.ContaminatedSolids, Price.Of(3, "EUR", PriceUnit.Kilogram)),
    };

    private static (PlanCosts Costs, List<Finding> Findings) Sum(Bench bench, CostParts parts)
    {
        var findings = new List<Finding>();
        return (CostBook.Of(parts, PreparedStock.Of(bench), findings), findings);
    }

    [Fact]
    public void Costs_are_the_sum_of_their_parts()
    {
        var line = Book([Alcohol(5)], L(4), L(0.2), null, Day).Books;
        var (c, findings) = Sum(Priced, new()
        {
            CashMinor = line.CashMinor,
            UsedMinor = line.CostOfUsedMinor,
            LeftMinor = line.WorthOfLeftMinor,
            Worn = [(Goggles, 3)],
            HandsOn = Duration.FromMinutes(100),
            Waste = Leaving,
            CareByYear = Duration.FromMinutes(8),
            Specimens = 3,
        });
        Assert.Empty(findings);
        Assert.Equal("0.00 EUR", c.Cash!.ToString());
        Assert.Equal("24.00 EUR", c.Used!.ToString());
        Assert.Equal("6.00 EUR", c.LeftOnShelf!.ToString());
        Assert.Equal("0.14 EUR", c.Wear!.ToString()); // 3 / 200 of 9.50
        Assert.Equal("50.00 EUR", c.Labour!.ToString());
        Assert.Equal("9.20 EUR", c.Disposal!.ToString()); // 3.5 L at 2.50 and 0.15 kg at 3.00
        Assert.Equal("83.34 EUR", c.Total!.ToString());
        Assert.Equal("27.78 EUR", c.BySpecimen!.ToString());
        Assert.Equal("4.00 EUR", c.CareByYear!.ToString());
        Assert.Equal("123.34 EUR", c.OverTenYears!.ToString());
    }

    /// <summary>83.34 EUR over 4: 20.84, 20.84, 20.83, 20.83.</summary>
    [Fact]
    public void Of_a_lot_the_first_ones_bear_the_odd_coins() =>
        Assert.Equal(2084, Sum(Priced with { Labour = null }, new() { UsedMinor = 8334, Specimens = 4 }).Costs.BySpecimen!.Minor);

    [Fact]
    public void What_has_no_price_is_said()
    {
        var (costs, findings) = Sum(Bench.Empty(DateTimeZone.Utc) with { Currency = "EUR" }, new() { HandsOn = Duration.FromMinutes(5), Waste = Leaving });
        Assert.Equal(["disposal-without-price", "labour-without-price"], findings.Select(f => f.Id).Order());
        Assert.Equal("0.00 EUR", costs.Total!.ToString());
        Assert.Null(costs.Disposal);
        Assert.Null(costs.Labour);
    }

    [Fact]
    public void Labour_in_another_currency_needs_a_rate()
    {
        var (_, findings) = Sum(Priced with { Labour = Price.Of(30, "GBP", PriceUnit.Hour) }, new() { HandsOn = Duration.FromMinutes(5) });
        Assert.Equal(["labour", "care"], findings.Select(f => f.Message.Find("what")!.Value.Message.ToString()));
        Assert.All(findings, f => Assert.Equal("two-currencies", f.Id));
    }
}
