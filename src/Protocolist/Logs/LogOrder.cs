using System.Globalization;
using NodaTime;
using Protocolist.Findings;

namespace Protocolist.Logs;

/// <summary>Whether a log agrees with itself.</summary>
internal static class LogOrder
{
    public static IEnumerable<Finding> Check(WorkLog log, DateTimeZone zone)
    {
        foreach (var entry in log.Entries)
        {
            foreach (var finding in Entry(entry, zone)) yield return finding;
        }

        foreach (var finding in Order(log, zone)) yield return finding;
        foreach (var step in log.Entries.GroupBy(e => e.Step, StringComparer.Ordinal))
        {
            foreach (var finding in Step([.. step], zone)) yield return finding;
        }
    }

    private static IEnumerable<Finding> Entry(LogEntry entry, DateTimeZone zone)
    {
        if (entry.Begun > entry.Done)
            yield return Finding.Error("done-before-begun", $"'{entry.Step}' was done {Text(entry.Done, zone)}, before it had begun {Text(entry.Begun, zone)}", "correct one of the times", entry.Where);
        if (entry.At is { } at && ((entry.Begun is { } begun && at < begun) || (entry.Done is { } done && at > done)))
            yield return Finding.Error("looked-outside-step", $"'at' {Text(at, zone)} lies outside the time from begun to done of '{entry.Step}'", "correct one of the times", entry.Where);
        if (entry.Skipped is not null && (entry.Begun is not null || entry.Done is not null))
            yield return Finding.Error("entry-contradicts-itself", $"'{entry.Step}' cannot have been left out and done at once", "keep 'skipped' or the times", entry.Where);
        if (entry.Skipped is null && entry.Moment is null)
            yield return Finding.Error("entry-says-nothing", $"the entry for '{entry.Step}' has no time", "add 'begun', 'at' or 'done', or 'skipped' with the reason", entry.Where);
    }

    private static IEnumerable<Finding> Order(WorkLog log, DateTimeZone zone)
    {
        LogEntry? before = null;
        foreach (var entry in log.Entries.Where(e => e.Moment is not null))
        {
            if (before is not null && entry.Moment < before.Moment)
                yield return Finding.Error("entries-out-of-order", $"'{entry.Step}' at {Text(entry.Moment, zone)} stands after '{before.Step}' at {Text(before.Moment, zone)}", "put the entries in order of time, or correct the time", entry.Where);
            else before = entry;
        }

        if (log.Written is { } written && before is { Moment: { } last } && last > written)
            yield return Finding.Error("entries-out-of-order", $"'{before.Step}' at {Text(last, zone)} is later than the log was written, {Text(written, zone)}", "correct 'written' or the entry", before.Where);
    }

    private static IEnumerable<Finding> Step(List<LogEntry> entries, DateTimeZone zone)
    {
        foreach (var (key, times) in (ReadOnlySpan<(string, List<(LogEntry Entry, Instant At)>)>)
        [
            ("begun", [.. entries.Where(e => e.Begun is not null).Select(e => (e, e.Begun!.Value))]),
            ("done", [.. entries.Where(e => e.Done is not null).Select(e => (e, e.Done!.Value))]),
        ])
        {
            if (times.Select(t => t.At).Distinct().Count() > 1)
                return [Finding.Error("entry-contradicts-itself", $"'{times[0].Entry.Step}' has '{key}' {Text(times[0].At, zone)} and again {Text(times[1].At, zone)}", "keep one of them", times[1].Entry.Where)];
        }

        var begun = entries.Find(e => e.Begun is not null);
        var done = entries.Find(e => e.Done is not null);
        if (begun is not null && done is not null && begun != done && begun.Begun > done.Done)
            return [Finding.Error("done-before-begun", $"'{done.Step}' was done {Text(done.Done, zone)}, before it had begun {Text(begun.Begun, zone)}", "correct one of the times", done.Where)];
        if (entries.Count > 1 && entries.Find(e => e.Skipped is not null) is { } skipped && entries.Exists(e => e.Moment is not null))
            return [Finding.Error("entry-contradicts-itself", $"'{skipped.Step}' was left out by one entry and done by another", "keep one of them", skipped.Where)];
        return [];
    }

    private static string Text(Instant? at, DateTimeZone zone) => at!.Value.InZone(zone).ToString("uuuu-MM-dd HH:mm", CultureInfo.InvariantCulture);
}
