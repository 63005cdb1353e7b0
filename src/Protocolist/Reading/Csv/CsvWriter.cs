using System.Buffers;
using System.Globalization;
using Protocolist.Findings;

namespace Protocolist.Reading.Csv;

/// <summary>Writes comma-separated values (RFC 4180, CR LF) that a spreadsheet can open without running anything.</summary>
/// <remarks>
/// A cell that a spreadsheet would take for a formula (it starts with <c>= + - @</c>, their full-width forms, a tab or a line break, blanks before it or not)
/// gets an apostrophe before it, as the OWASP advice on CSV injection has it; plain numbers such as <c>-5</c> stay as they are.
/// </remarks>
internal static class CsvWriter
{
    /// <summary>Writes one row.</summary>
    /// <param name="writer">Where to; it is not closed.</param>
    /// <param name="cells">The cells, in order.</param>
    public static void WriteRow(TextWriter writer, IEnumerable<string> cells)
    {
        ArgumentNullException.ThrowIfNull(writer);
        ArgumentNullException.ThrowIfNull(cells);
        var first = true;
        foreach (var cell in cells)
        {
            if (!first) writer.Write(',');
            writer.Write(Cell(cell));
            first = false;
        }

        writer.Write("\r\n");
    }

    /// <summary>One cell as it stands in a row: harmless, and in quotes where it must be.</summary>
    /// <param name="text">The text.</param>
    /// <returns>The cell.</returns>
    public static string Cell(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        text = ShownText.Lines(text);
        var harmless = IsFormulaLike(text) ? "'" + text : text;
        return harmless.AsSpan().ContainsAny(NeedQuotes) || harmless.Length > 0 && (harmless[0] == ' ' || harmless[^1] == ' ')
            ? "\"" + harmless.Replace("\"", "\"\"", StringComparison.Ordinal) + "\""
            : harmless;
    }

    private static readonly SearchValues<char> NeedQuotes = SearchValues.Create("\",;\t\r\n");

    private static bool IsFormulaLike(string text)
    {
        if (text.Length > 0 && text[0] is '\t' or '\r' or '\n') return true;
        var start = text.AsSpan().TrimStart();
        return start.Length > 0 && start[0] is '=' or '+' or '-' or '@' or '＝' or '＋' or '－' or '＠'
            && !decimal.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out _);
    }
}
