using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches.Opening;
using Protocolist.Findings;

namespace Protocolist.Benches;

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

    private OpeningHours(
        DateTimeZone zone,
        bool neverCloses,
        ImmutableArray<WeeklyOpening> weekly,
        ImmutableArray<ClosedDays> closed,
        ImmutableArray<Holiday> holidays,
        ImmutableArray<ExtraOpening> extra)
    {
        (Zone, NeverCloses, Weekly, Closed, Holidays, Extra) = (zone, neverCloses, weekly, closed, holidays, extra);
        _weekly = weekly.ToLookup(o => o.Day, o => (o.From, o.To));
        _extra = extra.ToLookup(o => o.Date, o => (o.From, o.To));
    }

    /// <summary>Whether the bench is open at every hour of every day.</summary>
    internal bool NeverCloses { get; }

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
    public static OpeningHours Always(DateTimeZone zone) => new(zone, neverCloses: true, [], [], [], []);

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
        var hours = new OpeningHours(zone, neverCloses: false, check.Weekly(weekly), check.Closed(closed ?? []), [.. holidays ?? []], check.Extra(extra ?? []));
        if (hours.Weekly.IsEmpty && hours.Extra.IsEmpty) check.NeverOpens();
        return new Checked<OpeningHours>(hours, check.Findings);
    }

    /// <summary>The same hours and one opening more.</summary>
    /// <param name="opening">The opening; it must end after it begins.</param>
    /// <returns>New hours.</returns>
    public OpeningHours With(ExtraOpening opening) => new(Zone, NeverCloses, Weekly, Closed, Holidays, Extra.Add(opening));

    /// <summary>When the bench is open between two instants.</summary>
    /// <param name="from">The first instant.</param>
    /// <param name="to">The end, after <paramref name="from"/>; otherwise nothing is open.</param>
    /// <returns>The openings, cut off at both ends, and notes on clock changes.</returns>
    internal OpenTimes Between(Instant from, Instant to)
    {
        if (to <= from) return new OpenTimes([], []);
        if (NeverCloses) return new OpenTimes([new Interval(from, to)], []);
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
        if (NeverCloses) return [(LocalTime.Midnight, LocalTime.Midnight)];
        var weekly = IsClosed(date) ? [] : _weekly[date.DayOfWeek];
        var extra = _extra[date];
        return extra.Any() ? weekly.Concat(extra).OrderBy(o => o.From) : weekly;
    }

    /// <summary>Whether the bench opens at all on a date.</summary>
    /// <param name="date">The date.</param>
    /// <returns>Whether there are hours on it.</returns>
    public bool OpensOn(LocalDate date) => NeverCloses || (_weekly.Contains(date.DayOfWeek) && !IsClosed(date)) || _extra.Contains(date);

    private bool IsClosed(LocalDate date)
    {
        foreach (var days in Closed)
        {
            if (days.First <= date && date <= days.Last) return true;
        }

        foreach (var day in Holidays)
        {
            if (IsOn(day.Date, date)) return true;
        }

        return false;
    }

    /// <summary>29 February falls on the 28th in common years.</summary>
    private static bool IsOn(AnnualDate day, LocalDate date) =>
        day.Month == date.Month && (day.Day == date.Day || (day is { Month: 2, Day: 29 } && date.Day == 28 && !CalendarSystem.Iso.IsLeapYear(date.Year)));
}
