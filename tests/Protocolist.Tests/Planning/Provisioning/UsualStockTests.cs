using static Protocolist.Tests.Planning.PlanFixture;

namespace Protocolist.Tests.Planning.Provisioning;

/// <summary>A fluid that the shelf cannot make for want of a salt takes its stock from the shelf all the same, and what is lacking of it is bought.</summary>
public class UsualStockTests
{
    private static Protocolist.Plans.Plan Of(string onHand, string packs = ", packs: [{size: 1 L, price: 9 EUR}]") => Plan(
        Mammal("1.03 kg"),
        Shelf(("one", "{group: mammal}", "stages:\n  - {stage: immerse, id: fix, fluid: neutral buffered formalin 10 %, ratio: 10, last: 24 h}\n")),
        $"zone: UTC\ncurrency: EUR\nstock:\n  - {{fluid: formaldehyde stock 37 %mass, id: f37, on-hand: {onHand}{packs}}}\n").Value!;

    /// <summary>10 L of it and a little take 1 L of stock and a little.</summary>
    [Fact]
    public void Stock_that_runs_out_is_bought()
    {
        Assert.Equal(1, Assert.Single(Of("150 mL").Purchases, p => p.Item.ToString() == "formaldehyde stock 37 %mass").Count);
        Assert.Equal(2, Assert.Single(Of("0 mL").Purchases, p => p.Item.ToString() == "formaldehyde stock 37 %mass").Count);
        Assert.DoesNotContain(Of("2 L").Purchases, p => p.Item.ToString() == "formaldehyde stock 37 %mass");
        Assert.Equal(900, Of("150 mL").Costs.Cash!.Minor);
    }

    [Fact]
    public void Stock_that_runs_out_and_is_not_for_sale_is_told() =>
        Assert.Contains(Of("150 mL", "").Findings, f => f.Id == "lacking-and-not-for-sale");
}
