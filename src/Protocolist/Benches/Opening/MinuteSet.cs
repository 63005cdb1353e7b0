using NodaTime;

namespace Protocolist.Benches.Opening;

/// <summary>A set of minutes as stretches, in order and apart. Immutable.</summary>
/// <remarks>Stretches that only follow each other minute by minute stay two, because work may not run from one into the next.</remarks>
internal sealed class MinuteSet
{
    private readonly Stretch[] _stretches;

    private MinuteSet(Stretch[] stretches) => _stretches = stretches;

    public static MinuteSet Everything { get; } = new([Stretch.Everything]);

    public static MinuteSet Nothing { get; } = new([]);

    public ReadOnlySpan<Stretch> Stretches => _stretches;

    public bool IsEmpty => _stretches.Length == 0;

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

    /// <summary>The set with time running backwards.</summary>
    public MinuteSet Mirrored() => new([.. _stretches.Reverse().Select(s => new Stretch(-s.To, -s.From))]);

    /// <summary>The minutes that are in both.</summary>
    public MinuteSet Intersect(MinuteSet other)
    {
        if (ReferenceEquals(other, Everything)) return this;
        var both = new List<Stretch>(_stretches.Length);
        foreach (var one in _stretches)
        {
            for (var i = other.FirstEndingFrom(one.From); i < other._stretches.Length && other._stretches[i].From <= one.To; i++)
                both.Add(new(Math.Max(one.From, other._stretches[i].From), Math.Min(one.To, other._stretches[i].To)));
        }

        return new MinuteSet([.. both]);
    }

    /// <summary>The number of the first stretch that ends at or after a minute; their count when there is none.</summary>
    public int FirstEndingFrom(long minute)
    {
        var (low, high) = (0, _stretches.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (_stretches[middle].To < minute) low = middle + 1;
            else high = middle;
        }

        return low;
    }

    /// <summary>The stretch that holds a minute, or the next one after it; null when there is none.</summary>
    public Stretch? At(long minute) => FirstEndingFrom(minute) is var i && i < _stretches.Length ? _stretches[i] : null;
}
