using NodaTime;
using Protocolist.Benches.Opening;
using Protocolist.Findings;

namespace Protocolist.Planning.Scheduling;

/// <summary>Dates jobs exactly. The earliest schedule is the best one for every job at once: in no schedule that keeps all limits does any job start or end earlier (<see cref="Network.Earliest"/> says why there is one).</summary>
internal static class Scheduler
{
    /// <summary>Every start and end as early as it can be.</summary>
    /// <returns>
    /// The schedule with notes on clock changes that touch it; or no schedule and the error <c>no-dates-fit</c>, which names a smallest
    /// set of limits that clash and what would free it. That no fewer clash is proven within a bounded search (<see cref="SmallestConflict"/>), which is enough for
    /// plans of the usual length; where it is not, the message says that there may be fewer, and still none of those named can be left out.
    /// </returns>
    public static Checked<Schedule> Earliest(JobGraph graph, OpeningHours hours, Instant from, Bookings? taken = null) =>
        TryEarliest(graph, hours, from, taken) is { Value: not null } dated
            ? dated
            : new Checked<Schedule>(null, [Clash.Explain(graph, new Horizon(hours, taken ?? Bookings.None, from, Soonest(graph, from) + Longest))]);

    /// <summary>As <see cref="Earliest"/>, but silent where no dates fit: to find out which limits clash costs many times as much as to date.</summary>
    public static Checked<Schedule> TryEarliest(JobGraph graph, OpeningHours hours, Instant from, Bookings? taken = null)
    {
        var soonest = Soonest(graph, from);
        foreach (var slack in Slacks(graph))
        {
            // An answer within a shorter horizon is the answer: nothing later can make a date earlier.
            var horizon = new Horizon(hours, taken ?? Bookings.None, from, soonest + slack);
            if (horizon.Earliest(graph) is { } schedule) return new(schedule, [.. horizon.Notes(schedule)]);
        }

        return new Checked<Schedule>(null, []);
    }

    private static Instant Soonest(JobGraph graph, Instant from) => graph.Jobs.SelectMany(j => new[] { j.NotBefore, j.EndNotBefore }).Append(from).Max()!.Value + graph.LeastTotal;

    /// <summary>Every start and end as late as it can be with all work done by a date: when to start, and how long each step can wait.</summary>
    /// <param name="graph">The jobs.</param>
    /// <param name="hours">When the bench is open.</param>
    /// <param name="from">Nothing starts before this.</param>
    /// <param name="by">Nothing ends after this.</param>
    /// <param name="taken">What other plans take.</param>
    /// <returns>As <see cref="Earliest"/>. To plan forward from the latest start, give it to <see cref="Earliest"/>: that leaves the slack at the end.</returns>
    public static Checked<Schedule> Latest(JobGraph graph, OpeningHours hours, Instant from, Instant by, Bookings? taken = null)
    {
        foreach (var start in Slacks(graph).Select(slack => Instant.Max(from, by - graph.LeastTotal - slack)).Append(from).Distinct())
        {
            var horizon = new Horizon(hours, taken ?? Bookings.None, start, by);
            if (horizon.Latest(graph) is { } schedule) return new(schedule, [.. horizon.Notes(schedule)]);
        }

        var dated = graph;
        for (var i = 0; i < graph.Jobs.Length; i++) dated = dated.With(i, job => job with { EndBy = job.EndBy < by ? job.EndBy : by });
        var wide = new Horizon(hours, taken ?? Bookings.None, from, Instant.Max(from, by) + graph.LeastTotal + Longest);
        return new Checked<Schedule>(null, [Clash.Explain(dated, wide)]);
    }

    // Horizons to try, as time beyond the work itself: a job waits for the bench less than a day on average, so the first holds most plans.
    // Four hundred days show every weekday and every yearly closure once; what does not fit then never will, short of a change.
    private static IEnumerable<Duration> Slacks(JobGraph graph) =>
        [Duration.FromDays(7) + graph.Jobs.Length * Duration.FromHours(18), Duration.FromDays(90), Longest];

    private static readonly Duration Longest = Duration.FromDays(400);
}
