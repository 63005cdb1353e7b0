using System.Collections.Immutable;
using NodaTime;

namespace Protocolist.Planning.Scheduling;

/// <summary>Jobs and what binds them in time. A chain is the common case and the fast one; any small acyclic graph is solved exactly too.</summary>
internal sealed record JobGraph
{
    private JobGraph(ImmutableArray<Job> jobs, ImmutableArray<Link> links) => (Jobs, Links) = (jobs, links);

    /// <summary>In the order the caller gave.</summary>
    public ImmutableArray<Job> Jobs { get; private init; }

    public ImmutableArray<Link> Links { get; private init; }

    /// <summary>Whether each job follows the one before it in the list and nothing else binds them.</summary>
    public bool IsChain => Links.Length == Jobs.Length - 1
        && Links.Index().All(l => l.Item.From == Anchor.End && l.Item.Before == Jobs[l.Index].Id && l.Item.After == Jobs[l.Index + 1].Id);

    /// <summary>The shortest time that all jobs take one after another: no earliest plan is longer but for waiting.</summary>
    public Duration LeastTotal
    {
        get
        {
            var sum = Duration.Zero;
            foreach (var job in Jobs) sum += Duration.Max(job.Lasts.Least, (job.HandsOnAtStart ?? Duration.Zero) + (job.HandsOnAtEnd ?? Duration.Zero));
            foreach (var link in Links) sum += link.Lag.Least;
            return sum;
        }
    }

    /// <exception cref="ArgumentException">An id comes twice, or a link names a job that is not there.</exception>
    public static JobGraph Of(IEnumerable<Job> jobs, IEnumerable<Link> links)
    {
        var graph = new JobGraph([.. jobs], [.. links]);
        var ids = new HashSet<string>(StringComparer.Ordinal);
        foreach (var job in graph.Jobs)
        {
            if (!ids.Add(job.Id)) throw new ArgumentException($"the job '{job.Id}' is there twice", nameof(jobs));
        }

        foreach (var link in graph.Links)
        {
            if (!ids.Contains(link.Before) || !ids.Contains(link.After)) throw new ArgumentException($"no such job: '{link.Before}' or '{link.After}'", nameof(links));
        }

        return graph;
    }

    /// <summary>Jobs one after another, each after its lag from the end of the one before; the first one's lag is not used.</summary>
    public static JobGraph Chain(params IEnumerable<(Window Lag, Job Job)> jobs)
    {
        var all = jobs.ToImmutableArray();
        return Of(all.Select(j => j.Job), all.Zip(all.Skip(1), (before, after) => new Link(before.Job.Id, after.Job.Id, after.Lag)));
    }

    public JobGraph With(int index, Func<Job, Job> change) => this with { Jobs = Jobs.SetItem(index, change(Jobs[index])) };

    public JobGraph WithLink(int index, Func<Link, Link> change) => this with { Links = Links.SetItem(index, change(Links[index])) };
}
