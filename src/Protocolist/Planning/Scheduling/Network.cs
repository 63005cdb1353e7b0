namespace Protocolist.Planning.Scheduling;

/// <summary>The admissible minutes of one date.</summary>
internal readonly record struct Date(MinuteSet Allowed, long NotBefore, long NotAfter)
{
    public long? Next(long minute) => Allowed.Next(Math.Max(minute, NotBefore)) is { } found && found <= NotAfter ? found : null;
}

/// <summary>One date lies at least and at most so many minutes after another; both within one stretch of <paramref name="Within"/>, where given.</summary>
internal readonly record struct Arc(int From, int To, long Least, long Greatest, MinuteSet? Within);

/// <summary>A problem as bare arithmetic: two dates a job (its start at 2 i, its end at 2 i + 1) and bounded differences between dates.</summary>
/// <param name="Dates">The dates.</param>
/// <param name="Arcs">The differences.</param>
/// <param name="IsPath">Whether arc number i leads from date i to date i + 1 and there are no others.</param>
internal sealed record Network(Date[] Dates, Arc[] Arcs, bool IsPath)
{
    /// <summary>Every date at its earliest; null when no dates fit.</summary>
    /// <remarks>
    /// There is always one answer that is best for all dates at once. If two schedules fit, so does the one that takes
    /// the earlier of the two for every date: a set of admissible minutes holds either of them, and a bounded difference that holds for
    /// two pairs holds for the pair of their lesser members. (Such constraints are called min-closed: Jeavons &amp; Cooper 1995,
    /// "Tractable constraints on ordered domains", Artificial Intelligence 79; cited from memory.)
    /// </remarks>
    public long[]? Earliest() => IsPath ? PathSolver.Earliest(this) : GraphSolver.Earliest(this);

    /// <summary>Every date at its latest; null when no dates fit.</summary>
    public long[]? Latest()
    {
        if (Mirrored().Earliest() is not { } mirrored) return null;
        Array.Reverse(mirrored);
        return Array.ConvertAll(mirrored, m => -m);
    }

    /// <summary>The same problem with time running backwards: what is earliest there is latest here.</summary>
    private Network Mirrored()
    {
        var last = Dates.Length - 1;
        var sets = new Dictionary<MinuteSet, MinuteSet>(ReferenceEqualityComparer.Instance);
        var dates = Array.ConvertAll(Dates, d => new Date(Mirror(d.Allowed), -d.NotAfter, -d.NotBefore));
        var arcs = Array.ConvertAll(Arcs, a => new Arc(last - a.To, last - a.From, a.Least, a.Greatest, a.Within is { } held ? Mirror(held) : null));
        Array.Reverse(dates);
        Array.Reverse(arcs);
        return new Network(dates, arcs, IsPath);

        MinuteSet Mirror(MinuteSet set) => sets.TryGetValue(set, out var known) ? known : sets[set] = set.Mirrored();
    }
}
