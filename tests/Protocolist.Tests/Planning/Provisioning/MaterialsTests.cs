using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Plans;

namespace Protocolist.Tests.Planning.Provisioning;

public class MaterialsTests
{
    private const string Ethanol96 = "  - {fluid: ethanol 96 %vol, id: e96, on-hand: 0 L, packs: [{size: 1 L, price: 9.00 EUR}]}\n";
    private const string Ethanol80 = "  - {fluid: ethanol 80 %vol, id: e80, on-hand: 0 L, packs: [{size: 5 L, price: 60.00 EUR}]}\n";

    [Fact]
    public void Every_step_with_a_fluid_lists_it_and_its_vessel_with_ids()
    {
        var plan = Station.Plan(Station.Whelk, Station.With("stock:\n" + Ethanol96));
        var fix = plan.Step("fix")!;
        Assert.Contains(fix.Materials, m => m is { Id: "ethanol-80-vol", From: MaterialOrigin.Recipe });
        Assert.Contains(fix.Materials, m => m.From == MaterialOrigin.Vessel && m.Id.Length > 0);
        Assert.All(plan.Steps.SelectMany(s => s.Materials), m => Assert.True(m.Id.Length > 0 && !m.Name.IsEmpty && (m.Pieces > 0 || m.Volume > UnitsNet.Volume.Zero)));
    }

    [Fact]
    public void Books_balance_and_the_reserve_is_made_too()
    {
        var plan = Station.Plan(Station.Whelk, Station.With("stock:\n" + Ethanol96));
        Assert.All(plan.Materials, m => Assert.Equal(m.OnHand + m.Bought, m.Used + m.Left));
        Assert.All(plan.Materials, m => Assert.Equal(m.Used.Units, m.Draws.Sum(d => d.Amount.Units)));
        var fix = Assert.Single(plan.Recipes, r => r.For.Contains("fix"));
        Assert.True(fix.Volume > plan.Step("fix")!.Volume, "no reserve is made");
    }

    [Fact]
    public void The_part_bottle_opened_first_is_drawn_before_the_full_one_and_an_expired_one_never()
    {
        var plan = Station.Plan(Station.Whelk, Station.With("""
            stock:
              - {fluid: ethanol 96 %vol, id: full, on-hand: 5 L, expires: 2028-01-01}
              - {fluid: ethanol 96 %vol, id: opened-late, on-hand: 200 mL, opened: 2027-02-01}
              - {fluid: ethanol 96 %vol, id: opened-early, on-hand: 100 mL, opened: 2026-11-01}
              - {fluid: ethanol 96 %vol, id: stale, on-hand: 9 L, expires: 2027-02-28}
            """));
        Assert.Equal(["opened-early", "opened-late", "full"], plan.Material("ethanol 96 %vol").Draws.Select(d => d.Stock));
        Assert.Equal(new(AmountKind.Volume, 9_000_000), plan.Material("ethanol 96 %vol").Unusable);
        Assert.Contains(plan.Findings, f => f.Id == "stock-expired" && f.Message.ToString().Contains("'stale'", StringComparison.Ordinal));
    }

    [Fact]
    public void Stock_of_unknown_strength_is_left_out_and_named()
    {
        var read = Station.Read("stock:\n  - {fluid: ethanol, id: cleaning, on-hand: 5 L}\n" + Ethanol96);
        var plan = Station.Plan(Station.Whelk, read.Value!);
        Assert.Contains(read.Findings.Concat(plan.Findings), f => f.Id is "unknown-strength" or "missing-strength" || f.Message.ToString().Contains("strength", StringComparison.Ordinal));
        Assert.DoesNotContain(plan.Materials.SelectMany(m => m.Draws), d => d.Stock == "cleaning");
    }

    [Fact]
    public void The_cheaper_of_two_strengths_is_bought_with_its_recipe_solved_anew()
    {
        var dear80 = Station.Plan(Station.Whelk, Station.With("stock:\n" + Ethanol80 + Ethanol96));
        Assert.All(dear80.Purchases.Where(p => p.Id != "distilled-water"), p => Assert.Equal("ethanol 96 %vol", p.Item.ToString()));
        var cheap80 = Station.Plan(Station.Whelk, Station.With("stock:\n" + Ethanol80.Replace("60.00", "6.00", StringComparison.Ordinal) + Ethanol96));
        Assert.Contains(cheap80.Purchases, p => p.Item.ToString() == "ethanol 80 %vol" && p.Pack.ToString() == "5 L" && p.Count == 1);
        Assert.Equal("ethanol 80 %vol", cheap80.Recipes.First(r => r.For.Contains("fix")).Parts[0].Name.ToString());
    }

    [Fact]
    public void Ready_made_formalin_is_weighed_against_stock_and_salts()
    {
        const string Stock = """
            stock:
              - {fluid: neutral buffered formalin 10 %, id: ready, on-hand: 0 L, packs: [{size: 5 L, price: PRICE EUR}]}
              - {fluid: formaldehyde stock 37 %mass, id: strong, on-hand: 0 L, packs: [{size: 1 L, price: 9.50 EUR}]}
              - {salt: sodium dihydrogen phosphate, hydrate: monohydrate, id: acid, on-hand: 0 g, packs: [{size: 100 g, price: 6 EUR}]}
              - {salt: disodium phosphate, hydrate: anhydrous, id: base, on-hand: 0 g, packs: [{size: 100 g, price: 6 EUR}]}
              - {fluid: ethanol 96 %vol, id: e96, on-hand: 100 L}
              - {fluid: distilled water, id: still, on-hand: 100 L}
            """;
        var ready = Station.Plan(Station.Wrasse, Station.With(Stock.Replace("PRICE", "12.00", StringComparison.Ordinal)));
        Assert.Equal(["neutral buffered formalin 10 %"], ready.Purchases.Select(p => p.Item.ToString()));
        var mixed = Station.Plan(Station.Wrasse, Station.With(Stock.Replace("PRICE", "90.00", StringComparison.Ordinal)));
        Assert.DoesNotContain(mixed.Purchases, p => p.Item.ToString().StartsWith("neutral", StringComparison.Ordinal));
        Assert.Contains(mixed.Purchases, p => p.Item.ToString() == "formaldehyde stock 37 %mass");
    }

    /// <summary>Weights go as molar masses, IUPAC abridged atomic weights: Na2HPO4 141.96, Na2HPO4.7H2O 268.07 g/mol.</summary>
    [Fact]
    public void One_hydrate_is_weighed_against_another_by_what_its_packs_cost()
    {
        const string Stock = """
            stock:
              - {fluid: formaldehyde stock 37 %mass, id: strong, on-hand: 9 L}
              - {salt: sodium dihydrogen phosphate, hydrate: monohydrate, id: acid, on-hand: 900 g}
              - {salt: disodium phosphate, hydrate: anhydrous, id: dry, on-hand: 0 g, packs: [{size: 100 g, price: DRY EUR}]}
              - {salt: disodium phosphate, hydrate: heptahydrate, id: wet, on-hand: 0 g, packs: [{size: 100 g, price: 5 EUR}]}
              - {fluid: ethanol 96 %vol, id: e96, on-hand: 100 L}
              - {fluid: distilled water, id: still, on-hand: 100 L}
            """;
        var dry = Station.Plan(Station.Wrasse, Station.With(Stock.Replace("DRY", "4", StringComparison.Ordinal)));
        var wet = Station.Plan(Station.Wrasse, Station.With(Stock.Replace("DRY", "60", StringComparison.Ordinal)));
        Assert.Contains("anhydrous", Assert.Single(dry.Purchases).Item.ToString(), StringComparison.Ordinal);
        Assert.Contains("heptahydrate", Assert.Single(wet.Purchases).Item.ToString(), StringComparison.Ordinal);
        var grams = (Dry: dry.Materials.First(m => m.Id.Contains("disodium", StringComparison.Ordinal)).Used, Wet: wet.Materials.First(m => m.Id.Contains("disodium", StringComparison.Ordinal)).Used);
        Assert.Equal(268.07 / 141.96, (double)grams.Wet.Units / grams.Dry.Units, 0.002);
    }

    [Fact]
    public void Alcohol_is_never_made_with_tap_water_and_formalin_may_be()
    {
        var plan = Station.Plan(Station.Wrasse, Station.With("""
            stock:
              - {fluid: formaldehyde stock 37 %mass, id: strong, on-hand: 9 L}
              - {fluid: ethanol 96 %vol, id: e96, on-hand: 100 L}
              - {fluid: distilled water, id: still, on-hand: 0 L, packs: [{size: 1 L, price: 6 EUR}]}
              - {salt: sodium dihydrogen phosphate, hydrate: monohydrate, id: acid, on-hand: 900 g}
              - {salt: disodium phosphate, hydrate: anhydrous, id: dry, on-hand: 900 g}
            """));
        Assert.All(plan.Recipes.Where(r => r.Fluid.IsAlcohol), r => Assert.DoesNotContain(r.Parts, p => p.Fluid?.Substance == Substance.Water || p.Fluid?.Substance == Substance.TapWater));
        Assert.All(plan.Recipes.Where(r => r.Fluid.HasFormaldehyde), r => Assert.DoesNotContain(r.Parts, p => p.Fluid == Fluid.DistilledWater));
    }

    [Fact]
    public void Consumables_wear_as_the_bench_says_and_packs_cover_what_lacks()
    {
        var plan = Station.Plan(Station.Wrasse, Station.With("""
            stock:
              - {consumable: nitrile gloves, id: gloves, on-hand: 4, packs: [{size: 100, price: 8 EUR}]}
              - {consumable: scalpel blade, id: blade, on-hand: 3}
              - {tool: forceps, id: forceps, on-hand: 1}
              - {tool: splash goggles, id: goggles, on-hand: 1, worth: 12 EUR/piece, lasts-uses: 200, used-so-far: 10}
            """));
        var gloves = plan.Material("nitrile gloves");
        Assert.Equal(100, gloves.Bought.Units);
        Assert.Equal(gloves.Uses, gloves.Used.Units);
        Assert.Equal(1, plan.Material("scalpel blade").Used.Units);
        Assert.Equal(0, plan.Material("forceps").Used.Units);
        Assert.Equal(0, plan.Material("splash goggles").Used.Units);
        Assert.True(plan.Costs.Wear!.Minor > 0);
        Assert.Contains(plan.Findings, f => f.Id == "not-on-the-bench-list" && f.Severity == Severity.Note);
    }

    [Fact]
    public void A_worn_out_tool_is_used_up_and_the_next_one_needed()
    {
        var plan = Station.Plan(Station.Wrasse, Station.With("stock:\n  - {tool: splash goggles, id: goggles, on-hand: 1, lasts-uses: 5, used-so-far: 4, packs: [{size: 1, price: 7 EUR}]}"));
        var goggles = plan.Material("splash goggles");
        Assert.True(goggles.Used.Units >= 1 && goggles.Bought.Units >= 1, $"used {goggles.Used}, bought {goggles.Bought}");
        Assert.Equal(goggles.OnHand + goggles.Bought, goggles.Used + goggles.Left);
    }

    [Fact]
    public void A_vessel_in_use_is_left_out_until_its_day()
    {
        var taken = Station.With("stock: []").VesselsInUse;
        Assert.Empty(taken);
        var read = Protocolist.Benches.BenchReader.Read(
            new("b.yaml", "format: 1\nbench: b\nzone: UTC\nvessels:\n  - {id: jar, inside: {diameter: 14 cm, height: 26 cm}, wall: glass, count: 2, in-use: [{count: 2, until: 2027-03-10}]}\n"),
            NodaTime.DateTimeZoneProviders.Tzdb).Value!;
        Assert.Empty(read.FreeVessels(new(2027, 3, 10)));
        Assert.Equal(2, Assert.Single(read.FreeVessels(new(2027, 3, 11))).Count);
    }
}
