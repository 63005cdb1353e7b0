using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches.Disposal;
using Protocolist.Benches.Stock;
using Protocolist.Fluids.Safety;
using Protocolist.Notation;
using Protocolist.Planning.Purchasing;
using Protocolist.Quantities;
using UnitsNet;

namespace Protocolist.Tests.Planning.Purchasing;

public class CostsTests
{
    private static readonly LocalDate Day = new(2027, 3, 1);
    private static readonly ExchangeRates Euro = ExchangeRates.None("EUR");

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

    private static readonly Waste[] Leaving =
    [
        new("fixative", WasteClass.Formaldehyde, L(2), WasteWay.CollectedAsHazardous, "drum F1"),
        new("first rinse", WasteClass.Formaldehyde, L(1.5), WasteWay.CollectedAsHazardous, "drum F1"),
        new("gloves", WasteClass.ContaminatedSolids, Amount.Of(Mass.FromGrams(150)), WasteWay.CollectedAsHazardous, "bin S1"),
        new("injection rest", WasteClass.Formaldehyde, L(1), WasteWay.KeptForReuse, "jar R2"),
        new("last rinse", WasteClass.RinseWater, L(4), WasteWay.DrainedWhereAllowed, "permit of the invented station, 2026"),
    ];

    private static readonly CostRates Rates = new(
        Price.Of(30, "EUR", PriceUnit.Hour),
        ImmutableDictionary<WasteClass, Price>.Empty
            .Add(WasteClass.Formaldehyde, Price.Of(2.50m, "EUR", PriceUnit.Litre))
            .Add(WasteClass.ContaminatedSolids, Price.Of(3, "EUR", PriceUnit.Kilogram)),
        Euro);

    [Fact]
    public void Costs_are_the_sum_of_their_parts()
    {
        var line = MaterialLine.Of("e70", [Alcohol(5)], L(4), L(0.2), null, Day, Euro).Value!;
        var costs = Rates.Sum([line], [(Goggles, 3)], NodaTime.Duration.FromMinutes(100), Leaving, Money.Of(4, "EUR"));
        Assert.Empty(costs.Findings);
        var c = costs.Value!;
        Assert.Equal("0.00 EUR", c.CashNow.ToString());
        Assert.Equal("24.00 EUR", c.Materials.ToString());
        Assert.Equal("6.00 EUR", c.LeftOnShelf.ToString());
        Assert.Equal("0.14 EUR", c.Wear.ToString()); // 3 / 200 of 9.50
        Assert.Equal("50.00 EUR", c.Labour.ToString());
        Assert.Equal("9.20 EUR", c.Disposal.ToString()); // 3.5 L at 2.50 and 0.15 kg at 3.00
        Assert.Equal("83.34 EUR", c.Total.ToString());
        Assert.Equal(["27.78 EUR", "27.78 EUR", "27.78 EUR"], c.BySpecimen(3).Select(m => m.ToString()));
        Assert.Equal("123.34 EUR", c.Over(10).ToString());
    }

    [Fact]
    public void What_has_no_price_is_said()
    {
        var costs = new CostRates(null, Rates.DisposalRates.Clear(), Euro).Sum([], [], NodaTime.Duration.FromMinutes(5), Leaving);
        Assert.Equal(["disposal-without-price", "labour-without-price"], costs.Findings.Select(f => f.Id).Order());
        Assert.Equal("0.00 EUR", costs.Value!.Total.ToString());
    }

    [Fact]
    public void Labour_in_another_currency_needs_a_rate()
    {
        var costs = (Rates with { LabourRate = Price.Of(30, "GBP", PriceUnit.Hour) }).Sum([], [], NodaTime.Duration.FromMinutes(5), []);
        Assert.Equal("two-currencies", Assert.Single(costs.Findings).Id);
    }
}
