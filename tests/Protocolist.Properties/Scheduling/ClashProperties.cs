using FsCheck;
using FsCheck.Fluent;
using NodaTime;
using Protocolist.Planning.Scheduling;

namespace Protocolist.Properties.Scheduling;

public class ClashProperties
{
    private const int Plenty = 100_000;

    [Property(MaxTest = 1000, Arbitrary = [typeof(SmallChains)])]
    public void No_fewer_limits_of_a_chain_clash_than_those_named(SmallProblem problem) => IsSmallest(problem);

    [Property(MaxTest = 1000, Arbitrary = [typeof(SmallGraphs)])]
    public void No_fewer_limits_of_a_graph_clash_than_those_named(SmallProblem problem) => IsSmallest(problem);

    /// <summary>Where the clashes are known beforehand, the least of them is the answer, whatever else clashes.</summary>
    [Property(MaxTest = 2000, Arbitrary = [typeof(SomeClashes)])]
    public void The_least_of_some_given_clashes_is_found(int[][] clashes)
    {
        var found = SmallestConflict.Of(SomeClashes.Count, Fit, Plenty);

        Assert.True(found.IsProven);
        Assert.Equal(clashes.Min(c => c.Length), found.Members.Length);
        Assert.Contains(clashes, c => c.Order().SequenceEqual(found.Members));

        bool Fit(bool[] held) => !clashes.Any(c => c.All(i => held[i]));
    }

    [Property(MaxTest = 500, Arbitrary = [typeof(SomeClashes)])]
    public void Without_tries_to_prove_it_a_clash_is_named_all_the_same_from_which_nothing_can_be_left_out(int[][] clashes)
    {
        var found = SmallestConflict.Of(SomeClashes.Count, Fit, 0);

        Assert.False(found.IsProven);
        Assert.Contains(clashes, c => c.Order().SequenceEqual(found.Members));

        bool Fit(bool[] held) => !clashes.Any(c => c.All(i => held[i]));
    }

    private static void IsSmallest(SmallProblem problem)
    {
        var horizon = problem.Horizon;
        if (horizon.Earliest(problem.Graph) is not null) return;
        var all = Limit.AllOf(problem.Graph, DateTimeZone.Utc).ToList();
        var (named, isProven) = Clash.Smallest(problem.Graph, horizon);

        Assert.True(isProven);
        Assert.False(CanHold([.. named.Select(n => all.FindIndex(l => l.Text == n.Text))]));

        // More limits are never easier to keep, so sets of one fewer stand for all that are smaller.
        foreach (var fewer in Subsets(all.Count, named.Count - 1)) Assert.True(CanHold(fewer), string.Join("; ", fewer.Select(i => all[i].Text)));

        bool CanHold(int[] held) => horizon.Earliest(problem.Graph.With(all.Where((_, i) => !held.Contains(i)).Select(l => l.Without))) is not null;
    }

    private static IEnumerable<int[]> Subsets(int count, int size, int from = 0)
    {
        if (size <= 0) return size == 0 ? [[]] : [];
        return Enumerable.Range(from, Math.Max(0, count - from)).SelectMany(first => Subsets(count, size - 1, first + 1).Select(rest => (int[])[first, .. rest]));
    }
}

/// <summary>Random sets of demands that clash, none holding another.</summary>
public static class SomeClashes
{
    public const int Count = 12;

    public static Arbitrary<int[][]> Some() => (
        from sets in Gen.NonEmptyListOf(Gen.SubListOf(Enumerable.Range(0, Count)))
        let clashes = sets.Where(s => s.Count > 0).Select(s => s.Order().ToArray()).ToList()
        let least = clashes.Where((c, i) => !clashes.Where((other, j) => j != i && (other.Length < c.Length || (other.Length == c.Length && j < i))).Any(other => other.All(c.Contains))).ToArray()
        where least.Length > 0
        select least).ToArbitrary();
}
