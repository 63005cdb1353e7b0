using System.Globalization;

namespace Protocolist.Notation;

/// <summary>Reads a plain decimal number at a place in a text: digits, a point, perhaps an exponent. Never a comma, never a culture.</summary>
internal static class NumberScanner
{
    /// <summary>More digits than this are noise, and a way to make a reader slow.</summary>
    private const int LongestNumber = 40;

    /// <summary>The length of the number at <paramref name="at"/>, or 0; a number too large for a double is refused.</summary>
    public static int Match(ReadOnlySpan<char> text, int at, out double value)
    {
        value = 0;
        var end = Digits(text, at);
        var whole = end - at;
        if (end < text.Length - 1 && text[end] == '.' && char.IsAsciiDigit(text[end + 1])) end = Digits(text, end + 1);
        else if (whole == 0) return 0;
        if (end < text.Length - 1 && text[end] is 'e' or 'E')
        {
            var exponent = end + 1 < text.Length && text[end + 1] is '-' or '+' ? end + 2 : end + 1;
            var after = Digits(text, exponent);
            if (after > exponent) end = after;
        }

        if (end - at > LongestNumber) return 0;
        var read = double.TryParse(text[at..end], NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent, CultureInfo.InvariantCulture, out value);
        return read && double.IsFinite(value) ? end - at : 0;
    }

    private static int Digits(ReadOnlySpan<char> text, int at)
    {
        while (at < text.Length && char.IsAsciiDigit(text[at])) at++;
        return at;
    }
}
