using NodaTime;
using Protocolist.Benches;
using Protocolist.Checks;
using Protocolist.Plans;
using Protocolist.Protocols;
using Protocolist.Quantities;
using Protocolist.Specimens;
using static Protocolist.Tests.Checks.Cases;
using static Protocolist.Tests.Checks.Edge;
using Volume = UnitsNet.Volume;

namespace Protocolist.Tests.Checks;

/// <summary>The limits of the checks about stock and law.</summary>
internal static class StockAndLawEdges
{
    public static Edge[] All =>
    [
        Warns("parasites-on-body", ["tapeworm"], () => Good.Group("carnivore"), () => Good.Group("rodent")),
        Notes("parasites-on-body", ["ticks, fleas and lice"], () => Good.Group("bird"), () => Good.Group("carnivore")),
        Warns("parasites-on-body", ["tapeworm"], () => Good.Group("carnivore"), () => Good.Group("carnivore").Step("cold", s => s with { Covers = Coverage.Parasites })),
        Fails("anthrax-signs", ["fits anthrax"], () => Told("bled; blood from the nose"), () => Told("no blood from the nose")),
        Warns("unknown-cause-of-death", ["'slit' opens it"], () => Found("found dead"), () => Found("found dead in a net")),
        Warns("unknown-cause-of-death", ["nothing says what it died of"], () => Found("found dead in a cabinet"), () => Found("found dead, hit by a car")),
        Warns("stock-expired", ["was good until 2027-02-28"], () => Old(i => i), () => Old(i => i with { OnHand = Amount.Of(Volume.Zero) })),
        Warns("stock-expired", ["was good until 2027-02-28"], () => Old(i => i with { Id = "other" }), () => Old(i => i with { Id = "other", Substance = "isopropanol 99 %vol" })),
        Warns("stock-expired", ["was good until"], () => Old(i => i), () => Old(i => i).Written(p => p with { Recipes = [] })),
        Warns("stock-strength-unknown", ["nothing says how strong 'bottle'"], () => Good.Shelf_holds(Bottle("ethanol")), () => Good.Shelf_holds(Bottle("ethanol") with { OnHand = Amount.Of(Volume.Zero) })),
        Warns("stock-strength-unknown", ["nothing says how strong 'bottle'"], () => Wet(Good.Shelf_holds(Bottle("ethanol")), "neutral buffered formalin 10 %"), () => Wet(Good.Shelf_holds(Bottle("ethanol")), "tap water")),
        Warns("price-missing", ["5 L of ethanol and 1 kg of borax must be got and have no price"], () => Bought("EUR", true), () => Bought(null, true)),
        Warns("price-missing", ["5 L of ethanol must be got and has no price"], () => Bought("EUR", false), () => Bought(null, false)),
        Warns("currency-missing", ["the bench prices 'a', 'b', 'c' and 1 more"], () => Priced("d", "c", "b", "a"), () => Priced("c", "b", "a")),
        Warns("currency-missing", ["the bench prices 'a', 'b' and 'c' and names"], () => Priced("c", "b", "a"), () => Priced("b", "a")),
        Warns("currency-missing", ["the bench prices 'a' and names"], () => Good.On(b => b with { Currency = null }).Shelf_holds(Bottle("ethanol 96 %vol") with { Id = "a", Packs = [new Pack(Amount.Of(Volume.FromLiters(1)), null), new Pack(Amount.Of(Volume.FromLiters(5)), Money.Of(5, "EUR"))] }), () => Good.Shelf_holds(Bottle("ethanol 96 %vol") with { Packs = [new Pack(Amount.Of(Volume.FromLiters(5)), null)] })),
        Warns("safety-equipment-not-on-shelf", ["a sharps box"], () => Gear("Nitrile gloves", "Goggles", "Eye wash", "Spill kit"), () => Gear("Nitrile gloves", "Goggles", "Eye wash", "Spill kit", "Sharps box")),
        Warns("safety-equipment-not-on-shelf", ["gloves"], () => Gear("goggles", "eyewash", "absorbent", "sharps"), () => Gear("gloves", "goggles", "eyewash", "absorbent", "sharps")),
        Warns("safety-equipment-not-on-shelf", ["goggles or a face shield"], () => Gear("gloves", "eyewash", "absorbent", "sharps"), () => Gear("gloves", "face shield", "eyewash", "absorbent", "sharps")),
        Warns("safety-equipment-not-on-shelf", ["goggles or a face shield"], () => Gear("gloves", "eyewash", "absorbent", "sharps"), () => Gear("gloves", "safety glasses", "eyewash", "absorbent", "sharps")),
        Warns("safety-equipment-not-on-shelf", ["an eye wash"], () => Gear("gloves", "goggles", "absorbent", "sharps"), () => Gear("gloves", "goggles", "eye wash", "absorbent", "sharps")),
        Warns("safety-equipment-not-on-shelf", ["a spill kit"], () => Gear("gloves", "goggles", "eyewash", "sharps"), () => Gear("gloves", "goggles", "eyewash", "spill pillows", "sharps")),
        Warns("safety-equipment-not-on-shelf", ["a sharps box"], () => Wet(Good, "ethanol 80 %vol").Shelf_holds(Bottle("forceps", StockKind.Tool)), () => Wet(Good, "ethanol 80 %vol").Without("slit").Shelf_holds(Bottle("forceps", StockKind.Tool))),
        Warns("safety-equipment-not-on-shelf", ["a spill kit"], () => Good.Without("slit").Shelf_holds(Bottle("needle", StockKind.Consumable)), () => Good.Without("slit").Shelf_holds(Bottle("borax", StockKind.Salt))),
        Fails("missing-provenance", ["when it was found (found-on)"], () => Good.Specimen(s => s with { FoundOn = null, DiedAt = null }), () => Good.Specimen(s => s with { FoundOn = null })),
        Fails("missing-provenance", ["when it was found (found-on)"], () => Good.Specimen(s => s with { FoundOn = null, DiedAt = null }), () => Good.Specimen(s => s with { DiedAt = null })),
        Fails("missing-provenance", ["where it was found (where), "], () => Good.Specimen(s => s with { Where = " ", HowObtained = null }), () => Good.Specimen(s => s with { HowObtained = null })),
        Fails("missing-provenance", ["how it was obtained (how-obtained)"], () => Good.Specimen(s => s with { HowObtained = "" }), () => Good),
        Notes("permit-not-noted", ["no permit is noted for"], () => Unpapered("bony-fish"), () => Unpapered("bird")),
        Notes("permit-not-noted", ["no permit is noted for"], () => Unpapered("bony-fish"), () => Unpapered("gastropod")),
        Notes("permit-not-noted", ["no permit is noted for a bony fish"], () => Unpapered("bony-fish").Specimen(s => s with { Where = " ", HowObtained = null }), () => Unpapered("bony-fish").Group("gastropod")),
        Warns("protected-group", ["obtained nobody says how"], () => Unpapered("bird").Specimen(s => s with { Where = " ", HowObtained = null }), () => Unpapered("bird")),
        Warns("protected-group", ["CITES"], () => Unpapered("crocodilian"), () => Unpapered("lizard")),
        Fails("anthrax-signs", ["fits anthrax"], () => Told("bled; blood from the nose"), () => Told("bled; blood from the nose").Group("bird")),
        Fails("anthrax-signs", ["('died suddenly')"], () => Found("died suddenly"), () => Found("died slowly")),
        Notes("parasites-on-body", ["no step speaks of parasites"], () => Good.Group("bird"), () => Good.Group("bird").Specimen(s => s with { Condition = Condition.Thawed })),
        Notes("parasites-on-body", ["no step speaks of parasites"], () => Good.Group("bird"), () => Good.Group("bony-fish")),
        Warns("parasites-on-body", ["tapeworm"], () => Good.Group("carnivore").Specimen(s => s with { Condition = Condition.Frozen }), () => Good.Group("rodent").Specimen(s => s with { Condition = Condition.Frozen })),
        Notes("parasites-on-body", ["no step speaks of parasites"], () => Covers(Coverage.Colours), () => Covers(Coverage.Parasites)),
        Warns("parasites-on-body", ["a bird whose history speaks of parasites ('full of lice')"], () => Noted("full of lice"), () => Noted("no lice")),
        Warns("parasites-on-body", ["whose history speaks of parasites"], () => Noted("ticks at the ears"), () => Noted("stickers on the bag")),
        Warns("parasites-on-body", ["whose history speaks of parasites"], () => Noted("fleas"), () => Noted("fleas").Step("pose", s => s with { Covers = Coverage.Parasites })),
        Warns("rabies-prone", ["a bat: "], () => Good.Group("bat"), () => Good.Group("bird")),
        Warns("rabies-prone", ["'slit' goes into its head"], () => Good.Group("bat").Step("slit", s => s with { Step = s.Step with { Cuts = [new PlannedCut(Said.Of("head"), 1, null, null, null, "")] } }), () => Good.Group("bat").Step("slit", s => s with { Step = s.Step with { Cuts = [new PlannedCut(Said.Of("abdomen"), 1, null, null, null, "")] } })),
        Warns("rabies-prone", ["'pose' goes into its head"], () => Into("head"), () => Into("abdomen")),
        Warns("avian-influenza", ["3 animals (bird) dead of unknown cause"], () => Birds(3, "Skerry Point"), () => Birds(1, "Skerry Point")),
        Warns("avian-influenza", ["a bird dead of unknown cause at 'Skerry Point'"], () => Birds(1, "Skerry Point"), () => Birds(1, " ")),
        Warns("avian-influenza", ["a bird dead of unknown cause"], () => Birds(1, " "), () => Birds(1, " ").Group("mammal")),
        Warns("unknown-cause-of-death", ["nothing says what it died of"], () => Found("found dead").Without("slit"), () => Found("found dead").Group("bony-fish")),
        Warns("unknown-cause-of-death", ["a bird, 'found dead'"], () => Found("found dead").Group("bird"), () => Found("found dead").Group("bird").Specimen(s => s with { Notes = "necropsied at the university" })),
        Warns("unknown-cause-of-death", ["'pose' opens it"], () => Found("found dead").Without("slit").Step("pose", s => s with { Kind = StageKind.Inject }), () => Found("found dead").Without("slit")),
    ];

    private static ReviewCase Told(string notes) => Good.Group("mammal").Specimen(s => s with { Notes = notes });

    private static ReviewCase Found(string how) => Good.Group("mammal").Specimen(s => s with { HowObtained = how });

    private static ReviewCase Birds(int count, string where) => Found("found dead").Group("bird").Specimen(s => s with { Count = count, Where = where });

    private static ReviewCase Unpapered(string group) => Good.Group(group).Specimen(s => s with { Permits = [] });

    private static ReviewCase Covers(Coverage covers) => Good.Group("bird").Step("pose", s => s with { Covers = covers });

    private static ReviewCase Noted(string notes) => Good.Group("bird").Specimen(s => s with { HowObtained = null, Notes = notes });

    private static ReviewCase Into(string region) => Good.Group("bat").Step("pose", s => s with { Step = s.Step with { Sites = [new InjectionSite(Said.Of(region), 1, Volume.Zero, Volume.Zero, Volume.Zero, Volume.Zero, 1, 27, 13)] } });

    /// <summary>Strong ethanol that was good until the day before work begins, and a recipe that takes ethanol from the bottle.</summary>
    private static ReviewCase Old(Func<StockItem, StockItem> change) =>
        Good.Shelf_holds(change(Bottle("ethanol 96 %vol") with { Expires = new LocalDate(2027, 2, 28) }))
            .Written(p => p with { Recipes = [Booked.Recipe("ethanol 70 %vol", 1, Booked.Part("ethanol 96 %vol", 700, "bottle"))] });

    private static ReviewCase Bought(string? currency, bool both) => Good.On(b => b with { Currency = currency }).Written(p => p with
    {
        Purchases =
        [
            Booked.Purchase("ethanol"),
            .. both ? [Booked.Purchase("borax", pack: Amount.Of(UnitsNet.Mass.FromKilograms(1)))] : (PlannedPurchase[])[],
            Booked.Purchase("gloves", price: Money.Of(5, "EUR"), pack: Amount.Of(100)),
        ],
    });

    private static ReviewCase Priced(params string[] ids) =>
        Good.Shelf_holds([.. ids.Select(i => Bottle("ethanol 96 %vol") with { Id = i, Packs = [new Pack(Amount.Of(Volume.FromLiters(5)), Money.Of(5, "EUR"))] })]).On(b => b with { Currency = null });

    private static ReviewCase Gear(params string[] all) => Good.Shelf_holds([.. all.Select(g => Bottle(g, StockKind.Tool))]);

    /// <summary>Every fluid of the plan made into one.</summary>
    private static ReviewCase Wet(ReviewCase plan, string fluid) => plan.FluidSteps.Aggregate(plan, (p, s) => p.Fluid(s.Id, fluid));
}
