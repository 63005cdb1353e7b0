using System.Buffers;
using static System.StringComparison;

namespace Protocolist.Checks;

/// <summary>The words by which the history of an animal raises or settles a question, and how they are looked for: whole words, unless denied.</summary>
/// <remarks>An asterisk stands for any ending: <c>drown*</c> is drowned and drowning. The words are the project's choice.</remarks>
internal sealed class HistoryWords
{
    private static readonly string[] Denials = ["no", "not", "never", "without"];

    private readonly (string Start, bool AnyEnding)[] _words;
    private readonly SearchValues<string> _starts;

    private HistoryWords(params string[] words)
    {
        _words = Array.ConvertAll(words, w => (w.TrimEnd('*'), w.EndsWith('*')));
        _starts = SearchValues.Create(Array.ConvertAll(_words, w => w.Start), OrdinalIgnoreCase);
    }

    public static HistoryWords UnknownDeath { get; } = new("unknown", "found dead", "washed up", "washed ashore", "strand*", "carcass*", "picked up");

    /// <summary>What explains a death well enough to set the question aside.</summary>
    public static HistoryWords KnownDeath { get; } = new(
        "drown*", "creel*", "net", "nets", "netted", "gillnet*", "pot", "pots", "bycatch", "by-catch", "trap", "traps", "trapped", "road*", "vehicle*",
        "car", "cars", "window*", "collision*", "struck", "strike*", "shot", "cull*", "market*", "fishery", "captive", "captivity", "zoo", "died of",
        "killed by", "euthan*", "cat", "cats", "predat*", "electrocut*", "cause known", "necropsied");

    public static HistoryWords Anthrax { get; } = new("unclotted", "anthrax", "sudden death", "died suddenly", "blood at the", "blood from", "bleeding from");

    public static HistoryWords FrozenAgain { get; } = new(
        "refrozen", "re-frozen", "refroze", "frozen again", "frozen twice", "thawed and frozen", "second frost");

    public static HistoryWords Parasites { get; } = new("parasit*", "flea*", "tick", "ticks", "lice", "louse", "mite", "mites", "tapeworm*");

    /// <summary>Whether a text holds one of the words, with no denial right before it.</summary>
    public bool AreIn(ReadOnlySpan<char> text)
    {
        for (var from = 0; text[from..].IndexOfAny(_starts) is >= 0 and var at; from++)
        {
            from += at;
            if ((from == 0 || !char.IsLetter(text[from - 1])) && IsWordAt(text[from..]) && !IsDenied(text[..from])) return true;
        }

        return false;
    }

    private bool IsWordAt(ReadOnlySpan<char> text)
    {
        foreach (var (start, anyEnding) in _words)
        {
            if (text.StartsWith(start, OrdinalIgnoreCase) && (anyEnding || text.Length == start.Length || !char.IsLetter(text[start.Length]))) return true;
        }

        return false;
    }

    /// <summary>Whether what stands before a word ends in a denial: <c>not</c> drowned, <c>no sign of</c> anthrax.</summary>
    private static bool IsDenied(ReadOnlySpan<char> before)
    {
        before = before.TrimEnd();
        var isOfSigns = before.EndsWith("sign of", OrdinalIgnoreCase) || before.EndsWith("signs of", OrdinalIgnoreCase);
        if (isOfSigns) before = before[..before.LastIndexOf("sign", OrdinalIgnoreCase)].TrimEnd();
        var last = before[(before.LastIndexOf(' ') + 1)..];
        foreach (var denial in Denials)
        {
            if (last.Equals(denial, OrdinalIgnoreCase)) return true;
        }

        return false;
    }
}
