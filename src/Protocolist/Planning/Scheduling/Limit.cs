using NodaTime;
using Protocolist.Benches.Opening;
using Protocolist.Findings;

namespace Protocolist.Planning.Scheduling;

/// <summary>One demand of a problem that can be named, left out, and often given way.</summary>
/// <param name="Text">The demand.</param>
/// <param name="Without">Leaves it out.</param>
internal sealed record Limit(Message Text, Change Without)
{
    private static readonly Phrase NotBefore = new("limit-not-before", "'{job}' cannot start before {at}");
    private static readonly Phrase NotBeforeEased = new("limit-not-before.eased", "'{job}' could start by {at}");
    private static readonly Phrase StartBy = new("limit-start-by", "'{job}' must start by {at}");
    private static readonly Phrase StartByEased = new("limit-start-by.eased", "'{job}' could start as late as {at}");
    private static readonly Phrase EndNotBefore = new("limit-end-not-before", "'{job}' cannot end before {at}");
    private static readonly Phrase EndNotBeforeEased = new("limit-end-not-before.eased", "'{job}' could end by {at}");
    private static readonly Phrase EndBy = new("limit-end-by", "'{job}' must end by {at}");
    private static readonly Phrase EndByEased = new("limit-end-by.eased", "'{job}' could end as late as {at}");
    private static readonly Phrase AtLeast = new("limit-at-least", "'{job}' lasts at least {time:clock}");
    private static readonly Phrase AtMost = new("limit-at-most", "'{job}' lasts at most {time:clock}");
    private static readonly Phrase AtMostEased = new("limit-at-most.eased", "'{job}' could last {eased:clock} instead of {time:clock}");
    private static readonly Phrase Taken = new("limit-taken", "'{job}' needs '{resource}', which others have taken");
    private static readonly Phrase AnotherOne = new("limit-taken.without", "there were another '{resource}' for '{job}'");
    private static readonly Phrase FirstWork = new("limit-first-work", "the start of '{job}' needs {work} in open hours");
    private static readonly Phrase FirstWorkWithout = new("limit-first-work.without", "somebody came out of hours for the start of '{job}', {at}");
    private static readonly Phrase LastWork = new("limit-last-work", "the end of '{job}' needs {work} in open hours");
    private static readonly Phrase LastWorkWithout = new("limit-last-work.without", "somebody came out of hours for the end of '{job}', {at}");
    private static readonly Phrase Somebody = new("limit-work.somebody", "somebody");
    private static readonly Phrase SomeWork = new("limit-work.some", "{time:clock} of work");
    private static readonly Phrase LagAtLeast = new("limit-lag-at-least", "'{job}' starts at least {time:clock} {after}");
    private static readonly Phrase LagAtMost = new("limit-lag-at-most", "'{job}' starts at most {time:clock} {after}");
    private static readonly Phrase AtOnce = new("limit-at-once", "'{job}' starts at once {after}");
    private static readonly Phrase LagEased = new("limit-lag-at-most.eased", "'{job}' could start {eased:clock} {after}");
    private static readonly Phrase AfterEnd = new("limit-lag.after-end", "after '{before}' ends");
    private static readonly Phrase AfterStart = new("limit-lag.after-start", "after '{before}' starts");

    /// <summary>The number of the job whose shortest duration this is, else null: many of these clash together with one deadline.</summary>
    public int? ShortestOf { get; init; }

    /// <summary>Whether it asks for somebody at the bench.</summary>
    public bool NeedsSomebody { get; init; }

    /// <summary>Eases the demand by some minutes. Never offered for a shortest duration: a soak is not cut short to suit the calendar.</summary>
    public Func<long, Change>? Eased { get; init; }

    /// <summary>What easing by some minutes means.</summary>
    public Func<long, Message>? EasedText { get; init; }

    /// <summary>What leaving it out means in the schedule that then fits; nothing where that would be no help.</summary>
    public Func<Schedule, Message>? WithoutText { get; init; }

    /// <summary>All demands of a problem, job by job.</summary>
    public static IEnumerable<Limit> AllOf(JobGraph graph, DateTimeZone zone)
    {
        for (var i = 0; i < graph.Jobs.Length; i++)
        {
            foreach (var limit in OfJob(graph.Jobs[i], i, zone)) yield return limit;
        }

        for (var i = 0; i < graph.Links.Length; i++)
        {
            foreach (var limit in OfLink(graph, i)) yield return limit;
        }
    }

    private static IEnumerable<Limit> OfJob(Job job, int i, DateTimeZone zone)
    {
        if (job.Starts.From > -Minutes.Far)
            yield return Moment(NotBefore, NotBeforeEased, job.Starts.From, -Minutes.Far, sign: -1, (j, at) => j with { Starts = j.Starts with { From = at } });
        if (job.Starts.To < Minutes.Far)
            yield return Moment(StartBy, StartByEased, job.Starts.To, Minutes.Far, sign: 1, (j, at) => j with { Starts = j.Starts with { To = at } });
        if (job.FirstWork is { } first) yield return Work(job, i, first, atEnd: false, zone);
        if (job.Lasts.Least > 0)
            yield return new(AtLeast.With(Id(job), Time("time", job.Lasts.Least)), Lasting(w => w with { Least = 0 })) { ShortestOf = i };
        if (job.Lasts.HasGreatest)
        {
            var longest = job.Lasts.Greatest;
            yield return new(AtMost.With(Id(job), Time("time", longest)), Lasting(w => w with { Greatest = Minutes.Far }))
            {
                Eased = more => Lasting(w => w with { Greatest = longest + more }),
                EasedText = more => AtMostEased.With(Id(job), Time("eased", longest + more), Time("time", longest)),
            };
        }

        if (job.LastWork is { } last) yield return Work(job, i, last, atEnd: true, zone);
        if (job.Ends.From > -Minutes.Far)
            yield return Moment(EndNotBefore, EndNotBeforeEased, job.Ends.From, -Minutes.Far, sign: -1, (j, at) => j with { Ends = j.Ends with { From = at } });
        if (job.Ends.To < Minutes.Far)
            yield return Moment(EndBy, EndByEased, job.Ends.To, Minutes.Far, sign: 1, (j, at) => j with { Ends = j.Ends with { To = at } });
        foreach (var need in job.Needs)
        {
            Argument resource = ("resource", need.Resource);
            yield return new(Taken.With(Id(job), resource), (jobs, _) => jobs[i] = jobs[i] with { Needs = jobs[i].Needs.Remove(need) })
            {
                WithoutText = _ => AnotherOne.With(resource, Id(job)),
            };
        }

        Limit Moment(Phrase text, Phrase eased, long at, long never, int sign, Func<Job, long, Job> set) => new(
            text.With(Id(job), At(at, zone)),
            Set(set, never))
        {
            Eased = more => Set(set, at + (sign * more)),
            EasedText = more => eased.With(Id(job), At(at + (sign * more), zone)),
        };

        Change Set(Func<Job, long, Job> set, long at) => (jobs, _) => jobs[i] = set(jobs[i], at);

        Change Lasting(Func<Window, Window> set) => (jobs, _) => jobs[i] = jobs[i] with { Lasts = set(jobs[i].Lasts) };
    }

    private static Limit Work(Job job, int i, long time, bool atEnd, DateTimeZone zone)
    {
        // Coming out of hours frees nothing that others have taken meanwhile.
        var sharesNothing = job.Needs.All(n => n.Throughout);
        Message work = time == 0 ? Somebody : SomeWork.With(Time("time", time));
        return new((atEnd ? LastWork : FirstWork).With(Id(job), ("work", work)), Drop)
        {
            NeedsSomebody = true,
            WithoutText = s => !sharesNothing || s[i].End - s[i].Start < Duration.FromMinutes(time)
                ? default
                : (atEnd ? LastWorkWithout : FirstWorkWithout).With(
                    Id(job),
                    Argument.At("at", atEnd ? s[i].End - Duration.FromMinutes(time) : s[i].Start, zone)),
        };

        void Drop(Span<Job> jobs, Span<Link> links) => jobs[i] = atEnd ? jobs[i] with { LastWork = null } : jobs[i] with { FirstWork = null };
    }

    private static IEnumerable<Limit> OfLink(JobGraph graph, int i)
    {
        var link = graph.Links[i];
        var (least, longest) = link.Lag;
        var job = Id(graph.Jobs[link.After]);
        Argument after = ("after", (link.From == Anchor.End ? AfterEnd : AfterStart).With(Argument.Id("before", graph.Jobs[link.Before].Id)));
        if (least > 0) yield return new(LagAtLeast.With(job, Time("time", least), after), Lagging(w => w with { Least = 0 }));
        if (!link.Lag.HasGreatest) yield break;
        yield return new(
            longest == 0 ? AtOnce.With(job, after) : LagAtMost.With(job, Time("time", longest), after),
            Lagging(w => w with { Greatest = Minutes.Far }))
        {
            Eased = more => Lagging(w => w with { Greatest = longest + more }),
            EasedText = more => LagEased.With(job, Time("eased", longest + more), after),
        };

        Change Lagging(Func<Window, Window> set) => (_, links) => links[i] = links[i] with { Lag = set(links[i].Lag) };
    }

    private static Argument Id(Job job) => Argument.Id("job", job.Id);

    private static Argument At(long minute, DateTimeZone zone) => Argument.At("at", Minutes.At(minute), zone);

    private static Argument Time(string name, long minutes) => (name, Duration.FromMinutes(minutes));
}
