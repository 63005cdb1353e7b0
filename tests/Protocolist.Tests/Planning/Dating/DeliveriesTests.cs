using System.Collections.Immutable;
using NodaTime;
using Protocolist.Planning.Dating;
using Protocolist.Plans;
using Protocolist.Specimens;
using static Protocolist.Tests.Planning.PlanFixture;

namespace Protocolist.Tests.Planning.Dating;

/// <summary>What must be bought holds the step up that runs out of it. The body has 1 L; work may start on Monday the first of March at nine.</summary>
public class DeliveriesTests
{
    private const string Fixed = "stages:\n  - {stage: task, id: look, last: 1 h}\n  - {stage: immerse, id: fix, fluid: formalin 10 %, ratio: 10, last: 24 h to 90 d, within: 90 d}\n  - {stage: wash, id: wash, fluid: tap water, ratio: 3, last: 24 h}\n  - {stage: house, id: house, fluid: ethanol 70 %vol, ratio: 3}\n";

    private static string Bench(double formalin, int formalinDays, double ethanol, int ethanolDays, string more = "") =>
        FormattableString.Invariant($"zone: UTC\nstock:\n  - {{fluid: formaldehyde stock 37 %mass, id: f37, on-hand: {formalin} L, packs: [{{size: 5 L, price: 9 EUR, lead: {formalinDays} d}}]}}\n  - {{fluid: distilled water, id: still, on-hand: 90 L}}\n  - {{fluid: ethanol 96 %vol, id: e96, on-hand: {ethanol} L, packs: [{{size: 5 L, price: 40 EUR, lead: {ethanolDays} d}}]}}\ncurrency: EUR\n{more}");

    private static Plan Of(string bench, Condition? condition = Condition.Frozen, string stages = Fixed) =>
        new Planner(Shelf(("one", "{group: mammal}", stages))).Plan(new(Mammal("1.03 kg") with { Condition = condition }, PlanFixture.Bench(bench), Monday) { Wishes = stages.Contains("id: fix", StringComparison.Ordinal) ? Pinned(stages.Contains("last: 8 d", StringComparison.Ordinal) ? 8 : 1) : PlanWishes.None }).Value!;

    /// <summary>The soak is pinned, so that the dates are those of the protocol's least and not of what this body needs.</summary>
    private static PlanWishes Pinned(int days) => PlanWishes.None with { Soaks = ImmutableSortedDictionary<string, Duration>.Empty.Add("fix", Duration.FromDays(days)) };

    private static LocalDateTime? Start(Plan plan, string step) => plan.Step(step)!.Start?.LocalDateTime;

    [Fact]
    public void Nothing_waits_where_all_is_on_the_shelf()
    {
        var plan = Of(Bench(9, 6, 9, 6));

        Assert.Empty(plan.Purchases);
        Assert.Equal(new LocalDateTime(2027, 3, 1, 10, 0), Start(plan, "fix"));
        Assert.DoesNotContain(plan.Findings, f => f.Id is "waits-for-delivery" or "delivery-comes-too-late");
    }

    /// <summary>Ordered on Monday, six days on: there on Sunday the seventh at midnight.</summary>
    [Fact]
    public void Only_the_step_that_needs_it_waits()
    {
        var plan = Of(Bench(9, 0, 0, 6));

        Assert.Equal(new LocalDateTime(2027, 3, 1, 10, 0), Start(plan, "fix"));
        Assert.Equal(new LocalDateTime(2027, 3, 7, 0, 0), Start(plan, "house"));
        Assert.Equal("house", Assert.Single(plan.Findings, f => f.Id == "waits-for-delivery").Subject);
    }

    /// <summary>Two baths of ethanol 96 at 3 L each: 4 L on the shelf do for the first, and the second waits.</summary>
    [Fact]
    public void Shelf_serves_the_first_steps_and_the_one_that_runs_out_waits()
    {
        const string Baths = "stages:\n  - {stage: bath, id: first, fluid: ethanol 96 %vol, ratio: 3, last: 1 h to 90 d, within: 90 d}\n  - {stage: bath, id: second, fluid: ethanol 96 %vol, ratio: 3, last: 1 h, within: 90 d}\n";

        var plan = Of(Bench(0, 0, 4, 3), stages: Baths);

        Assert.Equal(new LocalDateTime(2027, 3, 1, 9, 0), Start(plan, "first"));
        Assert.Equal(new LocalDateTime(2027, 3, 4, 0, 0), Start(plan, "second"));
        Assert.Equal(new LocalDateTime(2027, 3, 4, 0, 0), Start(Of(Bench(0, 0, 2, 3), stages: Baths), "first"));
        Assert.Equal(new LocalDateTime(2027, 3, 1, 10, 0), Start(Of(Bench(0, 0, 6.6, 3), stages: Baths), "second"));
    }

    /// <summary>A bath that is changed once takes its amount twice.</summary>
    [Fact]
    public void Changes_use_the_shelf_up_too()
    {
        const string Baths = "stages:\n  - {stage: bath, id: first, fluid: ethanol 96 %vol, ratio: 3, changes: 1, last: 1 h to 90 d, within: 90 d}\n  - {stage: bath, id: second, fluid: ethanol 96 %vol, ratio: 1, last: 1 h, within: 90 d}\n";

        var waiting = Of(Bench(0, 0, 4, 3), stages: Baths);
        Assert.Equal(new LocalDateTime(2027, 3, 1, 9, 0), Start(waiting, "first"));
        Assert.True(waiting.Step("first")!.End!.Value.LocalDateTime >= new LocalDateTime(2027, 3, 4, 0, 0));
        Assert.Contains("a change of fluid in 'first' waits for ethanol 96 %vol", Assert.Single(waiting.Findings, f => f.Id == "waits-for-delivery").Message.ToString(), StringComparison.Ordinal);
        Assert.Equal(new LocalDateTime(2027, 3, 4, 0, 0), Start(Of(Bench(0, 0, 2, 3), stages: Baths), "first"));
        Assert.Equal(new LocalDateTime(2027, 3, 1, 9, 0), Start(Of(Bench(0, 0, 6.6, 3), stages: Baths), "first"));
        Assert.Equal(new LocalDateTime(2027, 3, 4, 0, 0), Start(Of(Bench(0, 0, 6.6, 3), stages: Baths), "second"));
    }

    /// <summary>A chilled body is in hand: its first look does not wait with the fixative, and where the windows are narrow nothing does.</summary>
    [Fact]
    public void Delivery_that_comes_too_late_says_what_and_until_when_and_what_to_do_meanwhile()
    {
        var late = new Delivery(Said.Of("formaldehyde stock 37 %mass"), 6, Instant.FromUtc(2027, 3, 7, 0, 0), "fix").ComesTooLate(DateTimeZone.Utc);

        Assert.Equal(
            "warning delivery-comes-too-late: formaldehyde stock 37 %mass is bought with 6 days of waiting, until Sun 2027-03-07 00:00; the body cannot wait so long for 'fix' within the protocol's windows, and the dates take it as there in time; borrow it or fetch it sooner; else keep the body on ice for a day or two at most, or freeze it now and thaw it when the delivery is there (freezing spoils tissue); do not cut it before all is at hand",
            late.ToString());
        Assert.Equal("fix", late.Subject);
        Assert.Contains("is bought with 1 day of waiting, until ", new Delivery(Said.Of("x"), 1, Instant.FromUtc(2027, 3, 7, 0, 0), "fix").ComesTooLate(DateTimeZone.Utc).Message.ToString(), StringComparison.Ordinal);
    }

    /// <summary>The body can wait a day for its fixative, which is six in coming; the ethanol of the ninth day comes on the fourth, and nobody need be told.</summary>
    [Fact]
    public void Only_what_comes_too_late_is_called_late()
    {
        const string Pressed = "stages:\n  - {stage: immerse, id: fix, fluid: formalin 10 %, ratio: 10, last: 8 d}\n  - {stage: wash, id: wash, fluid: tap water, ratio: 3, last: 24 h}\n  - {stage: house, id: house, fluid: ethanol 70 %vol, ratio: 3}\n";

        var plan = Of(Bench(0, 6, 0, 3), Condition.Chilled, Pressed);

        var late = Assert.Single(plan.Findings, f => f.Id is "supplies-late" or "delivery-comes-too-late");
        Assert.Equal("fix", late.Subject);
        Assert.DoesNotContain("ethanol", late.Message.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain(plan.Findings, f => f.Id == "waits-for-delivery");
    }

    /// <summary>Where one delivery is too late for its step, the other is waited for all the same.</summary>
    [Fact]
    public void What_can_be_waited_for_is_though_something_else_comes_too_late()
    {
        const string Pressed = "stages:\n  - {stage: immerse, id: fix, fluid: formalin 10 %, ratio: 10, last: 1 d to 9 d}\n  - {stage: house, id: house, fluid: ethanol 70 %vol, ratio: 3}\n";

        var plan = Of(Bench(0, 6, 0, 5), Condition.Chilled, Pressed);

        Assert.Equal(new LocalDateTime(2027, 3, 1, 9, 0), Start(plan, "fix"));
        Assert.Equal(new LocalDateTime(2027, 3, 6, 0, 0), Start(plan, "house"));
        Assert.Equal("fix", Assert.Single(plan.Findings, f => f.Id == "supplies-late").Subject);
        Assert.Equal("house", Assert.Single(plan.Findings, f => f.Id == "waits-for-delivery").Subject);
    }

    /// <summary>Two fillings of four days: the second comes on the seventh day and lasts as long as the first; the ethanol is there long before.</summary>
    [Fact]
    public void After_a_late_change_the_body_lies_in_it_for_its_share_and_the_true_cause_is_told()
    {
        const string Changed = "stages:\n  - {stage: immerse, id: fix, fluid: formalin 10 %, ratio: 10, changes: 1, last: 8 d to 30 d}\n  - {stage: house, id: house, fluid: ethanol 70 %vol, ratio: 3}\n";

        var plan = Of(Bench(1.5, 6, 0, 3), Condition.Chilled, Changed);

        Assert.Equal(new LocalDateTime(2027, 3, 1, 9, 0), Start(plan, "fix"));
        Assert.Equal(new LocalDateTime(2027, 3, 11, 0, 0), plan.Step("fix")!.End!.Value.LocalDateTime);
        var waits = Assert.Single(plan.Findings, f => f.Id == "waits-for-delivery");
        Assert.Equal("fix", waits.Subject);
        Assert.Contains("a change of fluid in 'fix' waits for formaldehyde stock", waits.Message.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Vessel_that_is_bought_is_waited_for()
    {
        const string Jar = "vessels:\n  - {id: jar, name: big jar, inside: {diameter: 40 cm, height: 90 cm}, wall: glass, lid: polypropylene, seal: polyethylene, closure: screw-lid, count: 0, price: 12 EUR, lead: 9 d}\n";
        var plan = Of(Bench(9, 0, 90, 0, Jar), stages: "stages:\n  - {stage: task, id: look, last: 1 h}\n  - {stage: house, id: house, fluid: ethanol 70 %vol, ratio: 3, within: 90 d}\n");

        Assert.Equal(new LocalDateTime(2027, 3, 10, 0, 0), Start(plan, "house"));
        Assert.Contains("'house' waits for big jar, Wed 2027-03-10 00:00", Assert.Single(plan.Findings, f => f.Id == "waits-for-delivery").Message.ToString(), StringComparison.Ordinal);
    }

    /// <summary>Look 1 h, fix 24 h, wash 24 h, house 30 min: 49 h 30 min, backwards from midnight before Friday the fifth: Tuesday at 22:30.</summary>
}
