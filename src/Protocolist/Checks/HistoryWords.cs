using static System.StringComparison;

namespace Protocolist.Checks;

/// <summary>The words by which the history of an animal raises or settles a question, and how they are looked for: whole words, unless denied.</summary>
/// <remarks>An asterisk stands for any ending: <c>drown*</c> is drowned and drowning. The words are the project's choice.</remarks>
internal static class HistoryWords
{
    public static readonly string[] UnknownDeath = ["unknown", "found dead", "washed up", "washed ashore", "strand*", "carcass*", "picked up"];

    /// <summary>What explains a death well enough to set the question aside.</summary>
    public static readonly string[] KnownDeath =
    [
        "drown*", "creel*", "net", "nets", "netted", "gillnet*", "pot", "pots", "bycatch", "by-catch", "trap", "traps", "trapped", "road*", "vehicle*", "car", "cars",
        "window*", "collision*", "struck", "strike*", "shot", "cull*", "market*", "fishery", "captive", "captivity", "zoo", "died of", "killed by", "euthan*",
        "cat", "cats", "predat*", "electrocut*", "cause known", "necropsied",
    ];

    public static readonly string[] Anthrax = ["unclotted", "anthrax", "sudden death", "died suddenly", "blood at the", "blood from", "bleeding from"];

    public static readonly string[] FrozenAgain = ["refrozen", "re-frozen", "refroze", "frozen again", "frozen twice", "thawed and frozen", "second frost"];

    private static readonly string[] Denials = ["no", "not", "never", "without"];

    /// <summary>Whether a text holds one of the words, with no denial right before it.</summary>
    public static bool In(string? text, ReadOnlySpan<string> words)
    {
        if (string.IsNullOrEmpty(text)) return false;
        foreach (var word in words)
        {
            if (Holds(text, word)) return true;
        }

        return false;
    }

    private static bool Holds(ReadOnlySpan<char> text, ReadOnlySpan<char> word)
    {
        var anyEnding = word[^1] == '*';
        if (anyEnding) word = word[..^1];
        for (var from = 0; text[from..].IndexOf(word, OrdinalIgnoreCase) is >= 0 and var at;)
        {
            var (start, end) = (from + at, from + at + word.Length);
            var begins = start == 0 || !char.IsLetter(text[start - 1]);
            var ends = anyEnding || end == text.Length || !char.IsLetter(text[end]);
            if (begins && ends && !IsDenied(text[..start])) return true;
            from = start + 1;
        }

        return false;
    }

    /// <summary>Whether what stands before a word ends in a denial: <c>not</c> drowned, <c>no sign of</c> anthrax.</summary>
    private static bool IsDenied(ReadOnlySpan<char> before)
    {
        before = before.TrimEnd();
        if (before.EndsWith("sign of", OrdinalIgnoreCase) || before.EndsWith("signs of", OrdinalIgnoreCase)) before = before[..before.LastIndexOf("sign", OrdinalIgnoreCase)].TrimEnd();
        var last = before[(before.LastIndexOf(' ') + 1)..];
        foreach (var denial in Denials)
        {
            if (last.Equals(denial, OrdinalIgnoreCase)) return true;
        }

        return false;
    }
}
