using System.Collections.Immutable;
using NodaTime;
using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Specimens;
using static Protocolist.Tests.Planning.PlanFixture;

namespace Protocolist.Tests.Planning.Dating;

/// <summary>Open steps one after another as the scheduler has them: what waits, what may not wait, and by when all is over. The body has 1 L; work may start on Monday the first of March at nine.</summary>
public class StepChainTests
{
    private const string Fixed = "stages:\n  - {stage: task, id: look, last: 1 h}\n  - {stage: immerse, id: fix, fluid: formalin 10 %, ratio: 10, last: 24 h to 90 d, within: 90 d}\n  - {stage: wash, id: wash, fluid: tap water, ratio: 3, last: 24 h}\n  - {stage: house, id: house, fluid: ethanol 70 %vol, ratio: 3}\n";

    private static string Bench(double formalin, int formalinDays, double ethanol, int ethanolDays) =>
        FormattableString.Invariant($"zone: UTC\nstock:\n  - {{fluid: formaldehyde stock 37 %mass, id: f37, on-hand: {formalin} L, packs: [{{size: 5 L, price: 9 EUR, lead: {formalinDays} d}}]}}\n  - {{fluid: ethanol 96 %vol, id: e96, on-hand: {ethanol} L, packs: [{{size: 5 L, price: 40 EUR, lead: {ethanolDays} d}}]}}\ncurrency: EUR\n");

    private static Plan Of(string bench, Condition? condition = Condition.Frozen, string stages = Fixed, LocalDate? by = null) =>
        new Planner(Shelf(("one", "{group: mammal}", stages))).Plan(new(Mammal("1.03 kg") with { Condition = condition }, PlanFixture.Bench(bench), Monday) { By = by, Wishes = Overnight }).Value!;

    /// <summary>The soak is pinned, so that the dates are those of a day and not of what this body needs.</summary>
    private static readonly PlanWishes Overnight = PlanWishes.None with { Soaks = ImmutableSortedDictionary<string, Duration>.Empty.Add("fix", Duration.FromDays(1)) };

    private static LocalDateTime? Start(Plan plan, string step) => plan.Step(step)!.Start?.LocalDateTime;

    [Fact]
    public void Step_that_lacks_something_begins_on_the_morning_of_the_delivery()
    {
        var plan = Of(Bench(0, 6, 9, 0));

        Assert.Equal(new LocalDateTime(2027, 3, 7, 0, 0), Start(plan, "fix"));
        var note = Assert.Single(plan.Findings, f => f.Id == "waits-for-delivery");
        Assert.Equal("note waits-for-delivery: 'fix' waits for formaldehyde stock 37 %mass, Sun 2027-03-07 00:00 at the earliest; with it at hand it could begin Mon 2027-03-01 10:00; get it sooner, or borrow it", note.ToString());
        Assert.Equal("fix", note.Subject);
    }

    [Fact]
    public void What_comes_before_it_is_wanted_holds_nothing_up()
    {
        var plan = Of(Bench(9, 0, 0, 2));

        Assert.Equal(new LocalDateTime(2027, 3, 3, 10, 0), Start(plan, "house"));
        Assert.DoesNotContain(plan.Findings, f => f.Id == "waits-for-delivery");
    }

    [Fact]
    public void Body_that_does_not_keep_is_looked_at_at_once()
    {
        Assert.Equal(new LocalDateTime(2027, 3, 1, 9, 0), Start(Of(Bench(0, 6, 9, 0), Condition.Chilled), "look"));
        Assert.Equal(new LocalDateTime(2027, 3, 7, 0, 0), Start(Of(Bench(0, 6, 9, 0), Condition.Chilled), "fix"));

        var narrow = Fixed.Replace(", within: 90 d", "", StringComparison.Ordinal);
        Assert.Equal(new LocalDateTime(2027, 3, 7, 0, 0), Start(Of(Bench(0, 6, 9, 0), Condition.Frozen, narrow), "fix"));
        var plan = Of(Bench(0, 6, 9, 0), Condition.Chilled, narrow);
        Assert.Equal(new LocalDateTime(2027, 3, 1, 10, 0), Start(plan, "fix"));
        Assert.Equal("fix", Assert.Single(plan.Findings, f => f.Id == "supplies-late").Subject);
        Assert.DoesNotContain(plan.Findings, f => f.Id is "waits-for-delivery" or "latest-start");
    }

    [Fact]
    public void Day_on_which_all_must_be_over_gives_the_last_moment_to_begin()
    {
        var plan = Of(Bench(9, 0, 9, 0), by: new(2027, 3, 5));

        Assert.Equal("note latest-start: to be over by Fri 2027-03-05 00:00, work begins Tue 2027-03-02 22:30 at the latest; only a body that keeps, such as a frozen one, can wait that long", Assert.Single(plan.Findings, f => f.Id == "latest-start").ToString());
        Assert.DoesNotContain(Of(Bench(9, 0, 9, 0)).Findings, f => f.Id == "latest-start");
    }

    [Fact]
    public void Day_that_is_too_soon_is_an_error()
    {
        Assert.Contains(Of(Bench(9, 0, 9, 0), by: new(2027, 3, 3)).Findings, f => f is { Id: "no-dates-fit", Severity: Severity.Error });
        Assert.DoesNotContain(Of(Bench(9, 0, 9, 0), by: new(2027, 3, 4)).Findings, f => f.Severity == Severity.Error && f.Id == "no-dates-fit");
    }

    [Fact]
    public void Late_window_is_told_with_what_has_gone_by()
    {
        var plan = new Planner(Shelf(("one", "{group: mammal}", "stages:\n  - {stage: task, id: look, last: 1 h}\n  - {stage: immerse, id: fix, fluid: formalin 10 %, ratio: 10, last: 24 h, since-death: 5 h}\n"))).Plan(new(Mammal("1.03 kg") with { Condition = Condition.Fresh, DiedAt = Instant.FromUtc(2027, 3, 1, 3, 0) }, PlanFixture.Bench("zone: UTC\n"), Monday)).Value!;
        var late = Assert.Single(plan.Findings, f => f.Id == "too-long-after-death");

        Assert.Equal("warning too-long-after-death: 'fix' should begin within 5 h of death, and 6 h have gone by already; begin at once, and judge by sight and smell whether the body is still fit for fluid", late.ToString());
        Assert.Equal("fix", late.Subject);
    }
}
