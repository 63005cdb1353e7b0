namespace Protocolist.Planning.Scheduling;

/// <summary>The exact answer for a chain: forward, the set of minutes at which each date can fall given all before it; then back from the first possible end.</summary>
internal static class PathSolver
{
    public static long[]? Earliest(Network network)
    {
        var dates = network.Dates;
        if (dates.Length == 0) return [];
        var reach = new MinuteSet[dates.Length];
        var scratch = new List<Stretch>();
        reach[0] = dates[0].Allowed.Clipped(dates[0].NotBefore, dates[0].NotAfter);
        foreach (var arc in network.Arcs)
        {
            var next = dates[arc.To];
            reach[arc.To] = reach[arc.From].Reach(arc.Least, arc.Greatest, arc.Within, next.Allowed, next.NotBefore, next.NotAfter, scratch);
            if (reach[arc.To].IsEmpty) return null;
        }

        if (reach[^1].IsEmpty) return null;
        var at = new long[dates.Length];
        at[^1] = reach[^1].Least;
        for (var i = network.Arcs.Length - 1; i >= 0; i--)
        {
            var arc = network.Arcs[i];
            var lowest = at[arc.To] - arc.Greatest;
            if (arc.Within?.At(at[arc.To]) is { } held) lowest = Math.Max(lowest, held.From);
            at[arc.From] = reach[arc.From].Next(lowest)!.Value;
        }

        return at;
    }
}
