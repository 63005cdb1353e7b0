using System.Collections.Immutable;
using NodaTime;

namespace Protocolist.Planning.Scheduling;

/// <summary>One job with its dates, on whole minutes.</summary>
internal sealed record ScheduledJob(string Id, Instant Start, Instant End);

/// <summary>All jobs of a graph with their dates, in the graph's order.</summary>
internal sealed record Schedule(ImmutableArray<ScheduledJob> Jobs)
{
    public Instant Start => Jobs.Min(j => j.Start);

    public Instant End => Jobs.Max(j => j.End);

    public ScheduledJob this[string id] => Jobs.First(j => j.Id == id);

    public static Schedule Of(JobGraph graph, long[] minutes) =>
        new([.. graph.Jobs.Select((job, i) => new ScheduledJob(job.Id, Minutes.At(minutes[2 * i]), Minutes.At(minutes[2 * i + 1])))]);
}
