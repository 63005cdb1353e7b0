using NodaTime;
using Protocolist.Benches;
using Protocolist.Quantities;
using static Protocolist.Tests.Checks.Cases;
using Volume = UnitsNet.Volume;

namespace Protocolist.Tests.Checks;

internal static class StockAndLawRows
{
    public static Row[] All =>
    [
        new("stock-expired", () => Dated(2027, 2, 28), () => Dated(2027, 3, 1)),
        new("stock-strength-unknown", () => Good.Shelf_holds(Bottle("ethanol")), () => Good.Shelf_holds(Bottle("ethanol 96 %vol"))),
        new("price-missing", () => Buys(null), () => Buys(Paid)),
        new("currency-missing", () => Priced(null), () => Priced("EUR")),
        new("safety-equipment-not-on-shelf", () => Good.Shelf_holds(Bottle("forceps", StockKind.Tool)), () => Good),
        new("missing-provenance", () => Good.Specimen(s => s with { CollectedBy = " " }), () => Good),
        new("permit-not-noted", () => Good.Specimen(s => s with { Permits = [] }), () => Good),
        new("protected-group", () => Good.Group("bird").Specimen(s => s with { Permits = [] }), () => Good.Group("bird")),
        new("unknown-cause-of-death", () => Good.Group("mammal").Specimen(s => s with { HowObtained = "found dead" }), () => Good.Group("mammal").Specimen(s => s with { HowObtained = "found dead, drowned in a creel" })),
        new("anthrax-signs", () => Good.Group("mammal").Specimen(s => s with { Notes = "unclotted blood at the nose" }), () => Good.Group("mammal").Specimen(s => s with { Notes = "clotted wound on the flank" })),
        new("parasites-on-body", () => Good.Group("rodent"), () => Good.Group("rodent").Specimen(s => s with { Condition = Protocolist.Specimens.Condition.Frozen })),
        new("rabies-prone", () => Good.Group("bat"), () => Good.Group("rodent")),
        new("avian-influenza", () => Good.Group("bird").Specimen(s => s with { HowObtained = "washed up" }), () => Good.Group("bird").Specimen(s => s with { HowObtained = "found dead under a window" })),
    ];

    private static Money Paid => Money.Of(5, "EUR");

    private static Protocolist.Checks.ReviewCase Dated(int year, int month, int day) =>
        Good.Shelf_holds(Bottle("ethanol 96 %vol") with { Expires = new LocalDate(year, month, day) })
            .Written(p => p with { Recipes = [Booked.Recipe("ethanol 70 %vol", 1, Booked.Part("ethanol 96 %vol", 700, "bottle"))] });

    private static Protocolist.Checks.ReviewCase Buys(Money? price) =>
        Good.On(b => b with { Currency = "EUR" }).Written(p => p with { Purchases = [Booked.Purchase("ethanol", price: price)] });

    private static Protocolist.Checks.ReviewCase Priced(string? currency) =>
        Good.Shelf_holds(Bottle("ethanol 96 %vol") with { Packs = [new Pack(Amount.Of(Volume.FromLiters(5)), Paid)] }).On(b => b with { Currency = currency });
}
