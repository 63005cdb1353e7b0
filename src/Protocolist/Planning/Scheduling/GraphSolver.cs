namespace Protocolist.Planning.Scheduling;

/// <summary>The exact answer for any graph: every date starts at its first admissible minute and is moved later only where a bound forces it; where nothing moves any more, all bounds hold and no date could be earlier.</summary>
internal static class GraphSolver
{
    public static long[]? Earliest(Network network)
    {
        if (!DifferencesAgree(network)) return null;
        var at = new long[network.Dates.Length];
        for (var i = 0; i < at.Length; i++)
        {
            if (network.Dates[i].Next(-Minutes.Far) is not { } first) return null;
            at[i] = first;
        }

        for (var moved = true; moved;)
        {
            moved = false;
            foreach (var arc in network.Arcs)
            {
                if (!Raise(arc.To, at[arc.From] + arc.Least) || !Raise(arc.From, at[arc.To] - arc.Greatest)) return null;
                if (arc.Within is null) continue;
                if (arc.Within.At(at[arc.To]) is not { } held) return null;
                if (!Raise(arc.To, held.From) || !Raise(arc.From, held.From)) return null;
            }

            bool Raise(int date, long minute)
            {
                if (at[date] >= minute) return true;
                if (network.Dates[date].Next(minute) is not { } next) return false;
                at[date] = next;
                return moved = true;
            }
        }

        return at;
    }

    /// <summary>Whether the differences alone can hold together; otherwise raising would creep on, minute by minute.</summary>
    private static bool DifferencesAgree(Network network)
    {
        var at = new long[network.Dates.Length];
        for (var round = 0; round <= at.Length; round++)
        {
            var moved = false;
            foreach (var arc in network.Arcs)
            {
                moved |= Raise(arc.To, at[arc.From] + arc.Least);
                moved |= Raise(arc.From, at[arc.To] - arc.Greatest);
            }

            if (!moved) return true;
        }

        return false;

        bool Raise(int date, long minute)
        {
            if (at[date] >= minute) return false;
            at[date] = minute;
            return true;
        }
    }
}
