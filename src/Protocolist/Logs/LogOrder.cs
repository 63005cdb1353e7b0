using NodaTime;
using Protocolist.Findings;

namespace Protocolist.Logs;

/// <summary>Whether a log agrees with itself.</summary>
internal static class LogOrder
{
    private static readonly Phrase DoneBeforeBegun = new("done-before-begun", "'{step}' was done {done:minute}, before it had begun {begun:minute}");
    private static readonly Phrase DoneBeforeBegunRemedy = new("done-before-begun.remedy", "correct one of the times");
    private static readonly Phrase LookedOutsideStep = new("looked-outside-step", "'at' {at:minute} lies outside the time from begun to done of '{step}'");
    private static readonly Phrase EntryContradictsItself = new("entry-contradicts-itself", "'{step}' cannot have been left out and done at once");
    private static readonly Phrase EntryContradictsItselfRemedy = new("entry-contradicts-itself.remedy", "keep 'skipped' or the times");
    private static readonly Phrase EntrySaysNothing = new("entry-says-nothing", "the entry for '{step}' has no time");
    private static readonly Phrase EntrySaysNothingRemedy = new("entry-says-nothing.remedy", "add 'begun', 'at' or 'done', or 'skipped' with the reason");
    private static readonly Phrase EntriesOutOfOrder = new("entries-out-of-order", "'{step}' at {at:minute} stands after '{before}' at {before-at:minute}");
    private static readonly Phrase EntriesOutOfOrderRemedy = new("entries-out-of-order.remedy", "put the entries in order of time, or correct the time");
    private static readonly Phrase LaterThanWritten = new(
        "entries-out-of-order.written", "'{step}' at {last:minute} is later than the log was written, {written:minute}");
    private static readonly Phrase LaterThanWrittenRemedy = new("entries-out-of-order.written.remedy", "correct 'written' or the entry");
    private static readonly Phrase GivenTwice = new("entry-contradicts-itself.twice", "'{step}' has '{key}' {at:minute} and again {again:minute}");
    private static readonly Phrase KeepOne = new("entry-contradicts-itself.keep-one.remedy", "keep one of them");
    private static readonly Phrase LeftOutAndDone = new("entry-contradicts-itself.left-out", "'{step}' was left out by one entry and done by another");

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
            yield return Finding.Error(
                "done-before-begun",
                DoneBeforeBegun.With(("step", entry.Step), At("done", entry.Done, zone), At("begun", entry.Begun, zone)),
                DoneBeforeBegunRemedy,
                entry.Where);
        if (entry.At is { } at && ((entry.Begun is { } begun && at < begun) || (entry.Done is { } done && at > done)))
            yield return Finding.Error(
                "looked-outside-step",
                LookedOutsideStep.With(At("at", at, zone), ("step", entry.Step)),
                DoneBeforeBegunRemedy,
                entry.Where);
        if (entry.Skipped is not null && (entry.Begun is not null || entry.Done is not null))
            yield return Finding.Error(
                "entry-contradicts-itself",
                EntryContradictsItself.With(("step", entry.Step)),
                EntryContradictsItselfRemedy,
                entry.Where);
        if (entry.Skipped is null && entry.Moment is null)
            yield return Finding.Error("entry-says-nothing", EntrySaysNothing.With(("step", entry.Step)), EntrySaysNothingRemedy, entry.Where);
    }

    private static IEnumerable<Finding> Order(WorkLog log, DateTimeZone zone)
    {
        LogEntry? before = null;
        foreach (var entry in log.Entries.Where(e => e.Moment is not null))
        {
            if (before is not null && entry.Moment < before.Moment)
                yield return Finding.Error(
                    "entries-out-of-order",
                    EntriesOutOfOrder.With(("step", entry.Step), At("at", entry.Moment, zone), ("before", before.Step), At("before-at", before.Moment, zone)),
                    EntriesOutOfOrderRemedy,
                    entry.Where);
            else before = entry;
        }

        if (log.Written is { } written && before is { Moment: { } last } && last > written)
            yield return Finding.Error(
                "entries-out-of-order",
                LaterThanWritten.With(("step", before.Step), At("last", last, zone), At("written", written, zone)),
                LaterThanWrittenRemedy,
                before.Where);
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
                return [
                    Finding.Error(
                        "entry-contradicts-itself",
                        GivenTwice.With(("step", times[0].Entry.Step), ("key", key), At("at", times[0].At, zone), At("again", times[1].At, zone)),
                        KeepOne,
                        times[1].Entry.Where),
                ];
        }

        var begun = entries.Find(e => e.Begun is not null);
        var done = entries.Find(e => e.Done is not null);
        if (begun is not null && done is not null && begun != done && begun.Begun > done.Done)
            return [
                Finding.Error(
                    "done-before-begun",
                    DoneBeforeBegun.With(("step", done.Step), At("done", done.Done, zone), At("begun", begun.Begun, zone)),
                    DoneBeforeBegunRemedy,
                    done.Where),
            ];
        if (entries.Count > 1 && entries.Find(e => e.Skipped is not null) is { } skipped && entries.Exists(e => e.Moment is not null))
            return [Finding.Error("entry-contradicts-itself", LeftOutAndDone.With(("step", skipped.Step)), KeepOne, skipped.Where)];
        return [];
    }

    private static Argument At(string name, Instant? at, DateTimeZone zone) => Argument.At(name, at!.Value, zone);
}
