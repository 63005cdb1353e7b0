using System.Collections.Immutable;
using NodaTime;

namespace Protocolist.Benches.Opening;

/// <summary>When a bench is open, in whole minutes, worked out once for a period. Immutable; safe to use from several threads.</summary>
/// <remarks>Outside the period it is the same, but is worked out each time that it is asked for.</remarks>
internal sealed class OpenMinutes
{
    private readonly Instant _from;
    private readonly Instant _until;

    private OpenMinutes(OpeningHours hours, Instant from, Instant until, OpenTimes times) =>
        (Hours, _from, _until, Set, ClockNotes) = (hours, from, until, MinuteSet.Of(times.Intervals.AsSpan()), times.ClockNotes);

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
        hours.NeverCloses ? Of(hours) : Between(hours, MidnightOf(from, hours.Zone), MidnightOf(to.PlusDays(1), hours.Zone));

    /// <summary>Works nothing out beforehand, for a single use. Hours without end need no working out.</summary>
    public static OpenMinutes Of(OpeningHours hours)
    {
        var until = hours.NeverCloses ? Instant.MaxValue : Instant.MinValue;
        return new(hours, Instant.MinValue, until, hours.Between(Instant.MinValue, until));
    }

    /// <summary>The minutes of a period that holds all between two instants; perhaps of more.</summary>
    public OpenMinutes Between(Instant from, Instant until) => _from <= from && until <= _until ? this : Between(Hours, from, until);

    /// <summary>With the minute on either side, so that an opening that only touches the period counts the same as in a longer one.</summary>
    private static OpenMinutes Between(OpeningHours hours, Instant from, Instant until) =>
        new(hours, from, until, hours.Between(from - Duration.FromMinutes(1), until + Duration.FromMinutes(1)));

    /// <summary>A date that the zone leaves out begins with the next one.</summary>
    private static Instant MidnightOf(LocalDate date, DateTimeZone zone) => zone.AtLeniently(date.AtMidnight()).ToInstant();
}
