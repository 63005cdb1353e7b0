using NodaTime;
using Protocolist.Findings;
using Protocolist.Logs;
using Protocolist.Quantities;
using Protocolist.Reading;
using UnitsNet;

namespace Protocolist;

/// <summary>Reads log files.</summary>
public static class LogReader
{
    private const int Format = 1;

    /// <summary>Reads a log from YAML.</summary>
    /// <param name="source">The text and its name.</param>
    /// <param name="zone">The zone on whose clocks times without an offset are read: the plan's.</param>
    /// <returns>
    /// The log, with a finding at line and column for everything that is wrong with it in itself: <c>done-before-begun</c>,
    /// <c>looked-outside-step</c>, <c>entries-out-of-order</c>, <c>reading-without-unit</c>, <c>entry-says-nothing</c>, <c>entry-contradicts-itself</c>,
    /// <c>unknown-word</c> and the rest of a reader's; null where nothing usable could be read. Whether it fits a plan says <see cref="LogCheck"/>.
    /// </returns>
    public static Checked<WorkLog> Read(SourceText source, DateTimeZone zone)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(zone);
        var findings = new List<Finding>();
        var document = DocumentReader.Read(source);
        findings.AddRange(document.Findings);
        if (document.Value is null || Fields.Of(document.Value, Named.Log, findings) is not { } fields || !FormatVersion.Check(fields, Format, findings))
            return new(null, [.. findings]);
        var times = new LogTimes(zone, findings);
        var specimen = fields.Required("log");
        var written = times.Read(fields, "written");
        var entries = new List<(LogEntry Entry, MappingNode Node)>();
        foreach (var node in fields.List("entries"))
        {
            if (Fields.Of(node, Named.Entry, findings) is { } entry && Entry(entry, times, findings) is { } read) entries.Add((read, (MappingNode)node));
        }

        fields.Finish();
        var log = new WorkLog(specimen?.Value ?? "", [.. entries.Select(e => e.Entry)]) { Written = written };
        findings.AddRange(specimen is null
            ? []
            : WorkLog.Validator.Validate(log).Errors.Select(f => ValidatorFindings.Of(f) with { Where = Place(f.PropertyName) }));
        findings.AddRange(LogOrder.Check(log, zone));
        return new(specimen is null ? null : log, [.. findings.OrderBy(f => f.Where.Line).ThenBy(f => f.Where.Column)]);

        // What could not be read of the list is left out, so that the numbers of entries and of lines are not the same.
        SourceSpan Place(string path)
        {
            var (list, index, below) = ValidatorFindings.Numbered(path);
            return list == nameof(WorkLog.Entries) ? ValidatorFindings.Place(below, entries[index].Node) : specimen.Span;
        }
    }

    private static LogEntry? Entry(Fields fields, LogTimes times, List<Finding> findings)
    {
        var step = fields.Required("step");
        var entry = new LogEntry(step?.Value ?? "")
        {
            Begun = times.Read(fields, "begun"),
            At = times.Read(fields, "at"),
            Done = times.Read(fields, "done"),
            Readings = LogReadings.Of(fields.Nested("readings", Named.Readings)),
            Signs = [.. fields.Texts("signs").Where(s => IsSign(s, findings)).Select(s => s.Value)],
            Place = fields.Scalar("place")?.Value ?? "",
            Used = fields.Quantity("used", Dimension.OfVolume) is { } used ? Volume.FromCubicMeters(used.Middle) : null,
            Skipped = fields.Prose("skipped")?.Value,
            Note = fields.Prose("note")?.Value ?? "",
            Where = step?.Span ?? fields.Span,
        };
        fields.Finish();
        return step is null ? null : entry;
    }

    private static bool IsSign(ScalarNode sign, List<Finding> findings)
    {
        if (WorkLogValidator.FaultOf(sign.Value) is not { } fault) return true;
        findings.Add(fault with { Where = sign.Span });
        return false;
    }
}
