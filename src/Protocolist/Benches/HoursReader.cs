using NodaTime;
using Protocolist.Findings;
using Protocolist.Reading;

namespace Protocolist.Benches;

/// <summary>Reads when a bench is open: <c>hours</c>, <c>closed</c>, <c>holidays</c>, <c>also-open</c>.</summary>
internal static class HoursReader
{
    private static readonly Phrase UnknownDay = new("unknown-day", "'{day}' is not a day or a run of days");
    private static readonly Phrase UnknownDayRemedy = new("unknown-day.remedy", "write 'mon', or 'mon-fri'");
    private static readonly Phrase BadHours = new("bad-hours", "'{text}' is not a span of hours");
    private static readonly Phrase BadHoursRemedy = new("bad-hours.remedy", "write '08:30 to 17:00'");
    private static readonly Phrase BadDate = new("bad-date.year", "'{text}' is not a day of the year");
    private static readonly Phrase BadDateRemedy = new("bad-date.year.remedy", "write month and day as 12-25");

    private static readonly (string Word, IsoDayOfWeek Day)[] Days =
    [
        ("mon", IsoDayOfWeek.Monday), ("tue", IsoDayOfWeek.Tuesday), ("wed", IsoDayOfWeek.Wednesday), ("thu", IsoDayOfWeek.Thursday),
        ("fri", IsoDayOfWeek.Friday), ("sat", IsoDayOfWeek.Saturday), ("sun", IsoDayOfWeek.Sunday),
    ];

    public static OpeningHours Read(Fields bench, DateTimeZone zone, List<Finding> findings)
    {
        var closed = Closed(bench, findings);
        var holidays = Holidays(bench, findings);
        var extra = AlsoOpen(bench, findings);
        if (bench.Nested("hours") is not { } hours) return OpeningHours.Always(zone);
        var weekly = new List<(WeeklyOpening Opening, SourceSpan Span)>();
        foreach (var entry in hours.Entries)
        {
            hours.Entry(entry.Key.Value);
            var days = DaysOf(entry.Key, findings);
            foreach (var span in Texts(entry.Value).SelectMany(t => Spans(t, findings)))
                weekly.AddRange(days.Select(d => (new WeeklyOpening(d, span.From, span.To), entry.Key.Span)));
        }

        hours.Finish();
        var opening = OpeningHours.Create(zone, weekly.Select(w => w.Opening), closed.Select(c => c.Days), holidays, extra);
        findings.AddRange(opening.Findings.Select(f => f with { Where = Place(f.Subject, weekly, closed, hours.Span) }));
        return opening.Value ?? OpeningHours.Always(zone);
    }

    /// <summary>The place of what the opening check names by its number, such as <c>weekly[2]</c>.</summary>
    private static SourceSpan Place(
        string subject,
        List<(WeeklyOpening Opening, SourceSpan Span)> weekly,
        List<(ClosedDays Days, SourceSpan Span)> closed,
        SourceSpan otherwise)
    {
        var bracket = subject.IndexOf('[', StringComparison.Ordinal);
        if (bracket < 0 || !int.TryParse(subject.AsSpan(bracket + 1).TrimEnd(']'), out var index)) return otherwise;
        return subject[..bracket] switch
        {
            "weekly" when index < weekly.Count => weekly[index].Span,
            "closed" when index < closed.Count => closed[index].Span,
            _ => otherwise,
        };
    }

    private static List<IsoDayOfWeek> DaysOf(ScalarNode key, List<Finding> findings)
    {
        var ends = key.Value.Split('-');
        var found = ends.Select(e => Array.FindIndex(Days, d => d.Word == e.Trim())).ToList();
        if (found.Contains(-1) || found.Count > 2 || found[0] > found[^1])
        {
            findings.Add(Finding.Error("unknown-day", UnknownDay.With(("day", key.Value)), UnknownDayRemedy, key.Span));
            return [];
        }

        return [.. Enumerable.Range(found[0], found[^1] - found[0] + 1).Select(i => Days[i].Day)];
    }

    private static IEnumerable<(LocalTime From, LocalTime To)> Spans(ScalarNode text, List<Finding> findings)
    {
        foreach (var part in text.Value.Split(','))
        {
            var at = part.IndexOf(" to ", StringComparison.Ordinal);
            if (at < 0)
            {
                findings.Add(Finding.Error("bad-hours", BadHours.With(("text", part.Trim())), BadHoursRemedy, text.Span));
                continue;
            }

            var from = ScalarReading.Time(text, part.AsSpan(0, at), findings);

            // The end of the day is written as ISO 8601 has it; 00:00 means the same there.
            var end = part.AsSpan(at + 4);
            var to = end.Trim() is "24:00" ? LocalTime.Midnight : ScalarReading.Time(text, end, findings);
            if (from is { } f && to is { } t) yield return (f, t);
        }
    }

    private static List<(ClosedDays Days, SourceSpan Span)> Closed(Fields bench, List<Finding> findings)
    {
        var closed = new List<(ClosedDays, SourceSpan)>();
        foreach (var text in bench.Texts("closed"))
        {
            var ends = text.Value.Split(" to ");
            var first = ScalarReading.Date(text with { Value = ends[0].Trim() }, findings);
            var last = ends.Length > 1 ? ScalarReading.Date(text with { Value = ends[1].Trim() }, findings) : first;
            if (first is { } f && last is { } l) closed.Add((new(f, l, "closed"), text.Span));
        }

        return closed;
    }

    private static List<Holiday> Holidays(Fields bench, List<Finding> findings)
    {
        var holidays = new List<Holiday>();
        foreach (var text in bench.Texts("holidays"))
        {
            var parsed = NodaTime.Text.AnnualDatePattern.Iso.Parse(text.Value);
            if (parsed.Success) holidays.Add(new(parsed.Value, "holiday"));
            else findings.Add(Finding.Error("bad-date", BadDate.With(("text", text.Value)), BadDateRemedy, text.Span));
        }

        return holidays;
    }

    private static List<ExtraOpening> AlsoOpen(Fields bench, List<Finding> findings)
    {
        var extra = new List<ExtraOpening>();
        if (bench.Nested("also-open") is not { } table) return extra;
        foreach (var entry in table.Entries)
        {
            table.Entry(entry.Key.Value);
            if (ScalarReading.Date(entry.Key, findings) is not { } date) continue;
            foreach (var (from, to) in Texts(entry.Value).SelectMany(t => Spans(t, findings))) extra.Add(new(date, from, to));
        }

        return extra;
    }

    private static IEnumerable<ScalarNode> Texts(DocumentNode node) => node switch
    {
        ScalarNode scalar => [scalar],
        SequenceNode list => list.Items.OfType<ScalarNode>(),
        _ => [],
    };
}
