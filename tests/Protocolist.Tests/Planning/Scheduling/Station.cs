using NodaTime;
using Protocolist.Benches;
using Protocolist.Benches.Opening;

namespace Protocolist.Tests.Planning.Scheduling;

/// <summary>The bench of an invented field station: weekdays 9 to 17 in Berlin time.</summary>
internal static class Station
{
    public static readonly DateTimeZone Zone = DateTimeZoneProviders.Tzdb["Europe/Berlin"];

    /// <summary>Worked out for a year; what lies outside is worked out when it is asked for.</summary>
    public static readonly OpenMinutes Hours = OpenMinutes.Of(Weekdays(Zone), new(2027, 1, 1), new(2027, 12, 31));

    public static OpeningHours Weekdays(DateTimeZone zone, params IEnumerable<ClosedDays> closed) => OpeningHours.Create(
        zone, Enumerable.Range(1, 5).Select(day => new WeeklyOpening((IsoDayOfWeek)day, new LocalTime(9, 0), new LocalTime(17, 0))), closed).Value!;

    /// <summary>A day of March 2027, which begins on a Monday; clocks go forward on the 28th.</summary>
    public static Instant March(int day, int hour = 0, int minute = 0) => new LocalDateTime(2027, 3, day, hour, minute).InZoneStrictly(Zone).ToInstant();

    public static Duration Hrs(double hours) => Duration.FromHours(hours);

    public static Duration Mins(int minutes) => Duration.FromMinutes(minutes);
}
