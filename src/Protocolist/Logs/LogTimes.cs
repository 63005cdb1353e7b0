using NodaTime;
using NodaTime.Text;
using NodaTime.TimeZones;
using Protocolist.Findings;
using Protocolist.Reading;

namespace Protocolist.Logs;

/// <summary>Moments as people write them into a log: on the plan's clocks, or with an offset of their own.</summary>
internal sealed class LogTimes(DateTimeZone zone, List<Finding> findings)
{
    private static readonly Phrase BadTime = new("bad-time.moment", "'{scalar}' is not a moment");
    private static readonly Phrase BadTimeRemedy = new("bad-time.moment.remedy", "write date and time as 2027-03-01T06:30");
    private static readonly Phrase ClockChangeInLog = new(
        "clock-change-in-log",
        "{local:minute} {what} in {zone} because the clocks change; {taken:zoned} is taken");
    private static readonly Phrase DoesNotExist = new("clock-change.skipped", "does not exist");
    private static readonly Phrase ComesTwice = new("clock-change.doubled", "comes twice");
    private static readonly Phrase ClockChangeInLogRemedy = new("clock-change-in-log.remedy", "write the offset with it if you mean the other");

    private static readonly LocalDateTimePattern[] Local =
    [
        LocalDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd'T'HH:mm"),
        LocalDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd'T'HH:mm:ss"),
    ];

    private static readonly OffsetDateTimePattern[] WithOffset =
    [
        OffsetDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd'T'HH:mmo<G>"),
        OffsetDateTimePattern.ExtendedIso,
    ];

    public Instant? Read(Fields fields, string key)
    {
        if (fields.Scalar(key) is not { } scalar) return null;
        var text = scalar.Value.Trim().Replace(' ', 'T');
        foreach (var pattern in WithOffset)
        {
            if (pattern.Parse(text) is { Success: true } parsed) return Sane(parsed.Value.Date, scalar) ? parsed.Value.ToInstant() : null;
        }

        foreach (var pattern in Local)
        {
            if (pattern.Parse(text) is { Success: true } parsed) return Sane(parsed.Value.Date, scalar) ? Resolve(parsed.Value, scalar) : null;
        }

        findings.Add(Finding.Error("bad-time", BadTime.With(("scalar", Excerpt.Of(scalar.Value))), BadTimeRemedy, scalar.Span));
        return null;
    }

    private bool Sane(LocalDate date, ScalarNode scalar)
    {
        if (Calendar.Has(date)) return true;
        findings.Add(Calendar.Fault(date.Year, scalar.Span));
        return false;
    }

    /// <summary>The earlier of a doubled hour; the change itself for a skipped one: said openly, and settled by writing an offset.</summary>
    private Instant Resolve(LocalDateTime local, ScalarNode scalar)
    {
        var mapping = zone.MapLocal(local);
        if (mapping.Count == 1) return mapping.Single().ToInstant();
        var taken = zone.ResolveLocal(local, Resolvers.CreateMappingResolver(Resolvers.ReturnEarlier, Resolvers.ReturnStartOfIntervalAfter));
        var what = mapping.Count == 0 ? DoesNotExist : ComesTwice;
        findings.Add(Finding.Note(
            "clock-change-in-log",
            ClockChangeInLog.With(("local", local.WithOffset(Offset.Zero)), ("what", what), ("zone", zone.Id), ("taken", taken.ToOffsetDateTime())),
            ClockChangeInLogRemedy,
            scalar.Span));
        return taken.ToInstant();
    }
}
