using NodaTime;
using Protocolist.Benches.Opening;
using Protocolist.Findings;

namespace Protocolist.Planning.Scheduling;

/// <summary>Dates jobs exactly, in whole minutes.</summary>
/// <remarks>
/// The earliest schedule is the best one for every job at once: in no schedule that keeps all limits does any job start or end earlier
/// (<see cref="Network.Earliest"/> says why there is one).
/// </remarks>
internal static class Scheduler
{
    // Horizons to try, as minutes beyond the work itself: a job waits for the bench less than a day on average, so the first holds most plans.
    // Four hundred days show every weekday and every yearly closure once; what does not fit then never will, short of a change.
    private const long Day = 1440, Some = 90 * Day, Longest = 400 * Day;

    /// <summary>Every start and end as early as it can be.</summary>
    /// <returns>
    /// The schedule with notes on clock changes that touch it; or no schedule and the error <c>no-dates-fit</c>, which names a smallest
    /// set of limits that clash and what would free it. That no fewer clash is proven within a bounded search (<see cref="SmallestConflict"/>), which is
    /// enough for plans of the usual length; where it is not, the message says that there may be fewer, and still none of those named can be left out.
    /// </returns>
    public static Checked<Schedule> Earliest(JobGraph graph, OpenMinutes open, Instant from, Bookings? taken = null) =>
        TryEarliest(graph, open, from, taken) ?? new(null, [WhyNone(graph, open, from, taken)]);

    /// <summary>As <see cref="Earliest"/>, but null where no dates fit: to find out which limits clash costs many times as much as to date.</summary>
    public static Checked<Schedule>? TryEarliest(JobGraph graph, OpenMinutes open, Instant from, Bookings? taken = null)
    {
        var (start, soonest) = (Minutes.Ceiling(from), Soonest(graph, from));
        foreach (var slack in (ReadOnlySpan<long>)[Few(graph), Some, Longest])
        {
            // An answer within a shorter horizon is the answer: nothing later can make a date earlier.
            var horizon = new Horizon(open, taken ?? Bookings.None, new(start, soonest + slack));
            if (horizon.Earliest(graph) is { } schedule) return new(schedule, horizon.Notes(schedule));
        }

        return null;
    }

    /// <summary>The error <c>no-dates-fit</c> for what <see cref="TryEarliest"/> found no dates for.</summary>
    public static Finding WhyNone(JobGraph graph, OpenMinutes open, Instant from, Bookings? taken = null) =>
        Clash.Explain(graph, new(open, taken ?? Bookings.None, new(Minutes.Ceiling(from), Soonest(graph, from) + Longest)));

    /// <summary>Every start and end as late as it can be with all work done by a date: when to start, and how long each step can wait.</summary>
    /// <param name="graph">The jobs.</param>
    /// <param name="open">When the bench is open.</param>
    /// <param name="from">Nothing starts before this.</param>
    /// <param name="by">Nothing ends after this.</param>
    /// <param name="taken">What other plans take.</param>
    /// <returns>
    /// As <see cref="Earliest"/>. To plan forward from the latest start, give it to <see cref="Earliest"/>: that leaves the slack at the end.
    /// </returns>
    public static Checked<Schedule> Latest(JobGraph graph, OpenMinutes open, Instant from, Instant by, Bookings? taken = null)
    {
        var (first, last, total) = (Minutes.Ceiling(from), Minutes.Floor(by), graph.LeastTotal);
        foreach (var slack in (ReadOnlySpan<long>)[Few(graph), Some, Longest, Minutes.Far])
        {
            var start = Math.Max(first, last - total - slack);
            var horizon = new Horizon(open, taken ?? Bookings.None, new(start, last));
            if (horizon.Latest(graph) is { } schedule) return new(schedule, horizon.Notes(schedule));
            if (start == first) break;
        }

        var dated = graph.With((jobs, _) =>
        {
            foreach (ref var job in jobs) job = job with { Ends = job.Ends with { To = Math.Min(job.Ends.To, last) } };
        });
        return new(null, [Clash.Explain(dated, new(open, taken ?? Bookings.None, new(first, Math.Max(first, last) + total + Longest)))]);
    }

    private static long Soonest(JobGraph graph, Instant from) => Math.Max(Minutes.Ceiling(from), graph.LastNotBefore) + graph.LeastTotal;

    private static long Few(JobGraph graph) => (7 * Day) + (graph.Jobs.Length * 18 * 60);
}
