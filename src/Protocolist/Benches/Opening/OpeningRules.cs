using NodaTime;

namespace Protocolist.Benches;

/// <summary>Hours that come back every week, by the wall clock.</summary>
/// <param name="Day">The weekday.</param>
/// <param name="From">When the bench opens.</param>
/// <param name="To">When it closes; midnight means the end of the day.</param>
public readonly record struct WeeklyOpening(IsoDayOfWeek Day, LocalTime From, LocalTime To);

/// <summary>Hours on one date, beside the weekly ones, also on a day that is otherwise closed.</summary>
/// <param name="Date">The date.</param>
/// <param name="From">When the bench opens.</param>
/// <param name="To">When it closes; midnight means the end of the day.</param>
public readonly record struct ExtraOpening(LocalDate Date, LocalTime From, LocalTime To);

/// <summary>Dates on which the weekly hours do not hold.</summary>
/// <param name="First">The first closed date.</param>
/// <param name="Last">The last closed date; the same as <paramref name="First"/> for a single day.</param>
/// <param name="Reason">Why, such as "stocktaking"; may be empty.</param>
public readonly record struct ClosedDays(LocalDate First, LocalDate Last, string Reason);

/// <summary>A date on which the bench is closed each year.</summary>
/// <param name="Date">The date; 29 February falls on 28 February in common years.</param>
/// <param name="Reason">The holiday's name; may be empty.</param>
public readonly record struct Holiday(AnnualDate Date, string Reason);

/// <summary>A moment at which the clocks of the zone change the meaning of an opening hour, and what was made of it.</summary>
/// <param name="At">The instant taken.</param>
/// <param name="Note">A note, <c>opening-in-skipped-hour</c> or <c>opening-in-doubled-hour</c>.</param>
internal sealed record ClockNote(Instant At, Findings.Finding Note);

/// <summary>Hours of the wall clock as times since midnight.</summary>
internal static class HoursOfDay
{
    public static Duration SinceMidnight(this LocalTime time) => Duration.FromTicks(time.TickOfDay);

    /// <summary>The same for a closing time: midnight is the end of the day.</summary>
    public static Duration AsClosing(this LocalTime time) => time == LocalTime.Midnight ? Duration.FromDays(1) : time.SinceMidnight();
}
