using Protocolist.Findings;
using Protocolist.Quantities;

namespace Protocolist.Tests.Planning.Provisioning;

public class PlanCostsTests
{
    private const string Ethanol = "stock:\n  - {fluid: ethanol 96 %vol, id: e96, on-hand: 500 mL, packs: [{size: 1 L, price: 9.00 CODE, lead: 2 d}]}";

    [Fact]
    public void The_parts_of_the_cost_add_up_to_its_total()
    {
        var costs = Station.Plan(Station.Whelk, Station.With(Ethanol.Replace("CODE", "EUR", StringComparison.Ordinal))).Costs;
        Assert.Equal(costs.Total, costs.Used! + costs.Wear! + costs.Labour! + costs.Disposal!);
        Assert.Equal(costs.Disposal, Money.Sum(costs.DisposalByClass.Select(d => d.Cost), "EUR"));
        Assert.Equal(costs.OverTenYears, costs.Total! + costs.CareByYear! * 10);
    }

    /// <summary>Two half-yearly rounds of 10 minutes at 18 EUR/h: 365.25 / 180 x 10 min x 0.30 EUR/min = 6.09 EUR.</summary>
    [Fact]
    public void A_year_of_care_is_its_rounds_at_the_rate_for_work() =>
        Assert.Equal(609, Station.Plan(Station.Whelk, Station.With(Ethanol.Replace("CODE", "EUR", StringComparison.Ordinal))).Costs.CareByYear!.Minor);

    [Fact]
    public void Two_currencies_without_a_rate_are_a_finding_and_with_one_are_not()
    {
        var without = Station.Plan(Station.Whelk, Station.With(Ethanol.Replace("CODE", "USD", StringComparison.Ordinal)));
        Assert.Contains(without.Findings, f => f.Id == "two-currencies" && f.Severity == Severity.Error);
        var with = Station.Plan(Station.Whelk, Station.With(Ethanol.Replace("CODE", "USD", StringComparison.Ordinal) + "\nexchange-rates: {USD: 0.5}"));
        Assert.DoesNotContain(with.Findings, f => f.Id == "two-currencies");
        Assert.Equal(450 * with.Purchases[0].Count, with.Costs.Cash!.Minor);
    }

    [Fact]
    public void What_takes_days_to_arrive_is_said_and_names_the_steps_that_wait()
    {
        var plan = Station.Plan(Station.Whelk, Station.With(Ethanol.Replace("CODE", "EUR", StringComparison.Ordinal)));
        Assert.Equal(2, plan.Purchases[0].LeadDays);
        Assert.Contains("fix", plan.Purchases[0].For);
        Assert.Contains(plan.Findings, f => f.Id == "supplies-late");
    }

    [Theory]
    [InlineData("  - {fluid: ethanol 96 %vol, on-hand: -1 L}", "negative-stock")]
    [InlineData("  - {fluid: ethanol 96 %vol, on-hand: 1 L, packs: [{size: 1 L}]}", "pack-without-price")]
    [InlineData("  - {fluid: ethanol 96 %vol, on-hand: 1 L, packs: [{size: 1 L, price: 9.00}]}", "price-without-currency")]
    [InlineData("  - {fluid: ethanol 96 %vol, on-hand: 1 L, packs: [{size: 1 L, price: 9.00 XYZ}]}", "unknown-currency")]
    public void Bad_stock_is_found_with_its_line(string item, string id)
    {
        var read = Station.Read("stock:\n" + item);
        Assert.Contains(read.Findings, f => f.Id == id && f.Where.Line > 0);
    }
}
