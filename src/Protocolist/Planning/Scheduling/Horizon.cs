using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using Protocolist.Benches;
using Protocolist.Benches.Opening;
using Protocolist.Findings;

namespace Protocolist.Planning.Scheduling;

/// <summary>A stretch of the calendar in which jobs are dated: nothing starts before it and nothing ends after it.</summary>
/// <param name="open">When the bench is open.</param>
/// <param name="taken">What other plans take.</param>
/// <param name="between">The stretch.</param>
internal sealed class Horizon(OpenMinutes open, Bookings taken, Stretch between)
{
    /// <summary>The dates of a plan of sixteen steps, which most have not.</summary>
    private const int Usual = 32;

    private readonly OpenMinutes _open = open.Between(Minutes.At(between.From), Minutes.At(between.To));

    public OpeningHours Hours => _open.Hours;

    public Stretch Between { get; } = between;

    public Schedule? Earliest(JobGraph graph) => Dated(graph, latest: false);

    public Schedule? Latest(JobGraph graph) => Dated(graph, latest: true);

    /// <summary>Notes on the clock changes that touch a schedule.</summary>
    public ImmutableArray<Finding> Notes(Schedule schedule) => schedule.Count == 0 || _open.ClockNotes.IsEmpty
        ? []
        : [.. _open.ClockNotes.Where(n => n.At >= schedule.Start && n.At <= schedule.End).Select(n => n.Note)];

    public Horizon With(IEnumerable<ExtraOpening> openings) => new(OpenMinutes.Of(openings.Aggregate(Hours, (all, one) => all.With(one))), taken, Between);

    private Schedule? Dated(JobGraph graph, bool latest)
    {
        // On the stack where it has the usual length.
        Room<Date> someDates = default;
        Room<Arc> someArcs = default;
        var (count, bonds) = (2 * graph.Jobs.Length, graph.Jobs.Length + graph.Links.Length);
        var dates = count <= Usual ? ((Span<Date>)someDates)[..count] : new Date[count];
        var arcs = bonds <= Usual ? ((Span<Arc>)someArcs)[..bonds] : new Arc[bonds];
        Fill(graph, dates, arcs);
        var network = new Network(dates, arcs, graph.IsChain);
        return (latest ? network.Latest() : network.Earliest()) is { } minutes ? new Schedule(graph, minutes) : null;
    }

    private void Fill(JobGraph graph, Span<Date> dates, Span<Arc> arcs)
    {
        var next = 0;
        for (var i = 0; i < graph.Jobs.Length; i++)
        {
            ref readonly var job = ref graph.Jobs.ItemRef(i);
            dates[2 * i] = new(Allowed(job, job.FirstWork), Within(job.Starts), WorkAfter: job.FirstWork ?? 0);
            dates[(2 * i) + 1] = new(Allowed(job, job.LastWork), Within(job.Ends), WorkBefore: job.LastWork ?? 0);
            arcs[next++] = new(2 * i, (2 * i) + 1, job.Shortest, job.Lasts.Greatest, Held(job));
            if (graph.IsChain && i < graph.Links.Length) arcs[next++] = Lag(graph.Links[i]);
        }

        if (graph.IsChain) return;
        foreach (var link in graph.Links) arcs[next++] = Lag(link);
    }

    private static Arc Lag(Link link) => new((2 * link.Before) + (link.From == Anchor.End ? 1 : 0), 2 * link.After, link.Lag.Least, link.Lag.Greatest, null);

    private Stretch Within(Stretch bounds) => new(Math.Max(Between.From, bounds.From), Math.Min(Between.To, bounds.To));

    /// <summary>The minutes in which hands-on time can lie: the bench is open, and what the work needs is free.</summary>
    private MinuteSet Allowed(in Job job, long? work)
    {
        if (work is null) return MinuteSet.Everything;
        var allowed = _open.Set;
        foreach (var need in job.Needs)
        {
            if (!need.Throughout) allowed = allowed.Intersect(taken.Free(need));
        }

        return allowed;
    }

    /// <summary>The minutes for which what the job holds throughout is free; null where it holds nothing.</summary>
    private MinuteSet? Held(in Job job)
    {
        MinuteSet? held = null;
        foreach (var need in job.Needs)
        {
            if (need.Throughout) held = taken.Free(need).Intersect(held ?? MinuteSet.Everything);
        }

        return held;
    }

    [InlineArray(Usual)]
    private struct Room<T>
    {
        private T _first;
    }
}
