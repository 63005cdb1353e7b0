using Protocolist.Findings;

namespace Protocolist.Reading.Csv;

/// <summary>
/// Watches which decimal sign a file uses, and turns its numbers into ones with a point. One for each file; it remembers only the first sign seen.
/// </summary>
internal sealed class DecimalSigns(string file)
{
    private static readonly Phrase MixedDecimalSigns = new("mixed-decimal-signs", "'{text}' has a decimal {used}, but '{first}' in line {line} a {sign}");
    private static readonly Phrase MixedDecimalSignsRemedy = new("mixed-decimal-signs.remedy", "use one decimal sign throughout, and no thousands sign");
    private static readonly Phrase AmbiguousNumber = new("ambiguous-number", "'{text}' can be read as two different numbers");
    private static readonly Phrase AmbiguousNumberRemedy = new("ambiguous-number.remedy", "write it with a decimal point and no thousands sign");

    private char sign;
    private CsvField first;

    /// <summary>The text of a cell with a decimal point.</summary>
    /// <returns>The text, or null beside an error: <c>mixed-decimal-signs</c>, <c>ambiguous-number</c>.</returns>
    public Checked<string> Read(CsvField field)
    {
        var text = field.Text.Trim();
        var signs = Enumerable.Range(1, Math.Max(0, text.Length - 2))
            .Where(i => text[i] is '.' or ',' && char.IsAsciiDigit(text[i - 1]) && char.IsAsciiDigit(text[i + 1])).ToArray();
        if (signs.Length == 0) return new(text, []);
        var used = text[signs[0]];
        // Two signs can stand in two numbers, as in "2.5 to 7.5"; within one number one of them marks thousands.
        if (signs.Any(i => text[i] != used) || signs.Zip(signs.Skip(1)).Any(p => !text[p.First..p.Second].Contains(' ', StringComparison.Ordinal)))
            return Ambiguous(field, text);
        if (sign == 0 && signs.Any(i => LooksLikeThousands(text, i))) return Ambiguous(field, text);
        if (sign == 0) (sign, first) = (used, field);
        return used == sign
            ? new(signs.Aggregate(text, (t, i) => string.Concat(t.AsSpan(0, i), ".", t.AsSpan(i + 1))), [])
            : new(
                null,
                [
                    Finding.Error(
                        "mixed-decimal-signs",
                        MixedDecimalSigns.With(("text", text), ("used", Word(used)), ("first", first.Text.Trim()), ("line", first.Line), ("sign", Word(sign))),
                        MixedDecimalSignsRemedy,
                        field.In(file)),
                ]);
    }

    /// <summary><c>1,234</c> may be a thousand or one and a bit; <c>0,234</c> and <c>1,23</c> may not.</summary>
    private static bool LooksLikeThousands(string text, int at)
    {
        var digits = text[(at + 1)..].TakeWhile(char.IsAsciiDigit).Count();
        return text[at] == ',' && digits == 3 && !(text[at - 1] == '0' && (at == 1 || !char.IsAsciiDigit(text[at - 2])));
    }

    private Checked<string> Ambiguous(CsvField field, string text) =>
        new(null, [Finding.Error("ambiguous-number", AmbiguousNumber.With(("text", text)), AmbiguousNumberRemedy, field.In(file))]);

    private static string Word(char sign) => sign == ',' ? "comma" : "point";
}
