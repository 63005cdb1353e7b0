using System.Globalization;
using Protocolist.Findings;
using Protocolist.Notation;
using UnitsNet;

namespace Protocolist.Quantities;

/// <summary>Money for a quantity of something: <c>12.50 EUR/L</c>, <c>30 EUR/h</c>. Never a floating number.</summary>
/// <remarks>The rate may be finer than the smallest coin (<c>0.0125 EUR/mL</c>); the money it comes to is rounded to it, halves away from zero.</remarks>
public sealed record Price
{
    private static readonly Phrase PriceWithoutUnit = new("price-without-unit", "'{text}' does not say for how much");
    private static readonly Phrase PriceWithoutUnitRemedy = new("price-without-unit.remedy", "write it per unit, for example '{trim}/L'");
    private static readonly Phrase NegativePrice = new("negative-price", "'{text}' is below zero");
    private static readonly Phrase NegativePriceRemedy = new("negative-price.remedy", "write 0 or more");
    private static readonly Phrase UnknownPriceUnit = new("unknown-price-unit", "'{symbol}' in '{text}' is not a unit of price");

    private Price(decimal rate, string currency, PriceUnit per) => (Rate, Currency, Per) = (rate, currency, per);

    /// <summary>Currency units for one <see cref="Per"/>; 0 or more.</summary>
    public decimal Rate { get; }

    /// <summary>The ISO 4217 code.</summary>
    public string Currency { get; }

    /// <summary>What it is the price of one of.</summary>
    public PriceUnit Per { get; }

    /// <summary>Makes a price.</summary>
    /// <param name="rate">Currency units, 0 or more.</param>
    /// <param name="currency">An ISO 4217 code.</param>
    /// <param name="per">Of one what.</param>
    /// <returns>The price.</returns>
    /// <exception cref="ArgumentException">The rate is negative or above ten million million, or the code is not in ISO 4217.</exception>
    public static Price Of(decimal rate, string currency, PriceUnit per)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(rate);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(rate, Money.MostMinor);
        return Money.MinorUnits(currency) is null
            ? throw new ArgumentException($"'{currency}' is not an ISO 4217 currency code.", nameof(currency))
            : new Price(rate, currency, per);
    }

    /// <summary>Reads text such as <c>12.50 EUR/L</c>; units <c>L mL m3 kg g mg piece h min</c>.</summary>
    /// <param name="text">The text.</param>
    /// <param name="where">Its place, for the findings.</param>
    /// <returns>The price, or findings: those of <see cref="MoneyText.Read"/>, <c>price-without-unit</c>, <c>unknown-price-unit</c>,
    /// <c>negative-price</c>.</returns>
    public static Checked<Price> Read(string text, SourceSpan where = default)
    {
        ArgumentNullException.ThrowIfNull(text);
        var slash = text.IndexOf('/', StringComparison.Ordinal);
        if (slash < 0)
        {
            return MoneyText.Split(text, where).Finding is { } wrong
                ? new(null, [wrong])
                : new(
                    null,
                    [Finding.Error("price-without-unit", PriceWithoutUnit.With(("text", text)), PriceWithoutUnitRemedy.With(("trim", text.Trim())), where)]);
        }

        var (rate, currency, finding) = MoneyText.Split(text[..slash], where);
        if (finding is not null) return new(null, [finding]);
        if (rate < 0) return new(null, [Finding.Error("negative-price", NegativePrice.With(("text", text)), NegativePriceRemedy, where)]);
        var symbol = text[(slash + 1)..].Trim();
        return Array.IndexOf(Symbols, symbol) is >= 0 and var unit
            ? new(new Price(rate, currency, (PriceUnit)unit), [])
            : new(
                null,
                [Finding.Error("unknown-price-unit", UnknownPriceUnit.With(("symbol", symbol), ("text", text)), Suggestion.For(symbol, Symbols), where)]);
    }

    /// <summary>What so much liquid comes to.</summary>
    /// <param name="volume">The volume.</param>
    /// <returns>Money, rounded to the smallest coin.</returns>
    /// <exception cref="ArgumentException">This is not a price by volume.</exception>
    public Money For(Volume volume) => Of(volume.Liters, Per switch
    {
        PriceUnit.Litre => 1m,
        PriceUnit.Millilitre => 1000m,
        PriceUnit.CubicMetre => 0.001m,
        _ => throw Mismatch("a volume"),
    });

    /// <summary>What so much mass comes to.</summary>
    /// <param name="mass">The mass.</param>
    /// <returns>Money, rounded to the smallest coin.</returns>
    /// <exception cref="ArgumentException">This is not a price by mass.</exception>
    public Money For(Mass mass) => Of(mass.Kilograms, Per switch
    {
        PriceUnit.Kilogram => 1m,
        PriceUnit.Gram => 1000m,
        PriceUnit.Milligram => 1_000_000m,
        _ => throw Mismatch("a mass"),
    });

    /// <summary>What so many pieces come to.</summary>
    /// <param name="pieces">The number, parts of one allowed (a tool worn by a hundredth).</param>
    /// <returns>Money, rounded to the smallest coin.</returns>
    /// <exception cref="ArgumentException">This is not a price a piece.</exception>
    public Money For(decimal pieces) => Per == PriceUnit.Piece ? Of((double)pieces, 1) : throw Mismatch("pieces");

    /// <summary>What so much time comes to.</summary>
    /// <param name="time">The time.</param>
    /// <returns>Money, rounded to the smallest coin.</returns>
    /// <exception cref="ArgumentException">This is not a price by time.</exception>
    public Money For(NodaTime.Duration time) => Per switch
    {
        PriceUnit.Hour => Of(time.TotalHours, 1),
        PriceUnit.Minute => Of(time.TotalMinutes, 1),
        _ => throw Mismatch("a time"),
    };

    /// <summary><c>12.50 EUR/L</c>: at least the currency's decimals; <see cref="Read"/> reads it back.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
    {
        var least = Money.MinorUnits(Currency) ?? 0;
        var format = least == 0 ? "0." + new string('#', 20) : "0." + new string('0', least) + new string('#', 20);
        return string.Create(CultureInfo.InvariantCulture, $"{Rate.ToString(format, CultureInfo.InvariantCulture)} {Currency}/{Symbols.At((int)Per)}");
    }

    /// <summary>In the order of <see cref="PriceUnit"/>.</summary>
    private static readonly string[] Symbols = ["L", "mL", "m3", "kg", "g", "mg", "piece", "h", "min"];

    /// <summary>Beyond a thousand million of anything lies a mistake, and below it the product stays within a decimal.</summary>
    private Money Of(double quantity, decimal units) =>
        Math.Abs(quantity) <= 1e9
            ? Money.Rounded(Rate * (decimal)quantity * units, Currency)
            : throw new ArgumentOutOfRangeException(nameof(quantity), quantity, "Nobody pays for so much.");

    private ArgumentException Mismatch(string what) => new($"{this} is not the price of {what}.");
}

/// <summary>What a <see cref="Price"/> is for one of.</summary>
public enum PriceUnit
{
    /// <summary>One litre.</summary>
    Litre,

    /// <summary>One millilitre.</summary>
    Millilitre,

    /// <summary>One cubic metre.</summary>
    CubicMetre,

    /// <summary>One kilogram.</summary>
    Kilogram,

    /// <summary>One gram.</summary>
    Gram,

    /// <summary>One milligram.</summary>
    Milligram,

    /// <summary>One piece.</summary>
    Piece,

    /// <summary>One hour of hands-on work.</summary>
    Hour,

    /// <summary>One minute of hands-on work.</summary>
    Minute,
}
