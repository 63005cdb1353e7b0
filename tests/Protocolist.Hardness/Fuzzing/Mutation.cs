namespace Protocolist.Hardness.Fuzzing;

/// <summary>Damages a text as typing, copying and malice do.</summary>
internal static class Mutation
{
    private static readonly string[] Pieces =
    [
        "[", "]", "{", "}", ":", ": ", "- ", ",", ";", "\n", "\r\n", "\t", " ", "'", "\"", "#", "|", ">", "&a", "*a", "!", "%", "@", "\\", "/", "~",
        "null", "true", "---", "...",
        "0", "-0", "-1", "1e308", "1e-308", "1e400", "-1e9", "NaN", "Infinity", "99999999999999999999", "0.1", "1,5", "1/0", "½", "٣", "２",
        "\0", "\u001B[31m", "\u202E", "\u2028", "\uFEFF", "\uD83D", "𝄞",
        "0001-01-01", "9999-12-31", "2027-02-30", "24:00", "25:61", "-9998-01-01T00:00+18:00", "9999-12-31T23:59-18:00",
        "Mars/Olympus", "mm", "kg", "L", "%vol", "degC", "EUR", "QQQ", "EUR/L", "piece",
        " to ", " and ", " or ", "not ", "choose(", "least(", "specimen.mass", "))))", "((((",
        "<script>", "=cmd", "..", "\\u0000", "\\e", "[]", "{}", "\"\"", "''",
    ];

    public static string Of(string text, IReadOnlyList<string> pool, Random random)
    {
        for (var changes = 1 << random.Next(4); changes > 0; changes--) text = Once(text, pool, random);
        return text.Length > 200_000 ? text[..200_000] : text;
    }

    private static string Once(string text, IReadOnlyList<string> pool, Random random)
    {
        var at = random.Next(text.Length + 1);
        var length = Math.Min(text.Length - at, 1 << random.Next(8));
        switch (random.Next(9))
        {
            case 0: return text.Insert(at, Pieces[random.Next(Pieces.Length)]);
            case 1: return text.Remove(at, length);
            case 2: return text.Insert(at, text.Substring(at, length));
            case 3: return string.Concat(text.AsSpan(0, at), Pieces[random.Next(Pieces.Length)], text.AsSpan(at + length));
            case 4:
                return at < text.Length ? string.Concat(text.AsSpan(0, at), ((char)(text[at] ^ (1 << random.Next(8)))).ToString(), text.AsSpan(at + 1)) : text;
            case 5: return ReplaceWord(text, at, Pieces[random.Next(Pieces.Length)]);
            case 6: return SwapLines(text, random);
            case 7:
                var other = pool[random.Next(pool.Count)];
                return string.Concat(text.AsSpan(0, at), other.AsSpan(random.Next(other.Length + 1)));
            default: return ReplaceWord(text, at, WordOf(pool[random.Next(pool.Count)], random));
        }
    }

    /// <summary>The word or number at a place, replaced whole.</summary>
    private static string ReplaceWord(string text, int at, string by)
    {
        var (from, to) = (at, at);
        while (from > 0 && IsOfWord(text[from - 1])) from--;
        while (to < text.Length && IsOfWord(text[to])) to++;
        return string.Concat(text.AsSpan(0, from), by, text.AsSpan(to));
    }

    private static string WordOf(string text, Random random)
    {
        var at = random.Next(text.Length + 1);
        var (from, to) = (at, at);
        while (from > 0 && IsOfWord(text[from - 1])) from--;
        while (to < text.Length && IsOfWord(text[to])) to++;
        return text[from..to];
    }

    private static bool IsOfWord(char c) => char.IsLetterOrDigit(c) || c is '.' or '-' or '+';

    private static string SwapLines(string text, Random random)
    {
        var lines = text.Split('\n');
        var (a, b) = (random.Next(lines.Length), random.Next(lines.Length));
        (lines[a], lines[b]) = (lines[b], lines[a]);
        return string.Join('\n', lines);
    }
}
