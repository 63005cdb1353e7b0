using System.Collections.Immutable;
using FsCheck;
using FsCheck.Fluent;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Fluids;
using Protocolist.Plans;
using Protocolist.Quantities;
using Protocolist.Specimens;
using UnitsNet;

namespace Protocolist.Properties.Provisioning;

/// <summary>Through the real planner: whatever stands on the shelf, nothing appears and nothing vanishes.</summary>
public class PlanBooksProperties
{
    private static readonly Shelf Bundled = Shelf.Bundled();

    public sealed record Case(Specimen Specimen, Bench Bench);

    public static Arbitrary<Case> Cases() => (
        from specimen in Specimens()
        from stock in Stock()
        select new Case(specimen, Bench.Empty(DateTimeZone.Utc) with
        {
            Name = "test",
            Currency = "EUR",
            Labour = Price.Read("18 EUR/h").Value,
            DisposalPrices = ImmutableDictionary<WasteClass, Price>.Empty
                .Add(WasteClass.Formaldehyde, Price.Read("3.20 EUR/L").Value!)
                .Add(WasteClass.FlammableAlcohol, Price.Read("1.10 EUR/L").Value!)
                .Add(WasteClass.Sharps, Price.Read("0.15 EUR/piece").Value!),
            Stock = stock,
        })).ToArbitrary();

    private static Gen<Specimen> Specimens() =>
        from which in Gen.Choose(0, 2)
        from size in Gen.Choose(80, 120)
        from count in Gen.Choose(1, 4)
        let s = size / 100.0
        select which switch
        {
            0 => new Specimen { Id = "w", Group = "bony-fish", Mass = Mass.FromGrams(82 * s * s * s), StandardLength = Length.FromMillimeters(160 * s), Condition = Condition.Fresh },
            1 => new Specimen { Id = "n", Group = "gastropod", Mass = Mass.FromGrams(14 * s * s * s), Length = Length.FromMillimeters(38 * s), Count = count, Condition = Condition.Fresh },
            _ => new Specimen { Id = "o", Group = "mammal", Mass = Mass.FromKilograms(7.2 * s * s * s), HeadBodyLength = Length.FromMillimeters(750 * s), Condition = Condition.Chilled },
        };

    private static Gen<ImmutableArray<StockItem>> Stock() =>
        from fluids in Gen.Elements("ethanol 96 %vol", "ethanol 80 %vol", "formaldehyde stock 37 %mass", "neutral buffered formalin 10 %", "isopropanol 99.8 %vol", "distilled water").ArrayOf(5)
        from onHand in Gen.Choose(0, 40_000).ArrayOf(5)
        from packs in Gen.Choose(0, 3).ArrayOf(5)
        from gloves in Gen.Choose(0, 30)
        from salts in Gen.Choose(0, 900).ArrayOf(2)
        select (ImmutableArray<StockItem>)
        [
            .. fluids.Select((f, i) => new StockItem { Id = $"f{i}", Kind = StockKind.Fluid, Substance = f, OnHand = new(AmountKind.Volume, onHand[i] * 1000L), Packs = Packs(packs[i]) }),
            new StockItem { Id = "acid", Kind = StockKind.Salt, Substance = "sodium dihydrogen phosphate monohydrate", OnHand = new(AmountKind.Mass, salts[0] * 1000L) },
            new StockItem { Id = "base", Kind = StockKind.Salt, Substance = "disodium phosphate anhydrous", OnHand = new(AmountKind.Mass, salts[1] * 1000L), Packs = [new(new(AmountKind.Mass, 500_000), Money.OfMinor(1550, "EUR"))] },
            new StockItem { Id = "gloves", Kind = StockKind.Consumable, Substance = "nitrile gloves", OnHand = Amount.Of(gloves), Packs = [new(Amount.Of(100), Money.OfMinor(800, "EUR"))] },
        ];

    private static ImmutableArray<Pack> Packs(int n) =>
        [.. new[] { new Pack(new(AmountKind.Volume, 1_000_000), Money.OfMinor(950, "EUR")), new(new(AmountKind.Volume, 5_000_000), Money.OfMinor(4200, "EUR")), new(new(AmountKind.Volume, 20_000_000), Money.OfMinor(14000, "EUR")) }.Take(n)];

    private static Plan? Made(Case c) => new Planner(Bundled).Plan(new(c.Specimen, c.Bench, new(2027, 3, 1, 9, 0))).Value;

    [Property(Arbitrary = [typeof(PlanBooksProperties)], MaxTest = 150)]
    public bool Used_and_left_are_on_hand_and_bought_of_every_material(Case c) =>
        Made(c) is { } plan && plan.Materials.All(m => m.Used + m.Left == m.OnHand + m.Bought && m.Draws.Sum(d => d.Amount.Units) == m.Used.Units);

    [Property(Arbitrary = [typeof(PlanBooksProperties)], MaxTest = 150)]
    public bool Every_millilitre_has_an_origin_and_a_destination(Case c)
    {
        if (Made(c) is not { } plan) return false;
        var isNamed = plan.Fluids.All(m => !m.Words(m.From).IsEmpty && !m.Words(m.To).IsEmpty);
        var through = plan.Fluids.Where(m => m.To.Kind == FluidPlaceKind.Step).GroupBy(m => (m.To, m.Fluid))
            .All(g => Close(g.Sum(m => m.Volume.Milliliters), plan.Fluids.Where(m => m.From == g.Key.To && m.Fluid == g.Key.Fluid).Sum(m => m.Volume.Milliliters)));
        var made = plan.Recipes.All(r => Close(
            r.Volume.Milliliters,
            plan.Fluids.Where(m => m.From.Kind == FluidPlaceKind.Recipe && m.Fluid == r.Fluid && m.ForImmersion == r.ForImmersion).Sum(m => m.Volume.Milliliters)));
        return isNamed && through && made;
    }

    [Property(Arbitrary = [typeof(PlanBooksProperties)], MaxTest = 150)]
    public bool No_coin_is_lost_and_no_waste_is_unnamed(Case c)
    {
        if (Made(c) is not { Costs: { Total: { } total } costs } plan) return false;
        return total == costs.Used! + costs.Wear! + costs.Labour! + costs.Disposal!
            && costs.Disposal == Money.Sum(costs.DisposalByClass.Select(d => d.Cost), "EUR")
            && costs.Cash == Money.Sum(plan.Purchases.Where(p => p.Price is not null).Select(p => p.Price!), "EUR")
            && plan.Waste.All(w => !w.Destination.IsEmpty);
    }

    private static bool Close(double a, double b) => Math.Abs(a - b) <= 1e-3 + 1e-9 * Math.Abs(a);
}
