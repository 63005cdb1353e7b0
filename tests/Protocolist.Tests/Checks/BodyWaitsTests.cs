using NodaTime;
using Protocolist.Findings;
using Protocolist.Specimens;
using static Protocolist.Tests.Planning.PlanFixture;

namespace Protocolist.Tests.Checks;

public class BodyWaitsTests
{
    private const string ClosedWeek = "zone: UTC\nhours: {mon-fri: 08:30 to 18:00, sat: 09:00 to 13:00}\nclosed: [2027-03-29 to 2027-04-02]\ntemperatures: {room: 19 degC, cold: 4 degC}\n";

    private static readonly Shelf Simple = Shelf(("simple", "{group: animal}", "stages:\n  - {stage: hold, id: cold, last: at most 12 h}\n  - {stage: immerse, id: fix, fluid: formalin 10 %, ratio: 10, last: 24 h to 96 h}\n"));

    [Fact]
    public void A_fresh_body_that_comes_on_the_first_of_four_closed_days_is_warned_of_with_its_numbers()
    {
        var finding = Assert.Single(Found(Condition.Fresh, ClosedWeek), f => f.Id == "body-waits");

        Assert.Equal(Severity.Warning, finding.Severity);
        Assert.Contains("fresh, 19 °C in the room", finding.Message.ToString(), StringComparison.Ordinal);
        Assert.Contains("waits 4 d from Tue 2027-03-30 09:00", finding.Message.ToString(), StringComparison.Ordinal);
        Assert.Contains("nobody can begin before Sat 2027-04-03 09:00", finding.Message.ToString(), StringComparison.Ordinal);
        Assert.Contains("3 d at most, which is not enough here", finding.Remedy.ToString(), StringComparison.Ordinal);
        Assert.Contains("ice bursts cells", finding.Remedy.ToString(), StringComparison.Ordinal);
        Assert.Matches("open the bench Tue 2027-03-30 [0-9:]+, though it is closed", finding.Remedy.ToString());
    }

    [Fact]
    public void An_opening_on_the_closed_day_leaves_nothing_to_warn_of() =>
        Assert.DoesNotContain(Found(Condition.Fresh, ClosedWeek + "also-open: {2027-03-30: 09:00 to 12:00}\n"), f => f.Id == "body-waits");

    [Fact]
    public void A_chilled_body_waits_over_a_Sunday_and_a_fresh_one_does_not()
    {
        var saturday = new LocalDateTime(2027, 3, 6, 14, 0);

        Assert.DoesNotContain(Found(Condition.Chilled, ClosedWeek, saturday), f => f.Id == "body-waits");
        Assert.Contains("that keeps it until then", Assert.Single(Found(Condition.Fresh, ClosedWeek, saturday), f => f.Id == "body-waits").Remedy.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_frozen_body_can_wait_and_a_thawed_one_is_not_frozen_again()
    {
        Assert.DoesNotContain(Found(Condition.Frozen, ClosedWeek), f => f.Id == "body-waits");
        Assert.StartsWith("do not freeze it again", Assert.Single(Found(Condition.Thawed, ClosedWeek), f => f.Id == "body-waits").Remedy.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void With_the_hour_of_death_known_the_time_since_then_is_weighed_instead_with_the_same_remedies()
    {
        var found = Found(Condition.Fresh, ClosedWeek, died: Instant.FromUtc(2027, 3, 30, 6, 0));

        Assert.DoesNotContain(found, f => f.Id == "body-waits");
        Assert.Contains("open the bench Tue 2027-03-30", Assert.Single(found, f => f.Id == "too-late-after-death").Remedy.ToString(), StringComparison.Ordinal);
    }

    private static System.Collections.Immutable.ImmutableArray<Finding> Found(Condition condition, string bench, LocalDateTime? start = null, Instant? died = null) =>
        Plan(Mammal("1 kg") with { Condition = condition, DiedAt = died }, Simple, bench, start ?? new(2027, 3, 30, 9, 0)).Findings;
}
