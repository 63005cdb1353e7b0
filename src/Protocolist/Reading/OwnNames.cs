using Protocolist.Findings;

namespace Protocolist.Reading;

/// <summary>Names that a program gives to kinds of its own: they stand in files and on sheets as those of the library do.</summary>
internal static class OwnNames
{
    private const int Longest = 60;

    /// <summary>Lower-case letters and digits in parts joined by single minus signs, a letter first.</summary>
    public static bool IsKebab(string name) =>
        name.Length is > 0 and <= Longest && char.IsAsciiLetterLower(name[0]) && name[^1] != '-' && !name.Contains("--", StringComparison.Ordinal)
        && name.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '-');

    /// <summary>Refuses an id that no file could name, and a name that no line could show.</summary>
    public static void ThrowIfUnfit(string id, string name)
    {
        ArgumentNullException.ThrowIfNull(id);
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        if (!IsKebab(id)) throw new ArgumentException($"'{Excerpt.Of(id)}' is no id: lower-case letters and digits, parts joined by '-'.", nameof(id));
        if (TextRules.OfLine("name", name) is { } fault) throw new ArgumentException(fault.Message.ToString(), nameof(name));
    }
}
