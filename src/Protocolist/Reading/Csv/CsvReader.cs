using System.Collections.Immutable;
using System.Text;
using Protocolist.Findings;

namespace Protocolist.Reading.Csv;

/// <summary>Reads comma-separated values (RFC 4180) record by record at constant memory; a fault costs its own row, not the rest of the file.</summary>
/// <remarks>
/// The separator is the one of <c>, ;</c> tab that the first line holds most of. Blank lines are passed over. A quote that is never closed would swallow
/// what follows; it is given up at the end, at <see cref="MostCharacters"/>, or where text follows the closing quote, and reading goes on at the line after it.
/// </remarks>
internal sealed class CsvReader
{
    private static readonly Phrase TooManyFields = new("too-many-fields", "a row has more than {most} cells");
    private static readonly Phrase TooManyFieldsRemedy = new("too-many-fields.remedy", "see whether the separator is right");
    private static readonly Phrase QuoteInsideCell = new(
        "quote-inside-cell",
        "a quote stands inside a cell that does not start with one; it is taken as text");
    private static readonly Phrase QuoteInsideCellRemedy = new("quote-inside-cell.remedy", "put the whole cell in quotes and double the quote inside");
    private static readonly Phrase UnclosedQuote = new("unclosed-quote", "a quote opens here and is never closed");
    private static readonly Phrase UnclosedQuoteRemedy = new("unclosed-quote.remedy", "close it at the end of the cell, and double every quote inside");
    private static readonly Phrase TextAfterQuote = new("text-after-quote", "text follows the closing quote of this cell");
    private static readonly Phrase TextAfterQuoteRemedy = new("text-after-quote.remedy", "double every quote inside the cell, and close it only at its end");
    private static readonly Phrase QuoteTooLong = new("unclosed-quote.too-long", "a quote opens here and is not closed within {most} characters");
    private static readonly Phrase CellTooLong = new("cell-too-long", "a cell holds more than {most} characters");
    private static readonly Phrase CellTooLongRemedy = new("cell-too-long.remedy", "see whether the separator and the quotes are right");

    /// <summary>Spreadsheets hold no more in a cell (32 767 characters, Excel's published limit).</summary>
    internal const int MostCharacters = 32_767;

    /// <summary>Cells in a row; Darwin Core has some two hundred terms.</summary>
    internal const int MostFields = 1_000;

    private readonly CsvText text;
    private readonly string file;
    private readonly StringBuilder cell = new();
    private readonly StringBuilder afterBreak = new();

    /// <summary>Starts on a text.</summary>
    public CsvReader(TextReader reader, string file)
    {
        text = new CsvText(reader);
        this.file = file;
        Separator = Guess(text.FirstLine());
    }

    public char Separator { get; }

    public string File => file;

    /// <summary>The next record; null at the end.</summary>
    public CsvRecord? Read()
    {
        while (text.Peek() == '\n') text.Next();
        if (text.Peek() < 0) return null;

        var line = text.Line;
        var fields = ImmutableArray.CreateBuilder<CsvField>();
        var findings = ImmutableArray.CreateBuilder<Finding>();
        while (true)
        {
            var (fieldLine, fieldColumn) = (text.Line, text.Column);
            var fault = text.Peek() == '"' ? Quoted() : Plain(findings);
            if (fault is null && fields.Count == MostFields)
            {
                SkipLine();
                fault = Finding.Error("too-many-fields", TooManyFields.With(("most", MostFields)), TooManyFieldsRemedy);
            }

            if (fault is not null)
            {
                findings.Add(fault with { Where = SourceSpan.At(file, fieldLine, fieldColumn) });
                return new(line, fields.ToImmutable(), findings.ToImmutable());
            }

            var content = cell.ToString();
            var unfit = ShownText.FirstUnfit(content);
            if (unfit >= 0) findings.Add(TextLines.Unfit(content[unfit], SourceSpan.At(file, fieldLine, fieldColumn)));
            fields.Add(new(ShownText.Lines(content), fieldLine, fieldColumn));
            if (text.Next() is -1 or '\n') return new(line, fields.ToImmutable(), findings.ToImmutable());
        }
    }

    /// <summary>Reads an unquoted cell up to its separator or line end, which it leaves.</summary>
    private Finding? Plain(ImmutableArray<Finding>.Builder findings)
    {
        cell.Clear();
        var quoteSeen = false;
        for (var c = text.Peek(); c >= 0 && c != '\n' && c != Separator; c = text.Peek())
        {
            if (c == '"' && !quoteSeen)
            {
                quoteSeen = true;
                findings.Add(Finding.Warning("quote-inside-cell", QuoteInsideCell, QuoteInsideCellRemedy, SourceSpan.At(file, text.Line, text.Column)));
            }

            cell.Append((char)text.Next());
            if (cell.Length > MostCharacters) return TooLong();
        }

        return null;
    }

    /// <summary>
    /// Reads a quoted cell and leaves the separator or line end after it. What follows its first line break is remembered, to be read again if the quote
    /// proves to be a slip.
    /// </summary>
    private Finding? Quoted()
    {
        cell.Clear();
        afterBreak.Clear();
        var breakLine = 0;
        text.Next();
        while (true)
        {
            var c = text.Next();
            if (breakLine > 0 && c >= 0) afterBreak.Append((char)c);
            if (c == '\n' && breakLine == 0) breakLine = text.Line;
            if (c < 0)
            {
                Resume(breakLine);
                return Finding.Error("unclosed-quote", UnclosedQuote, UnclosedQuoteRemedy);
            }

            if (c != '"') cell.Append((char)c);
            else if (text.Peek() == '"')
            {
                cell.Append('"');
                text.Next();
                if (breakLine > 0) afterBreak.Append('"');
            }
            else if (text.Peek() is -1 or '\n' || text.Peek() == Separator) return null;
            else
            {
                Resume(breakLine);
                return Finding.Error("text-after-quote", TextAfterQuote, TextAfterQuoteRemedy);
            }

            if (cell.Length <= MostCharacters) continue;
            if (breakLine == 0) return TooLong();
            Resume(breakLine);
            return Finding.Error("unclosed-quote", QuoteTooLong.With(("most", MostCharacters)), UnclosedQuoteRemedy);
        }
    }

    private Finding TooLong()
    {
        SkipLine();
        return Finding.Error("cell-too-long", CellTooLong.With(("most", MostCharacters)), CellTooLongRemedy);
    }

    /// <summary>Goes on at the line after the slip: what was taken since its line break is read again, else the rest of the line is passed over.</summary>
    private void Resume(int breakLine)
    {
        if (breakLine > 0) text.PutBack(afterBreak.ToString(), breakLine, 1);
        else SkipLine();
    }

    private void SkipLine()
    {
        while (text.Next() is not (-1 or '\n')) { }
    }

    private static char Guess(ReadOnlySpan<char> line)
    {
        var (commas, semicolons, tabs, quoted) = (0, 0, 0, false);
        foreach (var c in line)
        {
            if (c == '"') quoted = !quoted;
            else if (!quoted) (commas, semicolons, tabs) = (commas + (c == ',' ? 1 : 0), semicolons + (c == ';' ? 1 : 0), tabs + (c == '\t' ? 1 : 0));
        }

        return tabs > Math.Max(commas, semicolons) ? '\t' : semicolons > commas ? ';' : ',';
    }
}
