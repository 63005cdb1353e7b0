using System.Collections.Immutable;

namespace Protocolist.Planning.Scheduling;

/// <summary>Demands, by number, that cannot all hold.</summary>
/// <param name="Members">In rising order.</param>
/// <param name="IsProven">Whether no smaller set clashes; otherwise only that none of these can be left out.</param>
internal sealed record Conflict(ImmutableArray<int> Members, bool IsProven);

/// <summary>A smallest set of demands that clash, for demands of which fewer are never harder to meet.</summary>
/// <remarks>
/// Every clash shares a member with every way out (a set of demands whose loss would free the rest). So a least set that shares a member
/// with each way out found so far is no larger than any clash: where it clashes itself it is a smallest one, and where it does not, it
/// leads to one more way out. (The method of implicit hitting sets, as in Ignatiev, Previti, Liffiton and Marques-Silva 2015, "Smallest MUS
/// extraction with minimal hitting set dualization"; cited from memory.)
/// A clash that cannot be made less by leaving any one member out is looked for first; it ends the search as soon as no smaller one can be.
/// </remarks>
internal static class SmallestConflict
{
    /// <summary>The smallest.</summary>
    /// <param name="count">How many demands there are; together they clash.</param>
    /// <param name="fit">Whether the demands marked true can all hold.</param>
    /// <param name="mostTries">
    /// How often <paramref name="fit"/> is asked in search of a proof, and a hundredth of how many partial choices are weighed. Beyond it the smaller of two
    /// irreducible clashes is given as not proven: many alike demands, of which any half clash, have too many ways out to go through.
    /// </param>
    public static Conflict Of(int count, Func<bool[], bool> fit, int mostTries)
    {
        int[] all = [.. Enumerable.Range(0, count)];
        var (late, early) = (Irreducible(all, fit), Irreducible([.. all.Reverse()], fit));
        var known = early.Length <= late.Length ? early : late;
        var waysOut = new HittingSet(count, 100 * mostTries);
        while (mostTries > 0)
        {
            if (waysOut.Least(known.Length) is not { } least) return new(known, !waysOut.IsSpent);
            if (!Try(Marked(count, least))) return new([.. least.Order()], true);
            waysOut.Add(WayOut(least));
        }

        return new(known, false);

        bool Try(bool[] held)
        {
            mostTries--;
            return fit(held);
        }

        // What is left when as many demands as can be are added to some that fit.
        int[] WayOut(IEnumerable<int> fitting)
        {
            var held = Marked(count, fitting);
            var outside = new List<int>();
            Add([.. all.Where(i => !held[i])]);
            return [.. outside];

            void Add(ReadOnlySpan<int> some)
            {
                foreach (var i in some) held[i] = true;
                if (some.IsEmpty || Try(held)) return;
                foreach (var i in some) held[i] = false;
                if (some.Length == 1)
                {
                    outside.Add(some[0]);
                    return;
                }

                Add(some[..(some.Length / 2)]);
                Add(some[(some.Length / 2)..]);
            }
        }
    }

    /// <summary>A clash of which no member can be left out: whatever is not needed for it is dropped, in halves and then one by one.</summary>
    private static ImmutableArray<int> Irreducible(int[] inOrder, Func<bool[], bool> fit)
    {
        var held = Marked(inOrder.Length, inOrder);
        Drop(inOrder);
        return [.. held.Index().Where(h => h.Item).Select(h => h.Index)];

        void Drop(ReadOnlySpan<int> some)
        {
            foreach (var i in some) held[i] = false;
            if (some.IsEmpty || !fit(held)) return;
            foreach (var i in some) held[i] = true;
            if (some.Length == 1) return;
            Drop(some[..(some.Length / 2)]);
            Drop(some[(some.Length / 2)..]);
        }
    }

    private static bool[] Marked(int count, IEnumerable<int> members)
    {
        var marked = new bool[count];
        foreach (var i in members) marked[i] = true;
        return marked;
    }
}
