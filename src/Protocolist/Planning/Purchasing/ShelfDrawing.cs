using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches.Stock;

namespace Protocolist.Planning.Purchasing;

/// <summary>What is taken from one stock item.</summary>
/// <param name="Item">The item.</param>
/// <param name="Amount">What is taken; above 0.</param>
public sealed record Draw(StockItem Item, Amount Amount)
{
    /// <summary>Whether it is empty afterwards.</summary>
    public bool EmptiesIt => Amount == Item.OnHand;
}

/// <summary>Which bottles an amount comes from: usable ones only, part bottles before full, the oldest first.</summary>
/// <param name="Draws">In the order of drawing.</param>
/// <param name="Lacking">What the shelf does not give.</param>
public sealed record ShelfDrawing(ImmutableArray<Draw> Draws, Amount Lacking)
{
    /// <summary>What is taken from one item.</summary>
    /// <param name="item">One of the items that were offered.</param>
    /// <returns>The amount; zero where it is left alone.</returns>
    public Amount TakenFrom(StockItem item) => Draws.FirstOrDefault(d => ReferenceEquals(d.Item, item))?.Amount ?? Amount.Zero(item.OnHand.Kind);

    /// <summary>Draws an amount of one material.</summary>
    /// <param name="items">All stock of that material, in any order.</param>
    /// <param name="amount">How much is wanted, 0 or more.</param>
    /// <param name="on">The day of use; what is expired by then is left alone.</param>
    /// <returns>The draws and what is lacking.</returns>
    public static ShelfDrawing From(IEnumerable<StockItem> items, Amount amount, LocalDate on)
    {
        var draws = ImmutableArray.CreateBuilder<Draw>();
        var lacking = amount;
        foreach (var item in InOrder(items, on))
        {
            if (lacking.Units <= 0) break;
            var drawn = Amount.Least(lacking, item.OnHand);
            draws.Add(new(item, drawn));
            lacking -= drawn;
        }

        return new(draws.ToImmutable(), lacking);
    }

    /// <summary>The usable stock in the order in which it is drawn: opened before full; of the opened the longest open, of the full the soonest to expire; then by id.</summary>
    /// <param name="items">Stock.</param>
    /// <param name="on">The day of use.</param>
    /// <returns>The usable items.</returns>
    public static IEnumerable<StockItem> InOrder(IEnumerable<StockItem> items, LocalDate on) => items.Where(i => i.IsUsable(on))
        .OrderBy(i => i.OpenedOn ?? LocalDate.MaxIsoValue)
        .ThenBy(i => i.Expires ?? LocalDate.MaxIsoValue)
        .ThenBy(i => i.Id, StringComparer.Ordinal);
}
