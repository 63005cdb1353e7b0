using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Protocolist.Benches.Opening;

namespace Protocolist.Planning.Scheduling;

/// <summary>A change of a problem's jobs and links in place.</summary>
internal delegate void Change(Span<Job> jobs, Span<Link> links);

/// <summary>Jobs and what binds them in time. A chain is the common case and the fast one; any small acyclic graph is solved exactly too. Immutable.</summary>
internal sealed class JobGraph
{
    private JobGraph(Job[] jobs, ImmutableArray<Link> links, bool isChain) =>
        (Jobs, Links, IsChain) = (ImmutableCollectionsMarshal.AsImmutableArray(jobs), links, isChain);

    /// <summary>In the order the caller gave.</summary>
    public ImmutableArray<Job> Jobs { get; }

    public ImmutableArray<Link> Links { get; }

    /// <summary>Whether each job follows the one before it in the list and nothing else binds them.</summary>
    public bool IsChain { get; }

    /// <summary>The shortest time in minutes that all jobs take one after another: no earliest plan is longer but for waiting.</summary>
    public long LeastTotal
    {
        get
        {
            var sum = 0L;
            foreach (ref readonly var job in Jobs.AsSpan()) sum += job.Shortest;
            foreach (ref readonly var link in Links.AsSpan()) sum += link.Lag.Least;
            return sum;
        }
    }

    /// <summary>The last of the moments before which a job cannot start or end.</summary>
    public long LastNotBefore
    {
        get
        {
            var last = -Minutes.Far;
            foreach (ref readonly var job in Jobs.AsSpan()) last = Math.Max(last, Math.Max(job.Starts.From, job.Ends.From));
            return last;
        }
    }

    /// <exception cref="ArgumentException">A link names a job that is not there.</exception>
    public static JobGraph Of(IEnumerable<Job> jobs, IEnumerable<Link> links)
    {
        Job[] all = [.. jobs];
        Link[] bonds = [.. links];
        var isChain = bonds.Length == all.Length - 1;
        foreach (var (i, bond) in bonds.Index())
        {
            if (Math.Min(bond.Before, bond.After) < 0 || Math.Max(bond.Before, bond.After) >= all.Length)
                throw new ArgumentException($"no such job: {bond.Before} or {bond.After}", nameof(links));
            isChain &= bond.From == Anchor.End && bond.Before == i && bond.After == i + 1;
        }

        return new(all, ImmutableCollectionsMarshal.AsImmutableArray(bonds), isChain);
    }

    /// <summary>Jobs one after another, each after its lag from the end of the one before; the first one's lag is not used.</summary>
    public static JobGraph Chain(params IEnumerable<(Window Lag, Job Job)> jobs)
    {
        var all = jobs.ToList();
        return Chain([.. all.Select(j => j.Job)], [.. all.Select(j => j.Lag)]);
    }

    /// <summary>The same, with the lag of each job at its own place.</summary>
    /// <param name="jobs">The jobs; the array is the graph's from now on.</param>
    /// <param name="lags">As many lags.</param>
    public static JobGraph Chain(Job[] jobs, ReadOnlySpan<Window> lags)
    {
        var links = new Link[Math.Max(0, jobs.Length - 1)];
        for (var i = 0; i < links.Length; i++) links[i] = new(i, i + 1, lags[i + 1]);
        return new(jobs, ImmutableCollectionsMarshal.AsImmutableArray(links), isChain: true);
    }

    /// <summary>Other jobs, bound as these are.</summary>
    /// <param name="jobs">As many jobs; the array is the graph's from now on.</param>
    public JobGraph With(Job[] jobs) => new(jobs, Links, IsChain);

    public JobGraph With(params IEnumerable<Change> changes)
    {
        Job[] jobs = [.. Jobs];
        Link[] links = [.. Links];
        foreach (var change in changes) change(jobs, links);
        return new(jobs, ImmutableCollectionsMarshal.AsImmutableArray(links), IsChain);
    }

    public JobGraph With(int index, Func<Job, Job> change) => With((jobs, _) => jobs[index] = change(jobs[index]));
}
