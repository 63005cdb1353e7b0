using System.Globalization;
using Protocolist.Findings;
using Protocolist.Quantities;

namespace Protocolist.Notation;

/// <summary>Money as people write it: <c>12.50 EUR</c>.</summary>
internal static class MoneyText
{
    private static readonly Phrase FinerThanTheSmallestCoin = new(
        "finer-than-the-smallest-coin",
        "'{text}' has more decimals than {currency} has ({decimals})");
    private static readonly Phrase FinerThanTheSmallestCoinRemedy = new("finer-than-the-smallest-coin.remedy", "round it, for example to {amount}");
    private static readonly Phrase PriceWithoutCurrency = new("price-without-currency", "'{text}' names no currency");
    private static readonly Phrase PriceWithoutCurrencyRemedy = new(
        "price-without-currency.remedy",
        "write the ISO 4217 code after it, for example '{words} EUR'");
    private static readonly Phrase UnknownCurrency = new("unknown-currency", "'{words}' is not an ISO 4217 currency code");
    private static readonly Phrase UnknownCurrencyRemedy = new("unknown-currency.remedy", "write three capitals such as EUR, GBP or JPY");
    private static readonly Phrase TooMuchMessage = new("not-money.too-much", "'{text}' is more money than can be reckoned with");
    private static readonly Phrase TooMuchRemedy = new(
        "not-money.too-much.remedy", "check the number and its decimal point; up to a thousand million is understood");
    private static readonly Phrase NotMoneyMessage = new("not-money", "'{text}' is not an amount of money");
    private static readonly Phrase NotMoneyRemedy = new(
        "not-money.remedy",
        "write a number with a decimal point, a space and a currency, for example '12.50 EUR'");

    /// <summary>Reads text such as <c>12.50 EUR</c>: a plain number with a decimal point, a space, a code.</summary>
    /// <param name="text">The text.</param>
    /// <param name="where">Its place, for the findings.</param>
    /// <returns>The money, or findings <c>price-without-currency</c>, <c>unknown-currency</c>, <c>finer-than-the-smallest-coin</c>, <c>not-money</c>.</returns>
    public static Checked<Money> Read(string text, SourceSpan where = default)
    {
        var (amount, currency, finding) = Split(text, where);
        if (finding is not null) return new(null, [finding]);
        var minor = amount * Money.ScaleOf(currency);
        if (Math.Abs(minor) > Money.MostMinor) return new(null, [TooMuch(text, where)]);
        return minor == decimal.Truncate(minor)
            ? new(Money.OfMinor((long)minor, currency), [])
            : new(
                null,
                [
                    Finding.Error(
                        "finer-than-the-smallest-coin",
                        FinerThanTheSmallestCoin.With(("text", text), ("currency", currency), ("decimals", Money.MinorUnits(currency) ?? 0)),
                        FinerThanTheSmallestCoinRemedy.With(("amount", Money.Rounded(amount, currency))),
                        where),
                ]);
    }

    /// <summary>Splits "number code"; the code is known when there is no finding.</summary>
    internal static (decimal Amount, string Currency, Finding? Finding) Split(string text, SourceSpan where)
    {
        var words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        if (words.Length is 0 or > 2 || !TryNumber(words[0], out var amount))
            return (0, "", words.Length == 2 && IsTooMuch(words[0]) ? TooMuch(text, where) : NotMoney(text, where));
        if (words.Length == 1)
            return (amount, "", Finding.Error(
                "price-without-currency",
                PriceWithoutCurrency.With(("text", text)),
                PriceWithoutCurrencyRemedy.With(("words", words[0])),
                where));
        return Money.MinorUnits(words[1]) is null
            ? (amount, "", Finding.Error("unknown-currency", UnknownCurrency.With(("words", words[1])), UnknownCurrencyRemedy, where))
            : (amount, words[1], null);
    }

    private static bool TryNumber(string text, out decimal number) =>
        decimal.TryParse(text, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out number)
        && Math.Abs(number) <= Money.MostMinor;

    private static bool IsTooMuch(string word) =>
        double.TryParse(word, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)
        && Math.Abs(number) > Money.MostMinor;

    private static Finding TooMuch(string text, SourceSpan where) =>
        Finding.Error("not-money", TooMuchMessage.With(("text", Excerpt.Of(text))), TooMuchRemedy, where);

    private static Finding NotMoney(string text, SourceSpan where) =>
        Finding.Error("not-money", NotMoneyMessage.With(("text", text)), NotMoneyRemedy, where);
}
