using System.Collections.Immutable;
using Protocolist.Benches.Disposal;
using Protocolist.Benches.Stock;
using Protocolist.Findings;
using Protocolist.Fluids.Safety;
using Protocolist.Notation;
using Protocolist.Quantities;

namespace Protocolist.Planning.Purchasing;

/// <summary>What is reckoned with beside the materials.</summary>
/// <param name="LabourRate">A price by hour or minute; null where labour is not reckoned.</param>
/// <param name="DisposalRates">Of a class of waste, its price by volume, mass or piece.</param>
/// <param name="Rates">The plan's currency and rates.</param>
public sealed record CostRates(Price? LabourRate, ImmutableDictionary<WasteClass, Price> DisposalRates, ExchangeRates Rates)
{
    /// <summary>Of a class of waste without a price of its own, what its container costs full.</summary>
    public ImmutableDictionary<WasteClass, ContainerPrice> ContainerPrices { get; init; } = ImmutableDictionary<WasteClass, ContainerPrice>.Empty;

    /// <summary>Sums a plan's costs.</summary>
    /// <param name="materials">The books of every material, in the plan's currency.</param>
    /// <param name="wear">Things that last, and how often the plan uses each.</param>
    /// <param name="handsOn">Hands-on time.</param>
    /// <param name="waste">Everything that leaves.</param>
    /// <param name="careLabour">The work of a year of care after sealing; null for none.</param>
    /// <param name="careFluid">The fluid that is topped up in a year; null for none.</param>
    /// <returns>The costs, always present; findings <c>disposal-without-price</c>, <c>labour-without-price</c>, <c>stock-without-worth</c> (notes), <c>two-currencies</c> (error).</returns>
    public Checked<Costs> Sum(IReadOnlyList<MaterialLine> materials, IReadOnlyList<(StockItem Item, long Uses)> wear, NodaTime.Duration handsOn, IReadOnlyList<Waste> waste, Money? careLabour = null, Money? careFluid = null)
    {
        var findings = ImmutableArray.CreateBuilder<Finding>();
        var currency = Rates.Currency;
        var unpriced = new List<string>();
        var disposal = waste.Where(w => w.Way != WasteWay.KeptForReuse && w.Way != WasteWay.DrainedWhereAllowed && w.Amount.Units > 0)
            .GroupBy(w => w.Class).ToImmutableSortedDictionary(g => g.Key, g => Money.Sum(g.GroupBy(w => w.Amount.Kind).Select(k => DisposalOf(g.Key, k.Aggregate(Amount.Zero(k.Key), (sum, w) => sum + w.Amount), unpriced, findings)), currency));
        if (unpriced.Count > 0)
            findings.Add(Finding.Note("disposal-without-price", $"nothing says what disposal costs of {string.Join(", ", unpriced)}; it is reckoned as free", "ask who collects it, and state it under 'disposal:' (formaldehyde: 3.20 EUR/L, sharps: 0.20 EUR/piece), or what a full container costs under 'waste: containers:'"));
        if (LabourRate is null && handsOn > NodaTime.Duration.Zero)
            findings.Add(Finding.Note("labour-without-price", "the bench states no rate for hands-on time; labour is reckoned as free", "state a rate, for example '30 EUR/h'"));
        return new(new()
        {
            CashNow = Money.Sum(materials.Select(m => m.CashNow), currency),
            Materials = Money.Sum(materials.Select(m => m.CostOfUsed), currency),
            LeftOnShelf = Money.Sum(materials.Select(m => m.WorthOfLeft), currency),
            Wear = Money.Sum(wear.Select(w => StockWorth.OfWear(w.Item, w.Uses, Rates, findings)), currency),
            Labour = LabourRate is null ? Money.Zero(currency) : Converted(LabourRate.For(handsOn), "labour", findings),
            DisposalByClass = disposal,
            CareLabourByYear = careLabour is null ? Money.Zero(currency) : Converted(careLabour, "care", findings),
            CareFluidByYear = careFluid is null ? Money.Zero(currency) : Converted(careFluid, "fluid for topping up", findings),
        }, findings.ToImmutable());
    }

    private Money DisposalOf(WasteClass @class, Amount amount, List<string> unpriced, ImmutableArray<Finding>.Builder findings)
    {
        if (DisposalRates.GetValueOrDefault(@class) is { } price && price.IsFor(amount.Kind))
            return Converted(StockWorth.AtPrice(price, amount), $"disposal of {Waste.Words(@class.ToString())} waste", findings);
        if (ContainerPrices.GetValueOrDefault(@class) is { } container && container.Holds.Kind == amount.Kind)
            return Converted(container.For(amount), $"disposal of {Waste.Words(@class.ToString())} waste", findings);
        unpriced.Add($"{Waste.Words(@class.ToString())} waste ({amount})");
        return Money.Zero(Rates.Currency);
    }

    private Money Converted(Money money, string what, ImmutableArray<Finding>.Builder findings)
    {
        if (Rates.Convert(money) is { } converted) return converted;
        findings.Add(Rates.Lacking(money.Currency, what));
        return Money.Zero(Rates.Currency);
    }
}
