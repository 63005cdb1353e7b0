using Protocolist.Findings;
using Protocolist.Quantities;

namespace Protocolist.Notation;

/// <summary>Quantities as people write them: <c>7.2 kg</c>, <c>2 to 5 mL</c>, <c>at least 24 h</c>, <c>24 cm ± 1 cm</c>.</summary>
/// <remarks>
/// The decimal sign is a point in every culture. Case matters: <c>mL</c> is a millilitre. Units are a closed list; a unit may be
/// given for each one of another (<c>mL/kg</c>, written without spaces). Stateless and safe to use from several threads.
/// </remarks>
internal static class QuantityText
{
    private static readonly Phrase WrongDimension = new("wrong-dimension.wanted", "'{text}' is {dimension}; {expected} is wanted here");
    private static readonly Phrase WrongDimensionRemedy = new("wrong-dimension.remedy", "give it in a fitting unit");
    private static readonly Phrase TooLarge = new("bad-number.too-large", "this number is too long or too large");
    private static readonly Phrase TooLargeRemedy = new("bad-number.too-large.remedy", "give at most 15 figures");
    private static readonly Phrase WriteNumber = new("bad-number.remedy", "write a number and its unit, such as '250 mL'");
    private static readonly Phrase DecimalComma = new("decimal-comma", "a comma stands in a number");
    private static readonly Phrase DecimalCommaRemedy = new(
        "decimal-comma.arguments.remedy",
        "write the decimal sign as a point and leave thousands unseparated; a comma between arguments has a space behind it");
    private static readonly Phrase BelowAbsoluteZero = new("below-absolute-zero", "{temperature} is colder than anything can be (-273.15 degC)");
    private static readonly Phrase NotANumber = new("bad-number.word", "a number is wanted, not '{word}'");
    private static readonly Phrase NumberWanted = new("bad-number.nothing", "a number is wanted here");
    private static readonly Phrase BelowAbsoluteZeroRemedy = new("below-absolute-zero.remedy", "check the figure and its unit");
    private static readonly Phrase BelowZero = new("reversed-range.below-zero", "'at most' starts at zero, and this is below");
    private static readonly Phrase BelowZeroRemedy = new("reversed-range.remedy", "write the range as 'a to b'");
    private static readonly Phrase RangeWithDash = new("range-with-dash", "a range is written with 'to'");
    private static readonly Phrase RangeWithDashRemedy = new("range-with-dash.such.remedy", "write '2 to 5 mL'");
    private static readonly Phrase UnexpectedText = new("unexpected-text.after", "'{word}' makes no sense after the quantity");
    private static readonly Phrase UnexpectedTextRemedy = new("unexpected-text.after.remedy", "write 'a to b', 'a ± b', 'at least a' or 'at most a'");
    /// <summary>In SI units; beyond every quantity of a bench, and what is made of quantities up to it can still be reckoned with and printed.</summary>
    internal const double MostSi = 1e15;

    /// <summary>Reads a quantity or a range.</summary>
    /// <param name="text">The text.</param>
    /// <param name="expected">What it must measure; an empty dimension asks for a bare number.</param>
    /// <param name="value">The quantity, SI inside.</param>
    /// <param name="finding">What is wrong, when it cannot be read; its column counts from the start of the text.</param>
    /// <returns>Whether it could be read and measures what is expected.</returns>
    public static bool TryRead(string text, Dimension expected, out QuantityRange value, out Finding? finding)
    {
        ArgumentNullException.ThrowIfNull(text);
        var fault = Read(text, out value);
        if (fault is null && value.Dimension != expected)
        {
            fault = new(
                "wrong-dimension",
                WrongDimension.With(("text", Excerpt.Of(text)), ("dimension", value.Dimension.ToString()), ("expected", expected.ToString())),
                WrongDimensionRemedy,
                0,
                text.Length);
        }

        finding = fault is null ? null : Finding.Error(fault.Id, fault.Message, fault.Remedy, SourceSpan.At("", 1, fault.Offset + 1));
        return fault is null;
    }

    /// <summary>Reads a quantity or a range of whatever dimension its units say.</summary>
    internal static TextFault? Read(ReadOnlySpan<char> text, out QuantityRange value)
    {
        value = default;
        var at = SkipSpace(text, 0);
        if (StartsWords(text, at, "at", "least", out var after)) return ReadOpen(text, after, true, out value);
        if (StartsWords(text, at, "at", "most", out after)) return ReadOpen(text, after, false, out value);
        if (ReadNumber(text, at, out var first, out var end) is { } fault) return fault;
        var join = SkipSpace(text, end);
        if ((join == text.Length || first.Unit is not null) && IsTooLarge(first.Si)) return new("bad-number", TooLarge, TooLargeRemedy, at, end - at);
        if (join == text.Length)
        {
            value = first.ToRange();
            return null;
        }

        // A number without a unit takes the one behind it, so that only then is it known how much it is.
        var tolerance = text[join..].StartsWith("±") ? join + 1 : text[join..].StartsWith("+/-") ? join + 3 : text[join..].StartsWith("+-") ? join + 2 : 0;
        var second = tolerance > 0 ? tolerance : StartsWord(text, join, "to", out after) ? after : -1;
        if (second < 0) return Leftover(text, join);
        if (ReadLiteral(text, SkipSpace(text, second), out var last, out end) is { } secondFault) return secondFault;
        if (SkipSpace(text, end) < text.Length) return Leftover(text, SkipSpace(text, end));
        var notRead = tolerance > 0 ? first.PlusMinus(last, join, out value) : first.To(last, at, end, out value);
        return notRead ?? (IsTooLarge(value.Low) || IsTooLarge(value.High) ? new("bad-number", TooLarge, TooLargeRemedy, at, join - at) : null);
    }

    /// <summary>Reads one number with its unit, at one place; <paramref name="end"/> is the place after it.</summary>
    internal static TextFault? ReadLiteral(ReadOnlySpan<char> text, int at, out Literal literal, out int end) =>
        ReadNumber(text, at, out literal, out end)
        ?? (IsTooLarge(literal.Si) ? new("bad-number", TooLarge, TooLargeRemedy, at, end - at) : null);

    private static bool IsTooLarge(double si) => !(Math.Abs(si) <= MostSi);

    private static TextFault? ReadNumber(ReadOnlySpan<char> text, int at, out Literal literal, out int end)
    {
        literal = default;
        end = at;
        var start = at;
        var sign = 1.0;
        if (at < text.Length && text[at] is '-' or '−')
        {
            sign = -1;
            at++;
        }

        var digits = NumberScanner.Match(text, at, out var number);
        if (digits == 0)
        {
            return at < text.Length && char.IsAsciiDigit(text[at])
                ? new("bad-number", TooLarge, TooLargeRemedy, at, 1)
                : new(
                    "bad-number",
                    at < text.Length ? NotANumber.With(("word", Word(text, at))) : NumberWanted,
                    WriteNumber,
                    at,
                    Math.Max(1, Word(text, at).Length));
        }

        end = at + digits;
        if (end + 1 < text.Length && text[end] == ',' && char.IsAsciiDigit(text[end + 1]))
            return new("decimal-comma", DecimalComma, DecimalCommaRemedy, end, 1);
        var fault = UnitText.Match(text, SkipSpace(text, end), out var unit, out var unitEnd);
        if (fault is not null) return fault;
        if (unitEnd > 0) end = unitEnd;
        literal = new(number * sign, unitEnd > 0 ? unit : null);
        if (unit.Dimension == Dimension.OfTemperature && literal.Si < 0)
            return new(
                "below-absolute-zero",
                BelowAbsoluteZero.With(("temperature", $"{(sign < 0 ? "-" : "")}{text.Slice(at, digits)} {unit.Symbol}")),
                BelowAbsoluteZeroRemedy,
                start,
                end - start);
        return null;
    }

    private static TextFault? ReadOpen(ReadOnlySpan<char> text, int at, bool atLeast, out QuantityRange value)
    {
        value = default;
        at = SkipSpace(text, at);
        if (ReadLiteral(text, at, out var bound, out var end) is { } fault) return fault;
        if (SkipSpace(text, end) < text.Length) return Leftover(text, SkipSpace(text, end));
        var si = bound.Si;
        if (!atLeast && si < 0) return new("reversed-range", BelowZero, BelowZeroRemedy, at, end - at);
        value = atLeast ? new(si, double.PositiveInfinity, bound.Dimension) : new(0, si, bound.Dimension);
        return null;
    }

    private static TextFault Leftover(ReadOnlySpan<char> text, int at)
    {
        if (text[at] is '-' or '–' or '—') return new("range-with-dash", RangeWithDash, RangeWithDashRemedy, at, 1);
        var word = Word(text, at);
        return new("unexpected-text", UnexpectedText.With(("word", word)), UnexpectedTextRemedy, at, Math.Max(1, word.Length));
    }

    internal static int SkipSpace(ReadOnlySpan<char> text, int at)
    {
        while (at < text.Length && text[at] is ' ' or '\t' or '\u00A0' or '\n' or '\r') at++;
        return at;
    }

    /// <summary>The run of characters up to the next space, to name in a message; at most 24 of them.</summary>
    internal static string Word(ReadOnlySpan<char> text, int at)
    {
        var end = at;
        while (end < text.Length && text[end] is not (' ' or '\t' or '\n' or '\r') && end - at < 24) end++;
        return text[at..end].ToString();
    }

    private static bool StartsWord(ReadOnlySpan<char> text, int at, string word, out int after)
    {
        after = at + word.Length;
        return text[at..].StartsWith(word, StringComparison.Ordinal) && (after == text.Length || SkipSpace(text, after) > after);
    }

    private static bool StartsWords(ReadOnlySpan<char> text, int at, string first, string second, out int after) =>
        StartsWord(text, at, first, out after) && StartsWord(text, SkipSpace(text, after), second, out after);
}
