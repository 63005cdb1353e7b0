using NodaTime;

namespace Protocolist.Planning.Scheduling;

/// <summary>A stretch of whole minutes since the Unix epoch, both ends included.</summary>
internal readonly record struct Stretch(long From, long To);

/// <summary>Whole minutes: the resolution of the calendar.</summary>
internal static class Minutes
{
    /// <summary>Far beyond every date, with room for sums of many.</summary>
    public const long Far = 1L << 50;

    public static long Floor(Instant at) => (long)Math.Floor(at.ToUnixTimeSeconds() / 60m);

    public static long Ceiling(Instant at) => Floor(at) is var minute && At(minute) < at ? minute + 1 : minute;

    public static Instant At(long minute) => Instant.FromUnixTimeSeconds(minute * 60);

    public static long Floor(Duration time) => (long)Math.Floor(time.Days * 1440m + time.NanosecondOfDay / 60_000_000_000m);

    public static long Ceiling(Duration time) => -Floor(-time);

    /// <summary>The least and the greatest of a window; a window whose limits contradict each other stays so.</summary>
    public static (long Least, long Greatest) Of(Window window)
    {
        var least = Ceiling(window.Least);
        if (window.Greatest is not { } limit) return (least, Far);
        return (least, limit >= window.Least ? Math.Max(least, Floor(limit)) : Floor(limit));
    }
}

/// <summary>A set of minutes as stretches: in order and apart. Stretches that only follow each other minute by minute stay two, because work may not run from one into the next.</summary>
internal sealed class MinuteSet
{
    private readonly Stretch[] _stretches;

    private MinuteSet(Stretch[] stretches) => _stretches = stretches;

    public static MinuteSet Everything { get; } = new([new(-Minutes.Far, Minutes.Far)]);

    public static MinuteSet Nothing { get; } = new([]);

    public ReadOnlySpan<Stretch> Stretches => _stretches;

    public bool IsEmpty => _stretches.Length == 0;

    public long Least => _stretches[0].From;

    /// <summary>Stretches in order of their starts; those that overlap or share a minute are joined, those that end before they start are dropped.</summary>
    public static MinuteSet Of(ReadOnlySpan<Stretch> inOrder)
    {
        var joined = new List<Stretch>(inOrder.Length);
        foreach (var next in inOrder)
        {
            if (next.To < next.From) continue;
            if (joined.Count > 0 && next.From <= joined[^1].To) joined[^1] = new(joined[^1].From, Math.Max(joined[^1].To, next.To));
            else joined.Add(next);
        }

        return new MinuteSet([.. joined]);
    }

    /// <summary>The whole minutes inside intervals that are in order and apart.</summary>
    public static MinuteSet Of(ReadOnlySpan<Interval> intervals)
    {
        var stretches = new Stretch[intervals.Length];
        for (var i = 0; i < intervals.Length; i++) stretches[i] = new(Minutes.Ceiling(intervals[i].Start), Minutes.Floor(intervals[i].End));
        return Of(stretches);
    }

    /// <summary>Each stretch moved by different amounts at its two ends.</summary>
    public MinuteSet Moved(long from, long to) => Of(Array.ConvertAll(_stretches, s => new Stretch(s.From + from, s.To + to)));

    public MinuteSet Mirrored() => new([.. _stretches.Reverse().Select(s => new Stretch(-s.To, -s.From))]);

    public MinuteSet Intersect(MinuteSet other)
    {
        if (ReferenceEquals(other, Everything)) return this;
        var both = new List<Stretch>(_stretches.Length + other._stretches.Length);
        Meet(both, _stretches, 0, 0, other, -Minutes.Far, Minutes.Far);
        return new MinuteSet([.. both]);
    }

    /// <summary>What this set reaches after <paramref name="least"/> to <paramref name="greatest"/> minutes inside <paramref name="allowed"/> and between two bounds; all the while within one stretch of <paramref name="within"/>, where given.</summary>
    public MinuteSet Reach(long least, long greatest, MinuteSet? within, MinuteSet allowed, long notBefore, long notAfter, List<Stretch> scratch)
    {
        scratch.Clear();
        if (least > greatest) return Nothing;
        if (within is null)
        {
            Meet(scratch, _stretches, least, greatest, allowed, notBefore, notAfter);
        }
        else
        {
            foreach (var held in within._stretches)
            {
                var here = Clip(held.From, held.To);
                Meet(scratch, here, least, greatest, allowed, Math.Max(notBefore, held.From), Math.Min(notAfter, held.To));
            }
        }

        return scratch.Count == 0 ? Nothing : new MinuteSet([.. scratch]);
    }

    public MinuteSet Clipped(long from, long to) => new([.. Clip(from, to)]);

    /// <summary>The stretch that holds a minute, or the next one after it; null when there is none.</summary>
    public Stretch? At(long minute)
    {
        var (low, high) = (0, _stretches.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (_stretches[middle].To < minute) low = middle + 1;
            else high = middle;
        }

        return low < _stretches.Length ? _stretches[low] : null;
    }

    /// <summary>The first minute of the set at or after one; null when there is none.</summary>
    public long? Next(long minute) => At(minute) is { } found ? Math.Max(found.From, minute) : null;

    private Stretch[] Clip(long from, long to) =>
        from > to ? [] : [.. _stretches.Where(s => s.To >= from && s.From <= to).Select(s => new Stretch(Math.Max(s.From, from), Math.Min(s.To, to)))];

    // Both lists are in order: one walk over the two. Moved starts that run into each other are one.
    private static void Meet(List<Stretch> result, ReadOnlySpan<Stretch> starts, long least, long greatest, MinuteSet allowed, long notBefore, long notAfter)
    {
        var there = allowed._stretches;
        var first = 0;
        for (var i = 0; i < starts.Length;)
        {
            var from = starts[i].From + least;
            var to = starts[i].To + greatest;
            for (i++; i < starts.Length && starts[i].From + least <= to; i++) to = starts[i].To + greatest;
            from = Math.Max(from, notBefore);
            to = Math.Min(to, notAfter);
            if (from > to) continue;
            while (first < there.Length && there[first].To < from) first++;
            for (var k = first; k < there.Length && there[k].From <= to; k++) result.Add(new(Math.Max(there[k].From, from), Math.Min(there[k].To, to)));
        }
    }
}
