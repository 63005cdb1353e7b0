using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches.Opening;
using Protocolist.Findings;
using Protocolist.Planning.Drafting;
using Protocolist.Planning.Scheduling;
using Protocolist.Specimens;

namespace Protocolist.Planning.Dating;

/// <summary>The steps that are still to be dated, one after another, as a problem for the scheduler.</summary>
/// <param name="open">The steps, at least one.</param>
/// <param name="draft">The draft that they are of.</param>
/// <param name="hours">When the bench is open.</param>
/// <param name="from">Nothing begins before this.</param>
/// <param name="by">Nothing ends after this.</param>
/// <param name="deliveries">For each open step the delivery that it waits for; empty where none waits.</param>
internal sealed class StepChain(List<DraftStep> open, Draft draft, OpenMinutes hours, Instant from, Instant? by, ImmutableArray<Delivery?> deliveries)
{
    private static readonly Phrase TooLongAfterDeath =
        new("too-long-after-death", "'{step}' should begin within {longest:clock} of death, and {gone:clock} have gone by already");
    private static readonly Phrase TooLongAfterCollection =
        new("too-long-after-collection", "'{step}' should begin within {longest:clock} of collection, and {gone:clock} have gone by already");
    private static readonly Phrase BeginAtOnce =
        new("too-long-after-death.remedy", "begin at once, and judge by sight and smell whether the body is still fit for fluid");
    private static readonly Phrase LatestStart = new("latest-start", "to be over by {by}, work begins {start} at the latest");
    private static readonly Phrase OnlyWhatKeeps = new("latest-start.remedy", "only a body that keeps, such as a frozen one, can wait that long");
    private static readonly Phrase Overlong =
        new("overdue.begun", "'{step}' has begun, and nobody can go on from it before {end}, {time:clock} after it began; {limit}");
    private static readonly Phrase MostForIt = new("overdue.most", "{most:clock} is the most for it");
    private static readonly Phrase ComeSooner = new("overdue.sooner", "what follows should come sooner");
    private static readonly Phrase Overdue =
        new("overdue", "'{step}' should follow '{before}' within {most:clock}, and begins {start}, {time:clock} after it");
    private static readonly Phrase BackIntoFluid = new("overdue.remedy-soak", "have somebody come in sooner, or put the body back into the fluid before");
    private static readonly Phrase WetAndCold = new("overdue.remedy", "keep the body wet and cold meanwhile, or have somebody come in sooner");

    private DateTimeZone Zone => hours.Hours.Zone;

    private DraftStep First => open[0];

    /// <summary>Where what has begun began, else where the plan may begin.</summary>
    private Instant From => First.Progress?.Begun is { } begun ? Instant.Min(from, begun) : from;

    /// <summary>The first of these steps by which fixative meets the body; below 0 where there is none, or the body has met it.</summary>
    private int Fixing => draft.Steps.Any(s => WaitUnfixed.Fixes(s) && s.Progress is not null) ? -1 : open.FindIndex(WaitUnfixed.Fixes);

    /// <summary>The last step whose day a person insists on.</summary>
    private (string Id, int Number)? Wished => open.FindLastIndex(s => s.Limits.On is not null) is >= 0 and var at ? (open[at].Id, at) : null;

    private bool IsRunning => First.Progress?.Begun is not null;

    /// <summary>A body that is not frozen is in hand from the start: its first step does not wait for what later ones need.</summary>
    private bool BodyCannotWait => draft.Body.Specimen.Condition != Condition.Frozen && First.Progress is null;

    /// <summary>The last step before these that is over and had a turn of its own.</summary>
    private DraftStep? Before
    {
        get
        {
            DraftStep? before = null;
            foreach (var step in draft.Steps)
            {
                if (step.Id == First.Id) break;
                if (step is { When: not null, During: null }) before = step;
            }

            return before;
        }
    }

    /// <summary>
    /// The earliest dates. Where they cannot be had, a delivery is waited for no longer, and then what should follow at once on logged
    /// work follows as soon as it can, and what has begun lasts until then: the body is there, and a plan that says so is worth more than none.
    /// </summary>
    /// <param name="findings">Takes what is to be said of them, or why there are none.</param>
    /// <returns>The dates of the open steps, in their order; null where there are none.</returns>
    public Schedule? Earliest(List<Finding> findings)
    {
        var graph = Graph(follows: true);
        if (Solve(graph) is not { Value: { } supplied } first)
        {
            if (RunningOver(graph) is not var (over, followed)) return Late(graph, findings);
            findings.AddRange(StretchedSteps.Told(graph, followed, null, Wished, Zone));
            (graph, supplied, first) = (over, followed, new(followed, []));
        }
        else if (Stretched(graph, supplied) is var (stretched, sooner))
        {
            findings.AddRange(StretchedSteps.Told(graph, sooner, (open[Fixing].Id, supplied[Fixing].Start), Wished, Zone));
            (graph, supplied) = (stretched, sooner);
        }

        var (awaited, dates, notes) = (AwaitedDeliveries.Of(deliveries, open, Zone), supplied, first.Findings);
        while (!awaited.IsEmpty)
        {
            var holding = awaited.Hold(graph, beginBy: BodyCannotWait ? supplied[0].Start : null);
            if (Solve(holding) is { Value: { } held } waiting)
            {
                (dates, notes) = Stretched(holding, held) is var (_, begun) ? (begun, Told(graph, begun)) : (held, waiting.Findings);
                break;
            }

            if (FixedInTime(holding, graph, supplied) is { } later)
            {
                (dates, notes) = (later, Told(graph, later));
                break;
            }

            awaited = awaited.WithoutOne(supplied);
        }

        findings.AddRange(notes);
        TooLate(findings);
        if (awaited.Told(dates, supplied) is { } waits) findings.Add(waits);
        LatestStartOf(awaited.Hold(graph, beginBy: null), findings);
        findings.AddRange(awaited.Missed(dates));
        return dates;
    }

    private (JobGraph Graph, Schedule Dates)? Stretched(JobGraph graph, Schedule kept)
    {
        if (!BodyCannotWait || Fixing < 0) return null;
        var specimen = draft.Body.Specimen;
        return StretchedSteps.For(
            graph, kept, Fixing, WaitUnfixed.Borne(specimen, from, Zone), from, WaitUnfixed.Tenth(specimen), LiesInFluid, LiesInAlcohol, Solve);
    }

    /// <summary>What should follow at once on work that is done follows, and a later step runs over.</summary>
    private (JobGraph Graph, Schedule Dates)? RunningOver(JobGraph graph) =>
        Before is not null && First.Progress is null ? StretchedSteps.Least(graph, graph, 0, LiesInFluid, LiesInAlcohol, Solve) : null;

    private ImmutableArray<Finding> Told(JobGraph graph, Schedule dates) =>
        [.. StretchedSteps.Told(graph, dates, null, Wished, Zone, AwaitedDeliveries.GetItSooner)];

    /// <summary>What is fixed in time waits in its fluid for what comes by post for the steps after.</summary>
    private Schedule? FixedInTime(JobGraph holding, JobGraph graph, Schedule supplied) =>
        BodyCannotWait && Fixing >= 0 && StretchedSteps.Least(holding, graph, Fixing, LiesInFluid, LiesInAlcohol, Solve) is var (_, dates)
            && dates[Fixing].Start <= supplied[Fixing].Start ? dates : null;

    private bool LiesInFluid(int i) => open[i].Kind is StageKind.Immerse or StageKind.Wash or StageKind.Bath;

    private bool LiesInAlcohol(int i) => open[i].Kind == StageKind.Bath;

    private Schedule? Late(JobGraph graph, List<Finding> findings)
    {
        if ((Before is not null || IsRunning) && Solve(Graph(follows: false)) is { Value: { } dates } late)
        {
            findings.AddRange(late.Findings);
            findings.Add((IsRunning ? OverlongAt(dates[0]) : OverdueAt(dates[0])) with { Subject = First.Id });
            return dates;
        }

        // Only now is it worth finding out why.
        findings.Add(Scheduler.WhyNone(AwaitedDeliveries.Of(deliveries, open, Zone).Hold(graph, beginBy: null), hours, From));
        return null;
    }

    /// <summary>The steps as jobs that share something with other plans, everything delivered.</summary>
    public JobGraph Shared(Func<DraftStep, ImmutableArray<Need>> needs) => Graph(follows: true).With((jobs, _) =>
    {
        for (var i = 0; i < jobs.Length; i++) jobs[i] = jobs[i] with { Needs = needs(open[i]) };
    });

    private Checked<Schedule>? Solve(JobGraph graph) => Scheduler.TryEarliest(graph, hours, From);

    private JobGraph Graph(bool follows)
    {
        var jobs = new Job[open.Count];
        var lags = new Window[open.Count];
        for (var i = 0; i < jobs.Length; i++)
        {
            var (least, longest) = Lag(open[i], i > 0 ? open[i - 1] : null);
            (jobs[i], lags[i]) = (JobOf(open[i], i, follows), Window.Of(least, longest));
        }

        return JobGraph.Chain(jobs, lags);
    }

    private Job JobOf(DraftStep step, int i, bool follows)
    {
        var endBy = i == open.Count - 1 ? by : null;
        var (notBefore, startBy) = (step.NotBefore, BeginBy(step));
        if (step.Limits.On is { } day)
        {
            notBefore = Later(notBefore, Zone.AtStartOfDay(day).ToInstant());
            startBy = Sooner(startBy, Zone.AtStartOfDay(day.PlusDays(1)).ToInstant() - Duration.FromMinutes(1));
        }

        if (i == 0)
        {
            if (step.Progress?.Begun is { } begun) return Running(step, begun, follows) with { EndBy = endBy };
            if (Before is { When: { } done } before)
            {
                var (least, longest) = Lag(step, before);
                notBefore = Later(notBefore, done.End + least);
                if (follows && longest is { } most) startBy = Sooner(startBy, done.End + most);
            }
        }

        return new(step.Id, Window.Of(step.Least, Longest(step)))
        {
            HandsOnAtStart = step.HandsOn > Duration.Zero ? step.HandsOn : null,
            NotBefore = notBefore,
            StartBy = startBy,
            EndNotBefore = step.EndNotBefore,
            EndBy = endBy,
        };
    }

    /// <summary>A step that has begun is where it is; it ends when its time is up, and not before what the log knows.</summary>
    private Job Running(DraftStep step, Instant begun, bool follows)
    {
        var notBefore = step.EndNotBefore is { } end && end > from ? end : from;
        var longest = follows && Longest(step) is { } most && begun + most >= notBefore ? most : (Duration?)null;
        return new(step.Id, Window.Of(step.Least, longest)) { NotBefore = begun, StartBy = begun, EndNotBefore = notBefore };
    }

    private static Duration? Longest(DraftStep step) => step.Most is { } most ? Duration.Max(step.Least, most) : null;

    /// <summary>A body stays in its fluid until the next step begins, so nothing lies between; what was said of waiting holds elsewhere.</summary>
    private static (Duration Least, Duration? Longest) Lag(DraftStep step, DraftStep? before)
    {
        // Out of the fluid already, by the log: then the wait that the protocol allows is all there is.
        if (before is { IsSoak: true, Progress: null or { Ended: null } } && step.Limits.WaitLeast == Duration.Zero) return (Duration.Zero, Duration.Zero);
        return (step.Limits.WaitLeast, step.Limits.WaitMost is { } most ? Duration.Max(step.Limits.WaitLeast, most) : null);
    }

    /// <summary>A window that is over before the start binds nothing any more; it is told instead.</summary>
    private Instant? BeginBy(DraftStep step) => Sooner(Ahead(DeathEnds(step)), Ahead(CollectionEnds(step)));

    private Instant? Ahead(Instant? end) => end >= from ? end : null;

    /// <summary>The end of the time after death within which a step should begin; null where either is not known.</summary>
    private Instant? DeathEnds(DraftStep step) => step.Limits.SinceDeath is { } longest && draft.Body.Specimen.DiedAt is { } died ? died + longest : null;

    private Instant? CollectionEnds(DraftStep step) => step.Limits.SinceCollection is { } longest && Collected is { } collected ? collected + longest : null;

    private Instant? Collected => WaitUnfixed.LatestFound(draft.Body.Specimen, Zone);

    private void TooLate(List<Finding> findings)
    {
        foreach (var step in open)
        {
            if (step.Progress is not null) continue;
            Tell(TooLongAfterDeath, step, DeathEnds(step), step.Limits.SinceDeath);
            Tell(TooLongAfterCollection, step, CollectionEnds(step), step.Limits.SinceCollection);
        }

        void Tell(Phrase phrase, DraftStep step, Instant? end, Duration? longest)
        {
            if (end is not { } over || over >= from) return;
            var message = phrase.With(Argument.Id("step", step.Id), ("longest", longest!.Value), ("gone", from - over + longest.Value));
            findings.Add(Finding.Warning(phrase.Id, message, BeginAtOnce) with { Subject = step.Id });
        }
    }

    /// <summary>Backwards from the day on which all must be over: the last moment to begin.</summary>
    private void LatestStartOf(JobGraph graph, List<Finding> findings)
    {
        if (by is not { } end || First.Progress is not null) return;
        if (Scheduler.Latest(graph, hours, from, end).Value is not { } latest) return;
        findings.Add(Finding.Note(LatestStart.Id, LatestStart.With(Argument.At("by", end, Zone), Argument.At("start", latest.Start, Zone)), OnlyWhatKeeps));
    }

    private Finding OverlongAt(ScheduledJob dates) => Finding.Warning(
        Overdue.Id,
        Overlong.With(
            Argument.Id("step", First.Id),
            Argument.At("end", dates.End, Zone),
            ("time", dates.End - dates.Start),
            ("limit", First.Most is { } most ? MostForIt.With(("most", most)) : ComeSooner)),
        First.IsSoak ? BackIntoFluid : WetAndCold);

    private Finding OverdueAt(ScheduledJob dates) => Finding.Warning(
        Overdue.Id,
        Overdue.With(
            Argument.Id("step", First.Id),
            Argument.Id("before", Before!.Id),
            ("most", Lag(First, Before).Longest ?? Duration.Zero),
            Argument.At("start", dates.Start, Zone),
            ("time", dates.Start - Before.When!.Value.End)),
        WetAndCold);

    private static Instant? Later(Instant? a, Instant? b) => a is null ? b : b is null || a > b ? a : b;

    private static Instant? Sooner(Instant? a, Instant? b) => a is null ? b : b is null || a < b ? a : b;
}
