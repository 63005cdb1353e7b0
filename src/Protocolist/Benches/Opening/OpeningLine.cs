using NodaTime;
using NodaTime.TimeZones;
using Protocolist.Findings;

namespace Protocolist.Benches.Opening;

/// <summary>Lays local opening hours, given in order of date, on the instant line.</summary>
internal sealed class OpeningLine(DateTimeZone zone, Instant from, Instant to)
{
    private static readonly Phrase Skipped =
        new("opening-in-skipped-hour", "{day:day} {hour:time} does not exist in {zone}, because the clocks change; the bench {does} at {taken:offset} instead");
    private static readonly Phrase Doubled =
        new("opening-in-doubled-hour", "{day:day} {hour:time} comes twice in {zone}, because the clocks change; the bench {does} at {taken:offset} instead");
    private static readonly Phrase Opens = new("opening-in-skipped-hour.opens", "opens");
    private static readonly Phrase Closes = new("opening-in-skipped-hour.closes", "closes");

    private readonly List<Interval> _open = [];
    private readonly List<ClockNote> _notes = [];

    private (LocalDateTime Opens, LocalDateTime Closes)? _pending;

    public void Add(LocalDate date, LocalTime opens, LocalTime closes)
    {
        var start = date + opens;
        var end = closes == LocalTime.Midnight ? date.PlusDays(1).AtMidnight() : date + closes;
        if (_pending is not { } before) _pending = (start, end);
        else if (start <= before.Closes) _pending = (before.Opens, LocalDateTime.Max(before.Closes, end)); // no boundary here, whatever the clocks do
        else
        {
            Place(before.Opens, before.Closes);
            _pending = (start, end);
        }
    }

    public OpenTimes Result()
    {
        if (_pending is { } last) Place(last.Opens, last.Closes);
        return new OpenTimes([.. _open], [.. _notes]);
    }

    private void Place(LocalDateTime opens, LocalDateTime closes)
    {
        var start = Instant.Max(Resolve(opens, opening: true), from);
        var end = Instant.Min(Resolve(closes, opening: false), to);
        if (end <= start) return;
        if (_open.Count > 0 && start == _open[^1].End)
        {
            start = _open[^1].Start; // the time between was skipped by the clocks
            _open.RemoveAt(_open.Count - 1);
        }

        _open.Add(new Interval(start, end));
    }

    private Instant Resolve(LocalDateTime local, bool opening)
    {
        var mapping = zone.MapLocal(local);
        if (mapping.Count == 1) return mapping.Single().ToInstant();
        var taken = mapping.Count == 0
            ? mapping.EarlyInterval.End
            : (opening ? mapping.Last() : mapping.First()).ToInstant();
        if (taken >= from && taken <= to) _notes.Add(new ClockNote(taken, Note(mapping, local, opening, taken)));
        return taken;
    }

    private Finding Note(ZoneLocalMapping mapping, LocalDateTime local, bool opening, Instant taken)
    {
        var phrase = mapping.Count == 0 ? Skipped : Doubled;
        return Finding.Note(phrase.Id, phrase.With(
            ("day", local.Date),
            ("hour", local.TimeOfDay.SinceMidnight()),
            ("zone", zone.Id),
            ("does", opening ? Opens : Closes),
            Argument.At("taken", taken, zone)));
    }
}
