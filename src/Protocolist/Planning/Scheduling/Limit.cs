using NodaTime;

namespace Protocolist.Planning.Scheduling;

/// <summary>One demand of a problem that can be named, left out, and often given way.</summary>
/// <param name="Text">The demand in words.</param>
/// <param name="Without">The problem without it.</param>
internal sealed record Limit(string Text, Func<JobGraph, JobGraph> Without)
{
    /// <summary>The job whose shortest duration this is, else null: many of these clash together with one deadline.</summary>
    public string? ShortestOf { get; init; }

    /// <summary>Whether it asks for somebody at the bench.</summary>
    public bool NeedsSomebody { get; init; }

    /// <summary>The problem with this demand eased by a time. Never offered for a shortest duration: a soak is not cut short to suit the calendar.</summary>
    public Func<JobGraph, Duration, JobGraph>? Eased { get; init; }

    /// <summary>What easing by a time means, in words.</summary>
    public Func<Duration, string>? EasedText { get; init; }

    /// <summary>What leaving it out means in the schedule that then fits, in words; null where that would be no help.</summary>
    public Func<Schedule, string?>? WithoutText { get; init; }

    /// <summary>All demands of a problem, job by job.</summary>
    public static IEnumerable<Limit> AllOf(JobGraph graph, DateTimeZone zone)
    {
        for (var i = 0; i < graph.Jobs.Length; i++)
        {
            foreach (var limit in OfJob(graph.Jobs[i], i, zone)) yield return limit;
        }

        for (var i = 0; i < graph.Links.Length; i++)
        {
            foreach (var limit in OfLink(graph.Links[i], i)) yield return limit;
        }
    }

    private static IEnumerable<Limit> OfJob(Job job, int i, DateTimeZone zone)
    {
        var id = $"'{job.Id}'";
        if (job.NotBefore is { } notBefore)
            yield return Moment($"{id} cannot start before", notBefore, i, (j, at) => j with { NotBefore = at }, $"{id} could start by", sign: -1, zone);
        if (job.StartBy is { } startBy)
            yield return Moment($"{id} must start by", startBy, i, (j, at) => j with { StartBy = at }, $"{id} could start as late as", sign: 1, zone);
        if (job.HandsOnAtStart is { } first) yield return Work(job, i, first, atEnd: false, zone);
        if (job.Lasts.Least > Duration.Zero)
            yield return new($"{id} lasts at least {Wording.Of(job.Lasts.Least)}", g => g.With(i, j => j with { Lasts = j.Lasts with { Least = Duration.Zero } })) { ShortestOf = job.Id };
        if (job.Lasts.Greatest is { } longest)
        {
            yield return new($"{id} lasts at most {Wording.Of(longest)}", g => g.With(i, j => j with { Lasts = j.Lasts with { Greatest = null } }))
            {
                Eased = (g, more) => g.With(i, j => j with { Lasts = j.Lasts with { Greatest = longest + more } }),
                EasedText = more => $"{id} could last {Wording.Of(longest + more)} instead of {Wording.Of(longest)}",
            };
        }

        if (job.HandsOnAtEnd is { } last) yield return Work(job, i, last, atEnd: true, zone);
        if (job.EndNotBefore is { } endNotBefore)
            yield return Moment($"{id} cannot end before", endNotBefore, i, (j, at) => j with { EndNotBefore = at }, $"{id} could end by", sign: -1, zone);
        if (job.EndBy is { } endBy)
            yield return Moment($"{id} must end by", endBy, i, (j, at) => j with { EndBy = at }, $"{id} could end as late as", sign: 1, zone);
        foreach (var need in job.Needs)
            yield return new($"{id} needs '{need.Resource}', which others have taken", g => g.With(i, j => j with { Needs = j.Needs.Remove(need) })) { WithoutText = _ => $"there were another '{need.Resource}' for {id}" };
    }

    private static Limit Moment(string text, Instant at, int i, Func<Job, Instant?, Job> set, string eased, int sign, DateTimeZone zone) =>
        new($"{text} {Wording.Of(at, zone)}", g => g.With(i, j => set(j, null)))
        {
            Eased = (g, more) => g.With(i, j => set(j, at + (sign * more))),
            EasedText = more => $"{eased} {Wording.Of(at + (sign * more), zone)}",
        };

    private static Limit Work(Job job, int i, Duration time, bool atEnd, DateTimeZone zone)
    {
        // Coming out of hours frees nothing that others have taken meanwhile.
        var (id, sharesNothing) = (job.Id, job.Needs.All(n => n.Throughout));
        var (where, work) = (atEnd ? "end" : "start", time == Duration.Zero ? "somebody" : $"{Wording.Of(time)} of work");
        return new($"the {where} of '{id}' needs {work} in open hours", g => g.With(i, j => atEnd ? j with { HandsOnAtEnd = null } : j with { HandsOnAtStart = null }))
        {
            NeedsSomebody = true,
            WithoutText = s => !sharesNothing || s[id].End - s[id].Start < time ? null : $"somebody came out of hours for the {where} of '{id}', {Wording.Of(atEnd ? s[id].End - time : s[id].Start, zone)}",
        };
    }

    private static IEnumerable<Limit> OfLink(Link link, int i)
    {
        var text = $"after '{link.Before}' {(link.From == Anchor.End ? "ends" : "starts")}";
        if (link.Lag.Least > Duration.Zero)
            yield return new($"'{link.After}' starts at least {Wording.Of(link.Lag.Least)} {text}", g => g.WithLink(i, l => l with { Lag = l.Lag with { Least = Duration.Zero } }));
        if (link.Lag.Greatest is not { } longest) yield break;
        var word = longest == Duration.Zero ? $"'{link.After}' starts at once {text}" : $"'{link.After}' starts at most {Wording.Of(longest)} {text}";
        yield return new(word, g => g.WithLink(i, l => l with { Lag = l.Lag with { Greatest = null } }))
        {
            Eased = (g, more) => g.WithLink(i, l => l with { Lag = l.Lag with { Greatest = longest + more } }),
            EasedText = more => $"'{link.After}' could start {Wording.Of(longest + more)} {text}",
        };
    }
}
