namespace Protocolist.Planning.Scheduling;

/// <summary>
/// A least choice of members that has one in each of some sets; sets can be added between searches, and a search goes on from the size of the last.
/// </summary>
/// <param name="count">Members are numbered from 0 to one less.</param>
/// <param name="mostChoices">How many partial choices are weighed over all searches.</param>
internal sealed class HittingSet(int count, int mostChoices)
{
    private readonly List<int[]> _sets = [];
    private readonly bool[] _taken = new bool[count];
    private readonly bool[] _barred = new bool[count];
    private readonly List<int> _chosen = [];
    private int _size;
    private int _choices;

    /// <summary>Whether the choices ran out before an answer was found.</summary>
    public bool IsSpent => _choices > mostChoices;

    public void Add(int[] set) => _sets.Add(set);

    /// <summary>A least choice; null where there is none of fewer than <paramref name="below"/> members, or the choices ran out.</summary>
    public IReadOnlyList<int>? Least(int below)
    {
        for (; _size < below && !IsSpent; _size++)
        {
            _chosen.Clear();
            Array.Clear(_taken);
            if (Choose(_size)) return [.. _chosen];
        }

        return null;
    }

    /// <summary>Goes through the members of the smallest set that has none yet; one that was tried in vain stays out of the rest.</summary>
    private bool Choose(int left)
    {
        if (_choices++ > mostChoices) return false;
        int[]? least = null;
        var fewest = int.MaxValue;
        foreach (var set in _sets)
        {
            if (Array.Exists(set, i => _taken[i])) continue;
            var open = set.Count(i => !_barred[i]);
            if (open < fewest) (least, fewest) = (set, open);
        }

        if (least is null) return true;
        if (left == 0 || Apart() > left) return false;
        var tried = new List<int>();
        var found = false;
        foreach (var i in least)
        {
            if (_barred[i]) continue;
            _taken[i] = true;
            _chosen.Add(i);
            found = Choose(left - 1);
            if (found) break;
            _chosen.RemoveAt(_chosen.Count - 1);
            _taken[i] = false;
            _barred[i] = true;
            tried.Add(i);
        }

        foreach (var i in tried) _barred[i] = false;
        return found;
    }

    /// <summary>How many of the sets without a chosen member have nothing in common: each needs one of its own.</summary>
    private int Apart()
    {
        var seen = new bool[count];
        var apart = 0;
        foreach (var set in _sets)
        {
            if (Array.Exists(set, i => _taken[i] || (seen[i] && !_barred[i]))) continue;
            foreach (var i in set) seen[i] = true;
            apart++;
        }

        return apart;
    }
}
