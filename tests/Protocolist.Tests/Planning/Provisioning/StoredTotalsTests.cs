using Protocolist.Planning.Deciding;
using Protocolist.Planning.Provisioning;
using static Protocolist.Tests.Planning.PlanFixture;

namespace Protocolist.Tests.Planning.Provisioning;

/// <summary>How much flammable fluid and formaldehyde stands about: 37 % by mass at 1.083 kg/L, so 400 g/L, the density of the stock as the fluids' own tests have it.</summary>
public class StoredTotalsTests
{
    private static (double Flammable, double Stock, double FormaldehydeGrams) Of(string stock)
    {
        var totals = PreparedStock.Of(Bench("zone: UTC\nstock:\n" + stock)).Stored;
        return (Math.Round(totals.Flammable.Liters, 6), Math.Round(totals.FormaldehydeStock.Liters, 6), Math.Round(totals.Formaldehyde.Grams, 3));
    }

    [Fact]
    public void Alcohol_counts_from_the_strength_at_which_it_burns() => Assert.Equal(
        (7, 0, 0),
        Of("  - {fluid: ethanol 96 %vol, id: a, on-hand: 5 L}\n  - {fluid: isopropanol 50 %vol, id: b, on-hand: 2 L}\n  - {fluid: ethanol 5 %vol, id: c, on-hand: 30 L}\n  - {fluid: distilled water, id: d, on-hand: 30 L}\n  - {salt: borax, id: e, on-hand: 3 kg}\n"));

    /// <summary>Formalin 10 % holds a tenth of the stock's formaldehyde; stock burns too and is counted by itself.</summary>
    [Fact]
    public void Formaldehyde_counts_in_stock_and_in_what_is_made_of_it()
    {
        var stock = Of("  - {fluid: formaldehyde stock 37 %mass, id: a, on-hand: 2 L}\n");
        Assert.Equal((0, 2), (stock.Flammable, stock.Stock));
        Assert.InRange(stock.FormaldehydeGrams, 2 * 398, 2 * 404);
        var both = Of("  - {fluid: formaldehyde stock 37 %mass, id: a, on-hand: 2 L}\n  - {fluid: formalin 10 %, id: b, on-hand: 10 L}\n");
        Assert.Equal(2, both.Stock);
        Assert.Equal(1.5, both.FormaldehydeGrams / stock.FormaldehydeGrams, 3);
    }

    [Fact]
    public void What_is_not_there_counts_nothing() => Assert.Equal((0, 0, 0), Of("  - {fluid: ethanol 96 %vol, id: a, on-hand: 0 L}\n  - {fluid: formaldehyde stock 37 %mass, id: b, on-hand: 0 L}\n"));

    /// <summary>A little protocol that buys: 3 L of 96 % of which 1 L is there, in bottles of 5 L.</summary>
    [Fact]
    public void What_is_bought_counts_beside_the_shelf()
    {
        var bench = Bench("zone: UTC\ncurrency: EUR\nstock:\n  - {fluid: ethanol 96 %vol, id: a, on-hand: 1 L, packs: [{size: 5 L, price: 40 EUR}]}\n  - {consumable: needle 18 G, id: n, on-hand: 5}\n");
        var made = new Planner(Shelf(("one", "{group: mammal}", "stages:\n  - {stage: house, id: house, fluid: ethanol 96 %vol, ratio: 3}\n"))).Pipeline.Make(new(Mammal("1.03 kg"), bench, Monday));

        Assert.Equal(6, made.Provisioned!.Books.Stored.Flammable.Liters, 6);
    }
}
