using NodaTime;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Quantities;
using UnitsNet;

namespace Protocolist.Tests.Benches.Stock;

public class StockItemValidatorTests
{
    private static readonly LocalDate Today = new(2027, 3, 1);

    private static readonly StockItem Bottle = new()
    {
        Id = "ethanol-a",
        Kind = StockKind.Fluid,
        Substance = "ethanol 96 %vol",
        OnHand = Amount.Of(Volume.FromLiters(2)),
        Expires = new(2028, 1, 1),
        Packs = [new(Amount.Of(Volume.FromLiters(1)), Money.Of(9, "EUR"), 3), new(Amount.Of(Volume.FromLiters(5)), Money.Of(30, "EUR"), 3)],
    };

    [Fact]
    public void Sound_stock_has_no_findings() => Assert.Empty(Bottle.Validate(Today));

    public static TheoryData<string, StockItem, Severity> Faults() => new()
    {
        { "negative-stock", Bottle with { OnHand = Amount.Of(Volume.FromMilliliters(-5)) }, Severity.Error },
        { "pack-without-price", Bottle with { Packs = [new(Amount.Of(Volume.FromLiters(1)), null)] }, Severity.Warning },
        { "negative-price", Bottle with { Packs = [new(Amount.Of(Volume.FromLiters(1)), Money.Of(-1, "EUR"))] }, Severity.Error },
        { "empty-pack", Bottle with { Packs = [new(Amount.Of(Volume.Zero), Money.Of(1, "EUR"))] }, Severity.Error },
        { "negative-lead-time", Bottle with { Packs = [new(Amount.Of(Volume.FromLiters(1)), Money.Of(1, "EUR"), -2)] }, Severity.Error },
        { "pack-of-another-kind", Bottle with { Packs = [new(Amount.Of(Mass.FromGrams(1)), Money.Of(1, "EUR"))] }, Severity.Error },
        { "two-currencies", Bottle with { Packs = [Bottle.Packs[0], new(Amount.Of(Volume.FromLiters(5)), Money.Of(1, "GBP"))] }, Severity.Error },
        { "expired-stock", Bottle with { Expires = new(2027, 2, 28) }, Severity.Warning },
        { "unknown-strength", Bottle with { Substance = "ethanol" }, Severity.Warning },
        { "unknown-strength", Bottle with { Substance = "ethanol", Strength = "unknown" }, Severity.Warning },
        { "opened-in-the-future", Bottle with { OpenedOn = new(2027, 3, 2) }, Severity.Error },
        { "negative-uses", Bottle with { Uses = -1, Spent = new(7, true) }, Severity.Error },
        { "spent-fluid-unseen", Bottle with { Uses = 2 }, Severity.Warning },
        { "spent-fluid-too-acid", Bottle with { Uses = 2, Spent = new(6.4, true) }, Severity.Error },
        { "spent-fluid-not-clear", Bottle with { Uses = 2, Spent = new(7.0, false) }, Severity.Error },
        { "spent-fluid-ph-unknown", Bottle with { Uses = 2, Spent = new(null, true) }, Severity.Warning },
        { "spent-fluid-used-up", Bottle with { Uses = 3, UsesAllowed = 3, Spent = new(7.0, true) }, Severity.Error },
        { "amount-of-another-kind", Bottle with { Kind = StockKind.Tool, Packs = [] }, Severity.Error },
        { "impossible-wear", Bottle with { Wear = new(0) }, Severity.Error },
        { "absurd-amount", Bottle with { OnHand = new(AmountKind.Volume, long.MaxValue) }, Severity.Error },
        { "absurd-amount", Bottle with { Packs = [new(new(AmountKind.Volume, long.MaxValue), Money.Of(1, "EUR"))] }, Severity.Error },
        { "absurd-price", Bottle with { Packs = [new(Amount.Of(Volume.FromLiters(1)), Money.Of(10_000_001, "EUR"))] }, Severity.Error },
        { "absurd-price", Bottle with { Worth = Price.Of(10_000_001, "EUR", PriceUnit.Litre) }, Severity.Error },
        { "priced-by-another-measure", Bottle with { Worth = Price.Of(1, "EUR", PriceUnit.Piece) }, Severity.Error },
        { "absurd-time", Bottle with { Packs = [new(Amount.Of(Volume.FromLiters(1)), Money.Of(1, "EUR"), 3651)] }, Severity.Error },
        { "absurd-ph", Bottle with { Uses = 2, Spent = new(15, true) }, Severity.Error },
        { "absurd-date", Bottle with { Expires = new(9999, 1, 1) }, Severity.Error },
        { "not-one-line", Bottle with { Strength = "96\n%vol" }, Severity.Error },
        { "unreadable-character", Bottle with { Id = "a\u009Bb" }, Severity.Error },
        { "stock-without-id", Bottle with { Id = " " }, Severity.Error },
        { "stock-without-substance", Bottle with { Substance = "", Strength = "96 %vol" }, Severity.Error },
    };

    [Theory]
    [MemberData(nameof(Faults))]
    public void Each_fault_is_one_finding_with_a_remedy(string id, StockItem item, Severity severity)
    {
        var finding = Assert.Single(item.Validate(Today));
        Assert.Equal((id, severity), (finding.Id, finding.Severity));
        Assert.NotEmpty(finding.Message.ToString());
        Assert.NotEmpty(finding.Remedy.ToString());
    }

    [Fact]
    public void The_path_of_the_property_is_kept_for_the_reader()
    {
        var findings = (Bottle with { Packs = [Bottle.Packs[0], new(Amount.Of(Volume.FromLiters(1)), null)] }).Validate(Today);
        Assert.Equal("packs[1].price", Assert.Single(findings).Subject);
    }

    [Fact]
    public void The_last_day_is_a_day_of_use()
    {
        var item = Bottle with { Expires = Today };
        Assert.True(item.IsUsable(Today));
        Assert.False(item.IsUsable(Today.PlusDays(1)));
    }

    [Fact]
    public void Water_and_salts_need_no_strength()
    {
        Assert.True((Bottle with { Substance = "distilled water" }).IsStrengthKnown);
        Assert.True((Bottle with { Kind = StockKind.Salt, Substance = "borax" }).IsStrengthKnown);
        Assert.True((Bottle with { Substance = "glycerol", Strength = "pure" }).IsStrengthKnown);
    }

    [Fact]
    public void Wear_counts_whole_new_pieces_and_parts_worn()
    {
        var goggles = new Wear(200, 150);
        Assert.Equal(0, goggles.NewPiecesFor(50, hasPieceInHand: true));
        Assert.Equal(1, goggles.NewPiecesFor(51, hasPieceInHand: true));
        Assert.Equal(2, goggles.NewPiecesFor(201, hasPieceInHand: false));
        Assert.Equal(0.25m, goggles.PiecesWorn(50));
    }
}
