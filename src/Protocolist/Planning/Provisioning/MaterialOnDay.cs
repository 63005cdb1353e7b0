using System.Collections.Immutable;
using System.Runtime.InteropServices;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Planning.Provisioning.Purchasing;
using Protocolist.Plans;

namespace Protocolist.Planning.Provisioning;

/// <summary>One bottle that can be drawn on.</summary>
/// <param name="Item">The bottle.</param>
/// <param name="WorthMinor">What is in it is worth, in smallest coins of the plan's currency.</param>
internal readonly record struct Bottle(StockItem Item, long WorthMinor);

/// <summary>What of a material may be used on a day. Made once. Immutable.</summary>
internal sealed class MaterialOnDay
{
    private MaterialOnDay(StockMaterial material) => Material = material;

    public StockMaterial Material { get; }

    /// <summary>What can be drawn and bought.</summary>
    public required Product Product { get; init; }

    /// <summary>
    /// The usable bottles in the order in which they are drawn: opened before full; of the opened the longest open, of the full the soonest to expire;
    /// then by id.
    /// </summary>
    public required ImmutableArray<Bottle> Bottles { get; init; }

    /// <summary>On the shelf, but not to be used: expired, of unknown strength, spent.</summary>
    public required Amount Unusable { get; init; }

    /// <summary>What all usable bottles are worth.</summary>
    public required long WorthMinor { get; init; }

    /// <summary>What is to be said of their worth.</summary>
    public required ImmutableArray<Finding> Doubts { get; init; }

    public Amount Usable => Product.OnHand;

    /// <summary>Whether there is any, or it can be bought.</summary>
    public bool IsToBeHad => Material.CanBeBought || Usable.Units > 0;

    public static MaterialOnDay Of(StockMaterial material, LocalDate day, ExchangeRates rates)
    {
        List<(StockItem Item, StockWorth Worth)> usable =
        [
            .. material.Items.Where(i => i.IsUsable(day))
                .OrderBy(i => i.OpenedOn ?? LocalDate.MaxIsoValue).ThenBy(i => i.Expires ?? LocalDate.MaxIsoValue).ThenBy(i => i.Id, StringComparer.Ordinal)
                .Select(i => (i, StockWorth.Of(i, rates))),
        ];
        var onHand = usable.Sum(u => u.Item.OnHand.Units);
        return new(material)
        {
            Product = new(material.Product, new(material.Measure, onHand), material.Market),
            Bottles = [.. usable.Select(u => new Bottle(u.Item, u.Worth.Minor))],
            Unusable = new(material.Measure, material.Items.Sum(i => Math.Max(0, i.OnHand.Units)) - onHand),
            WorthMinor = usable.Sum(u => u.Worth.Minor),
            Doubts = [.. usable.Select(u => u.Worth.Doubt).OfType<Finding>()],
        };
    }

    /// <summary>
    /// The books of the material: used + left = on hand + bought, to the last unit; cost of used + worth of left = worth on hand + cash, to the last coin.
    /// </summary>
    /// <remarks>
    /// Each bottle's worth is rounded to a coin once and then shared between used and left, as is what the packs cost, so that no coin is lost.
    /// </remarks>
    /// <param name="used">What the plan uses, dead volume included; 0 or more.</param>
    /// <param name="reserve">What must be at hand besides.</param>
    /// <param name="purchase">What is bought of it; null for nothing.</param>
    /// <param name="uses">Of things, how often a piece is used.</param>
    /// <param name="steps">The steps that use it.</param>
    public BookedMaterial Book(long used, long reserve, Purchase? purchase, long uses, ImmutableArray<string> steps)
    {
        var (kind, bought, cash) = (Material.Measure, purchase?.Bought ?? 0, purchase?.CostMinor ?? 0);
        var (lacking, cost, drawn) = (used, 0L, 0);
        while (drawn < Bottles.Length && lacking > 0)
        {
            var (item, worth) = Bottles[drawn++];
            var taken = Math.Min(lacking, item.OnHand.Units);
            cost += Share(worth, taken, item.OnHand.Units);
            lacking -= taken;
        }

        var draws = new MaterialDraw[drawn + (lacking > 0 ? 1 : 0)];
        for (var (i, left) = (0, used); i < drawn; i++)
        {
            var taken = Math.Min(left, Bottles[i].Item.OnHand.Units);
            draws[i] = new(MaterialOrigin.Shelf, Bottles[i].Item.Id, new(kind, taken));
            left -= taken;
        }

        if (bought > 0) cost += Share(cash, Math.Min(lacking, bought), bought);
        if (lacking > 0) draws[drawn] = new(bought > 0 ? MaterialOrigin.Purchase : MaterialOrigin.Lacking, "", new(kind, lacking));
        var material = new PlannedMaterial(
            Material.Id, Material.Name, Material.Kind, Usable, new(kind, bought), new(kind, used), new(kind, Usable.Units + bought - used))
        {
            Unusable = Unusable,
            Reserve = new(kind, reserve),
            Uses = uses,
            Draws = ImmutableCollectionsMarshal.AsImmutableArray(draws),
            For = steps,
        };
        return new(material, WorthMinor, cash, cost);
    }

    /// <summary>A part's share of a sum: rounded to a coin, halves up, so that it and the rest's share rounded down make the whole.</summary>
    private static long Share(long whole, long part, long of)
    {
        var (share, over) = Int128.DivRem((Int128)whole * part, of);
        return (long)share + (2 * over >= of ? 1 : 0);
    }
}

/// <summary>A material as the plan books it, and what that is worth in smallest coins.</summary>
/// <param name="Material">The books in units.</param>
/// <param name="WorthOnHandMinor">What the usable stock was worth before.</param>
/// <param name="CashMinor">To spend on it now.</param>
/// <param name="CostOfUsedMinor">What the used part costs, from the shelf and bought.</param>
internal readonly record struct BookedMaterial(PlannedMaterial Material, long WorthOnHandMinor, long CashMinor, long CostOfUsedMinor)
{
    /// <summary>What stays on the shelf is worth.</summary>
    public long WorthOfLeftMinor => WorthOnHandMinor + CashMinor - CostOfUsedMinor;
}
