using System.Collections.Immutable;
using NodaTime;
using NodaTime.TimeZones;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Planning.Provisioning;
using Protocolist.Planning.Scheduling;
using Protocolist.Protocols;

namespace Protocolist.Planning;

/// <summary>What the fifth pass adds: dates, or why there are none.</summary>
internal sealed record Scheduled(Draft Draft, ImmutableArray<Finding> Findings)
{
    /// <summary>Between what the dates had to lie.</summary>
    public required DateBounds Bounds { get; init; }
}

/// <summary>Between what the dates must lie.</summary>
/// <param name="Start">Nothing begins before this, on the bench's clocks.</param>
internal sealed record DateBounds(LocalDateTime Start)
{
    /// <summary>All is over on the morning of this day.</summary>
    public LocalDate? By { get; init; }

    /// <summary>The last moment that a log speaks of: what is not in it yet lies after it.</summary>
    public Instant? LoggedUntil { get; init; }
}

/// <summary>Fifth pass: the earliest dates that respect every window and every closed hour.</summary>
internal static class SchedulePass
{
    /// <summary>A visit to a soaking body: look, press, turn. Common practice.</summary>
    private static readonly Duration Visit = Duration.FromMinutes(10);

    public static Scheduled Run(Provisioned provisioned, Bench bench, DateBounds bounds)
    {
        var findings = new List<Finding>();
        var zone = bench.Opening.Zone;
        var asked = Resolve(bounds.Start, zone, findings);
        var from = bounds.LoggedUntil is { } until && until > asked ? until : asked;
        var draft = SoakRemedies.Dated(LoggedTimes.Fill(FrozenBody.Thawed(provisioned.Draft, bench, findings), zone, findings), bench, bounds.LoggedUntil, findings);
        var open = draft.Steps.Where(s => IsDated(s) && s.When is null).ToList();
        if (open.Count == 0) return new(draft, [.. findings]) { Bounds = bounds };
        var chain = new StepChain(open, draft, bench, from, Deliveries.Of(provisioned, open, bounds.Start.Date, bench)) { By = bounds.By?.AtStartOfDayInZone(zone).ToInstant() };
        var schedule = chain.Earliest();
        findings.AddRange(schedule.Findings);
        if (schedule.Value is not { } dates) return new(draft, [.. findings]) { Bounds = bounds };
        var dated = draft with { Steps = [.. draft.Steps.Select(s => IsDated(s) && s.When is null ? Dated(s, dates[s.Id], bench, from, findings) : s)] };
        if (TimeBeforeWork.Weigh(dated, bench) is { } weighed) findings.Add(weighed);
        return new(dated, [.. findings]) { Bounds = bounds };
    }

    /// <summary>Care comes by the calendar of years, and spent fluid is seen to when the step that spends it ends.</summary>
    internal static bool IsDated(DraftStep step) => !step.IsCare && step.Kind != StageKind.Discard;

    private static DraftStep Dated(DraftStep step, ScheduledJob job, Bench bench, Instant from, List<Finding> findings)
    {
        var when = new Interval(job.Start, job.End);
        if (step.Watch is not { } watch || watch.Every <= Duration.Zero) return step with { When = when };

        // Twice the rhythm is the longest that nobody looks: a closed weekend passes, a closed fortnight does not. The project's choice.
        var ahead = new Interval(Instant.Min(when.End, step.Progress?.Begun is null ? when.Start : Instant.Max(when.Start, from)), when.End);
        var (visits, gaps) = new Inspections(watch.Every, watch.Every + watch.Every, Visit).During(ahead, bench.Opening);
        findings.AddRange(gaps.Select(f => f with { Subject = step.Id, Severity = Severity.Warning }));
        return step with { When = when, Inspections = visits };
    }

    /// <summary>The start on the instant line. An hour that the clocks skip or double is resolved openly.</summary>
    private static Instant Resolve(LocalDateTime start, DateTimeZone zone, List<Finding> findings)
    {
        var mapping = zone.MapLocal(start);
        if (mapping.Count == 1) return mapping.Single().ToInstant();
        var resolved = zone.ResolveLocal(start, Resolvers.CreateMappingResolver(Resolvers.ReturnEarlier, Resolvers.ReturnForwardShifted));
        var what = mapping.Count == 0 ? "does not exist" : "comes twice";
        findings.Add(Finding.Note("clock-change-at-start", $"{start:uuuu-MM-dd HH:mm} {what} in {zone.Id} because the clocks change; {resolved:uuuu-MM-dd HH:mm o<g>} is taken", "give another start if you mean the other"));
        return resolved.ToInstant();
    }
}
