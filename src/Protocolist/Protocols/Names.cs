using Protocolist.Findings;
using Protocolist.Reading;

namespace Protocolist.Protocols;

/// <summary>Names that authors give.</summary>
internal static class Names
{
    private static readonly Phrase BadName = new("bad-name", "'{name}' cannot be {what}");
    private static readonly Phrase BadNameRemedy = new("bad-name.remedy", "use lower-case letters and digits, parts joined by '-'");

    private const int Longest = 60;

    /// <summary>Lower-case letters and digits in parts joined by single minus signs, a letter first.</summary>
    public static bool IsKebab(string name) =>
        name.Length is > 0 and <= Longest && char.IsAsciiLetterLower(name[0]) && name[^1] != '-' && !name.Contains("--", StringComparison.Ordinal)
        && name.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '-');

    public static Finding NotKebab(Message what, ScalarNode name) =>
        Finding.Error("bad-name", BadName.With(("name", name.Value), ("what", what)), BadNameRemedy, name.Span);
}
