using System.Collections.Immutable;
using Protocolist.Benches.Stock;
using Protocolist.Findings;
using Protocolist.Notation;
using Protocolist.Quantities;

namespace Protocolist.Planning.Purchasing;

/// <summary>What stock is worth: at its stated price by unit, else at the lowest among its packs.</summary>
internal static class StockWorth
{
    /// <summary>Whether a price is by this kind of amount.</summary>
    public static bool IsFor(this Price price, AmountKind kind) => kind switch
    {
        AmountKind.Volume => price.Per is PriceUnit.Litre or PriceUnit.Millilitre or PriceUnit.CubicMetre,
        AmountKind.Mass => price.Per is PriceUnit.Kilogram or PriceUnit.Gram or PriceUnit.Milligram,
        _ => price.Per is PriceUnit.Piece,
    };

    /// <summary>The worth of what is on hand, in the plan's currency, rounded to a coin.</summary>
    public static Money Of(StockItem item, ExchangeRates rates, ImmutableArray<Finding>.Builder findings) =>
        item.Worth is { } worth && worth.IsFor(item.OnHand.Kind) ? Converted(AtPrice(worth, item.OnHand), item, rates, findings)
        : Best(item) is { } pack ? Converted(Money.Rounded(pack.Price!.Amount * item.OnHand.Units / pack.Size.Units, pack.Price.Currency), item, rates, findings)
        : Worthless(item, rates, findings);

    /// <summary>What so many uses of a thing wear away of it, in the plan's currency, rounded to a coin.</summary>
    public static Money OfWear(StockItem item, long uses, ExchangeRates rates, ImmutableArray<Finding>.Builder findings)
    {
        var worn = (item.Wear ?? Wear.SingleUse).PiecesWorn(uses);
        return item.Worth is { } worth && worth.IsFor(AmountKind.Count) ? Converted(worth.For(worn), item, rates, findings)
            : Best(item) is { } pack ? Converted(Money.Rounded(pack.Price!.Amount * worn / pack.Size.Units, pack.Price.Currency), item, rates, findings)
            : Worthless(item, rates, findings);
    }

    private static Pack? Best(StockItem item) => item.Packs.Where(p => p.CanBeBought && p.Size.Kind == item.OnHand.Kind).MinBy(p => p.Price!.Amount / p.Size.Units);

    public static Money AtPrice(Price worth, Amount amount) => amount.Kind switch
    {
        AmountKind.Volume => worth.For(amount.Volume),
        AmountKind.Mass => worth.For(amount.Mass),
        _ => worth.For((decimal)amount.Units),
    };

    private static Money Converted(Money money, StockItem item, ExchangeRates rates, ImmutableArray<Finding>.Builder findings)
    {
        if (rates.Convert(money) is { } converted) return converted;
        findings.Add(rates.Lacking(money.Currency, $"'{item.Id}'"));
        return Money.Zero(rates.Currency);
    }

    private static Money Worthless(StockItem item, ExchangeRates rates, ImmutableArray<Finding>.Builder findings)
    {
        findings.Add(Finding.Note("stock-without-worth", $"nothing says what '{item.Id}' is worth; it is reckoned as free", "give it a pack with a price, or say what a unit of it is worth", item.Where));
        return Money.Zero(rates.Currency);
    }
}
