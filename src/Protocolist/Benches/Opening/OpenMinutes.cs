using System.Collections.Immutable;
using NodaTime;

namespace Protocolist.Benches.Opening;

/// <summary>When a bench is open, in whole minutes, worked out once for a period and the same outside it, where it is worked out each time. Immutable; safe to use from several threads.</summary>
internal sealed class OpenMinutes
{
    private readonly Instant _from;
    private readonly Instant _until;

    private OpenMinutes(OpeningHours hours, Instant from, Instant until)
    {
        var times = hours.Between(from, until);
        (Hours, _from, _until, Set, ClockNotes) = (hours, from, until, MinuteSet.Of(times.Intervals.AsSpan()), times.ClockNotes);
    }

    /// <summary>The hours.</summary>
    public OpeningHours Hours { get; }

    /// <summary>The open minutes of the period.</summary>
    public MinuteSet Set { get; }

    /// <summary>Where an opening hour of the period falls into a skipped or a doubled hour.</summary>
    public ImmutableArray<ClockNote> ClockNotes { get; }

    /// <summary>Works the hours out for the days on which dates will lie; a longer period costs memory, not time at each use.</summary>
    /// <param name="hours">The hours.</param>
    /// <param name="from">The first day.</param>
    /// <param name="to">The last day.</param>
    public static OpenMinutes Of(OpeningHours hours, LocalDate from, LocalDate to) =>
        hours.NeverCloses ? Of(hours) : new(hours, MidnightOf(from, hours.Zone), MidnightOf(to.PlusDays(1), hours.Zone));

    /// <summary>Works nothing out beforehand, for a single use. Hours without end need no working out.</summary>
    public static OpenMinutes Of(OpeningHours hours) =>
        hours.NeverCloses ? new(hours, Instant.MinValue, Instant.MaxValue) : new(hours, Instant.MinValue, Instant.MinValue);

    /// <summary>The minutes of a period that holds all between two instants; perhaps of more.</summary>
    public OpenMinutes Between(Instant from, Instant until) => _from <= from && until <= _until ? this : new(Hours, from, until);

    /// <summary>A date that the zone leaves out begins with the next one.</summary>
    private static Instant MidnightOf(LocalDate date, DateTimeZone zone) => zone.AtLeniently(date.AtMidnight()).ToInstant();
}
