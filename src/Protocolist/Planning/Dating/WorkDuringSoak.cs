using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches.Opening;
using Protocolist.Findings;
using Protocolist.Planning.Drafting;
using Protocolist.Planning.Scheduling;
using Protocolist.Plans;

namespace Protocolist.Planning.Dating;

/// <summary>The work while a step lasts, each piece at its moment: changes of its fluid, looks at the protocol's rhythm, looks at a body that floats.</summary>
/// <param name="hours">When somebody is there.</param>
/// <param name="animals">How many animals there are of it.</param>
/// <param name="from">What is still ahead lies after this.</param>
/// <param name="findings">Takes what cannot be done in time.</param>
internal sealed class WorkDuringSoak(OpenMinutes hours, int animals, Instant from, List<Finding> findings)
{
    /// <summary>A body that floats at first is looked at again after so long: common practice.</summary>
    private static readonly ImmutableArray<Duration> LooksWhileFloating = [Duration.FromHours(1), Duration.FromDays(1)];

    private static readonly Phrase TooFewOpenings = new(
        "change-while-closed",
        "the fluid of '{step}' is to be changed {changes:times}, and the bench is open for {dated} of them before it ends, {end}");

    private static readonly Phrase ComeIn = new(
        "change-while-closed.remedy", "have somebody come in while it lasts ('also-open' in the bench file), or let it last longer");

    /// <summary>A step with its time and the work in it.</summary>
    /// <param name="step">The step.</param>
    /// <param name="job">When it begins and ends.</param>
    /// <param name="delivery">What it waits for; null where it waits for nothing.</param>
    /// <param name="changedOtherwise">How many of its changes are steps of their own, as a log called for them.</param>
    public DraftStep Dated(DraftStep step, ScheduledJob job, Delivery? delivery, int changedOtherwise)
    {
        var when = new Interval(job.Start, job.End);
        var changes = step.Changes - changedOtherwise;
        var looks = step.Watch is { } watch && watch.Every > Duration.Zero ? watch.Every : (Duration?)null;
        var floats = step.Work is SoakWork { Afloat: not null };
        if (changes <= 0 && looks is null && !floats) return step with { When = when };
        var ahead = new Interval(Instant.Min(when.End, step.Progress?.Begun is null ? when.Start : Instant.Max(when.Start, from)), when.End);
        var (visits, look) = (ImmutableArray<Instant>.Empty, WorkMinutes.Look(animals));
        if (looks is { } every)
        {
            // Twice the rhythm is the longest that nobody looks: a closed weekend passes, a closed fortnight does not. The project's choice.
            (visits, var gaps) = new Inspections(every, every + every, look).During(ahead, hours);
            foreach (var gap in gaps) findings.Add(gap with { Subject = step.Id, Severity = Severity.Warning });
        }

        return step with
        {
            When = when,
            LooksBefore = looks is { } rhythm ? Passed(new(when.Start, ahead.Start), rhythm) : 0,
            Inspections = floats ? Beside(visits, WhileFloating(when, ahead, look)) : visits,
            ChangesAt = changes > 0 ? Changes(step, when, changes, delivery) : [],
        };
    }

    /// <summary>How often the rhythm has come round in a time.</summary>
    public static int Passed(Interval time, Duration every) => (int)Math.Min(1000, Math.Floor(time.Duration / every));

    private ImmutableArray<Instant> Changes(DraftStep step, Interval when, int changes, Delivery? delivery)
    {
        var spread = new SpreadWork(changes, WorkMinutes.Change(step, animals));
        if (delivery is { IsForChanges: true } late) spread = spread with { FirstWaiting = Math.Max(0, late.Fillings - 1), Delivered = late.At };
        var dated = spread.During(when, hours);
        if (dated.Length < changes && step.HandsOn > Duration.Zero)
        {
            var facts = TooFewOpenings.With(
                Argument.Id("step", step.Id), ("changes", changes), ("dated", dated.Length), Argument.At("end", when.End, hours.Hours.Zone));
            findings.Add(Finding.Warning(TooFewOpenings.Id, facts, ComeIn) with { Subject = step.Id });
        }

        return dated;
    }

    private List<Instant> WhileFloating(Interval when, Interval ahead, Duration look)
    {
        var (work, end, found) = (Math.Max(1, Minutes.Ceiling(look)), Minutes.Floor(when.End), new List<Instant>(2));
        var starts = new Date(hours.Between(when.Start, when.End).Set, new(Minutes.Ceiling(when.Start) + 1, end - work), WorkAfter: work);
        foreach (var after in LooksWhileFloating)
        {
            var turn = when.Start + after;
            if (turn < ahead.Start || turn >= when.End) continue;
            if (starts.Next(Minutes.Ceiling(turn)) is { } at) found.Add(Minutes.At(at));
        }

        return found;
    }

    /// <summary>Both together in order; what is no further apart than an hour is one look.</summary>
    private static ImmutableArray<Instant> Beside(ImmutableArray<Instant> visits, List<Instant> others)
    {
        if (others.Count == 0) return visits;
        var all = visits.ToBuilder();
        foreach (var other in others)
        {
            var at = 0;
            while (at < all.Count && all[at] < other) at++;
            if (at < all.Count && all[at] - other < LooksWhileFloating[0]) continue;
            if (at > 0 && other - all[at - 1] < LooksWhileFloating[0]) continue;
            all.Insert(at, other);
        }

        return all.DrainToImmutable();
    }
}
