using NodaTime;
using Protocolist.Plans;
using Protocolist.Specimens;
using static Protocolist.Tests.Planning.PlanFixture;

namespace Protocolist.Tests.Planning.Dating;

public class SchedulePassTests
{
    private static readonly Shelf Simple = Shelf(("simple", "{group: mammal}", """
        stages:
          - {stage: immerse, id: fix, fluid: formalin 10 %, ratio: 10, last: 24 h}
          - {stage: house, id: house, fluid: formalin 10 %, ratio: 3}
        """));

    /// <summary>In Germany the clocks went forward on 2027-03-28 from 02:00 to 03:00 (time zone database).</summary>
    [Fact]
    public void Start_in_a_skipped_hour_is_moved_and_said()
    {
        var made = Plan(Mammal("1 kg"), Simple, "zone: Europe/Berlin\n", new LocalDateTime(2027, 3, 28, 2, 30));

        Assert.Equal(new LocalDateTime(2027, 3, 28, 3, 30), made.Value!.Start!.Value.LocalDateTime);
        Assert.Contains("2027-03-28 02:30 does not exist in Europe/Berlin", Assert.Single(made.Findings, f => f.Id == "clock-change-at-start").Message.ToString(), StringComparison.Ordinal);
    }

    /// <summary>They go back on 2027-10-31 from 03:00 to 02:00.</summary>
    [Fact]
    public void Start_in_a_doubled_hour_takes_the_first_and_says_so()
    {
        var made = Plan(Mammal("1 kg"), Simple, "zone: Europe/Berlin\n", new LocalDateTime(2027, 10, 31, 2, 30));

        Assert.Equal(Offset.FromHours(2), made.Value!.Start!.Value.Offset);
        Assert.Contains("comes twice", Assert.Single(made.Findings, f => f.Id == "clock-change-at-start").Message.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Soak_across_a_clock_change_keeps_its_elapsed_hours()
    {
        var plan = Plan(Mammal("1 kg"), Simple, "zone: Europe/Berlin\n", new LocalDateTime(2027, 3, 27, 12, 0)).Value!;

        var fix = plan.Step("fix")!;
        Assert.Equal(Duration.FromHours(24), fix.End!.Value.ToInstant() - fix.Start!.Value.ToInstant());
        Assert.Equal(new LocalDateTime(2027, 3, 28, 13, 0), fix.End.Value.LocalDateTime);
    }

    [Fact]
    public void Start_at_night_waits_for_the_morning()
    {
        var plan = Plan(Mammal("1 kg"), Simple, "zone: UTC\nhours: {mon-fri: 08:30 to 18:00}\n", new LocalDateTime(2027, 3, 1, 3, 0)).Value!;

        Assert.Equal(new LocalDateTime(2027, 3, 1, 8, 30), plan.Start!.Value.LocalDateTime);
    }

    [Fact]
    public void Soak_that_would_end_on_a_closed_day_runs_over_where_the_body_could_not_wait()
    {
        // 24 h from Friday end on Saturday; the first day whose next day is open is Monday.
        var plan = Of(Mammal("1 kg"));
        Assert.Equal(new LocalDateTime(2027, 3, 5, 9, 0), plan.Start!.Value.LocalDateTime);
        Assert.Equal(new LocalDateTime(2027, 3, 8, 8, 30), plan.Step("fix")!.End!.Value.LocalDateTime);
        var told = Assert.Single(plan.Findings, f => f.Id == "step-runs-over");
        Assert.Equal("fix", told.Subject);
        Assert.Contains("2027-03-06", told.Remedy.ToString(), StringComparison.Ordinal);

        // What is frozen waits as long as it has to.
        var frozen = Of(Mammal("1 kg") with { Condition = Condition.Frozen });
        Assert.Equal(new LocalDateTime(2027, 3, 8, 8, 30), frozen.Step("fix")!.Start!.Value.LocalDateTime);
        Assert.DoesNotContain(frozen.Findings, f => f.Id == "step-runs-over");

        static Plan Of(Specimen specimen) =>
            PlanFixture.Plan(specimen, Simple, "zone: UTC\nhours: {mon-fri: 08:30 to 18:00}\n", new LocalDateTime(2027, 3, 5, 9, 0)).Value!;
    }

    [Fact]
    public void Times_that_no_hours_allow_are_an_error_and_leave_the_plan_undated()
    {
        // Open two hours a week: what lasts a day ends when nobody is there.
        var made = Plan(Mammal("1 kg"), Simple, "zone: UTC\nhours: {mon: 08:00 to 10:00}\n");

        Assert.NotNull(made.Value);
        Assert.False(made.Value.Startable);
        Assert.Null(made.Value.Start);
        Assert.All(made.Value.Steps, s => Assert.Null(s.Start));
    }

    [Fact]
    public void Longest_wait_that_is_forgotten_by_a_calendar_is_never_exceeded()
    {
        var plan = Otter();

        Assert.All(plan.Steps.Where(s => s is { Start: not null, Most: not null }), s => Assert.True(s.End!.Value.ToInstant() - s.Start!.Value.ToInstant() <= s.Most!.Value, s.Id));
    }

    private static Shelf Watched(string last) => Shelf(("watched", "{group: mammal}", $"stages:\n  - {{stage: immerse, id: fix, fluid: formalin 10 %, ratio: 10, last: {last}, watch: {{every: 2 d, signs: {{soft: re-inject}}}}}}\n"));

    /// <summary>Every other day of an open week, and none on the day before the end.</summary>
    [Fact]
    public void Visits_come_at_the_rhythm_in_open_hours()
    {
        var fix = Plan(Mammal("1 kg"), Watched("7 d"), "zone: UTC\nhours: {mon-sun: 09:00 to 10:00}\n").Value!.Step("fix")!;

        // A body that floats is looked at after a day besides.
        Assert.Equal([new LocalDateTime(2027, 3, 2, 9, 0), new(2027, 3, 3, 9, 0), new(2027, 3, 5, 9, 0)], fix.Inspections.Take(3).Select(i => i.LocalDateTime));
        Assert.All(fix.Inspections, i => Assert.InRange(i.LocalDateTime, fix.Start!.Value.LocalDateTime, fix.End!.Value.LocalDateTime));
    }

    /// <summary>Open on Mondays alone, nobody looks for seven days; four are the most, twice the rhythm.</summary>
    [Fact]
    public void Gap_longer_than_twice_the_rhythm_is_a_warning_at_the_step()
    {
        var plan = Plan(Mammal("1 kg"), Watched("14 d"), "zone: UTC\nhours: {mon: 09:00 to 10:00}\n").Value!;

        Assert.NotNull(plan.Step("fix")!.Start);
        Assert.All(plan.Findings.Where(f => f.Id == "inspection-gap"), f => Assert.Equal(("fix", Protocolist.Findings.Severity.Warning), (f.Subject, f.Severity)));
        Assert.Contains(plan.Findings, f => f.Id == "inspection-gap");
        Assert.DoesNotContain(Plan(Mammal("1 kg"), Watched("14 d"), "zone: UTC\nhours: {mon: 09:00 to 10:00, wed: 09:00 to 10:00, fri: 09:00 to 10:00}\n").Value!.Findings, f => f.Id == "inspection-gap");
    }

    [Fact]
    public void Moved_start_says_what_to_do_if_the_other_was_meant() => Assert.Equal(
        "give another start if you mean the other",
        Assert.Single(Plan(Mammal("1 kg"), Simple, "zone: Europe/Berlin\n", new LocalDateTime(2027, 3, 28, 2, 30)).Findings, f => f.Id == "clock-change-at-start").Remedy.ToString());
}
