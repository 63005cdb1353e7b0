using NodaTime;
using Protocolist.Benches;
using Protocolist.Specimens;
using Protocolist.Tests.Planning.Revising;

namespace Protocolist.Tests.Planning.Dating;

public class PlanDatesTests
{
    [Fact]
    public void Backwards_from_a_day_the_latest_start_is_named_and_all_is_over_by_then()
    {
        var plan = SkerryPoint.Plan(SkerryPoint.Otter, by: new LocalDate(2027, 6, 1));
        Assert.Single(plan.Findings, f => f.Id == "latest-start");
        Assert.True(plan.End!.Value.LocalDateTime <= new LocalDateTime(2027, 6, 1, 0, 0));
    }

    [Fact]
    public void A_day_too_soon_is_an_error_that_says_what_would_do()
    {
        var plan = SkerryPoint.Plan(SkerryPoint.Otter, by: new LocalDate(2027, 3, 10));
        var finding = Assert.Single(plan.Findings, f => f.Id == "no-dates-fit");
        Assert.Contains("could end as late as", finding.Remedy.ToString(), StringComparison.Ordinal);
        Assert.False(plan.Startable);
    }

    [Fact]
    public void A_frozen_body_waits_for_what_is_bought_and_a_chilled_one_cannot()
    {
        var bare = SkerryPoint.Bench with { Stock = [.. SkerryPoint.Bench.Stock.Select(s => s.Id == "formalin" ? s with { OnHand = Amount.Of(UnitsNet.Volume.Zero) } : s)] };
        var frozen = SkerryPoint.Plan(SkerryPoint.Otter with { Condition = Condition.Frozen }, bench: bare);
        Assert.True(frozen.Step("inject-fixative")!.Start!.Value.Date >= new LocalDate(2027, 3, 4));
        Assert.DoesNotContain(frozen.Findings, f => f.Id == "supplies-late");
        var chilled = SkerryPoint.Plan(SkerryPoint.Otter, bench: bare);
        Assert.Contains(chilled.Findings, f => f.Id == "supplies-late");
    }

    [Fact]
    public void A_start_before_death_is_an_error()
    {
        var plan = SkerryPoint.Plan(SkerryPoint.Otter, "2027-02-25T09:00");
        Assert.Contains(plan.Findings, f => f.Id == "work-before-death");
    }

    [Fact]
    public void Care_is_dated_for_ten_years_on_open_days_with_amounts()
    {
        var plan = SkerryPoint.Plan(SkerryPoint.Wrasse);
        var round = Assert.Single(plan.Care, c => c.EveryMonths == 6);
        Assert.InRange(round.Dates.Length, 19, 20);
        Assert.All(round.Dates, d => Assert.True(SkerryPoint.Bench.Opening.OpensOn(d)));
        Assert.Contains("of ethanol", round.Amount.ToString(), StringComparison.Ordinal);
        Assert.Contains(plan.Care, c => c.Id == "yearly-test");
        Assert.Contains(plan.Care, c => c.Id == "gasket");
    }
}
