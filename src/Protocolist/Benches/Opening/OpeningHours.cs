using System.Collections.Immutable;
using NodaTime;
using Protocolist.Findings;

namespace Protocolist.Benches.Opening;

/// <summary>When somebody can work at the bench: weekly hours, less closed days and holidays, plus extra openings, in one time zone.</summary>
/// <remarks>
/// Immutable. The hours are local; what comes out is on the instant line. Where the clocks change, an opening counts only
/// while it is surely open: a skipped hour is resolved to the change itself, a doubled opening hour to its second and a
/// doubled closing hour to its first occurrence; a <see cref="ClockNote"/> says so each time.
/// </remarks>
public sealed class OpeningHours
{
    private readonly ILookup<IsoDayOfWeek, (LocalTime From, LocalTime To)> _weekly;
    private readonly ILookup<LocalDate, (LocalTime From, LocalTime To)> _extra;
    private readonly bool _always;

    private OpeningHours(DateTimeZone zone, bool always, ImmutableArray<WeeklyOpening> weekly, ImmutableArray<ClosedDays> closed, ImmutableArray<Holiday> holidays, ImmutableArray<ExtraOpening> extra)
    {
        (Zone, _always, Weekly, Closed, Holidays, Extra) = (zone, always, weekly, closed, holidays, extra);
        _weekly = weekly.ToLookup(o => o.Day, o => (o.From, o.To));
        _extra = extra.ToLookup(o => o.Date, o => (o.From, o.To));
    }

    /// <summary>The zone whose clocks the hours are read on.</summary>
    public DateTimeZone Zone { get; }

    /// <summary>The hours of an ordinary week.</summary>
    public ImmutableArray<WeeklyOpening> Weekly { get; }

    /// <summary>Dates on which the weekly hours do not hold.</summary>
    public ImmutableArray<ClosedDays> Closed { get; }

    /// <summary>Dates closed each year.</summary>
    public ImmutableArray<Holiday> Holidays { get; }

    /// <summary>Openings beside the weekly hours; they hold on closed dates too.</summary>
    public ImmutableArray<ExtraOpening> Extra { get; }

    /// <summary>A bench that never closes.</summary>
    /// <param name="zone">The zone for local dates.</param>
    /// <returns>Hours without end.</returns>
    public static OpeningHours Always(DateTimeZone zone) => new(zone, always: true, [], [], [], []);

    /// <summary>Puts opening hours together and says what is wrong with them.</summary>
    /// <param name="zone">The zone whose clocks the hours are read on.</param>
    /// <param name="weekly">The hours of an ordinary week.</param>
    /// <param name="closed">Dates on which the weekly hours do not hold.</param>
    /// <param name="holidays">Dates closed each year.</param>
    /// <param name="extra">Openings beside the weekly hours.</param>
    /// <returns>
    /// The hours, and findings whose subject names the entry, such as <c>weekly[2]</c>: errors <c>opening-ends-before-it-begins</c>,
    /// <c>closed-days-reversed</c>, <c>bench-never-opens</c> (the entry at fault is left out); warning <c>opening-hours-overlap</c> (they are joined).
    /// </returns>
    public static Checked<OpeningHours> Create(
        DateTimeZone zone,
        IEnumerable<WeeklyOpening> weekly,
        IEnumerable<ClosedDays>? closed = null,
        IEnumerable<Holiday>? holidays = null,
        IEnumerable<ExtraOpening>? extra = null)
    {
        ArgumentNullException.ThrowIfNull(zone);
        var check = new OpeningCheck();
        var hours = new OpeningHours(zone, always: false, check.Weekly(weekly), check.Closed(closed ?? []), [.. holidays ?? []], check.Extra(extra ?? []));
        if (hours.Weekly.IsEmpty && hours.Extra.IsEmpty) check.NeverOpens();
        return new Checked<OpeningHours>(hours, check.Findings);
    }

    /// <summary>The same hours and one opening more.</summary>
    /// <param name="opening">The opening; it must end after it begins.</param>
    /// <returns>New hours.</returns>
    public OpeningHours With(ExtraOpening opening) => new(Zone, _always, Weekly, Closed, Holidays, Extra.Add(opening));

    /// <summary>When the bench is open between two instants.</summary>
    /// <param name="from">The first instant.</param>
    /// <param name="to">The end, after <paramref name="from"/>; otherwise nothing is open.</param>
    /// <returns>The openings, cut off at both ends, and notes on clock changes.</returns>
    public OpenTimes Between(Instant from, Instant to)
    {
        if (to <= from) return new OpenTimes([], []);
        if (_always) return new OpenTimes([new Interval(from, to)], []);
        var line = new OpeningLine(Zone, from, to);
        // A day on either side, for dates that the zone repeats or leaves out.
        var last = to.InZone(Zone).Date.PlusDays(1);
        for (var date = from.InZone(Zone).Date.PlusDays(-1); date <= last; date = date.PlusDays(1))
        {
            foreach (var (opens, closes) in On(date)) line.Add(date, opens, closes);
        }

        return line.Result();
    }

    /// <summary>The hours of one date by the wall clock, in order of opening.</summary>
    /// <param name="date">The date.</param>
    /// <returns>Openings; a closing time of midnight is the end of the day.</returns>
    public IEnumerable<(LocalTime From, LocalTime To)> On(LocalDate date)
    {
        if (_always) return [(LocalTime.Midnight, LocalTime.Midnight)];
        var weekly = IsClosed(date) ? [] : _weekly[date.DayOfWeek];
        var extra = _extra[date];
        return extra.Any() ? weekly.Concat(extra).OrderBy(o => o.From) : weekly;
    }

    /// <summary>Whether the bench opens at all on a date.</summary>
    /// <param name="date">The date.</param>
    /// <returns>Whether there are hours on it.</returns>
    public bool OpensOn(LocalDate date) => On(date).Any();

    /// <summary>The opening that holds an instant, or the next one after it.</summary>
    /// <param name="at">The instant.</param>
    /// <returns>The opening, cut off before <paramref name="at"/> and after about a month; null when the bench never opens again.</returns>
    public Interval? NextOpening(Instant at)
    {
        // Past every date that is listed, one year shows every weekday and every holiday.
        var listed = Closed.Select(c => c.Last).Concat(Extra.Select(e => e.Date)).Append(at.InZone(Zone).Date).Max();
        var end = listed.PlusDays(366 + 7).AtStartOfDayInZone(Zone).ToInstant();
        for (var from = at; from < end; from += Duration.FromDays(28))
        {
            var open = Between(from, from + Duration.FromDays(29));
            if (!open.Intervals.IsEmpty) return open.Intervals[0];
        }

        return null;
    }

    private bool IsClosed(LocalDate date)
    {
        foreach (var days in Closed)
        {
            if (days.First <= date && date <= days.Last) return true;
        }

        foreach (var day in Holidays)
        {
            if (day.Date.InYear(date.Year) == date) return true;
        }

        return false;
    }
}
