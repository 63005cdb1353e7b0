using System.Collections.Immutable;
using NodaTime;
using NodaTime.TimeZones;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Planning.Scheduling;
using Protocolist.Protocols;

namespace Protocolist.Planning;

/// <summary>What the fifth pass adds: dates, or why there are none.</summary>
internal sealed record Scheduled(Draft Draft, ImmutableArray<Finding> Findings);

/// <summary>Fifth pass: the earliest dates that respect every window and every closed hour.</summary>
internal static class SchedulePass
{
    /// <summary>A visit to a soaking body: look, press, turn. Common practice.</summary>
    private static readonly Duration Visit = Duration.FromMinutes(10);

    public static Scheduled Run(Draft draft, Bench bench, LocalDateTime start)
    {
        var findings = new List<Finding>();
        var from = Resolve(start, bench.Opening.Zone, findings);
        var dated = draft.Steps.Where(IsDated).ToList();
        if (dated.Count == 0) return new(draft, [.. findings]);
        var schedule = Scheduler.Earliest(GraphOf(draft, _ => []), bench.Opening, from);
        findings.AddRange(schedule.Findings);
        if (schedule.Value is not { } dates) return new(draft, [.. findings]);
        return new(draft with { Steps = [.. draft.Steps.Select(s => IsDated(s) ? Dated(s, dates[s.Id], bench, findings) : s)] }, [.. findings]);
    }

    /// <summary>The work of a draft as jobs that follow one another, each with what it shares with other plans.</summary>
    internal static JobGraph GraphOf(Draft draft, Func<DraftStep, ImmutableArray<Need>> needs)
    {
        var dated = draft.Steps.Where(IsDated).ToList();
        return JobGraph.Chain(dated.Select((s, i) => (Lag(s, i > 0 ? dated[i - 1] : null), JobOf(s) with { Needs = needs(s) })));
    }

    /// <summary>Care comes by the calendar of years, and spent fluid is seen to when the step that spends it ends.</summary>
    private static bool IsDated(DraftStep step) => !step.IsCare && step.Kind != StageKind.Discard;

    private static Job JobOf(DraftStep step) => new(step.Id, step.Most is { } most ? Window.Between(step.Least, Duration.Max(step.Least, most)) : Window.AtLeast(step.Least))
    {
        HandsOnAtStart = step.HandsOn > Duration.Zero ? step.HandsOn : null,
    };

    /// <summary>A body stays in its fluid until the next step begins, so nothing lies between; what was said of waiting holds elsewhere.</summary>
    private static Window Lag(DraftStep step, DraftStep? before)
    {
        if (before is { IsSoak: true } && step.WaitLeast == Duration.Zero) return Window.Nothing;
        return step.WaitMost is { } most ? Window.Between(step.WaitLeast, Duration.Max(step.WaitLeast, most)) : Window.AtLeast(step.WaitLeast);
    }

    private static DraftStep Dated(DraftStep step, ScheduledJob job, Bench bench, List<Finding> findings)
    {
        var when = new Interval(job.Start, job.End);
        if (step.Watch is not { } watch || watch.Every <= Duration.Zero) return step with { When = when };

        // Twice the rhythm is the longest that nobody looks: a closed weekend passes, a closed fortnight does not. The project's choice.
        var (visits, gaps) = new Inspections(watch.Every, watch.Every + watch.Every, Visit).During(when, bench.Opening);
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
