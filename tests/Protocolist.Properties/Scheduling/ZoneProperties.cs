using NodaTime;
using Protocolist.Benches;
using Protocolist.Benches.Opening;
using Protocolist.Planning.Scheduling;

namespace Protocolist.Properties.Scheduling;

public class ZoneProperties
{
    private static readonly Duration Soak = Duration.FromHours(31);

    private static readonly JobGraph Plan = JobGraph.Chain(
        (Window.Nothing, new Job("fix", Window.Between(Soak, Duration.FromDays(6))) { HandsOnAtStart = Duration.FromMinutes(40) }),
        (Window.Nothing, new Job("wash", Window.Exactly(Duration.FromHours(24))) { HandsOnAtStart = Duration.FromMinutes(10), HandsOnAtEnd = Duration.FromMinutes(10) }),
        (Window.AtMost(Duration.FromHours(4)), new Job("house", Window.Exactly(Duration.FromHours(1))) { HandsOnAtStart = Duration.FromHours(1) }));

    // Early hours, so that the clocks change inside them.
    private static readonly WeeklyOpening[] Weekly =
        [.. Enumerable.Range(1, 6).SelectMany(day => new WeeklyOpening[] { new((IsoDayOfWeek)day, new(1, 30), new(3, 15)), new((IsoDayOfWeek)day, new(23, 0), LocalTime.Midnight) }), new(IsoDayOfWeek.Sunday, new(0, 0), new(2, 30))];

    /// <summary>One plan a week for a year: 597 zones in the database of NodaTime 3.3.7.</summary>
    [Fact]
    public void A_year_of_plans_fits_in_every_zone()
    {
        var zones = DateTimeZoneProviders.Tzdb.Ids.Select(id => DateTimeZoneProviders.Tzdb[id]).ToList();
        Assert.True(zones.Count > 500);
        foreach (var zone in zones)
        {
            var hours = OpenMinutes.Of(OpeningHours.Create(zone, Weekly).Value!, new(2026, 1, 1), new(2027, 2, 28));
            for (var week = 0; week < 52; week++) Holds(hours, Instant.FromUtc(2026, 1, 1, 0, 0) + Duration.FromDays(7 * week));
        }
    }

    /// <summary>Plans begun on each of the six days before every clock change between 2000 and 2027, including the half hour of Lord Howe and the day that Apia left out.</summary>
    [Theory]
    [InlineData("Europe/Berlin", 54)]
    [InlineData("America/New_York", 54)]
    [InlineData("America/St_Johns", 54)]
    [InlineData("Pacific/Auckland", 54)]
    [InlineData("Australia/Lord_Howe", 54)]
    [InlineData("Africa/Casablanca", 50)]
    [InlineData("Asia/Tehran", 34)]
    [InlineData("Pacific/Apia", 22)]
    public void Plans_across_a_clock_change_keep_elapsed_times_and_open_hours(string zoneId, int leastChanges)
    {
        var zone = DateTimeZoneProviders.Tzdb[zoneId];
        var hours = OpenMinutes.Of(OpeningHours.Create(zone, Weekly).Value!);
        var changes = zone.GetZoneIntervals(Instant.FromUtc(2000, 1, 1, 0, 0), Instant.FromUtc(2027, 1, 1, 0, 0))
            .Skip(1).Select(i => i.Start).ToList();
        Assert.True(changes.Count >= leastChanges, $"{changes.Count} changes");
        foreach (var change in changes)
        {
            for (var day = 0; day < 6; day++) Holds(hours, change - Duration.FromDays(day) - Duration.FromHours(3));
        }
    }

    private static void Holds(OpenMinutes open, Instant from)
    {
        var hours = open.Hours;
        var dated = Scheduler.Earliest(Plan, open, from);

        Assert.True(dated.IsSound, $"{hours.Zone.Id} {from}: {string.Join(' ', dated.Findings)}");
        var (fix, wash, house) = (dated.Value[0], dated.Value[1], dated.Value[2]);
        Assert.InRange(fix.End - fix.Start, Soak, Duration.FromDays(6));
        Assert.Equal(fix.End, wash.Start);
        Assert.Equal(Duration.FromHours(24), wash.End - wash.Start);
        Assert.InRange(house.Start - wash.End, Duration.Zero, Duration.FromHours(4));
        IsOpen(hours, fix.Start, Duration.FromMinutes(40));
        IsOpen(hours, wash.Start, Duration.FromMinutes(10));
        IsOpen(hours, wash.End - Duration.FromMinutes(10), Duration.FromMinutes(10));
        IsOpen(hours, house.Start, Duration.FromHours(1));
    }

    /// <summary>By the wall clock, every minute of work is within the hours of its own date.</summary>
    private static void IsOpen(OpeningHours hours, Instant start, Duration time)
    {
        for (var at = start; at < start + time; at += Duration.FromMinutes(5))
        {
            var local = at.InZone(hours.Zone).LocalDateTime;
            Assert.Contains(Weekly, o => o.Day == local.DayOfWeek && o.From <= local.TimeOfDay && (local.TimeOfDay < o.To || o.To == LocalTime.Midnight));
        }
    }
}
