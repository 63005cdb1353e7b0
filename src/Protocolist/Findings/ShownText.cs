using System.Buffers;
using System.Globalization;
using System.Text;

namespace Protocolist.Findings;

/// <summary>
/// Text of somebody's as it may be shown on a terminal, a page or a table. Characters that would be obeyed instead of shown (they move a cursor, set a title,
/// end a line, turn the direction of what follows) are written out as <c>\u202E</c>; those that writing needs, such as joiners and direction marks, stay.
/// </summary>
/// <remarks>
/// Written out are control characters (U+0000 to 001F, 007F to 009F), the line and paragraph separators U+2028 and 2029, bidirectional embeddings,
/// overrides and
/// isolates (U+202A to 202E, U+2066 to 2069: UAX 9; Unicode Technical Report 36 has why), U+FFFE, U+FFFF and halves of characters.
/// </remarks>
internal static class ShownText
{
    private static readonly SearchValues<char> Suspect = SearchValues.Create(
    [
        .. Enumerable.Range(0, 0x20).Concat(Enumerable.Range(
            0x7F,
            0x21)).Concat(Enumerable.Range(0x2028, 7)).Concat(Enumerable.Range(0x2066, 4)).Append(0xFFFE).Append(0xFFFF)
            .Concat(Enumerable.Range(0xD800, 0x800)).Select(c => (char)c),
    ]);

    /// <summary>As one line: line feeds and tabs are written out too.</summary>
    /// <param name="text">The text.</param>
    /// <returns>The same text where there is nothing to write out.</returns>
    public static string Line(string text) => Of(text, keepLines: false);

    /// <summary>As lines: line feeds, CR LF and tabs stay.</summary>
    /// <param name="text">The text.</param>
    /// <returns>The same text where there is nothing to write out.</returns>
    public static string Lines(string text) => Of(text, keepLines: true);

    /// <summary>Whether nothing in JSON is to be written out.</summary>
    /// <remarks>Its writer has escaped all but what turns the direction of text: U+202A to 202E, U+2066 to 2069.</remarks>
    internal static bool IsShown(ReadOnlySpan<byte> json)
    {
        for (var at = json.IndexOf((byte)0xE2); at >= 0 && at + 2 < json.Length;)
        {
            if ((json[at + 1], json[at + 2]) is (0x80, >= 0xA8 and <= 0xAE) or (0x81, >= 0xA6 and <= 0xA9)) return false;
            var step = json[(at + 3)..].IndexOf((byte)0xE2);
            at = step < 0 ? -1 : at + 3 + step;
        }

        return true;
    }

    /// <summary>Where the first character stands that no file should hold, line feeds and tabs aside; -1 where there is none.</summary>
    internal static int FirstUnfit(ReadOnlySpan<char> text) => First(text, 0, keepLines: true);

    private static string Of(string text, bool keepLines)
    {
        ArgumentNullException.ThrowIfNull(text);
        var at = First(text, 0, keepLines);
        if (at < 0) return text;
        var shown = new StringBuilder();
        var from = 0;
        for (; at >= 0; at = First(text, from, keepLines))
        {
            shown.Append(text, from, at - from).Append(text[at] switch
            {
                '\n' => "\\n",
                '\t' => "\\t",
                '\r' => "\\r",
                var c => string.Create(CultureInfo.InvariantCulture, $"\\u{(int)c:X4}"),
            });
            from = at + 1;
        }

        return shown.Append(text, from, text.Length - from).ToString();
    }

    private static int First(ReadOnlySpan<char> text, int from, bool keepLines)
    {
        for (var at = from; at < text.Length; at++)
        {
            var step = text[at..].IndexOfAny(Suspect);
            if (step < 0) return -1;
            at += step;
            if (keepLines && text[at] is '\n' or '\t') continue;
            if (keepLines && text[at] == '\r' && at + 1 < text.Length && text[at + 1] == '\n') continue;
            if (!char.IsHighSurrogate(text[at]) || at + 1 == text.Length || !char.IsLowSurrogate(text[at + 1])) return at;
            at++; // a whole character beyond the first plane
        }

        return -1;
    }
}
