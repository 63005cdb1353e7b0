using Ical.Net;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using NodaTime;
using NodaTime.TimeZones;

namespace Protocolist.Sheets;

/// <summary>
/// A zone as a VTIMEZONE that lists each change of the clocks within some time, one by one. Rules that recur would be shorter, and wrong
/// where the changes follow no rule of the solar calendar (Morocco around Ramadan) or where a rule has ended.
/// </summary>
internal static class ZoneComponent
{
    /// <summary>Where a zone has had one offset always, its start as other writers of calendars have it.</summary>
    private static readonly LocalDateTime Always = new(1970, 1, 1, 0, 0);

    public static VTimeZone Of(DateTimeZone zone, Interval during)
    {
        var component = new VTimeZone(zone.Id);
        Offset? before = null;
        foreach (var interval in zone.GetZoneIntervals(during))
        {
            var from = before ?? (interval.HasStart ? zone.GetUtcOffset(interval.Start - NodaTime.Duration.Epsilon) : interval.WallOffset);
            component.Children.Add(Observance(interval, from));
            before = interval.WallOffset;
        }

        return component;
    }

    /// <summary>One of the times between changes; it begins by the clock as it stood before (RFC 5545, 3.6.5).</summary>
    private static VTimeZoneInfo Observance(ZoneInterval interval, Offset from)
    {
        var start = interval.HasStart ? interval.Start.WithOffset(from).LocalDateTime : Always;
        return new(interval.Savings == Offset.Zero ? "STANDARD" : "DAYLIGHT")
        {
            Start = new CalDateTime(start.Year, start.Month, start.Day, start.Hour, start.Minute, start.Second),
            OffsetFrom = new UtcOffset(from.ToTimeSpan()),
            OffsetTo = new UtcOffset(interval.WallOffset.ToTimeSpan()),
            TimeZoneName = interval.Name,
        };
    }
}
