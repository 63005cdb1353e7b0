using NodaTime;
using Protocolist.Benches;
using Protocolist.Benches.Opening;

namespace Protocolist.Tests.Benches.Opening;

/// <summary>Dates and sizes of the clock changes are those of the IANA time zone database.</summary>
public class ClockChangeTests
{
    // Open from 00:30 to 08:30: the elapsed hours are eight, less what was skipped, more what came twice.
    [Theory]
    [InlineData("Europe/Berlin", "2026-03-29", 7.0)]
    [InlineData("Europe/Berlin", "2026-10-25", 9.0)]
    [InlineData("America/New_York", "2026-03-08", 7.0)]
    [InlineData("America/New_York", "2026-11-01", 9.0)]
    [InlineData("America/St_Johns", "2026-03-08", 7.0)]
    [InlineData("America/St_Johns", "2026-11-01", 9.0)]
    [InlineData("Pacific/Auckland", "2026-09-27", 7.0)]
    [InlineData("Pacific/Auckland", "2026-04-05", 9.0)]
    [InlineData("Australia/Lord_Howe", "2026-10-04", 7.5)]
    [InlineData("Australia/Lord_Howe", "2026-04-05", 8.5)]
    [InlineData("Pacific/Chatham", "2026-09-27", 7.0)]
    [InlineData("Pacific/Chatham", "2026-04-05", 9.0)]
    [InlineData("Africa/Casablanca", "2026-03-22", 7.0)]
    [InlineData("Asia/Kolkata", "2026-03-29", 8.0)]
    [InlineData("Pacific/Apia", "2011-12-29", 8.0)]
    [InlineData("Pacific/Apia", "2011-12-30", 0.0)]
    [InlineData("Pacific/Apia", "2011-12-31", 8.0)]
    public void An_opening_across_a_clock_change_has_its_elapsed_hours(string zoneId, string day, double hours)
    {
        var open = OpenOn(zoneId, day, new LocalTime(0, 30), new LocalTime(8, 30));

        // In Casablanca the clocks go forward at 02:00 or go back at 03:00, always within the opening.
        Assert.Equal(Duration.FromHours(hours), open.Total);
    }

    [Theory]
    [InlineData("Europe/Berlin", "2026-03-29", "02:30", "2026-03-29T01:00:00Z")] // skipped: opens at the change
    [InlineData("Europe/Berlin", "2026-10-25", "02:30", "2026-10-25T01:30:00Z")] // doubled: opens the second time
    [InlineData("Australia/Lord_Howe", "2026-10-04", "02:15", "2026-10-03T15:30:00Z")]
    [InlineData("Australia/Lord_Howe", "2026-04-05", "01:45", "2026-04-04T15:15:00Z")]
    [InlineData("America/New_York", "2026-11-01", "01:30", "2026-11-01T06:30:00Z")]
    public void An_opening_hour_that_is_skipped_or_doubled_is_resolved_with_a_note(string zoneId, string day, string opens, string expected)
    {
        var open = OpenOn(zoneId, day, Time(opens), new LocalTime(12, 0));

        var instant = NodaTime.Text.InstantPattern.General.Parse(expected).Value;
        Assert.Equal(instant, open.Intervals[0].Start);
        var note = Assert.Single(open.ClockNotes);
        Assert.Equal(instant, note.At);
        Assert.Contains(opens, note.Note.Message.ToString(), StringComparison.Ordinal);
        Assert.Contains(zoneId, note.Note.Message.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_doubled_closing_hour_closes_the_first_time()
    {
        var open = OpenOn("Europe/Berlin", "2026-10-25", new LocalTime(1, 0), new LocalTime(2, 30));

        Assert.Equal(Instant.FromUtc(2026, 10, 25, 0, 30), open.Intervals[0].End);
        Assert.Equal("opening-in-doubled-hour", Assert.Single(open.ClockNotes).Note.Id);
    }

    [Fact]
    public void A_note_reads_as_a_person_would_say_it() => Assert.Equal(
        "2026-03-29 02:30 does not exist in Europe/Berlin, because the clocks change; the bench opens at 2026-03-29 03:00 +02:00 instead",
        OpenOn("Europe/Berlin", "2026-03-29", new LocalTime(2, 30), new LocalTime(12, 0)).ClockNotes[0].Note.Message.ToString());

    [Fact]
    public void A_date_that_a_zone_left_out_is_noted_and_never_open()
    {
        var open = OpenOn("Pacific/Apia", "2011-12-30", new LocalTime(9, 0), new LocalTime(17, 0));

        Assert.Empty(open.Intervals);
        Assert.Equal(2, open.ClockNotes.Length);
    }

    private static OpenTimes OpenOn(string zoneId, string day, LocalTime opens, LocalTime closes)
    {
        var zone = DateTimeZoneProviders.Tzdb[zoneId];
        var date = NodaTime.Text.LocalDatePattern.Iso.Parse(day).Value;
        var noon = Instant.FromUtc(date.Year, date.Month, date.Day, 12, 0);
        return OpeningHours.Create(zone, [], extra: [new ExtraOpening(date, opens, closes)]).Value!
            .Between(noon - Duration.FromDays(3), noon + Duration.FromDays(3));
    }

    private static LocalTime Time(string text) => NodaTime.Text.LocalTimePattern.CreateWithInvariantCulture("HH:mm").Parse(text).Value;
}
