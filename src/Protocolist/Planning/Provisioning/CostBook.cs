using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Benches.Disposal;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Planning.Provisioning.Purchasing;
using Protocolist.Plans;
using Protocolist.Quantities;

namespace Protocolist.Planning.Provisioning;

/// <summary>What a plan costs, in the bench's currency. Every part is rounded once to the smallest coin, halves away from zero; the sums are exact.</summary>
internal sealed class CostBook
{
    private static readonly Phrase NoDisposalPrice = new("disposal-without-price", "nothing says what disposal costs of {lots}; it is reckoned as free");
    private static readonly Phrase Lot = new("disposal-without-price.lot", "{class} waste ({amount})");

    private static readonly Phrase NoDisposalPriceRemedy = new(
        "disposal-without-price.remedy",
        "ask who collects it, and state it under 'disposal:' (formaldehyde: 3.20 EUR/L, sharps: 0.20 EUR/piece), "
        + "or what a full container costs under 'waste: containers:'");

    private static readonly Phrase NoRate = new("labour-without-price", "the bench states no rate for hands-on time; labour is reckoned as free");
    private static readonly Phrase NoRateRemedy = new("labour-without-price.remedy", "state a rate, for example '30 EUR/h'");
    private static readonly Phrase Labour = new("priced.labour", "labour");
    private static readonly Phrase Care = new("priced.care", "care");
    private static readonly Phrase Disposal = new("priced.disposal", "disposal of {class} waste");

    private readonly PreparedStock stock;
    private readonly List<Finding> findings;

    private CostBook(PreparedStock stock, List<Finding> findings) => (this.stock, this.findings) = (stock, findings);

    /// <summary>Sums a plan's costs.</summary>
    /// <param name="parts">What is paid for.</param>
    /// <param name="stock">The bench, with its prices.</param>
    /// <param name="findings">
    /// Takes <c>disposal-without-price</c>, <c>labour-without-price</c>, <c>stock-without-worth</c> (notes), <c>two-currencies</c> (error).
    /// </param>
    public static PlanCosts Of(CostParts parts, PreparedStock stock, List<Finding> findings)
    {
        if (stock.Bench.Currency is not { } currency) return PlanCosts.Unknown;
        var (book, bench) = (new CostBook(stock, findings), stock.Bench);
        var disposal = book.DisposalOf(parts.Waste);
        if (bench.Labour is null && parts.HandsOn > Duration.Zero) findings.Add(Finding.Note(NoRate.Id, NoRate, NoRateRemedy));
        var wear = book.WearOf(parts.Worn);
        var labour = bench.Labour is { } rate ? book.Minor(rate.For(parts.HandsOn), Labour) : 0;
        var careLabour = bench.Labour is { } careRate ? book.Minor(careRate.For(parts.CareByYear), Care) : 0;
        if (parts.CareFluid.Doubt is { } doubt) findings.Add(doubt);

        var (spent, careFluid) = (0L, parts.CareFluid.Cost?.Minor ?? 0);
        foreach (var (_, cost) in disposal) spent += cost;
        var total = parts.UsedMinor + wear + labour + spent;
        var hasDisposal = !bench.DisposalPrices.IsEmpty || !bench.WasteRules.ContainerPrices.IsEmpty;
        return new(Coins(parts.CashMinor), Coins(parts.UsedMinor), bench.Labour is null ? null : Coins(labour), hasDisposal ? Coins(spent) : null)
        {
            LeftOnShelf = Coins(parts.LeftMinor),
            Wear = Coins(wear),
            DisposalByClass = hasDisposal ? ByClass(disposal, currency) : [],
            Total = Coins(total),
            BySpecimen = Coins(DearestShare(total, Math.Max(1, parts.Specimens))),
            CareLabourByYear = bench.Labour is null ? null : Coins(careLabour),
            CareFluidByYear = parts.CareFluid.Cost,
            TopUpByYear = parts.CareFluid.PerYear is { } fluid ? Grid.On(fluid) : null,
            CareByYear = bench.Labour is null && parts.CareFluid.Cost is null ? null : Coins(careLabour + careFluid),
            OverTenYears = Coins(total + (10 * (careLabour + careFluid))),
        };

        Money Coins(long minor) => Money.OfMinor(minor, currency);
    }

    private static ImmutableArray<DisposalCost> ByClass(List<(WasteClass Class, long Minor)> disposal, string currency)
    {
        disposal.Sort((one, other) => one.Class.CompareTo(other.Class));
        var costs = ImmutableArray.CreateBuilder<DisposalCost>(disposal.Count);
        foreach (var (@class, minor) in disposal) costs.Add(new(@class, Money.OfMinor(minor, currency)));
        return costs.MoveToImmutable();
    }

    /// <summary>The total shared over a lot of alike specimens, no coin lost: the first ones bear the odd coins.</summary>
    private static long DearestShare(long total, int specimens)
    {
        var (share, over) = Math.DivRem(total, specimens);
        return share + (over > 0 ? 1 : 0);
    }

    /// <summary>What it costs to be rid of each class, in the order in which the classes come up; what is kept or drained costs nothing.</summary>
    private List<(WasteClass Class, long Minor)> DisposalOf(ImmutableArray<PlannedWaste> waste)
    {
        var (sums, costs) = (new List<(WasteClass Class, Amount Amount)>(), new List<(WasteClass Class, long Minor)>());
        foreach (var lot in waste)
        {
            if (lot.Way is WasteWay.KeptForReuse or WasteWay.DrainedWhereAllowed || (lot.Class == WasteClass.RinseWater && !IsPriced(lot.Class))) continue;
            var at = 0;
            while (at < sums.Count && (sums[at].Class != lot.Class || sums[at].Amount.Kind != lot.Amount.Kind)) at++;
            if (at == sums.Count) sums.Add((lot.Class, lot.Amount));
            else sums[at] = (lot.Class, sums[at].Amount + lot.Amount);
        }

        List<Message>? unpriced = null;
        foreach (var (@class, amount) in sums)
        {
            var minor = CostOf(@class, amount);
            if (minor is null) (unpriced ??= []).Add(Lot.With(("class", Waste.Words(@class)), amount.Fact("amount")));
            var at = 0;
            while (at < costs.Count && costs[at].Class != @class) at++;
            if (at == costs.Count) costs.Add((@class, minor ?? 0));
            else costs[at] = (@class, costs[at].Minor + (minor ?? 0));
        }

        if (unpriced is not null)
            findings.Add(Finding.Note(NoDisposalPrice.Id, NoDisposalPrice.With(Argument.Messages("lots", unpriced)), NoDisposalPriceRemedy));
        return costs;
    }

    private bool IsPriced(WasteClass @class) =>
        stock.Bench.DisposalPrices.ContainsKey(@class) || stock.Bench.WasteRules.ContainerPrices.ContainsKey(@class);

    /// <summary>By the class's own price, else by its container's; null where neither is for such an amount.</summary>
    private long? CostOf(WasteClass @class, Amount amount)
    {
        var cost = stock.Bench.DisposalPrices.GetValueOrDefault(@class) is { } price && price.IsFor(amount.Kind) ? price.For(amount)
            : stock.Bench.WasteRules.ContainerPrices.GetValueOrDefault(@class) is { } container && container.Holds.Kind == amount.Kind ? container.For(amount)
            : null;
        return cost is null ? null
            : stock.Rates.Convert(cost) is { } converted ? converted.Minor
            : Lacking(cost, Disposal.With(("class", Waste.Words(@class))));
    }

    private long WearOf(IReadOnlyList<(StockItem Item, long Uses)> worn)
    {
        var sum = 0L;
        foreach (var (item, uses) in worn)
        {
            var worth = StockWorth.OfWear(item, uses, stock.Rates);
            if (worth.Doubt is { } doubt) findings.Add(doubt);
            sum += worth.Minor;
        }

        return sum;
    }

    private long Minor(Money money, Phrase what) => stock.Rates.Convert(money)?.Minor ?? Lacking(money, what);

    private long Lacking(Money money, Message what)
    {
        findings.Add(stock.Rates.Lacking(money.Currency, what));
        return 0;
    }
}
