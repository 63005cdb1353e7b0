using Protocolist.Findings;

namespace Protocolist.Reading;

/// <summary>The lines of a text as an editor counts them, to keep every place within them and to find what the YAML parser cannot place.</summary>
internal sealed class TextLines
{
    private static readonly Phrase UnreadableCharacterSaid = new("unreadable-character", "the invisible character U+{code} stands here");
    private static readonly Phrase UnreadableCharacterRemedy = new("unreadable-character.remedy", "remove it");

    private readonly string _file;
    private readonly string _text;
    private readonly List<(int Start, int Length)> _lines = [];

    public TextLines(string file, string text)
    {
        (_file, _text) = (file, text);
        var start = 0;
        while (start <= text.Length)
        {
            var length = text.AsSpan(start).IndexOfAny('\r', '\n');
            if (length < 0) length = text.Length - start;
            _lines.Add((start, length));
            start += length;
            start += text.AsSpan(start).StartsWith("\r\n") ? 2 : 1;
        }
    }

    /// <summary>The nearest place that exists: the parser puts an omitted value one line or a few columns past the end.</summary>
    public (int Line, int Column) Nearest(long line, long column)
    {
        var within = (int)Math.Clamp(line, 1, _lines.Count);
        return (within, within < line ? _lines[within - 1].Length + 1 : (int)Math.Clamp(column, 1, _lines[within - 1].Length + 1));
    }

    /// <summary>The first tab in the indentation of a line, from a line on. The parser blames the start of the mapping; the person needs the tab.</summary>
    public SourceSpan? TabInIndentation(long fromLine)
    {
        for (var i = (int)Math.Clamp(fromLine, 1, _lines.Count) - 1; i < _lines.Count; i++)
        {
            var line = _text.AsSpan(_lines[i].Start, _lines[i].Length);
            var indent = line.Length - line.TrimStart(" \t").Length;
            var tab = line[..indent].IndexOf('\t');
            if (tab >= 0 && indent < line.Length && line[indent] != '#') return SourceSpan.At(_file, i + 1, tab + 1);
        }

        return null;
    }

    /// <summary>Whether a line that is not blank begins with a tab.</summary>
    public bool BeginsWithTab(int line)
    {
        if (line > _lines.Count) return false;
        var text = _text.AsSpan(_lines[line - 1].Start, _lines[line - 1].Length);
        return text.StartsWith('\t') && !text.IsWhiteSpace();
    }

    /// <summary>The column of a tab in the blanks before a place; null where there is none.</summary>
    public int? TabBefore(long line, long column)
    {
        if (line < 1 || line > _lines.Count) return null;
        var before = _text.AsSpan(_lines[(int)line - 1].Start, (int)Math.Clamp(column - 1, 0, _lines[(int)line - 1].Length));
        var tab = before[before.TrimEnd(" \t").Length..].IndexOf('\t');
        return tab < 0 ? null : before.TrimEnd(" \t").Length + tab + 1;
    }

    /// <summary>Says of a character that no text should hold.</summary>
    public static Finding Unfit(char character, SourceSpan where) =>
        Finding.Error(
            "unreadable-character",
            UnreadableCharacterSaid.With(("code", ((int)character).ToString("X4", System.Globalization.CultureInfo.InvariantCulture))),
            UnreadableCharacterRemedy,
            where);

    /// <summary>
    /// Characters that no editor shows, and at which the parser would end the text or a line without a word: control characters, the line separators of
    /// Unicode, halves of characters; and those that turn the direction in which the text is shown, comments included.
    /// </summary>
    public Finding? UnreadableCharacter()
    {
        for (var i = 0; i < _lines.Count; i++)
        {
            var line = _text.AsSpan(_lines[i].Start, _lines[i].Length);
            var at = ShownText.FirstUnfit(line);
            if (at < 0) continue;
            return Unfit(line[at], SourceSpan.At(_file, i + 1, at + 1));
        }

        return null;
    }
}
