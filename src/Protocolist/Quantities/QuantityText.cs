using System.Globalization;
using Protocolist.Findings;

namespace Protocolist.Quantities;

/// <summary>Quantities as people write them: <c>7.2 kg</c>, <c>2 to 5 mL</c>, <c>at least 24 h</c>, <c>24 cm ± 1 cm</c>.</summary>
/// <remarks>
/// The decimal sign is a point in every culture. Case matters: <c>mL</c> is a millilitre. Units are a closed list; a unit may be
/// given for each one of another (<c>mL/kg</c>, written without spaces). Stateless and safe to use from several threads.
/// </remarks>
public static class QuantityText
{
    /// <summary>In SI units; beyond every quantity of a bench, and what is made of quantities up to it can still be reckoned with and printed.</summary>
    private const double MostSi = 1e15;

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
            fault = new("wrong-dimension", $"'{Excerpt.Of(text)}' is {value.Dimension}; {expected} is wanted here", "give it in a fitting unit", 0, text.Length);
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
        if (ReadLiteral(text, at, out var first, out var end) is { } fault) return fault;
        var join = SkipSpace(text, end);
        if (join == text.Length)
        {
            value = first.ToRange();
            return null;
        }

        var tolerance = text[join..].StartsWith("±") ? join + 1 : text[join..].StartsWith("+/-") ? join + 3 : text[join..].StartsWith("+-") ? join + 2 : 0;
        var second = tolerance > 0 ? tolerance : StartsWord(text, join, "to", out after) ? after : -1;
        if (second < 0) return Leftover(text, join);
        if (ReadLiteral(text, SkipSpace(text, second), out var last, out end) is { } secondFault) return secondFault;
        if (SkipSpace(text, end) < text.Length) return Leftover(text, SkipSpace(text, end));
        return tolerance > 0 ? first.PlusMinus(last, join, out value) : first.To(last, at, end, out value);
    }

    /// <summary>Reads one number with its unit, at one place; <paramref name="end"/> is the place after it.</summary>
    internal static TextFault? ReadLiteral(ReadOnlySpan<char> text, int at, out Literal literal, out int end)
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
                ? new("bad-number", "this number is too long or too large", "give at most 15 figures", at, 1)
                : new("bad-number", at < text.Length ? $"a number is wanted, not '{Word(text, at)}'" : "a number is wanted here", "write a number and its unit, such as '250 mL'", at, Math.Max(1, Word(text, at).Length));
        }

        end = at + digits;
        if (end + 1 < text.Length && text[end] == ',' && char.IsAsciiDigit(text[end + 1])) return new("decimal-comma", "a comma stands in a number", "write the decimal sign as a point and leave thousands unseparated; a comma between arguments has a space behind it", end, 1);
        var fault = UnitText.Match(text, SkipSpace(text, end), out var unit, out var unitEnd);
        if (fault is not null) return fault;
        if (unitEnd > 0) end = unitEnd;
        literal = new(number * sign, unitEnd > 0 ? unit : null);
        if (!(Math.Abs(literal.Si) <= MostSi)) return new("bad-number", "this number is too long or too large", "give at most 15 figures", at, digits);
        if (unit.Dimension == Dimension.OfTemperature && literal.Si < 0) return new("below-absolute-zero", $"{(sign < 0 ? "-" : "")}{text.Slice(at, digits)} {unit.Symbol} is colder than anything can be (-273.15 degC)", "check the figure and its unit", start, end - start);
        return null;
    }

    /// <summary>Text that reads back as exactly the same range, in a unit that fits its size.</summary>
    /// <remarks>
    /// Holds for every dimension that a unit of the list or a ratio of two can give. A range without a finite end is
    /// <c>anything</c>, one with an upper end alone is written as <c>at most</c>; only a range that reaches below zero without limit is lost so.
    /// </remarks>
    public static string Exact(QuantityRange range)
    {
        if (double.IsPositiveInfinity(range.High) && double.IsFinite(range.Low)) return $"at least {ExactPoint(range.Low, range.Dimension)}";
        if (range.Low == 0 && double.IsFinite(range.High) && !range.IsPoint) return $"at most {ExactPoint(range.High, range.Dimension)}";
        if (!range.IsFinite) return double.IsFinite(range.High) ? $"at most {ExactPoint(range.High, range.Dimension)}" : "anything";
        if (range.IsPoint) return ExactPoint(range.Low, range.Dimension);
        var unit = UnitText.Fitting(Math.Max(Math.Abs(range.Low), Math.Abs(range.High)), range.Dimension);
        var (low, high) = (ExactIn(range.Low, unit), ExactIn(range.High, unit));
        var shared = unit.Symbol.Length == 0 ? "" : $" {unit.Symbol}";
        return low.EndsWith(shared, StringComparison.Ordinal) && high.EndsWith(shared, StringComparison.Ordinal) ? $"{low[..^shared.Length]} to {high}" : $"{low} to {high}";
    }

    private static string ExactPoint(double si, Dimension dimension) => ExactIn(si, UnitText.Fitting(Math.Abs(si), dimension));

    /// <summary>The fewest figures in that unit which read back as the same double; the SI unit where none do.</summary>
    private static string ExactIn(double si, Unit unit)
    {
        var value = unit.FromSi(si);
        for (var figures = 6; figures <= 17; figures++)
        {
            var text = value.ToString($"G{figures}", CultureInfo.InvariantCulture);
            if (unit.ToSi(double.Parse(text, CultureInfo.InvariantCulture)).Equals(si)) return Join(text, unit.Symbol);
        }

        return Join(si.ToString("R", CultureInfo.InvariantCulture), UnitText.SiOf(unit.Dimension));
    }

    private static string Join(string number, string unit) => unit.Length == 0 ? number : $"{number} {unit}";

    private static TextFault? ReadOpen(ReadOnlySpan<char> text, int at, bool atLeast, out QuantityRange value)
    {
        value = default;
        at = SkipSpace(text, at);
        if (ReadLiteral(text, at, out var bound, out var end) is { } fault) return fault;
        if (SkipSpace(text, end) < text.Length) return Leftover(text, SkipSpace(text, end));
        var si = bound.Si;
        if (!atLeast && si < 0) return new("reversed-range", "'at most' starts at zero, and this is below", "write the range as 'a to b'", at, end - at);
        value = atLeast ? new(si, double.PositiveInfinity, bound.Dimension) : new(0, si, bound.Dimension);
        return null;
    }

    private static TextFault Leftover(ReadOnlySpan<char> text, int at)
    {
        if (text[at] is '-' or '–' or '—') return new("range-with-dash", "a range is written with 'to'", "write '2 to 5 mL'", at, 1);
        var word = Word(text, at);
        return new("unexpected-text", $"'{word}' makes no sense after the quantity", "write 'a to b', 'a ± b', 'at least a' or 'at most a'", at, Math.Max(1, word.Length));
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
