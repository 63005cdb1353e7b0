using System.Text;
using Protocolist.Findings;

namespace Protocolist.Sheets;

/// <summary>Content lines of RFC 5545, 3.1: at most 75 octets each, longer ones folded between characters, CR and LF after each.</summary>
internal static class ContentLines
{
    private const int MostOctets = 75;

    /// <summary>Folds a calendar anew by octets: a writer that counts characters makes lines too long where they are not ASCII.</summary>
    public static string Folded(string calendar)
    {
        var text = new StringBuilder();
        var lines = calendar.Replace("\r\n", "\n", StringComparison.Ordinal).Replace("\n ", "", StringComparison.Ordinal).TrimEnd('\n').Split('\n');
        foreach (var line in lines)
        {
            var octets = 0;
            foreach (var rune in Harmless(line).EnumerateRunes())
            {
                if (octets + rune.Utf8SequenceLength > MostOctets)
                {
                    text.Append("\r\n ");
                    octets = 1;
                }

                text.Append(rune.ToString());
                octets += rune.Utf8SequenceLength;
            }

            text.Append("\r\n");
        }

        return text.ToString();
    }

    /// <summary>What would be obeyed instead of shown is written out; in a text of a calendar the sign for that is doubled.</summary>
    private static string Harmless(string line) =>
        ReferenceEquals(ShownText.Lines(line), line)
            ? line
            : string.Concat(line
                .EnumerateRunes()
                .Select(r => r.ToString())
                .Select(c => ReferenceEquals(ShownText.Lines(c), c) ? c : @"\" + ShownText.Lines(c)));
}
