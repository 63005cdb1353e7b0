using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches.Opening;

namespace Protocolist.Planning.Scheduling;

/// <summary>Pieces of work spread over a time in even shares, each in an opening: changes of a fluid.</summary>
/// <param name="Pieces">How many.</param>
/// <param name="HandsOn">How long one takes; it lies in one opening.</param>
internal readonly record struct SpreadWork(int Pieces, Duration HandsOn)
{
    /// <summary>Less than this part of an even share between two of them, or before the end, does little.</summary>
    private const int LeastPart = 4;

    /// <summary>From which piece on, counted from 0, something has to be delivered first.</summary>
    public int FirstWaiting { get; init; } = int.MaxValue;

    /// <summary>When that is there.</summary>
    public Instant Delivered { get; init; }

    /// <summary>The nearest open moment to the turn of each, in order and apart from the start, from each other and from the end.</summary>
    /// <returns>Their starts; fewer than there are pieces where the bench does not open for all of them.</returns>
    public ImmutableArray<Instant> During(Interval time, OpenMinutes open)
    {
        var (start, end, work) = (Minutes.Ceiling(time.Start), Minutes.Floor(time.End), Math.Max(1, Minutes.Ceiling(HandsOn)));
        if (Pieces <= 0 || end - start <= work) return [];
        var moments = ImmutableArray.CreateBuilder<Instant>(Pieces);
        var (share, last) = ((double)(end - start) / (Pieces + 1), start);
        var apart = Math.Max(work, (long)(share / LeastPart));
        var starts = new Date(open.Between(time.Start, time.End).Set, new(start + apart, end - apart), WorkAfter: work);
        for (var piece = 0; piece < Pieces; piece++)
        {
            var earliest = last + apart;
            if (piece >= FirstWaiting) earliest = Math.Max(earliest, Minutes.Ceiling(Delivered));
            var turn = Math.Max(earliest, start + (long)Math.Round(share * (piece + 1)));
            if (Nearest(starts, turn, earliest) is not { } moment) break;
            moments.Add(Minutes.At(moment));
            last = moment;
        }

        return moments.DrainToImmutable();
    }

    private static long? Nearest(in Date starts, long turn, long earliest)
    {
        var after = starts.Next(turn);
        if (starts.Until(turn) is not { } opening) return after;
        var before = Math.Min(opening.To, turn);
        if (before < earliest) return after;
        return after is { } later && later - turn < turn - before ? later : before;
    }
}
