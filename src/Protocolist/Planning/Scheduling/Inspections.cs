using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches.Opening;
using Protocolist.Findings;

namespace Protocolist.Planning.Scheduling;

/// <summary>Visits inside a long soak, in open hours, at the protocol's rhythm and never further apart than its limit.</summary>
/// <param name="Every">The rhythm.</param>
/// <param name="AtMost">The longest time without anybody looking, from the soak's start to its end; at least <paramref name="Every"/>.</param>
/// <param name="HandsOn">How long one visit takes; it lies in one opening.</param>
internal sealed record Inspections(Duration Every, Duration AtMost, Duration HandsOn)
{
    private static readonly Phrase NobodyLooks = new(
        "inspection-gap", "nobody can look between {from} and {to} ({zone}), {time:clock}; the limit is {limit:clock}");

    private static readonly Phrase ComeInBy = new("inspection-gap.remedy", "have somebody come in by {by}, or begin the soak on another day");

    /// <summary>Dates the visits; the start and the end of the soak count as visits too.</summary>
    /// <returns>
    /// The starts of the visits. Each is the first open moment at or after the rhythm's turn (none shortly before the end); where the limit forbids
    /// waiting so long, the last opening before it, early enough that the next opening still comes in time. The error <c>inspection-gap</c> stands where
    /// the bench is closed for longer than the limit.
    /// </returns>
    public (ImmutableArray<Instant> Visits, ImmutableArray<Finding> Findings) During(Interval soak, OpeningHours hours)
    {
        var starts = MinuteSet.Of(hours.Between(soak.Start, soak.End).Intervals.AsSpan()).Moved(0, -Minutes.Ceiling(HandsOn));
        var visits = ImmutableArray.CreateBuilder<Instant>();
        var findings = ImmutableArray.CreateBuilder<Finding>();
        var (every, limit) = (Math.Max(1, Minutes.Floor(Every)), Math.Max(1, Minutes.Floor(AtMost)));
        var (last, end) = (Minutes.Floor(soak.Start), Minutes.Floor(soak.End));
        while (end - last > every)
        {
            var next = Next(starts, last, every, limit, end);
            if ((next ?? end) - last > limit) findings.Add(Gap(last, next ?? end, hours));
            if (next is null) break;
            visits.Add(Minutes.At(next.Value));
            last = next.Value;
        }

        return (visits.DrainToImmutable(), findings.DrainToImmutable());
    }

    /// <summary>The next visit after one, or null when the soak's end is the next.</summary>
    private static long? Next(MinuteSet starts, long last, long every, long limit, long end)
    {
        var turn = starts.Next(last + every);
        if (end - last <= limit && (turn is null || end - turn < every / 2)) return null; // the end comes soon enough
        if (turn is { } due && due - last <= limit) return due < end ? InTime(due) : null;

        // Too late: the last opening before the limit, or, where all of it is closed, the first one after.
        var before = starts.Clipped(last + 1, last + limit).Stretches;
        if (before.IsEmpty) return turn < end ? turn : null;
        return InTime(before[^1].From);

        // Later in the same opening where that is needed for the next opening (or the end) to come within the limit.
        long InTime(long visit)
        {
            if (starts.At(visit) is not { } opening || opening.To >= visit + every) return visit; // the next one finds it open still
            var following = starts.Next(opening.To + 1) ?? end;
            if (following - opening.To > limit) return Math.Min(opening.To, last + limit); // a gap in any case: as late as may be
            return Math.Clamp(following - limit, visit, Math.Min(opening.To, last + limit));
        }
    }

    private Finding Gap(long from, long to, OpeningHours hours)
    {
        var (last, next, zone) = (Minutes.At(from), Minutes.At(to), hours.Zone);
        var message = NobodyLooks.With(
            Argument.At("from", last, zone), Argument.At("to", next, zone), ("zone", zone.Id), ("time", next - last), ("limit", AtMost));
        return Finding.Error("inspection-gap", message, ComeInBy.With(Argument.At("by", last + AtMost, zone)));
    }
}
