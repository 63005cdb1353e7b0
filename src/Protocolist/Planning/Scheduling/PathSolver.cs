using Protocolist.Benches.Opening;

namespace Protocolist.Planning.Scheduling;

/// <summary>
/// The exact answer for a chain: date after date takes its first admissible minute. Where the one before it would lie too far back, that one is moved later,
/// and the walk goes on from there.
/// </summary>
/// <remarks>
/// No date is moved further than what binds it forces, so where the walk ends all bounds hold and nothing could be earlier. It ends because the
/// differences of a chain agree with each other where each does with itself: what one walk back has moved stands, until a date has to step to a later
/// stretch of its minutes, of which there are so many.
/// </remarks>
internal static class PathSolver
{
    public static long[]? Earliest(Network network)
    {
        var dates = network.Dates;
        var arcs = network.Arcs;
        if (dates.IsEmpty) return [];
        if (dates[0].Next(-Minutes.Far) is not { } first) return null;
        var at = new long[dates.Length];
        Array.Fill(at, -Minutes.Far);
        at[0] = first;
        for (var i = 0; i < arcs.Length;)
        {
            ref readonly var arc = ref arcs[i];
            if (arc.Least > arc.Greatest || !Raise(dates[i + 1], ref at[i + 1], at[i] + arc.Least)) return null;
            var lowest = at[i + 1] - arc.Greatest;
            if (arc.Within is { } within)
            {
                if (within.At(at[i + 1]) is not { } held) return null;
                if (held.From > at[i + 1])
                {
                    if (!Raise(dates[i + 1], ref at[i + 1], held.From)) return null;
                    continue;
                }

                lowest = Math.Max(lowest, held.From);
            }

            if (at[i] >= lowest) i++;
            else if (!Raise(dates[i], ref at[i], lowest)) return null;
            else if (i > 0) i--;
        }

        return at;
    }

    private static bool Raise(in Date date, ref long at, long minute)
    {
        if (at >= minute) return true;
        if (date.Next(minute) is not { } next) return false;
        at = next;
        return true;
    }
}
