using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches.Opening;
using Protocolist.Findings;
using Protocolist.Planning.Drafting;
using Protocolist.Planning.Scheduling;

namespace Protocolist.Planning.Dating;

/// <summary>The deliveries that a plan's steps wait for, as far as there are dates for it, and those that come too late.</summary>
internal sealed class AwaitedDeliveries
{
    private static readonly Phrase WaitsForDelivery =
        new("waits-for-delivery", "'{step}' waits for {item}, {at} at the earliest; with it at hand it could begin {without}");
    private static readonly Phrase ChangeWaits = new(
        "waits-for-delivery.change", "a change of fluid in '{step}' waits for {item}, {at} at the earliest; with it at hand it could end {without}");
    /// <summary>What can be done about waiting for a delivery.</summary>
    public static Phrase GetItSooner { get; } = new("waits-for-delivery.remedy", "get it sooner, or borrow it");

    private readonly ImmutableArray<Delivery?> all;
    private readonly ImmutableArray<Delivery?> awaited;
    private readonly List<DraftStep> open;
    private readonly DateTimeZone zone;

    private AwaitedDeliveries(ImmutableArray<Delivery?> all, ImmutableArray<Delivery?> awaited, List<DraftStep> open, DateTimeZone zone) =>
        (this.all, this.awaited, this.open, this.zone) = (all, awaited, open, zone);

    /// <summary>Whether nothing is waited for, or no more.</summary>
    public bool IsEmpty => awaited.All(d => d is null);

    /// <summary>All of them.</summary>
    /// <param name="deliveries">For each open step the delivery that it waits for; empty where none waits.</param>
    /// <param name="open">The steps.</param>
    /// <param name="zone">On whose clocks moments are told.</param>
    public static AwaitedDeliveries Of(ImmutableArray<Delivery?> deliveries, List<DraftStep> open, DateTimeZone zone) =>
        new(deliveries, deliveries, open, zone);

    /// <summary>Without the first delivery that comes later than its step could begin or end: that is the one for which there are no dates.</summary>
    /// <param name="supplied">The dates with all at hand.</param>
    public AwaitedDeliveries WithoutOne(Schedule supplied)
    {
        var first = -1;
        for (var i = awaited.Length - 1; i >= 0; i--)
        {
            if (awaited[i] is { } d && (first < 0 || d.At > Moment(supplied, i, d))) first = i;
        }

        return new(all, awaited.SetItem(first, null), open, zone);
    }

    /// <summary>The same jobs, each held up by its delivery, and the first one begun by a moment where that is given.</summary>
    public JobGraph Hold(JobGraph graph, Instant? beginBy)
    {
        if (awaited.IsEmpty) return graph;
        Job[] jobs = [.. graph.Jobs];
        for (var i = 0; i < jobs.Length; i++)
        {
            var starts = jobs[i].Starts;
            if (awaited[i] is { IsForChanges: true } change)
            {
                // After each change that waits the body lies in it for as long as in each filling before.
                var last = change.At + (open[i].Least / (1 + open[i].Changes) * (1 + open[i].Changes - change.Fillings));
                jobs[i] = jobs[i] with { Ends = jobs[i].Ends with { From = Math.Max(jobs[i].Ends.From, Minutes.Ceiling(last)) } };
            }
            else if (awaited[i] is { } delivery)
            {
                starts = starts with { From = Math.Max(starts.From, Minutes.Ceiling(delivery.At)) };
            }

            if (i == 0 && beginBy is { } latest) starts = starts with { To = Math.Min(starts.To, Minutes.Floor(latest)) };
            jobs[i] = jobs[i] with { Starts = starts };
        }

        return graph.With(jobs);
    }

    /// <summary>Where waiting for a delivery moves the work: the first delivery that does.</summary>
    public Finding? Told(Schedule dates, Schedule supplied)
    {
        var moved = Enumerable.Range(0, awaited.Length)
            .Where(i => awaited[i] is { } d && Moment(dates, i, d) > Moment(supplied, i, d) && (d.IsForChanges || d.At > Moment(supplied, i, d)))
            .OrderBy(i => awaited[i]!.At).ThenBy(i => open[i].Id, StringComparer.Ordinal);
        foreach (var i in moved)
        {
            var message = (awaited[i]!.IsForChanges ? ChangeWaits : WaitsForDelivery).With(
                Argument.Id("step", open[i].Id),
                ("item", awaited[i]!.Item),
                Argument.At("at", awaited[i]!.At, zone),
                Argument.At("without", Moment(supplied, i, awaited[i]!), zone));
            return Finding.Note(WaitsForDelivery.Id, message, GetItSooner) with { Subject = open[i].Id };
        }

        return null;
    }

    /// <summary>Those that are waited for no more and come after their step has begun, or, where only its changes need them, has ended.</summary>
    public IEnumerable<Finding> Missed(Schedule dates) =>
        Enumerable.Range(0, all.Length)
            .Where(i => awaited[i] is null && all[i] is { } d && d.At > Moment(dates, i, d))
            .Select(i => all[i]!).DistinctBy(d => d.Item).Select(d => d.ComesTooLate(zone));

    /// <summary>The moment of a step that waits: its beginning, or its end where only a change does.</summary>
    private static Instant Moment(Schedule dates, int i, Delivery delivery) => delivery.IsForChanges ? dates[i].End : dates[i].Start;
}
