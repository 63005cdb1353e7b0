using System.Collections.Immutable;
using FsCheck;
using FsCheck.Fluent;
using NodaTime;
using Protocolist.Benches.Stock;
using Protocolist.Planning.Purchasing;
using Protocolist.Quantities;

namespace Protocolist.Properties.Purchasing;

public class LedgerProperties
{
    private static readonly LocalDate Day = new(2027, 3, 1);
    private static readonly ExchangeRates Euro = ExchangeRates.None("EUR");

    public sealed record Case(StockItem[] Items, int Asked, int Draws);

    public static Arbitrary<Case> Cases() => (
        from packs in Packs()
        from bottles in Gen.Choose(0, 4)
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

    private static (MaterialLine Line, Amount Provided) Books(Case c)
    {
        var asked = new Amount(AmountKind.Volume, c.Asked);
        var provided = Reserve.Usual.ToProvide(asked, c.Draws);
        var onHand = c.Items.Where(i => i.IsUsable(Day)).Aggregate(Amount.Zero(AmountKind.Volume), (sum, i) => sum + i.OnHand);
        var packs = c.Items.Length > 0 ? c.Items[0].Packs : [new(new(AmountKind.Volume, 1_000_000), Money.OfMinor(900, "EUR"))];
        var purchase = Purchases.Choose(new Product("e96", onHand, packs), provided, Euro).Value!.Purchases.FirstOrDefault();
        return (MaterialLine.Of("e96", c.Items, Reserve.Usual.Used(asked, c.Draws), Reserve.Usual.ForSpills(asked), purchase, Day, Euro).Value!, provided);
    }

    [Property(Arbitrary = [typeof(LedgerProperties)], MaxTest = 1000)]
    public bool Used_and_left_are_on_hand_and_bought(Case c)
    {
        var (line, _) = Books(c);
        return line.Used + line.Left == line.OnHand + line.Bought
            && line.OnHand + line.Unusable == c.Items.Aggregate(Amount.Zero(AmountKind.Volume), (sum, i) => sum + i.OnHand);
    }

    [Property(Arbitrary = [typeof(LedgerProperties)], MaxTest = 1000)]
    public bool No_coin_is_lost_between_used_and_left(Case c)
    {
        var (line, _) = Books(c);
        return line.CostOfUsed + line.WorthOfLeft == line.WorthOnHand + line.CashNow
            && line.CostOfUsed.Minor >= 0 && line.WorthOfLeft.Minor >= 0;
    }

    [Property(Arbitrary = [typeof(LedgerProperties)], MaxTest = 1000)]
    public bool What_is_left_holds_the_spill_reserve_and_no_bottle_gives_more_than_it_holds(Case c)
    {
        var (line, provided) = Books(c);
        return line.Left >= line.SpillReserve && line.OnHand + line.Bought >= provided
            && line.Draws.All(d => d.Amount.Units > 0 && d.Amount <= d.Item.OnHand && d.Item.IsUsable(Day))
            && line.Draws.SkipLast(1).All(d => d.EmptiesIt);
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
