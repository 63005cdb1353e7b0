using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches.Opening;
using Protocolist.Findings;

namespace Protocolist.Planning.Scheduling;

/// <summary>Visits inside a long soak, in open hours, at the protocol's rhythm and never further apart than its limit.</summary>
/// <param name="Every">The rhythm.</param>
/// <param name="AtMost">The longest time without anybody looking, from the soak's start to its end; at least <paramref name="Every"/>.</param>
/// <param name="HandsOn">How long one visit takes; it lies in one opening.</param>
internal readonly record struct Inspections(Duration Every, Duration AtMost, Duration HandsOn)
{
    private static readonly Phrase GapPhrase =
        new("inspection-gap", "nobody can look between {from} and {to} ({zone}), {time:clock}; the limit is {limit:clock}");
    private static readonly Phrase ComeInBy = new("inspection-gap.remedy", "have somebody come in by {by}, or begin the soak on another day");

    /// <summary>Dates the visits; the start and the end of the soak count as visits too.</summary>
    /// <returns>
    /// The starts of the visits. Each is the first open moment at or after the rhythm's turn (none shortly before the end); where the limit forbids
    /// waiting so long, the last opening before it, early enough that the next opening still comes in time. The error <c>inspection-gap</c> stands where
    /// the bench is closed for longer than the limit.
    /// </returns>
    public (ImmutableArray<Instant> Visits, ImmutableArray<Finding> Findings) During(Interval soak, OpenMinutes open)
    {
        var (every, limit, handsOn) = (Math.Max(1, Minutes.Floor(Every)), Math.Max(1, Minutes.Floor(AtMost)), Minutes.Ceiling(HandsOn));
        var (last, end) = (Minutes.Floor(soak.Start), Minutes.Floor(soak.End));
        if (end - last <= every) return ([], []);
        var starts = new Date(open.Between(soak.Start, soak.End).Set, new(Minutes.Ceiling(soak.Start), end - handsOn), WorkAfter: handsOn);
        var visits = ImmutableArray.CreateBuilder<Instant>();
        var findings = ImmutableArray<Finding>.Empty;
        while (end - last > every)
        {
            var next = Next(starts, last, every, limit, end);
            if ((next ?? end) - last > limit) findings = findings.Add(Gap(last, next ?? end, open.Hours.Zone));
            if (next is null) break;
            visits.Add(Minutes.At(next.Value));
            last = next.Value;
        }

        return (visits.DrainToImmutable(), findings);
    }

    /// <summary>The next visit after one, or null when the soak's end is the next.</summary>
    private static long? Next(in Date starts, long last, long every, long limit, long end)
    {
        var turn = starts.Next(last + every);
        if (end - last <= limit && (turn is null || end - turn < every / 2)) return null; // the end comes soon enough
        if (turn is { } due && due - last <= limit) return due < end ? InTime(starts, due, last, every, limit, end) : null;

        // Too late: the last opening before the limit, or, where all of it is closed, the first one after.
        if (starts.Until(last + limit) is not { } before || before.To <= last) return turn < end ? turn : null;
        return InTime(starts, Math.Max(before.From, last + 1), last, every, limit, end);
    }

    /// <summary>Later in the same opening where that is needed for the next opening (or the end) to come within the limit.</summary>
    private static long InTime(in Date starts, long visit, long last, long every, long limit, long end)
    {
        if (starts.From(visit) is not { } opening || opening.To >= visit + every) return visit; // the next one finds it open still
        var following = starts.Next(opening.To + 1) ?? end;
        if (following - opening.To > limit) return Math.Min(opening.To, last + limit); // a gap in any case: as late as may be
        return Math.Clamp(following - limit, visit, Math.Min(opening.To, last + limit));
    }

    private Finding Gap(long from, long to, DateTimeZone zone) => Finding.Error(
        GapPhrase.Id,
        GapPhrase.With(
            Argument.At("from", Minutes.At(from), zone),
            Argument.At("to", Minutes.At(to), zone),
            ("zone", zone.Id),
            ("time", Duration.FromMinutes(to - from)),
            ("limit", AtMost)),
        ComeInBy.With(Argument.At("by", Minutes.At(from) + AtMost, zone)));
}
