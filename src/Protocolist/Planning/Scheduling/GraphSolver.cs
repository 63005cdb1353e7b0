using Protocolist.Benches.Opening;

namespace Protocolist.Planning.Scheduling;

/// <summary>
/// The exact answer for any graph: every date starts at its first admissible minute and is moved later only where a bound forces it; where nothing moves
/// any more, all bounds hold and no date could be earlier.
/// </summary>
internal static class GraphSolver
{
    public static long[]? Earliest(Network network)
    {
        if (!DifferencesAgree(network)) return null;
        var dates = network.Dates;
        var at = new long[dates.Length];
        for (var i = 0; i < at.Length; i++)
        {
            if (dates[i].Next(-Minutes.Far) is not { } first) return null;
            at[i] = first;
        }

        for (var moved = true; moved;)
        {
            moved = false;
            foreach (ref readonly var arc in network.Arcs)
            {
                if (!Raise(dates, at, arc.To, at[arc.From] + arc.Least, ref moved)) return null;
                if (!Raise(dates, at, arc.From, at[arc.To] - arc.Greatest, ref moved)) return null;
                if (arc.Within is null) continue;
                if (arc.Within.At(at[arc.To]) is not { } held) return null;
                if (!Raise(dates, at, arc.To, held.From, ref moved) || !Raise(dates, at, arc.From, held.From, ref moved)) return null;
            }
        }

        return at;
    }

    private static bool Raise(ReadOnlySpan<Date> dates, long[] at, int date, long minute, ref bool moved)
    {
        if (at[date] >= minute) return true;
        if (dates[date].Next(minute) is not { } next) return false;
        at[date] = next;
        return moved = true;
    }

    /// <summary>Whether the differences alone can hold together; otherwise raising would creep on, minute by minute.</summary>
    private static bool DifferencesAgree(Network network)
    {
        var at = new long[network.Dates.Length];
        for (var round = 0; round <= at.Length; round++)
        {
            var moved = false;
            foreach (ref readonly var arc in network.Arcs)
            {
                moved |= Raise(ref at[arc.To], at[arc.From] + arc.Least);
                moved |= Raise(ref at[arc.From], at[arc.To] - arc.Greatest);
            }

            if (!moved) return true;
        }

        return false;
    }

    private static bool Raise(ref long at, long minute)
    {
        if (at >= minute) return false;
        at = minute;
        return true;
    }
}
