using System.Collections.Immutable;
using NodaTime;
using NodaTime.TimeZones;
using Protocolist.Benches;
using Protocolist.Benches.Opening;
using Protocolist.Findings;
using Protocolist.Planning.Drafting;
using Protocolist.Planning.Provisioning;

namespace Protocolist.Planning.Dating;

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
    private static readonly Phrase SkippedStart =
        new("clock-change-at-start", "{day:day} {hour:time} does not exist in {zone} because the clocks change; {taken:offset} is taken");
    private static readonly Phrase DoubledStart =
        new("clock-change-at-start.doubled", "{day:day} {hour:time} comes twice in {zone} because the clocks change; {taken:offset} is taken");
    private static readonly Phrase OtherStart = new("clock-change-at-start.remedy", "give another start if you mean the other");

    /// <summary>Dates a draft.</summary>
    /// <param name="provisioned">The draft and what has to be bought for it.</param>
    /// <param name="bench">The workplace.</param>
    /// <param name="hours">Its opening minutes; worked out beforehand where many plans are dated.</param>
    /// <param name="bounds">Between what the dates lie.</param>
    public static Scheduled Run(Provisioned provisioned, Bench bench, OpenMinutes hours, DateBounds bounds)
    {
        var findings = new List<Finding>();
        var zone = hours.Hours.Zone;
        var asked = Resolve(bounds.Start, zone, findings);
        var from = bounds.LoggedUntil is { } until && until > asked ? until : asked;
        var logged = LoggedTimes.Fill(FrozenBody.Thawed(provisioned.Draft, bench, findings), zone, findings);
        var draft = SoakRemedies.Dated(logged, hours, bounds.LoggedUntil, findings);
        var open = Open(draft);
        if (open.Count == 0) return new(draft, [.. findings]) { Bounds = bounds };
        var by = bounds.By?.AtStartOfDayInZone(zone).ToInstant();
        var (told, deliveries) = (findings.Count, ImmutableArray<Delivery?>.Empty);
        if (Chain().Earliest(findings) is not { } dates)
        {
            // Where the days do not suffice for the soak that the core needs, they may for the shortest that the protocol has.
            var (longer, tooLong) = (draft, findings[told..]);
            findings.RemoveRange(told, findings.Count - told);
            (draft, open) = SoakChoice.Undone(draft) is { } shorter ? (shorter, Open(shorter)) : (draft, open);
            if (ReferenceEquals(draft, longer) || Chain().Earliest(findings) is not { } shortest)
            {
                findings.RemoveRange(told, findings.Count - told);
                return new(longer, [.. findings, .. tooLong]) { Bounds = bounds };
            }

            dates = shortest;
        }

        var steps = draft.Steps.ToBuilder();
        var work = new WorkDuringSoak(hours.Between(dates[0].Start, dates[open.Count - 1].End), draft.Body.Count, from, findings);
        for (var (i, next) = (0, 0); i < steps.Count; i++)
        {
            if (!IsOpen(steps[i])) continue;
            steps[i] = work.Dated(steps[i], dates[next], deliveries.IsEmpty ? null : deliveries[next], ChangedIn(steps[i], draft));
            next++;
        }

        draft = draft with { Steps = steps.MoveToImmutable() };
        if (TimeBeforeWork.Weigh(draft, bench) is { } weighed) findings.Add(weighed);
        return new(draft, [.. findings]) { Bounds = bounds };

        StepChain Chain() => new(open, draft, hours, from, by, deliveries = Deliveries.Of(provisioned, open, bounds.Start.Date, bench));
    }

    /// <summary>The steps of a draft that are still to be dated, in order.</summary>
    internal static List<DraftStep> Open(Draft draft)
    {
        var open = new List<DraftStep>(draft.Steps.Length);
        foreach (var step in draft.Steps)
        {
            if (IsOpen(step)) open.Add(step);
        }

        return open;
    }

    /// <summary>Care comes by the calendar of years, and spent fluid is seen to when the step that spends it ends.</summary>
    internal static bool IsDated(DraftStep step) => !step.IsCare && step.Kind != StageKind.Discard;

    private static bool IsOpen(DraftStep step) => step.When is null && IsDated(step);

    /// <summary>How many changes of a step's fluid are steps of their own.</summary>
    private static int ChangedIn(DraftStep host, Draft draft)
    {
        var count = 0;
        foreach (var step in draft.Steps)
        {
            if (step.During is { IsChange: true } during && during.Soak == host.Id) count++;
        }

        return count;
    }

    /// <summary>The start on the instant line. An hour that the clocks skip or double is resolved openly.</summary>
    private static Instant Resolve(LocalDateTime start, DateTimeZone zone, List<Finding> findings)
    {
        var mapping = zone.MapLocal(start);
        if (mapping.Count == 1) return mapping.Single().ToInstant();
        var taken = zone.ResolveLocal(start, Resolvers.CreateMappingResolver(Resolvers.ReturnEarlier, Resolvers.ReturnForwardShifted)).ToInstant();
        var phrase = mapping.Count == 0 ? SkippedStart : DoubledStart;
        findings.Add(Finding.Note(
            SkippedStart.Id,
            phrase.With(("day", start.Date), ("hour", start.TimeOfDay.SinceMidnight()), ("zone", zone.Id), Argument.At("taken", taken, zone)),
            OtherStart));
        return taken;
    }
}
