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
    private static readonly Phrase NearestOf = new("nearest-known", "{count} names are known here; the nearest are {names}");

    /// <summary>Names of a list that is too long to be read.</summary>
    private const int Named = 8;

    /// <summary>"Did you mean" that name.</summary>
    public static Message Of(string name) => DidYouMean.With(("name", name));

    /// <summary>A remedy: the near name if there is one, else the whole list when it is short enough to read.</summary>
    public static Message For(string misspelt, IReadOnlyCollection<string> known)
    {
        if (Nearest(misspelt, known) is { } near) return Of(near);
        if (known.Count is 0) return NothingFits;
        return known.Count <= 24 ? KnownHere.With(Argument.Texts("names", known.Order(StringComparer.Ordinal))) : NearestOf.With(
            ("count", known.Count),
            Argument.Texts("names", known.OrderBy(name => Distance(misspelt, name)).ThenBy(name => name, StringComparer.Ordinal).Take(Named)));
    }

    /// <summary>Edits (insert, delete, replace, swap of neighbours) between two words, case apart.</summary>
    private static int Distance(string a, string b)
    {
        // Three rows of the table are all that a step looks at.
        var width = b.Length + 1;
        Span<int> rows = width <= 128 ? stackalloc int[3 * width] : new int[3 * width];
        for (var j = 0; j < width; j++) rows[j] = j;
        for (var i = 1; i <= a.Length; i++)
        {
            var row = rows.Slice(i % 3 * width, width);
            var before = rows.Slice((i + 2) % 3 * width, width);
            var twoBefore = rows.Slice((i + 1) % 3 * width, width);
            row[0] = i;
            var letter = char.ToLowerInvariant(a[i - 1]);
            for (var j = 1; j < width; j++)
            {
                var isSame = letter == char.ToLowerInvariant(b[j - 1]);
                var best = Math.Min(before[j - 1] + (isSame ? 0 : 1), Math.Min(before[j], row[j - 1]) + 1);
                if (i > 1 && j > 1 && letter == char.ToLowerInvariant(b[j - 2]) && char.ToLowerInvariant(a[i - 2]) == char.ToLowerInvariant(b[j - 1]))
                    best = Math.Min(best, twoBefore[j - 2] + 1);
                row[j] = best;
            }
        }

        return rows[(a.Length % 3 * width) + b.Length];
    }
}
