using NodaTime;
using Protocolist.Benches.Opening;
using Protocolist.Findings;

namespace Protocolist.Planning.Scheduling;

/// <summary>A stretch of the calendar in which jobs are dated: nothing starts before it and nothing ends after it.</summary>
internal sealed class Horizon(OpeningHours hours, Bookings taken, Instant from, Instant until)
{
    private readonly long _from = Minutes.Ceiling(from);
    private readonly long _until = Minutes.Floor(until);
    private readonly OpenTimes _times = hours.Between(from, until);
    private readonly Dictionary<(Duration HandsOn, bool AtEnd), MinuteSet> _known = [];
    private MinuteSet? _open;

    public OpeningHours Hours => hours;

    public Instant From => from;

    public Instant Until => until;

    public Schedule? Earliest(JobGraph graph) => NetworkOf(graph).Earliest() is { } dates ? Schedule.Of(graph, dates) : null;

    public Schedule? Latest(JobGraph graph) => NetworkOf(graph).Latest() is { } dates ? Schedule.Of(graph, dates) : null;

    /// <summary>Notes on the clock changes that touch a schedule.</summary>
    public IEnumerable<Finding> Notes(Schedule schedule) =>
        schedule.Jobs.IsEmpty ? [] : _times.ClockNotes.Where(n => n.At >= schedule.Start && n.At <= schedule.End).Select(n => n.Note);

    public Horizon With(IEnumerable<ExtraOpening> openings) => new(openings.Aggregate(hours, (all, one) => all.With(one)), taken, from, until);

    private Network NetworkOf(JobGraph graph)
    {
        var dates = new Date[graph.Jobs.Length * 2];
        var arcs = new List<Arc>(graph.Jobs.Length + graph.Links.Length);
        var isPath = graph.IsChain;
        var number = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var i = 0; i < graph.Jobs.Length; i++)
        {
            var job = graph.Jobs[i];
            number[job.Id] = i;
            dates[2 * i] = new(Allowed(job, job.HandsOnAtStart, atEnd: false), NotBefore(job.NotBefore), NotAfter(job.StartBy));
            dates[2 * i + 1] = new(Allowed(job, job.HandsOnAtEnd, atEnd: true), NotBefore(job.EndNotBefore), NotAfter(job.EndBy));
            var (least, greatest) = Minutes.Of(job.Lasts);
            least = Math.Max(least, Minutes.Ceiling(job.HandsOnAtStart ?? Duration.Zero) + Minutes.Ceiling(job.HandsOnAtEnd ?? Duration.Zero));
            arcs.Add(new Arc(2 * i, 2 * i + 1, least, greatest, Held(job)));
            if (isPath && i < graph.Links.Length) arcs.Add(Lag(2 * i + 1, 2 * i + 2, graph.Links[i]));
        }

        if (!isPath) arcs.AddRange(graph.Links.Select(l => Lag(2 * number[l.Before] + (l.From == Anchor.End ? 1 : 0), 2 * number[l.After], l)));
        return new Network(dates, [.. arcs], isPath);
    }

    private static Arc Lag(int before, int after, Link link) =>
        Minutes.Of(link.Lag) is var (least, greatest) ? new Arc(before, after, least, greatest, null) : default;

    private long NotBefore(Instant? bound) => bound is { } at ? Math.Max(_from, Minutes.Ceiling(at)) : _from;

    private long NotAfter(Instant? bound) => bound is { } at ? Math.Min(_until, Minutes.Floor(at)) : _until;

    /// <summary>The minutes at which hands-on time can start (or end) so that all of it is in one opening and what it needs is free.</summary>
    private MinuteSet Allowed(Job job, Duration? handsOn, bool atEnd)
    {
        if (handsOn is not { } time) return MinuteSet.Everything;
        var simple = job.Needs.All(n => n.Throughout);
        if (simple && _known.TryGetValue((time, atEnd), out var known)) return known;
        var work = _open ??= MinuteSet.Of(_times.Intervals.AsSpan());
        foreach (var need in job.Needs.Where(n => !n.Throughout)) work = work.Intersect(taken.Free(need));
        var minutes = Minutes.Ceiling(time);
        var allowed = atEnd ? work.Moved(minutes, 0) : work.Moved(0, -minutes);
        if (simple) _known[(time, atEnd)] = allowed;
        return allowed;
    }

    private MinuteSet? Held(Job job) =>
        job.Needs.Any(n => n.Throughout) ? job.Needs.Where(n => n.Throughout).Aggregate(MinuteSet.Everything, (free, need) => taken.Free(need).Intersect(free)) : null;
}
