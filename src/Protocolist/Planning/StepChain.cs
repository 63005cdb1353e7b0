using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Planning.Scheduling;
using Protocolist.Specimens;

namespace Protocolist.Planning;

/// <summary>The steps that are still to be dated, one after another, as a problem for the scheduler.</summary>
internal sealed class StepChain(List<DraftStep> open, Draft draft, Bench bench, Instant from, ImmutableDictionary<string, Delivery> deliveries)
{
    private static readonly ImmutableDictionary<string, Delivery> NoDeliveries = ImmutableDictionary<string, Delivery>.Empty;

    private readonly DateTimeZone _zone = bench.Opening.Zone;
    private readonly DraftStep? _before = draft.Steps.TakeWhile(s => s.Id != open[0].Id).LastOrDefault(s => s.When is not null && s.During is null);

    /// <summary>Nothing ends after this.</summary>
    public Instant? By { get; init; }

    /// <summary>
    /// The earliest dates. Where they cannot be had, a delivery is waited for no longer, and then what should follow at once on logged
    /// work follows as soon as it can, and what has begun lasts until then: the body is there, and a plan that says so is worth more than none.
    /// </summary>
    public Checked<Schedule> Earliest()
    {
        var supplied = Solve(NoDeliveries, follows: true);
        var beginBy = BodyCannotWait && !deliveries.IsEmpty ? supplied.Value?.Jobs[0].Start : null;
        var first = deliveries.IsEmpty ? supplied : Solve(deliveries, follows: true, beginBy);
        if (first.Value is not null) return Noted(first, deliveries);
        if (!deliveries.IsEmpty && supplied is { Value: not null } unsupplied)
            return unsupplied with { Findings = [.. Noted(unsupplied, NoDeliveries).Findings, .. InOrder(deliveries).DistinctBy(d => d.Item).Select(d => d.ComesTooLate(_zone))] };
        if ((_before is not null || IsRunning) && Solve(NoDeliveries, follows: false) is { Value: not null } late)
            return late with { Findings = [.. late.Findings, IsRunning ? Overlong(late.Value) : Overdue(late.Value)] };

        // Only now is it worth finding out why.
        return Scheduler.Earliest(Begun(Graph(deliveries, follows: true), beginBy), bench.Opening, From);
    }

    /// <summary>Deliveries in the order of the steps that wait for them: a table has an order of its own on every run.</summary>
    private IEnumerable<Delivery> InOrder(ImmutableDictionary<string, Delivery> awaited) => open.Where(s => awaited.ContainsKey(s.Id)).Select(s => awaited[s.Id]);

    /// <summary>A body that is not frozen is in hand from the start: its first step does not wait for what later ones need.</summary>
    private bool BodyCannotWait => draft.Body.Specimen.Condition != Condition.Frozen && open[0].Progress is null;

    private bool IsRunning => open[0].Progress?.Begun is not null;

    private Checked<Schedule> Solve(ImmutableDictionary<string, Delivery> awaited, bool follows, Instant? beginBy = null) =>
        Scheduler.TryEarliest(Begun(Graph(awaited, follows), beginBy), bench.Opening, From);

    private Instant From => open[0].Progress?.Begun is { } begun ? Instant.Min(from, begun) : from;

    private static JobGraph Begun(JobGraph graph, Instant? beginBy) => beginBy is { } by ? graph.With(0, job => job with { StartBy = Sooner(job.StartBy, by) }) : graph;

    /// <summary>The steps as jobs that share something with other plans, everything delivered.</summary>
    public JobGraph Shared(Func<DraftStep, ImmutableArray<Need>> needs)
    {
        var graph = Graph(NoDeliveries, follows: true);
        for (var i = 0; i < open.Count; i++)
        {
            var shared = needs(open[i]);
            graph = graph.With(i, job => job with { Needs = shared });
        }

        return graph;
    }

    private JobGraph Graph(ImmutableDictionary<string, Delivery> awaited, bool follows) =>
        JobGraph.Chain(open.Select((step, i) => (Lag(step, i > 0 ? open[i - 1] : null), JobOf(step, i, awaited, follows))));

    private Job JobOf(DraftStep step, int i, ImmutableDictionary<string, Delivery> awaited, bool follows)
    {
        if (i == 0 && step.Progress?.Begun is { } begun) return Running(step, begun, follows);
        var notBefore = Later(step.NotBefore, awaited.GetValueOrDefault(step.Id)?.At);
        if (i == 0 && _before?.When is { } done && Lag(step, _before) is var lag) notBefore = Later(notBefore, done.End + lag.Least);
        return Unbound(step) with
        {
            NotBefore = notBefore,
            StartBy = Sooner(BeginBy(step), i == 0 && follows && _before?.When is { } over && Lag(step, _before).Greatest is { } longest ? over.End + longest : null),
            EndNotBefore = step.EndNotBefore,
            EndBy = i == open.Count - 1 ? By : null,
        };
    }

    /// <summary>A step that has begun is where it is; it ends when its time is up, and not before what the log knows.</summary>
    private Job Running(DraftStep step, Instant begun, bool follows)
    {
        var notBefore = Later(from, step.EndNotBefore)!.Value;
        var lasts = Lasts(step);
        if (!follows || (lasts.Greatest is { } most && begun + most < notBefore)) lasts = Window.AtLeast(lasts.Least);
        return new(step.Id, lasts) { NotBefore = begun, StartBy = begun, EndNotBefore = notBefore, EndBy = open.Count == 1 ? By : null };
    }

    /// <summary>A step's work and length, bound to no date.</summary>
    internal static Job Unbound(DraftStep step) => new(step.Id, Lasts(step)) { HandsOnAtStart = step.HandsOn > Duration.Zero ? step.HandsOn : null };

    private static Window Lasts(DraftStep step) => step.Most is { } most ? Window.Between(step.Least, Duration.Max(step.Least, most)) : Window.AtLeast(step.Least);

    /// <summary>A body stays in its fluid until the next step begins, so nothing lies between; what was said of waiting holds elsewhere.</summary>
    internal static Window Lag(DraftStep step, DraftStep? before)
    {
        // Out of the fluid already, by the log: then the wait that the protocol allows is all there is.
        if (before is { IsSoak: true, Progress: null } && step.WaitLeast == Duration.Zero) return Window.Nothing;
        if (before is { IsSoak: true, Progress.Ended: null } && step.WaitLeast == Duration.Zero) return Window.Nothing;
        return step.WaitMost is { } most ? Window.Between(step.WaitLeast, Duration.Max(step.WaitLeast, most)) : Window.AtLeast(step.WaitLeast);
    }

    /// <summary>What a step must begin within, as far as its beginning is known. Of the collection only the day is; its end is the latest that it can have been, so that nothing is called late that may not be.</summary>
    private IEnumerable<(Duration Longest, Instant Since, string Of)> Windows(DraftStep step)
    {
        var specimen = draft.Body.Specimen;
        if (step.SinceDeath is { } afterDeath && specimen.DiedAt is { } died) yield return (afterDeath, died, "death");
        if (step.SinceCollection is { } afterCollection && specimen.FoundOn is { } day) yield return (afterCollection, _zone.AtStartOfDay(day.PlusDays(1)).ToInstant(), "collection");
    }

    /// <summary>A window that is over before the start binds nothing any more; it is told instead.</summary>
    private Instant? BeginBy(DraftStep step) =>
        Windows(step).Select(w => (Instant?)(w.Since + w.Longest)).Where(by => by >= from).Min();

    private Checked<Schedule> Noted(Checked<Schedule> dated, ImmutableDictionary<string, Delivery> awaited) =>
        dated with { Findings = [.. dated.Findings, .. TooLate(), .. Waits(dated.Value!, awaited), .. LatestStart(awaited)] };

    private IEnumerable<Finding> TooLate()
    {
        foreach (var step in open.Where(s => s.Progress is null))
        {
            foreach (var (longest, since, of) in Windows(step).Where(w => w.Since + w.Longest < from))
            {
                yield return Finding.Warning(
                    $"too-long-after-{of}",
                    $"'{step.Id}' should begin within {Wording.Of(longest)} of {of}, and {Wording.Of(from - since)} have gone by already",
                    "begin at once, and judge by sight and smell whether the body is still fit for fluid") with
                { Subject = step.Id };
            }
        }
    }

    /// <summary>Where waiting for a delivery moves the work.</summary>
    private IEnumerable<Finding> Waits(Schedule dates, ImmutableDictionary<string, Delivery> awaited)
    {
        if (awaited.IsEmpty) yield break;
        var unsupplied = Solve(NoDeliveries, follows: true).Value;
        foreach (var (id, delivery) in awaited.OrderBy(d => d.Value.At).ThenBy(d => d.Key, StringComparer.Ordinal))
        {
            if (unsupplied is null || dates[id].Start <= unsupplied[id].Start) continue;
            yield return Finding.Note("waits-for-delivery", $"'{id}' waits for {delivery.Item}, {Wording.Of(delivery.At, _zone)} at the earliest; with it at hand it could begin {Wording.Of(unsupplied[id].Start, _zone)}", "get it sooner, or borrow it") with { Subject = id };
            yield break;
        }
    }

    /// <summary>Backwards from the day on which all must be over: the last moment to begin.</summary>
    private IEnumerable<Finding> LatestStart(ImmutableDictionary<string, Delivery> awaited)
    {
        if (By is not { } by || open[0].Progress is not null || Scheduler.Latest(Graph(awaited, follows: true), bench.Opening, from, by).Value is not { } latest) yield break;
        yield return Finding.Note("latest-start", $"to be over by {Wording.Of(by, _zone)}, work begins {Wording.Of(latest.Start, _zone)} at the latest", "only a body that keeps, such as a frozen one, can wait that long");
    }

    private Finding Overlong(Schedule dates) => Finding.Warning(
        "overdue",
        $"'{open[0].Id}' has begun, and nobody can go on from it before {Wording.Of(dates[open[0].Id].End, _zone)}, {Wording.Of(dates[open[0].Id].End - dates[open[0].Id].Start)} after it began; {(open[0].Most is { } most ? $"{Wording.Of(most)} is the most for it" : "what follows should come sooner")}",
        open[0].IsSoak ? "have somebody come in sooner, or put the body back into the fluid before" : "keep the body wet and cold meanwhile, or have somebody come in sooner") with
    { Subject = open[0].Id };

    private Finding Overdue(Schedule dates) => Finding.Warning(
        "overdue",
        $"'{open[0].Id}' should follow '{_before!.Id}' within {Wording.Of(Lag(open[0], _before).Greatest ?? Duration.Zero)}, and begins {Wording.Of(dates[open[0].Id].Start, _zone)}, {Wording.Of(dates[open[0].Id].Start - _before.When!.Value.End)} after it",
        "keep the body wet and cold meanwhile, or have somebody come in sooner") with
    { Subject = open[0].Id };

    private static Instant? Later(Instant? a, Instant? b) => a is null ? b : b is null || a > b ? a : b;

    private static Instant? Sooner(Instant? a, Instant? b) => a is null ? b : b is null || a < b ? a : b;
}
