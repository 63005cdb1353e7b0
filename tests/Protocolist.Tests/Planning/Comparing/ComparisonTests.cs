using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Quantities;
using Protocolist.Tests.Planning.Provisioning;

namespace Protocolist.Tests.Planning.Comparing;

public class ComparisonTests
{
    private const string Stock = """
        stock:
          - {fluid: formaldehyde stock 37 %mass, id: strong, on-hand: 1 L, packs: [{size: 1 L, price: 9.50 EUR}]}
          - {fluid: neutral buffered formalin 10 %, id: ready, on-hand: 0 L, packs: [{size: 5 L, price: 21 EUR}]}
          - {fluid: ethanol 96 %vol, id: e96, on-hand: 1 L, packs: [{size: 5 L, price: 42 EUR}]}
          - {fluid: ethanol 70 %vol, id: e70, on-hand: 0 L, packs: [{size: 5 L, price: 33 EUR}]}
          - {fluid: isopropanol 99.8 %vol, id: iso, on-hand: 1 L, packs: [{size: 5 L, price: 27 EUR}]}
          - {salt: sodium dihydrogen phosphate, hydrate: monohydrate, id: acid, on-hand: 900 g}
          - {salt: disodium phosphate, hydrate: anhydrous, id: base, on-hand: 900 g}
          - {salt: borax, id: borax, on-hand: 900 g}
        """;

    private static PlanRequest Request(params (string Choice, string Option)[] choices) => new(Station.Wrasse, Station.With(Stock), Station.Start)
    {
        Choices = ImmutableSortedDictionary.CreateRange(choices.Select(c => KeyValuePair.Create(c.Choice, c.Option))),
    };

    private static Planner Made { get; } = new(Station.Bundled);

    private static Checked<Comparison> Wrasse { get; } = Made.Compare(Request());

    private static ImmutableArray<ComparedWay> Ways => Wrasse.Value!.Ways;

    [Fact]
    public void Every_combination_of_choices_is_planned_once_with_the_planners_own_vessels_and_stock()
    {
        var protocol = Station.Bundled.Protocols.Single(p => p.Id == Wrasse.Value!.Protocol.Id);
        var own = Ways.Where(w => w.Wishes.IsEmpty()).ToList();
        Assert.Equal(protocol.Choices.Aggregate(1, (n, c) => n * c.Options.Length), own.Count);
        Assert.Equal(own.Count, own.Select(w => string.Join(';', w.Choices)).Distinct().Count());
    }

    [Fact]
    public void First_way_is_the_plan_that_the_planner_makes_by_itself()
    {
        var plan = Made.Plan(Request()).Value!;
        Assert.Equal(("A", plan.Costs.Cash, plan.Costs.OverTenYears), (Ways[0].Name, Ways[0].CostNow, Ways[0].OverTenYears));
        Assert.Equal(plan.Choices, Ways[0].Choices);
    }

    [Fact]
    public void Too_many_ways_vary_one_at_a_time_and_the_output_says_so()
    {
        Assert.False(Wrasse.Value!.IsCombined);
        Assert.Contains(Wrasse.Findings, f => f.Id == "one-at-a-time");
        Assert.All(Ways, w => Assert.True(w.Wishes.Vessels.Count + w.Wishes.Supplies.Count <= 1));
        Assert.All(Ways.Where(w => !w.Wishes.IsEmpty()), w => Assert.Equal(Ways[0].Choices, w.Choices));
    }

    [Fact]
    public void Ready_made_buffered_formalin_stands_beside_stock_and_salts()
    {
        var supplies = Ways.Where(w => w.Choices.SequenceEqual(Ways[0].Choices)).Select(w => w.Supplies["neutral buffered formalin 10 %"]).Distinct().ToList();
        Assert.Contains("ready", supplies);
        Assert.Contains("strong", supplies);
        var alcohol = Ways.Where(w => w.Choices.SequenceEqual(Ways[0].Choices)).Select(w => w.Supplies["ethanol 70 %vol"]).Distinct();
        Assert.Equal(["e70", "e96"], alcohol.Order());
    }

    [Fact]
    public void Every_vessel_that_holds_the_body_has_a_way_and_none_that_does_not()
    {
        var house = Ways.Where(w => w.Choices.SequenceEqual(Ways[0].Choices)).Select(w => w.Vessels["house"]).ToHashSet();

        // A wrasse of 184 mm does not stand in a jar of 16 cm height.
        Assert.Contains("jar-4", house);
        Assert.DoesNotContain("jar-1", house);
    }

    [Fact]
    public void Few_ways_are_all_combined()
    {
        var bench = Station.With("""
            stock:
              - {fluid: ethanol 96 %vol, id: e96, on-hand: 9 L}
              - {fluid: ethanol 70 %vol, id: e70, on-hand: 9 L}
            """);
        var compared = Made.Compare(new(Station.Whelk, bench, Station.Start)).Value!;
        Assert.True(compared.IsCombined);
        Assert.Contains(compared.Ways, w => w.Wishes is { Vessels.Count: > 0, Supplies.Count: > 0 });
        Assert.Equal(compared.Ways.Length, compared.Ways.Select(w => string.Join(';', w.Choices.Concat(w.Vessels).Concat(w.Supplies))).Distinct().Count());
        Assert.Equal(["e96", "shelf"], compared.Ways.Select(w => w.Supplies["ethanol 75 %vol"]).Distinct().Order());
    }

    [Fact]
    public void Used_fixative_restored_stands_beside_fresh()
    {
        var bench = Station.With(Stock + "\n  - {fluid: neutral buffered formalin 10 %, id: kept, on-hand: 4 L, uses: 1, ph: 7.1, clear: yes}");
        var compared = Made.Compare(Request() with { Bench = new PreparedBench(bench) }).Value!;
        var need = compared.Ways[0].Supplies.Keys.Single(k => k.EndsWith("for immersion", StringComparison.Ordinal));
        var supplies = compared.Ways.Where(w => w.Supplies.ContainsKey(need)).Select(w => w.Supplies[need]).ToHashSet();
        Assert.Contains(supplies, s => s == "kept+strong");
        Assert.Contains(supplies, s => s == "strong");
    }

    [Fact]
    public void A_vessel_of_the_catalogue_is_compared_with_its_price_and_waiting()
    {
        var bench = Station.With(Stock);
        bench = bench with { Vessels = [.. bench.Vessels, bench.Vessels.Single(v => v.Id == "jar-4") with { Id = "jar-5", Name = "5 L jar", Count = 0, Price = Money.Of(7.50m, "EUR"), LeadDays = 6 }] };
        var compared = Made.Compare(Request() with { Bench = new PreparedBench(bench) }).Value!;
        var bought = compared.Ways.First(w => w.Wishes.Vessels.GetValueOrDefault("house") == "jar-5");
        Assert.Equal(750, bought.CostNow!.Minor - compared.Ways[0].CostNow!.Minor);
        Assert.DoesNotContain("jar-5", compared.Ways[0].Vessels.Values);
    }

    [Fact]
    public void What_is_insisted_on_gives_the_very_plan_that_was_compared()
    {
        foreach (var way in Ways.Where(w => !w.Wishes.IsEmpty()))
        {
            var plan = Made.Plan(Request() with { Choices = way.Choices, Wishes = way.Wishes }).Value!;
            Assert.Equal((way.CostNow, way.OverTenYears, way.Startable), (plan.Costs.Cash, plan.Costs.OverTenYears, plan.Startable));
            Assert.Equal(way.Wishes, plan.Wishes);
            Assert.Equal(plan, PlanJson.Read(new("plan.json", PlanJson.Write(plan))).Value);
        }
    }

    [Fact]
    public void Each_way_has_its_numbers_and_remarks_with_sources()
    {
        Assert.All(Ways, w => Assert.True(w.Days > 2 && w.HandsOnHours > 1 && w.FormaldehydeStockLitres > 0 && w.FlammableAlcoholLitres > 0));
        Assert.All(Ways, w => Assert.Contains(w.Remarks.Texts(), r => r.Contains("photograph", StringComparison.Ordinal)));
        Assert.All(Ways.Where(w => w.Choices["keeping"] == "isopropanol"), w => Assert.Contains(w.Remarks.Texts(), r => r.Contains("Simmons", StringComparison.Ordinal)));
        Assert.All(Ways.Where(w => w.Choices["keeping"] == "ethanol"), w => Assert.Contains(w.Remarks.Texts(), r => r.Contains("2.48 mm", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_dominated_way_is_worse_nowhere_better()
    {
        var choices = ImmutableSortedDictionary<string, string>.Empty;
        var a = new ComparedWay { Name = "A", Choices = choices, Days = 10, CostNow = Money.Of(5, "EUR"), OverTenYears = Money.Of(9, "EUR"), HandsOnHours = 3 };
        Assert.True((a with { Days = 11 }).IsDominatedBy(a));
        Assert.False(a.IsDominatedBy(a));
        Assert.False((a with { Days = 11, HandsOnHours = 2 }).IsDominatedBy(a));
        Assert.True((a with { Days = null }).IsDominatedBy(a));
        Assert.True((a with { Findings = [Finding.Warning("w", Said.Of("m"), Said.Of("r"))] }).IsDominatedBy(a));
    }

    /// <summary>By brute force, in other words than the code's: the numbers of each pair are held against one another one by one.</summary>
    [Fact]
    public void A_way_is_marked_dominated_just_where_brute_force_finds_a_better_one()
    {
        static double[] Numbers(ComparedWay w) =>
            [w.Days ?? 1e9, w.HandsOnHours, (double)w.CostNow!.Amount, (double)w.OverTenYears!.Amount, w.FormaldehydeStockLitres, w.FlammableAlcoholLitres, w.Errors, w.Warnings];
        static bool Betters(double[] one, double[] other)
        {
            var somewhere = false;
            for (var i = 0; i < one.Length; i++)
            {
                if (one[i] > other[i] + 0.0005) return false;
                somewhere |= one[i] < other[i] - 0.0005;
            }

            return somewhere;
        }

        var numbers = Ways.ToDictionary(w => w.Name, Numbers);
        foreach (var way in Ways)
        {
            var better = Ways.Where(o => Betters(numbers[o.Name], numbers[way.Name])).Select(o => o.Name).ToList();
            if (better.Count == 0) Assert.Null(way.DominatedBy);
            else Assert.Contains(way.DominatedBy, better);
        }

        Assert.Contains(Ways, w => w.DominatedBy is not null);
        Assert.Contains(Ways, w => w.DominatedBy is null);
    }
}
