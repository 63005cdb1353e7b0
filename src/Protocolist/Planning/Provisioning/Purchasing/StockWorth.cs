using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Quantities;

namespace Protocolist.Planning.Provisioning.Purchasing;

/// <summary>
/// What stock is worth in the plan's currency: at its stated price by unit, else at the lowest among its packs; and what is to be said where nothing
/// tells.
/// </summary>
/// <param name="Minor">Smallest coins; 0 where nobody knows.</param>
/// <param name="Doubt">A note <c>stock-without-worth</c> or an error <c>two-currencies</c>; null where it is known.</param>
internal readonly record struct StockWorth(long Minor, Finding? Doubt)
{
    private static readonly Phrase Unknown = new("stock-without-worth", "nothing says what '{stock}' is worth; it is reckoned as free");
    private static readonly Phrase UnknownRemedy = new("stock-without-worth.remedy", "give it a pack with a price, or say what a unit of it is worth");

    /// <summary>The worth of what is on hand, rounded to a coin.</summary>
    public static StockWorth Of(StockItem item, ExchangeRates rates) =>
        item.Worth is { } worth && worth.IsFor(item.OnHand.Kind) ? Converted(worth.For(item.OnHand), item, rates)
        : Best(item) is { } pack ? Converted(Money.Rounded(pack.Price!.Amount * item.OnHand.Units / pack.Size.Units, pack.Price.Currency), item, rates)
        : Without(item);

    /// <summary>What so many uses of a thing wear away of it, rounded to a coin.</summary>
    public static StockWorth OfWear(StockItem item, long uses, ExchangeRates rates)
    {
        var worn = (item.Wear ?? Wear.SingleUse).PiecesWorn(uses);
        return item.Worth is { } worth && worth.IsFor(AmountKind.Count) ? Converted(worth.For(worn), item, rates)
            : Best(item) is { } pack ? Converted(Money.Rounded(pack.Price!.Amount * worn / pack.Size.Units, pack.Price.Currency), item, rates)
            : Without(item);
    }

    private static Pack? Best(StockItem item)
    {
        Pack? best = null;
        foreach (var pack in item.Packs)
        {
            if (!pack.CanBeBought || pack.Size.Kind != item.OnHand.Kind) continue;
            if (best is null || pack.Price!.Amount / pack.Size.Units < best.Price!.Amount / best.Size.Units) best = pack;
        }

        return best;
    }

    private static StockWorth Converted(Money money, StockItem item, ExchangeRates rates) => rates.Convert(money) is { } converted
        ? new(converted.Minor, null)
        : new(0, rates.LackingOf(money.Currency, Message.Text(item.Id)));

    private static StockWorth Without(StockItem item) =>
        new(0, Finding.Note(Unknown.Id, Unknown.With(Argument.Id("stock", item.Id)), UnknownRemedy, item.Where));
}

/// <summary>Prices of amounts.</summary>
internal static class AmountPrices
{
    /// <summary>Whether a price is by this kind of amount.</summary>
    public static bool IsFor(this Price price, AmountKind kind) => kind switch
    {
        AmountKind.Volume => price.Per is PriceUnit.Litre or PriceUnit.Millilitre or PriceUnit.CubicMetre,
        AmountKind.Mass => price.Per is PriceUnit.Kilogram or PriceUnit.Gram or PriceUnit.Milligram,
        _ => price.Per is PriceUnit.Piece,
    };

    /// <summary>What so much comes to, at a price that is for it.</summary>
    public static Money For(this Price price, Amount amount) => amount.Kind switch
    {
        AmountKind.Volume => price.For(amount.Volume),
        AmountKind.Mass => price.For(amount.Mass),
        _ => price.For((decimal)amount.Units),
    };
}
