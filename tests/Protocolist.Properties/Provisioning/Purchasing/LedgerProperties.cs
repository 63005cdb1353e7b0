using System.Collections.Immutable;
using FsCheck;
using FsCheck.Fluent;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Fluids;
using Protocolist.Planning.Provisioning;
using Protocolist.Planning.Provisioning.Purchasing;
using Protocolist.Plans;
using Protocolist.Quantities;

namespace Protocolist.Properties.Provisioning.Purchasing;

public class LedgerProperties
{
    private static readonly LocalDate Day = new(2027, 3, 1);
    private static readonly ExchangeRates Euro = ExchangeRates.None("EUR");

    public sealed record Case(StockItem[] Items, int Asked, int Draws);

    public static Arbitrary<Case> Cases() => (
        from packs in Packs()
        from bottles in Gen.Choose(1, 4)
        from items in Item(packs).ArrayOf(bottles)
        from asked in Gen.Choose(0, 20_000_000)
        from draws in Gen.Choose(1, 3)
        select new Case([.. items.Select((i, n) => i with { Id = $"b{n}" })], asked, draws)).ToArbitrary();

    private static Gen<ImmutableArray<Pack>> Packs() =>
        from n in Gen.Choose(1, 3)
        from sizes in Gen.Elements(250_000, 1_000_000, 2_500_000, 5_000_000, 20_000_000).ArrayOf(n)
        from prices in Gen.Choose(1, 20_000).ArrayOf(n)
        select sizes.Zip(prices, (s, c) => new Pack(new(AmountKind.Volume, s), Money.OfMinor(c, "EUR"))).ToImmutableArray();

    private static Gen<StockItem> Item(ImmutableArray<Pack> packs) =>
        from onHand in Gen.Choose(0, 5_000_000)
        from opened in Gen.Elements<LocalDate?>(null, new(2026, 5, 1), new(2027, 1, 1))
        from expires in Gen.Elements<LocalDate?>(null, new(2027, 2, 1), new(2027, 9, 1))
        select new StockItem { Id = "b", Kind = StockKind.Fluid, Substance = "ethanol 96 %vol", OnHand = new(AmountKind.Volume, onHand), OpenedOn = opened, Expires = expires, Packs = packs };

    private static (BookedMaterial Books, Amount Provided) Books(Case c)
    {
        var (asked, reserve) = (new Amount(AmountKind.Volume, c.Asked), Reserve.Usual);
        var (used, spare) = (reserve.Used(asked, c.Draws), reserve.ForSpills(asked));
        var on = StockMaterial.Of([.. c.Items], Euro, SubstanceCatalogue.Bundled)[0].On(Day);
        var purchase = Purchases.Choose([], [(used + spare).Units], [on.Product], []).Purchases[0];
        return (on.Book(used.Units, spare.Units, purchase, 0, []), used + spare);
    }

    [Property(Arbitrary = [typeof(LedgerProperties)], MaxTest = 1000)]
    public bool Used_and_left_are_on_hand_and_bought(Case c)
    {
        var line = Books(c).Books.Material;
        return line.Used + line.Left == line.OnHand + line.Bought
            && line.OnHand + line.Unusable == c.Items.Aggregate(Amount.Zero(AmountKind.Volume), (sum, i) => sum + i.OnHand)
            && line.Draws.Aggregate(Amount.Zero(AmountKind.Volume), (sum, d) => sum + d.Amount) == line.Used;
    }

    [Property(Arbitrary = [typeof(LedgerProperties)], MaxTest = 1000)]
    public bool No_coin_is_lost_between_used_and_left(Case c)
    {
        var books = Books(c).Books;
        return books.CostOfUsedMinor + books.WorthOfLeftMinor == books.WorthOnHandMinor + books.CashMinor
            && books is { CostOfUsedMinor: >= 0, WorthOfLeftMinor: >= 0 };
    }

    /// <summary>The used part of a bottle and of what is bought costs what sharing the whole out by weight comes to.</summary>
    [Property(Arbitrary = [typeof(LedgerProperties)], MaxTest = 1000)]
    public bool What_is_used_costs_its_share_of_each_bottle(Case c)
    {
        var (books, on) = (Books(c).Books, StockMaterial.Of([.. c.Items], Euro, SubstanceCatalogue.Bundled)[0].On(Day));
        var cost = books.Material.Draws.Where(d => d.From == MaterialOrigin.Shelf).Sum(d => on.Bottles.Single(b => b.Item.Id == d.Stock) is var bottle
            ? Money.OfMinor(bottle.WorthMinor, "EUR").Allocate([d.Amount.Units, bottle.Item.OnHand.Units - d.Amount.Units])[0].Minor : 0);
        var rest = books.Material.Draws.Where(d => d.From == MaterialOrigin.Purchase).Sum(d => d.Amount.Units);
        var bought = books.Material.Bought.Units;
        if (bought > 0) cost += Money.OfMinor(books.CashMinor, "EUR").Allocate([Math.Min(rest, bought), bought - Math.Min(rest, bought)])[0].Minor;
        return cost == books.CostOfUsedMinor;
    }

    [Property(Arbitrary = [typeof(LedgerProperties)], MaxTest = 1000)]
    public bool What_is_left_holds_the_spill_reserve_and_no_bottle_gives_more_than_it_holds(Case c)
    {
        var (books, provided) = Books(c);
        var (line, shelf) = (books.Material, books.Material.Draws.Where(d => d.From == MaterialOrigin.Shelf).Select(d => (d.Amount, Item: c.Items.Single(i => i.Id == d.Stock))).ToList());
        return line.Left >= line.Reserve && line.OnHand + line.Bought >= provided
            && shelf.All(d => d.Amount.Units > 0 && d.Amount <= d.Item.OnHand && d.Item.IsUsable(Day))
            && shelf.SkipLast(1).All(d => d.Amount == d.Item.OnHand);
    }

    [Property(MaxTest = 1000)]
    public bool Shares_add_up_to_the_whole(int minor, NonNegativeInt[] weights)
    {
        var whole = Money.OfMinor(minor, "EUR");
        if (weights.Length == 0) return true;
        var shares = whole.Allocate([.. weights.Select(w => (decimal)w.Get)]);
        var total = weights.Sum(w => (decimal)w.Get);
        return Money.Sum(shares, "EUR") == whole
            && (total == 0 || shares.Zip(weights).All(s => Math.Abs(s.First.Minor - minor * s.Second.Get / total) < 1));
    }
}
