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

    /// <summary>A remedy: the near name if there is one, else the whole list when it is short enough to read.</summary>
    public static string For(string misspelt, IReadOnlyCollection<string> known)
    {
        if (Nearest(misspelt, known) is { } near) return $"did you mean '{near}'?";
        if (known.Count is 0) return "nothing can stand here";
        return known.Count <= 24
            ? $"known here: {string.Join(", ", known.Order(StringComparer.Ordinal))}"
            : "see the authoring guide for the names known here";
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
