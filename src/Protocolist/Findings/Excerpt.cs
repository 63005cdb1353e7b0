namespace Protocolist.Findings;

/// <summary>A piece of somebody's input for use inside a message: one line, and short enough to read.</summary>
internal static class Excerpt
{
    private const int Longest = 60;

    public static string Of(ReadOnlySpan<char> text)
    {
        return ShownText.Line(text.Length <= Longest ? text.ToString() : $"{text[..CutBefore(text)]}…");
    }

    /// <summary>Never between the two halves of one character.</summary>
    private static int CutBefore(ReadOnlySpan<char> text) => char.IsHighSurrogate(text[Longest - 2]) ? Longest - 2 : Longest - 1;
}
