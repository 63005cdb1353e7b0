using Protocolist.Benches.Opening;

namespace Protocolist.Planning.Scheduling;

/// <summary>The minutes at which one date can fall: those of a set that leave room for the work inside their stretch, between two bounds.</summary>
/// <param name="Allowed">The set.</param>
/// <param name="Between">The bounds.</param>
/// <param name="WorkBefore">How many minutes of its stretch lie before the date: work that ends with it.</param>
/// <param name="WorkAfter">How many lie after it: work that begins with it.</param>
/// <param name="IsMirrored">Whether it is asked with time running backwards. The set, the bounds and the work stay as they are.</param>
internal readonly record struct Date(MinuteSet Allowed, Stretch Between, long WorkBefore = 0, long WorkAfter = 0, bool IsMirrored = false)
{
    /// <summary>The first of the minutes at or after one; null when there is none.</summary>
    public long? Next(long minute) => From(minute) is { } found ? Math.Max(found.From, minute) : null;

    /// <summary>The stretch of the minutes that holds one, or the next after it; null when there is none.</summary>
    public Stretch? From(long minute)
    {
        if (IsMirrored) return (this with { IsMirrored = false }).Until(-minute) is { } back ? new(-back.To, -back.From) : null;
        var stretches = Allowed.Stretches;
        for (var i = Allowed.FirstEndingFrom(Math.Max(minute, Between.From) + WorkAfter); i < stretches.Length; i++)
        {
            var found = Within(stretches[i]);
            if (Math.Max(found.From, minute) > Between.To) return null;
            if (found.From <= found.To) return found;
        }

        return null;
    }

    /// <summary>The stretch of the minutes that holds one, or the last before it; null when there is none.</summary>
    public Stretch? Until(long minute)
    {
        var stretches = Allowed.Stretches;
        for (var i = Math.Min(Allowed.FirstEndingFrom(Math.Min(minute, Between.To) - WorkBefore), stretches.Length - 1); i >= 0; i--)
        {
            var found = Within(stretches[i]);
            if (found.To < Between.From) return null;
            if (found.From <= found.To && found.From <= minute) return found;
        }

        return null;
    }

    private Stretch Within(Stretch whole) => new(Math.Max(whole.From + WorkBefore, Between.From), Math.Min(whole.To - WorkAfter, Between.To));
}

/// <summary>One date lies at least and at most so many minutes after another; both within one stretch of <paramref name="Within"/>, where given.</summary>
internal readonly record struct Arc(int From, int To, long Least, long Greatest, MinuteSet? Within);

/// <summary>A problem as bare arithmetic: two dates a job (its start at 2 i, its end at 2 i + 1) and bounded differences between dates.</summary>
/// <param name="dates">The dates.</param>
/// <param name="arcs">The differences.</param>
/// <param name="isPath">Whether arc number i leads from date i to date i + 1 and there are no others.</param>
internal readonly ref struct Network(ReadOnlySpan<Date> dates, ReadOnlySpan<Arc> arcs, bool isPath)
{
    public ReadOnlySpan<Date> Dates { get; } = dates;

    public ReadOnlySpan<Arc> Arcs { get; } = arcs;

    /// <summary>Every date at its earliest; null when no dates fit.</summary>
    /// <remarks>
    /// There is always one answer that is best for all dates at once. If two schedules fit, so does the one that takes
    /// the earlier of the two for every date: a set of admissible minutes holds either of them, and a bounded difference that holds for
    /// two pairs holds for the pair of their lesser members. (Such constraints are called min-closed: Jeavons &amp; Cooper 1995,
    /// "Tractable constraints on ordered domains", Artificial Intelligence 79; cited from memory.)
    /// </remarks>
    public long[]? Earliest() => isPath ? PathSolver.Earliest(this) : GraphSolver.Earliest(this);

    /// <summary>Every date at its latest; null when no dates fit: the same problem with time running backwards.</summary>
    public long[]? Latest()
    {
        var (dates, arcs) = (Dates.ToArray(), Arcs.ToArray());
        var last = dates.Length - 1;
        foreach (ref var date in dates.AsSpan()) date = date with { IsMirrored = true };
        foreach (ref var arc in arcs.AsSpan()) arc = arc with { From = last - arc.To, To = last - arc.From, Within = arc.Within?.Mirrored() };
        Array.Reverse(dates);
        Array.Reverse(arcs);
        if (new Network(dates, arcs, isPath).Earliest() is not { } mirrored) return null;
        Array.Reverse(mirrored);
        return Array.ConvertAll(mirrored, m => -m);
    }
}
