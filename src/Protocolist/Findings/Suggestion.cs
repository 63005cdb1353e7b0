namespace Protocolist.Findings;

/// <summary>"Did you mean": the one name near enough to a misspelt one to be worth naming.</summary>
internal static class Suggestion
{
    /// <summary>The nearest of <paramref name="known"/> within a third of the word's length (at most 3 edits), or null when none or several are.</summary>
    public static string? Nearest(string misspelt, IEnumerable<string> known)
    {
        var limit = Math.Clamp(misspelt.Length / 3, 1, 3);
        string? best = null;
        var bestDistance = int.MaxValue;
        var tied = false;
        foreach (var name in known)
        {
            if (Math.Abs(name.Length - misspelt.Length) > limit) continue;
            var distance = Distance(misspelt, name);
            if (distance > limit || distance > bestDistance) continue;
            tied = distance == bestDistance && !string.Equals(best, name, StringComparison.Ordinal);
            best = name;
            bestDistance = distance;
        }

        return tied ? null : best;
    }

    private static readonly Phrase DidYouMean = new("did-you-mean", "did you mean '{name}'?");
    private static readonly Phrase NothingFits = new("nothing-can-stand-here", "nothing can stand here");
    private static readonly Phrase KnownHere = new("known-here", "known here: {names}");
    private static readonly Phrase SeeTheGuide = new("see-the-guide", "see the authoring guide for the names known here");

    /// <summary>"Did you mean" that name.</summary>
    public static Message Of(string name) => DidYouMean.With(("name", name));

    /// <summary>A remedy: the near name if there is one, else the whole list when it is short enough to read.</summary>
    public static Message For(string misspelt, IReadOnlyCollection<string> known)
    {
        if (Nearest(misspelt, known) is { } near) return Of(near);
        if (known.Count is 0) return NothingFits;
        return known.Count <= 24 ? KnownHere.With(Argument.Texts("names", known.Order(StringComparer.Ordinal))) : SeeTheGuide;
    }

    /// <summary>Edits (insert, delete, replace, swap of neighbours) between two words.</summary>
    private static int Distance(string a, string b)
    {
        a = a.ToLowerInvariant();
        b = b.ToLowerInvariant();
        var rows = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++) rows[i, 0] = i;
        for (var j = 0; j <= b.Length; j++) rows[0, j] = j;
        for (var i = 1; i <= a.Length; i++)
        {
            for (var j = 1; j <= b.Length; j++)
            {
                var replace = rows[i - 1, j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                var best = Math.Min(replace, Math.Min(rows[i - 1, j], rows[i, j - 1]) + 1);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1]) best = Math.Min(best, rows[i - 2, j - 2] + 1);
                rows[i, j] = best;
            }
        }

        return rows[a.Length, b.Length];
    }
}
