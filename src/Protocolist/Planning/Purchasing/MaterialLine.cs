using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches.Stock;
using Protocolist.Findings;
using Protocolist.Quantities;

namespace Protocolist.Planning.Purchasing;

/// <summary>The books of one material through a plan: used + left = on hand + bought, to the last unit; cost of used + worth of left = worth on hand + cash, to the last coin.</summary>
public sealed record MaterialLine
{
    /// <summary>The material's name in the plan.</summary>
    public required string Id { get; init; }

    /// <summary>What was usable on the shelf before.</summary>
    public required Amount OnHand { get; init; }

    /// <summary>What was on the shelf but may not be used (expired, strength unknown, spent); in none of the sums.</summary>
    public required Amount Unusable { get; init; }

    /// <summary>What is bought.</summary>
    public required Amount Bought { get; init; }

    /// <summary>What the plan uses, dead volume included.</summary>
    public required Amount Used { get; init; }

    /// <summary>What is on the shelf afterwards, spill reserve included; negative where something is lacking and cannot be bought.</summary>
    public required Amount Left { get; init; }

    /// <summary>Of <see cref="Left"/>, what is kept ready for spills until the plan is done.</summary>
    public required Amount SpillReserve { get; init; }

    /// <summary>Which bottles the used amount comes from; what they do not give comes from the packs bought.</summary>
    public required ImmutableArray<Draw> Draws { get; init; }

    /// <summary>What the usable stock was worth before.</summary>
    public required Money WorthOnHand { get; init; }

    /// <summary>Cash to spend on this material.</summary>
    public required Money CashNow { get; init; }

    /// <summary>What the used part costs, from the shelf and bought.</summary>
    public required Money CostOfUsed { get; init; }

    /// <summary>What stays on the shelf is worth.</summary>
    public required Money WorthOfLeft { get; init; }

    /// <summary>Makes the books of one material.</summary>
    /// <remarks>
    /// Stock is worth its <see cref="StockItem.Worth"/>, else the lowest price by unit among its packs; each bottle's worth is rounded to a coin once and
    /// then shared between used and left, as is what the packs cost, so that no coin is lost.
    /// </remarks>
    /// <param name="id">The material's name in the plan.</param>
    /// <param name="items">All stock of the material.</param>
    /// <param name="used">What the plan uses, as <see cref="Reserve.Used"/> gives it.</param>
    /// <param name="spillReserve">What must be at hand besides, as <see cref="Reserve.ForSpills"/> gives it.</param>
    /// <param name="purchase">What is bought of it; null for nothing.</param>
    /// <param name="on">The day of use.</param>
    /// <param name="rates">The plan's currency and rates.</param>
    /// <returns>The line, always present; findings <c>stock-without-worth</c> (note), <c>two-currencies</c> (error).</returns>
    public static Checked<MaterialLine> Of(string id, IReadOnlyList<StockItem> items, Amount used, Amount spillReserve, Purchase? purchase, LocalDate on, ExchangeRates rates)
    {
        var findings = ImmutableArray.CreateBuilder<Finding>();
        var drawing = ShelfDrawing.From(items, used, on);
        var nothing = Amount.Zero(used.Kind);
        var (onHand, worth, costOfUsed) = (nothing, Money.Zero(rates.Currency), Money.Zero(rates.Currency));
        foreach (var item in ShelfDrawing.InOrder(items, on))
        {
            var itemWorth = StockWorth.Of(item, rates, findings);
            onHand += item.OnHand;
            worth += itemWorth;
            costOfUsed += Share(itemWorth, drawing.TakenFrom(item), item.OnHand);
        }

        var (bought, cash) = (purchase?.Bought ?? nothing, purchase?.Cost ?? Money.Zero(rates.Currency));
        if (bought.Units > 0) costOfUsed += Share(cash, Amount.Least(drawing.Lacking, bought), bought);
        var there = items.Aggregate(nothing, (sum, i) => i.OnHand.Units > 0 ? sum + i.OnHand : sum);
        return new(new()
        {
            Id = id,
            OnHand = onHand,
            Unusable = there - onHand,
            Bought = bought,
            Used = used,
            Left = onHand + bought - used,
            SpillReserve = spillReserve,
            Draws = drawing.Draws,
            WorthOnHand = worth,
            CashNow = cash,
            CostOfUsed = costOfUsed,
            WorthOfLeft = worth + cash - costOfUsed,
        }, findings.ToImmutable());
    }

    private static Money Share(Money whole, Amount part, Amount of) => whole.Allocate([part.Units, (of - part).Units])[0];
}
