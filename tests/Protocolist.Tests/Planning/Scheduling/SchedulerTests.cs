using NodaTime;
using Protocolist.Benches;
using Protocolist.Benches.Opening;
using Protocolist.Planning.Scheduling;
using static Protocolist.Tests.Planning.Scheduling.Station;

namespace Protocolist.Tests.Planning.Scheduling;

public class SchedulerTests
{
    private static readonly Job Fix = new("fix", Window.Between(Hrs(48), Hrs(96))) { HandsOnAtStart = Mins(30) };
    private static readonly Job Wash = new("wash", Window.Exactly(Hrs(48))) { HandsOnAtStart = Mins(15), HandsOnAtEnd = Mins(15) };
    private static readonly Job House = new("house", Window.Exactly(Hrs(1))) { HandsOnAtStart = Hrs(1) };
    private static readonly JobGraph Jar = JobGraph.Chain((Window.Nothing, Fix), (Window.Nothing, Wash), (Window.Nothing, House));

    [Fact]
    public void A_wash_starts_later_so_that_its_end_falls_in_open_hours()
    {
        // Monday plus 48 h is Wednesday 9:00; the wash waits for 9:15, so that the quarter of an hour before its end on Friday is in open hours.
        var monday = Scheduler.Earliest(Jar, Hours, March(1, 9)).Value!;
        Assert.Equal(March(1, 9), monday[0].Start);
        Assert.Equal(March(3, 9, 15), monday[1].Start);

        // From Tuesday 10:00 the first possible wash, Thursday to Saturday, would end on a closed day: fixing goes on to Saturday at most, so all waits.
        var tuesday = Scheduler.Earliest(Jar, Hours, March(2, 10)).Value!;
        Assert.Equal(March(4, 9, 15), tuesday[0].Start);
        Assert.Equal(March(8, 9, 15), tuesday[1].Start);
        Assert.Equal(March(10, 9, 15), tuesday[2].Start);
    }

    [Fact]
    public void A_soak_is_elapsed_time_across_a_clock_change()
    {
        var schedule = Scheduler.Earliest(JobGraph.Chain((Window.Nothing, Wash with { Lasts = Window.Exactly(Hrs(72)) })), Hours, March(26, 9)).Value!;

        // 72 hours over the lost hour of 28 March: Friday 9:00 becomes Monday 10:00 by the clock.
        Assert.Equal(March(26, 9), schedule[0].Start);
        Assert.Equal(March(29, 10), schedule[0].End);
    }

    [Fact]
    public void Hands_on_time_is_not_split_over_two_openings()
    {
        var schedule = Scheduler.Earliest(JobGraph.Chain((Window.Nothing, House with { Lasts = Window.Exactly(Hrs(5)), HandsOnAtStart = Hrs(5) })), Hours, March(1, 13)).Value!;

        Assert.Equal(March(2, 9), schedule.Start);
    }

    [Fact]
    public void Pure_waiting_starts_and_ends_at_any_hour() =>
        Assert.Equal(March(6, 3), Scheduler.Earliest(JobGraph.Chain((Window.Nothing, new Job("thaw", Window.Exactly(Hrs(10))))), Hours, March(5, 17)).Value!.End);

    [Fact]
    public void Work_during_a_soak_counts_from_its_start()
    {
        var vent = new Job("vent", Window.Exactly(Mins(10))) { HandsOnAtStart = Mins(10) };
        var graph = JobGraph.Of([Fix, vent], [new Link(0, 1, Window.Between(Hrs(20), Hrs(30)), Anchor.Start)]);

        Assert.Equal(March(2, 9), Scheduler.Earliest(graph, Hours, March(1, 9)).Value![1].Start);
        Assert.Equal(March(8, 9), Scheduler.Earliest(graph, Hours, March(5, 11)).Value![0].Start);
    }

    [Fact]
    public void A_time_below_a_minute_takes_a_minute() =>
        // Crinoids stand 30 to 90 seconds in strong alcohol (Messing, Crinoid Pages).
        Assert.Equal(March(1, 9, 1), Scheduler.Earliest(JobGraph.Chain((Window.Nothing, new Job("dip", Window.Between(Duration.FromSeconds(30), Duration.FromSeconds(90))))), Hours, March(1, 9)).Value!.End);

    [Fact]
    public void Backwards_every_date_is_the_latest_that_still_meets_the_display_date()
    {
        var latest = Scheduler.Latest(Jar, Hours, March(1), March(19, 18)).Value!;

        Assert.Equal(March(19, 16), latest[2].Start);
        Assert.Equal(March(17, 16), latest[1].Start);
        Assert.Equal(March(15, 16), latest[0].Start);
        Assert.Equal(March(19, 17), Scheduler.Earliest(Jar, Hours, latest.Start).Value!.End);
    }

    [Fact]
    public void A_clash_names_the_limits_and_what_would_free_them()
    {
        var strict = Jar.With(0, fix => fix with { StartBy = March(4, 12), Lasts = Window.Between(Hrs(48), Hrs(60)) });
        var finding = Assert.Single(Scheduler.Earliest(strict, Hours, March(4, 9)).Findings);

        Assert.Equal("no-dates-fit", finding.Id);
        // From Thursday 9:00 to 12:00, 48 to 60 hours end between Saturday 9:00 and midnight, when nobody is there to begin the wash.
        Assert.Equal(
            "no dates fit from Thu 2027-03-04 09:00 (Europe/Berlin) on, because these cannot all hold: "
            + "'fix' must start by Thu 2027-03-04 12:00; 'fix' lasts at least 2 d; 'fix' lasts at most 2 d 12 h; "
            + "the start of 'wash' needs 15 min of work in open hours; 'wash' starts at once after 'fix' ends",
            finding.Message.ToString());
        Assert.Equal(
            "it would fit if 'fix' could start as late as Mon 2027-03-08 09:00; or if 'fix' could last 3 d 21 h 15 min instead of 2 d 12 h; "
            + "or if 'wash' could start 1 d 9 h 15 min after 'fix' ends; or if the bench opened on Sat 2027-03-06, 09:00 to 17:00; "
            + "or if somebody came out of hours for the start of 'wash', Sat 2027-03-06 09:15",
            finding.Remedy.ToString());
    }

    [Fact]
    public void A_deadline_too_near_sums_up_the_shortest_durations()
    {
        var plan = JobGraph.Chain(Enumerable.Range(0, 20).Select(i => (Window.Nothing, new Job($"bath-{i}", Window.AtLeast(Hrs(24))) { EndBy = i == 19 ? March(8) : null })));
        var finding = Assert.Single(Scheduler.Earliest(plan, Hours, March(1)).Findings);

        Assert.Contains("the shortest durations of 8 jobs from", finding.Message.ToString(), StringComparison.Ordinal);
        Assert.Equal("it would fit if 'bath-19' could end as late as Sun 2027-03-21 00:00", finding.Remedy.ToString());
    }

    [Fact]
    public void A_bench_that_never_opens_is_found_out()
    {
        var closed = OpenMinutes.Of(OpeningHours.Create(Zone, []).Value!);
        var finding = Assert.Single(Scheduler.Earliest(Jar, closed, March(1)).Findings);

        Assert.Contains("of work in open hours", finding.Message.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void An_extra_opening_is_proposed_for_the_first_day_that_helps()
    {
        var thaw = new Job("thaw", Window.Between(Hrs(24), Hrs(30))) { StartBy = March(5, 16), NotBefore = March(5, 12) };
        var finding = Assert.Single(Scheduler.Earliest(JobGraph.Chain((Window.Nothing, thaw), (Window.Nothing, Fix)), Hours, March(5, 9)).Findings);

        Assert.Contains("the bench opened on Sat 2027-03-06, 09:00 to 17:00", finding.Remedy.ToString(), StringComparison.Ordinal);
        Assert.Contains("somebody came out of hours for the start of 'fix', Sat 2027-03-06 12:00", finding.Remedy.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Work_longer_than_its_job_is_not_mended_by_coming_out_of_hours()
    {
        var finding = Assert.Single(Scheduler.Earliest(JobGraph.Chain((Window.Nothing, House with { HandsOnAtStart = Hrs(2) })), Hours, March(1)).Findings);

        Assert.Equal("it would fit if 'house' could last 2 h instead of 1 h", finding.Remedy.ToString());
    }

    [Fact]
    public void A_clock_change_at_an_opening_hour_within_the_plan_is_noted()
    {
        var night = OpenMinutes.Of(OpeningHours.Create(Zone, [new(IsoDayOfWeek.Sunday, new LocalTime(2, 30), new LocalTime(12, 0))]).Value!);
        var schedule = Scheduler.Earliest(JobGraph.Chain((Window.Nothing, House)), night, March(22));

        Assert.Equal(March(28, 3), schedule.Value!.Start);
        Assert.Equal("opening-in-skipped-hour", Assert.Single(schedule.Findings).Id);
    }

    [Fact]
    public void A_graph_that_names_an_unknown_job_is_the_callers_fault()
    {
        Assert.Throws<ArgumentException>(() => JobGraph.Of([Fix], [new Link(0, 1, Window.Nothing)]));
        Assert.Throws<ArgumentException>(() => JobGraph.Of([Fix, Wash], [new Link(-1, 1, Window.Nothing)]));
    }

    [Fact]
    public void A_plan_without_jobs_has_no_dates() => Assert.Empty(Scheduler.Earliest(JobGraph.Of([], []), Hours, March(1)).Value!);
}
