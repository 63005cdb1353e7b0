using System.Collections;
using NodaTime;
using Protocolist.Benches.Opening;

namespace Protocolist.Planning.Scheduling;

/// <summary>One job with its dates, on whole minutes.</summary>
internal readonly record struct ScheduledJob(string Id, Instant Start, Instant End);

/// <summary>All jobs of a graph with their dates, in the graph's order. Immutable.</summary>
/// <param name="graph">The graph.</param>
/// <param name="minutes">Start and end of each job, one after another; the array is the schedule's from now on.</param>
internal sealed class Schedule(JobGraph graph, long[] minutes) : IReadOnlyList<ScheduledJob>
{
    public int Count => graph.Jobs.Length;

    public Instant Start => Minutes.At(minutes.Min());

    public Instant End => Minutes.At(minutes.Max());

    public ScheduledJob this[int index] => new(graph.Jobs[index].Id, Minutes.At(minutes[2 * index]), Minutes.At(minutes[(2 * index) + 1]));

    public IEnumerator<ScheduledJob> GetEnumerator() => Enumerable.Range(0, Count).Select(i => this[i]).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
