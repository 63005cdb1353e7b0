using NodaTime;
using Protocolist.Benches;
using Protocolist.Benches.Opening;

namespace Protocolist.Tests.Benches.Opening;

/// <summary>Hours that are worked out beforehand beside the same hours worked out when they are asked for.</summary>
public class OpenMinutesTests
{
    /// <summary>Hours about those at which clocks change, one of them past midnight, with closed days, a holiday and an extra opening.</summary>
    private static OpeningHours Hours(string zone) => OpeningHours.Create(
        DateTimeZoneProviders.Tzdb[zone],
        [
            .. Enumerable.Range(1, 6).Select(day => new WeeklyOpening((IsoDayOfWeek)day, new(1, 30), new(2, 15))),
            .. Enumerable.Range(1, 7).Select(day => new WeeklyOpening((IsoDayOfWeek)day, new(22, 0), LocalTime.Midnight)),
            new(IsoDayOfWeek.Tuesday, LocalTime.Midnight, new(1, 0)),
            new(IsoDayOfWeek.Sunday, new(2, 30), new(9, 0)),
        ],
        [new(new(2011, 4, 4), new(2011, 4, 20), "stocktaking")],
        [new(new AnnualDate(2, 29), "leap day")],
        [new(new(2011, 4, 10), new(2, 0), new(3, 0))]).Value!;

    /// <summary>Within the period, across its ends and outside it, in zones that change at odd hours and one that leaves a day out.</summary>
    [Theory]
    [InlineData("Europe/Berlin")]
    [InlineData("Australia/Lord_Howe")]
    [InlineData("America/Havana")]
    [InlineData("America/St_Johns")]
    [InlineData("Pacific/Apia")]
    public void What_is_worked_out_beforehand_makes_no_difference(string zone)
    {
        var hours = Hours(zone);
        var prepared = OpenMinutes.Of(hours, new(2011, 2, 1), new(2012, 1, 20));
        for (var from = Instant.FromUtc(2011, 1, 20, 0, 0); from < Instant.FromUtc(2012, 2, 10, 0, 0); from += Duration.FromHours(41))
        {
            var until = from + Duration.FromHours(300);
            var (some, alone, times) = (prepared.Between(from, until), OpenMinutes.Of(hours).Between(from, until), hours.Between(from, until));

            Assert.Equal(Cut(alone.Set, from, until), Cut(some.Set, from, until));
            Assert.Equal(Cut(MinuteSet.Of(times.Intervals.AsSpan()), from, until), Cut(some.Set, from, until).Where(s => s.From < s.To));
            Assert.Equal(Told(times.ClockNotes, from, until), Told(some.ClockNotes, from, until));
            Assert.Equal(Told(times.ClockNotes, from, until), Told(alone.ClockNotes, from, until));
        }

        static Stretch[] Cut(MinuteSet set, Instant from, Instant until) => [.. set.Stretches.ToArray()
            .Select(s => new Stretch(Math.Max(s.From, Minutes.Ceiling(from)), Math.Min(s.To, Minutes.Floor(until)))).Where(s => s.From <= s.To)];

        static string[] Told(IEnumerable<ClockNote> notes, Instant from, Instant until) =>
            [.. notes.Where(n => n.At >= from && n.At <= until).Select(n => $"{n.At} {n.Note}")];
    }

    [Fact]
    public void The_same_minutes_serve_every_use_within_the_period_and_none_are_kept_of_others()
    {
        var prepared = OpenMinutes.Of(Hours("Europe/Berlin"), new(2011, 3, 1), new(2011, 3, 31));
        Assert.Same(prepared, prepared.Between(Instant.FromUtc(2011, 2, 28, 23, 0), Instant.FromUtc(2011, 3, 31, 22, 0)));
        Assert.NotSame(prepared, prepared.Between(Instant.FromUtc(2011, 2, 28, 22, 59), Instant.FromUtc(2011, 3, 2, 0, 0)));
        Assert.NotSame(prepared, prepared.Between(Instant.FromUtc(2011, 3, 1, 0, 0), Instant.FromUtc(2011, 3, 31, 22, 1)));
        Assert.True(OpenMinutes.Of(prepared.Hours).Set.IsEmpty);
    }

    [Fact]
    public void Hours_without_end_need_no_period()
    {
        var always = OpenMinutes.Of(OpeningHours.Always(DateTimeZone.Utc));
        Assert.Same(always, always.Between(Instant.FromUtc(1900, 1, 1, 0, 0), Instant.FromUtc(2900, 1, 1, 0, 0)));
        Assert.Equal(1, always.Set.Stretches.Length);
        Assert.Equal(always.Set.Stretches[0], OpenMinutes.Of(always.Hours, new(2027, 1, 1), new(2027, 1, 2)).Set.Stretches[0]);
    }
}
