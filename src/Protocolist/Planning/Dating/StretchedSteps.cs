using NodaTime;
using Protocolist.Benches.Opening;
using Protocolist.Findings;
using Protocolist.Planning.Scheduling;

namespace Protocolist.Planning.Dating;

/// <summary>
/// Where a body would wait unfixed only because a later bath or wash would otherwise run into closed hours, the later step runs over, and says so:
/// what is fixed in time keeps, and an hour more in a bath costs little.
/// </summary>
internal static class StretchedSteps
{
    /// <summary>What the body does not bear for long lasts so many times its greatest time at most: a wash over a weekend. The project's choice.</summary>
    private const double MostTimes = 3;

    private static readonly Phrase RunsOver = new(
        "step-runs-over", "'{step}' lasts {time:clock}, and {most:clock} is the most for it: what follows cannot be done by {due}{otherwise}");

    private static readonly Phrase Otherwise = new("step-runs-over.otherwise", "; to keep to it, '{fixing}' would have begun only {late}");

    private static readonly Phrase ComeIn = new("step-runs-over.remedy", "have somebody come in on {on} ('also-open' in the bench file)");

    private static readonly Phrase SoonerDay = new("step-runs-over.remedy-day", "give '{wished}' a day no later than {on}");

    /// <summary>
    /// The jobs of which as few as can be have no greatest time any more, and their dates; null where the body does not wait, or nothing is won.
    /// </summary>
    /// <param name="graph">The jobs with all their limits.</param>
    /// <param name="kept">Their dates within them.</param>
    /// <param name="fixing">The number of the job by which fixative first meets the body.</param>
    /// <param name="borne">How long the body may yet wait from when work was to begin.</param>
    /// <param name="asked">When that was.</param>
    /// <param name="worthwhile">What has to be won: less is no reason to overrun.</param>
    /// <param name="canRunOver">Whether a job is one in which the body lies in its fluid: work of hands takes the time that it takes.</param>
    /// <param name="isPatient">Whether it bears to lie in that fluid for long.</param>
    /// <param name="solve">Dates jobs.</param>
    public static (JobGraph Graph, Schedule Dates)? For(
        JobGraph graph,
        Schedule kept,
        int fixing,
        Duration borne,
        Instant asked,
        Duration worthwhile,
        Func<int, bool> canRunOver,
        Func<int, bool> isPatient,
        Func<JobGraph, Checked<Schedule>?> solve)
    {
        if (kept[fixing].Start - asked <= borne || Freed(graph, fixing, graph.Jobs.Length, canRunOver) is not { } free) return null;
        if (solve(free) is not { Value: { } soonest } || kept[fixing].Start - soonest[fixing].Start < worthwhile) return null;
        var by = Minutes.Floor(soonest[fixing].Start + worthwhile);
        var begun = graph.With(fixing, job => job with { Starts = job.Starts with { To = Math.Min(job.Starts.To, by) } });
        return Least(begun, graph, fixing, canRunOver, isPatient, solve);
    }

    /// <summary>
    /// The jobs of which as few as can be, from one on, have no greatest time any more, and their dates; null where there are none.
    /// </summary>
    /// <param name="bound">The jobs as they are to be dated.</param>
    /// <param name="graph">The jobs with all their limits.</param>
    /// <param name="from">The number of the first that may run over.</param>
    /// <param name="canRunOver">Whether a job is one in which the body lies in its fluid.</param>
    /// <param name="isPatient">Whether it bears to lie in that fluid for long.</param>
    /// <param name="solve">Dates jobs.</param>
    public static (JobGraph Graph, Schedule Dates)? Least(
        JobGraph bound, JobGraph graph, int from, Func<int, bool> canRunOver, Func<int, bool> isPatient, Func<JobGraph, Checked<Schedule>?> solve)
    {
        (JobGraph Graph, Schedule Dates)? best = null;
        var least = (IsLong: true, Over: double.PositiveInfinity);
        for (var i = from; i < graph.Jobs.Length; i++)
        {
            if (Freed(bound, i, i + 1, canRunOver) is not { } one || Solved(one) is not { } solved) continue;
            var times = Overrun(solved.Dates, graph, i);

            // The project's choice: up to twice its time the least share is taken; beyond, the body lies in the last fluid that it bears for long.
            var over = times > 2 && isPatient(i) ? (false, 2) : (times > 2, times);
            if (over.CompareTo(least) <= 0) (best, least) = (solved, over);
        }

        // The last first: what stands in alcohol bears more than what is still in its fixative.
        for (var i = graph.Jobs.Length - 1; best is null && i >= from; i--)
        {
            if (Freed(bound, i, graph.Jobs.Length, canRunOver) is { } last) best = Solved(last);
        }

        return best;

        (JobGraph Graph, Schedule Dates)? Solved(JobGraph with)
        {
            if (solve(with) is not { Value: { } dates }) return null;
            for (var i = from; i < graph.Jobs.Length; i++)
            {
                if (graph.Jobs[i].Lasts.HasGreatest && !isPatient(i) && Overrun(dates, graph, i) > MostTimes) return null;
            }

            return (with, dates);
        }
    }

    /// <summary>The jobs from one on without their greatest times; null where none has one.</summary>
    private static JobGraph? Freed(JobGraph graph, int first, int to, Func<int, bool> canRunOver)
    {
        Job[] jobs = [.. graph.Jobs];
        var isFreed = false;
        for (var i = first; i < to; i++)
        {
            if (!jobs[i].Lasts.HasGreatest || !canRunOver(i)) continue;
            jobs[i] = jobs[i] with { Lasts = jobs[i].Lasts with { Greatest = Minutes.Far } };
            isFreed = true;
        }

        return isFreed ? graph.With(jobs) : null;
    }

    /// <summary>What is to be said of the steps that run over.</summary>
    /// <param name="limits">The jobs with all their limits.</param>
    /// <param name="dates">The dates that are taken.</param>
    /// <param name="fixing">The job that would have begun too late within the limits, and when; null where there are no dates within them.</param>
    /// <param name="wished">The job whose day a person insists on, and the number of it; null where there is none.</param>
    /// <param name="zone">The bench's clocks.</param>
    /// <param name="instead">What can be done about it; null for what can where the bench is closed or a day is wished.</param>
    public static IEnumerable<Finding> Told(
        JobGraph limits, Schedule dates, (string Id, Instant Start)? fixing, (string Id, int Number)? wished, DateTimeZone zone, Phrase? instead = null)
    {
        for (var i = 0; i < limits.Jobs.Length; i++)
        {
            var lasts = limits.Jobs[i].Lasts;
            if (!lasts.HasGreatest || Overrun(dates, limits, i) <= 1) continue;
            var due = dates[i].Start + Duration.FromMinutes(lasts.Greatest);
            yield return Finding.Warning(
                RunsOver.Id,
                RunsOver.With(
                    Argument.Id("step", dates[i].Id),
                    ("time", dates[i].End - dates[i].Start),
                    ("most", Duration.FromMinutes(lasts.Greatest)),
                    Argument.At("due", due, zone),
                    ("otherwise", fixing is var (id, late) ? Otherwise.With(Argument.Id("fixing", id), Argument.At("late", late, zone)) : default)),
                instead is not null ? instead : wished is var (step, number) && number > i
                    ? SoonerDay.With(Argument.Id("wished", step), ("on", dates[number].Start.Minus(dates[i].End - due).InZone(zone).Date))
                    : ComeIn.With(("on", due.InZone(zone).Date))) with
            { Subject = dates[i].Id };
        }
    }

    private static double Overrun(Schedule dates, JobGraph graph, int i) =>
        (dates[i].End - dates[i].Start).TotalMinutes / Math.Max(1, graph.Jobs[i].Lasts.Greatest);
}
