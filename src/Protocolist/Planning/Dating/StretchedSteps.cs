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
    private static readonly Phrase RunsOver = new(
        "step-runs-over",
        "'{step}' lasts {time:clock}, and {most:clock} is the most for it: the bench is closed when it should end, {due}; "
        + "to keep to it, '{fixing}' would have begun only {late}");

    private static readonly Phrase ComeIn = new("step-runs-over.remedy", "have somebody come in on {on} ('also-open' in the bench file)");

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
    /// <param name="solve">Dates jobs.</param>
    public static (JobGraph Graph, Schedule Dates)? For(
        JobGraph graph,
        Schedule kept,
        int fixing,
        Duration borne,
        Instant asked,
        Duration worthwhile,
        Func<int, bool> canRunOver,
        Func<JobGraph, Checked<Schedule>?> solve)
    {
        if (kept[fixing].Start - asked <= borne || Freed(fixing, graph.Jobs.Length) is not { } free) return null;
        if (solve(free) is not { Value: { } soonest } || kept[fixing].Start - soonest[fixing].Start < worthwhile) return null;
        var by = Minutes.Floor(soonest[fixing].Start + worthwhile);
        (JobGraph Graph, Schedule Dates)? best = null;
        var least = double.PositiveInfinity;
        for (var i = fixing; i < graph.Jobs.Length; i++)
        {
            if (Freed(i, i + 1) is not { } one || Solved(one) is not { } solved) continue;
            var over = Overrun(solved.Dates, graph, i);
            if (over < least) (best, least) = (solved, over);
        }

        // The last first: what stands in alcohol bears more than what is still in its fixative.
        for (var i = graph.Jobs.Length - 1; best is null && i >= fixing; i--)
        {
            if (Freed(i, graph.Jobs.Length) is { } last) best = Solved(last);
        }

        return best;

        // The jobs from one on without their greatest times; null where none has one.
        JobGraph? Freed(int first, int to)
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

        (JobGraph Graph, Schedule Dates)? Solved(JobGraph with)
        {
            var begun = with.With(fixing, job => job with { Starts = job.Starts with { To = Math.Min(job.Starts.To, by) } });
            return solve(begun) is { Value: { } dates } ? (begun, dates) : null;
        }
    }

    /// <summary>What is to be said of the steps that run over.</summary>
    public static IEnumerable<Finding> Told(JobGraph limits, Schedule dates, Schedule kept, int fixing, DateTimeZone zone)
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
                    Argument.Id("fixing", dates[fixing].Id),
                    Argument.At("late", kept[fixing].Start, zone)),
                ComeIn.With(("on", due.InZone(zone).Date))) with
            { Subject = dates[i].Id };
        }
    }

    private static double Overrun(Schedule dates, JobGraph graph, int i) =>
        (dates[i].End - dates[i].Start).TotalMinutes / Math.Max(1, graph.Jobs[i].Lasts.Greatest);
}
