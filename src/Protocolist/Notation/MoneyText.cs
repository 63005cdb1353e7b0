using System.Globalization;
using Protocolist.Findings;
using Protocolist.Quantities;

namespace Protocolist.Notation;

/// <summary>Money as people write it: <c>12.50 EUR</c>.</summary>
public static class MoneyText
{
    /// <summary>Reads text such as <c>12.50 EUR</c>: a plain number with a decimal point, a space, a code.</summary>
    /// <param name="text">The text.</param>
    /// <param name="where">Its place, for the findings.</param>
    /// <returns>The money, or findings <c>price-without-currency</c>, <c>unknown-currency</c>, <c>finer-than-the-smallest-coin</c>, <c>not-money</c>.</returns>
    public static Checked<Money> Read(string text, SourceSpan where = default)
    {
        var (amount, currency, finding) = Split(text, where);
        if (finding is not null) return new(null, [finding]);
        var minor = amount * Money.ScaleOf(currency);
        if (Math.Abs(minor) > Money.MostMinor) return new(null, [NotMoney(text, where)]);
        return minor == decimal.Truncate(minor)
            ? new(Money.OfMinor((long)minor, currency), [])
            : new(null, [Finding.Error("finer-than-the-smallest-coin", $"'{text}' has more decimals than {currency} has ({Money.MinorUnits(currency)})", $"round it, for example to {Money.Rounded(amount, currency)}", where)]);
    }

    /// <summary>Splits "number code"; the code is known when there is no finding.</summary>
    internal static (decimal Amount, string Currency, Finding? Finding) Split(string text, SourceSpan where)
    {
        var words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        if (words.Length is 0 or > 2 || !TryNumber(words[0], out var amount)) return (0, "", NotMoney(text, where));
        if (words.Length == 1)
            return (amount, "", Finding.Error("price-without-currency", $"'{text}' names no currency", $"write the ISO 4217 code after it, for example '{words[0]} EUR'", where));
        return Money.MinorUnits(words[1]) is null
            ? (amount, "", Finding.Error("unknown-currency", $"'{words[1]}' is not an ISO 4217 currency code", "write three capitals such as EUR, GBP or JPY", where))
            : (amount, words[1], null);
    }

    private static bool TryNumber(string text, out decimal number) =>
        decimal.TryParse(text, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out number)
        && Math.Abs(number) <= Money.MostMinor;

    private static Finding NotMoney(string text, SourceSpan where) =>
        Finding.Error("not-money", $"'{text}' is not an amount of money", "write a number with a decimal point, a space and a currency, for example '12.50 EUR'", where);
}
