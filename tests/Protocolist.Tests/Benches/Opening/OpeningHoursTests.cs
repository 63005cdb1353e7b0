using NodaTime;
using Protocolist.Benches;
using Protocolist.Findings;

namespace Protocolist.Tests.Benches.Opening;

public class OpeningHoursTests
{
    private static readonly DateTimeZone Berlin = DateTimeZoneProviders.Tzdb["Europe/Berlin"];

    private static readonly WeeklyOpening[] Weekdays =
        [.. Enumerable.Range(1, 5).Select(day => new WeeklyOpening((IsoDayOfWeek)day, new LocalTime(9, 0), new LocalTime(17, 0)))];

    private static Instant At(DateTimeZone zone, int year, int month, int day, int hour = 0, int minute = 0) =>
        new LocalDateTime(year, month, day, hour, minute).InZoneStrictly(zone).ToInstant();

    private static OpeningHours Sound(Checked<OpeningHours> hours)
    {
        Assert.Empty(hours.Findings);
        return hours.Value!;
    }

    [Fact]
    public void A_week_is_open_five_days_of_eight_hours()
    {
        var open = Sound(OpeningHours.Create(Berlin, Weekdays)).Between(At(Berlin, 2027, 3, 1), At(Berlin, 2027, 3, 8));

        Assert.Equal(5, open.Intervals.Length);
        Assert.Equal(Duration.FromHours(40), open.Total);
        Assert.Equal(At(Berlin, 2027, 3, 1, 9), open.Intervals[0].Start);
        Assert.Empty(open.ClockNotes);
    }

    [Fact]
    public void Closed_days_and_holidays_are_left_out_and_extra_openings_put_in()
    {
        var hours = Sound(OpeningHours.Create(
            Berlin,
            Weekdays,
            [new ClosedDays(new LocalDate(2027, 3, 2), new LocalDate(2027, 3, 3), "stocktaking")],
            [new Holiday(new AnnualDate(3, 4), "founders' day")],
            [new ExtraOpening(new LocalDate(2027, 3, 3), new LocalTime(10, 0), new LocalTime(12, 0))]));

        var open = hours.Between(At(Berlin, 2027, 3, 1), At(Berlin, 2027, 3, 8));

        Assert.Equal(Duration.FromHours(8 + 2 + 8), open.Total);
        Assert.False(hours.OpensOn(new LocalDate(2027, 3, 4)));
        Assert.False(hours.OpensOn(new LocalDate(2028, 3, 4)));
        Assert.True(hours.OpensOn(new LocalDate(2027, 3, 3)));
    }

    [Fact]
    public void An_opening_is_cut_off_at_both_ends()
    {
        var open = Sound(OpeningHours.Create(Berlin, Weekdays)).Between(At(Berlin, 2027, 3, 1, 10), At(Berlin, 2027, 3, 1, 11));

        Assert.Equal(new Interval(At(Berlin, 2027, 3, 1, 10), At(Berlin, 2027, 3, 1, 11)), Assert.Single(open.Intervals));
    }

    [Fact]
    public void Openings_that_touch_at_midnight_are_one()
    {
        var hours = Sound(OpeningHours.Create(
            Berlin,
            [new(IsoDayOfWeek.Monday, new LocalTime(20, 0), LocalTime.Midnight), new(IsoDayOfWeek.Tuesday, LocalTime.Midnight, new LocalTime(2, 0))]));

        var open = Assert.Single(hours.Between(At(Berlin, 2027, 3, 1), At(Berlin, 2027, 3, 8)).Intervals);

        Assert.Equal(Duration.FromHours(6), open.Duration);
    }

    [Fact]
    public void A_bench_that_never_closes_is_open_across_every_clock_change()
    {
        WeeklyOpening[] dayAndNight = [.. Enumerable.Range(1, 7).Select(day => new WeeklyOpening((IsoDayOfWeek)day, LocalTime.Midnight, LocalTime.Midnight))];
        // In Havana the clocks go back from 01:00 to midnight, so that a midnight comes twice.
        foreach (var zone in new[] { Berlin, DateTimeZoneProviders.Tzdb["America/Havana"], DateTimeZoneProviders.Tzdb["Pacific/Apia"] })
        {
            var open = Sound(OpeningHours.Create(zone, dayAndNight)).Between(Instant.FromUtc(2011, 1, 1, 0, 0), Instant.FromUtc(2013, 1, 1, 0, 0));
            Assert.Equal(Duration.FromDays(731), Assert.Single(open.Intervals).Duration);
            Assert.Empty(open.ClockNotes);
        }
    }

    [Fact]
    public void Create_says_what_is_wrong_with_each_entry()
    {
        var hours = OpeningHours.Create(
            Berlin,
            [
                new(IsoDayOfWeek.Monday, new LocalTime(17, 0), new LocalTime(9, 0)),
                new(IsoDayOfWeek.Tuesday, new LocalTime(9, 0), new LocalTime(13, 0)),
                new(IsoDayOfWeek.Tuesday, new LocalTime(12, 0), new LocalTime(17, 0)),
            ],
            [new ClosedDays(new LocalDate(2027, 3, 3), new LocalDate(2027, 3, 2), "")],
            extra: [new ExtraOpening(new LocalDate(2027, 3, 3), new LocalTime(12, 0), new LocalTime(12, 0))]);

        Assert.Equal(
            [
                ("opening-ends-before-it-begins", "weekly[0]", Severity.Error),
                ("opening-hours-overlap", "weekly[2]", Severity.Warning),
                ("closed-days-reversed", "closed[0]", Severity.Error),
                ("opening-ends-before-it-begins", "extra[0]", Severity.Error),
            ],
            hours.Findings.Select(f => (f.Id, f.Subject, f.Severity)));
        Assert.Equal(Duration.FromHours(8), hours.Value!.Between(At(Berlin, 2027, 3, 1), At(Berlin, 2027, 3, 8)).Total);
    }

    [Fact]
    public void Create_says_when_the_bench_never_opens() =>
        Assert.Equal("bench-never-opens", Assert.Single(OpeningHours.Create(Berlin, []).Findings).Id);

    [Fact]
    public void With_opens_a_closed_day()
    {
        var hours = Sound(OpeningHours.Create(Berlin, Weekdays)).With(new ExtraOpening(new LocalDate(2027, 3, 6), new LocalTime(9, 0), new LocalTime(10, 0)));

        Assert.Equal(Duration.FromHours(41), hours.Between(At(Berlin, 2027, 3, 1), At(Berlin, 2027, 3, 8)).Total);
    }
}
