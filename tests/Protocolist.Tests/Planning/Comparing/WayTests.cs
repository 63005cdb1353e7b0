using System.Collections.Immutable;
using Protocolist.Findings;
using static Protocolist.Tests.Planning.PlanFixture;

namespace Protocolist.Tests.Planning.Comparing;

/// <summary>Ways of little protocols on little benches, so that each number can be reckoned by hand.</summary>
public class WayTests
{
    private const string Bench = "zone: UTC\ncurrency: EUR\nlabour: 60 EUR/h\nstock:\n  - {fluid: ethanol 96 %vol, id: e96, on-hand: 50 L}\n  - {fluid: formaldehyde stock 37 %mass, id: f37, on-hand: 9 L, packs: [{size: 1 L, price: 9 EUR}]}\n";

    private static PlanRequest Request(string bench = Bench) => new(Mammal("1.03 kg"), Bench(bench), Monday);

    private static Planner By(string stages, string choices = "") => new(Shelf(("one", "{group: mammal}", $"{choices}stages:\n{stages}")));

    private static Checked<Comparison> Compare(string stages, string bench = Bench, string choices = "") => By(stages, choices).Compare(Request(bench));

    private const string FixAndKeep = "  - {stage: immerse, id: fix, fluid: formalin 10 %, ratio: 10, last: 24 h}\n  - {stage: wash, id: wash, fluid: tap water, ratio: 3, last: 24 h}\n  - {stage: house, id: house, fluid: ethanol 70 %vol, ratio: 3}\n";

    /// <summary>A body of 1 L: 10 L of formalin hold 1 L of stock, 3 L of 70 % ethanol hold 2.19 L of 96 %; five parts in a hundred and a jug's rest come on top. 15 + 15 + 30 min of work.</summary>
    [Fact]
    public void Numbers_of_a_way_are_those_of_its_recipes_dates_and_work()
    {
        var way = Assert.Single(Compare(FixAndKeep).Value!.Ways);

        Assert.Equal(("A", true, 0), (way.Name, way.Startable || way.Errors > 0, way.Vessels.Count));
        Assert.Equal(1.0, way.HandsOnHours, 9);
        Assert.Equal(2 + (0.5 / 24), way.Days!.Value, 6);
        Assert.InRange(way.FormaldehydeStockLitres, 1.0, 1.08);
        Assert.InRange(way.FlammableAlcoholLitres, 3 * 70 / 96.0, 3 * 70 / 96.0 * 1.08);
        Assert.Equal(["ethanol 70 %vol", "formalin 10 %"], way.Supplies.Keys);
        Assert.Equal(0, way.CostNow!.Minor);
        Assert.DoesNotContain(way.Findings, f => f.Severity == Severity.Note);
        Assert.Equal(way.Findings.Count(f => f.Severity == Severity.Warning), way.Warnings);
        Assert.NotEmpty(way.Findings);
    }

    [Fact]
    public void Weak_alcohol_is_no_flammable_one()
    {
        var way = Compare("  - {stage: house, id: house, fluid: ethanol 20 %vol, ratio: 3}\n", "zone: UTC\nstock:\n  - {fluid: ethanol 20 %vol, id: e20, on-hand: 50 L}\n").Value!.Ways[0];
        Assert.Equal(0, way.FlammableAlcoholLitres);
        Assert.Null(way.CostNow);
        Assert.Null(way.OverTenYears);
        var at24 = Compare("  - {stage: house, id: house, fluid: ethanol 24 %vol, ratio: 3}\n", "zone: UTC\nstock:\n  - {fluid: ethanol 24 %vol, id: e24, on-hand: 50 L}\n").Value!.Ways[0];
        Assert.InRange(at24.FlammableAlcoholLitres, 3, 3.3);
    }

    [Fact]
    public void Way_without_dates_has_no_days()
    {
        var way = Compare(FixAndKeep, Bench + "hours: {mon: 08:00 to 10:00}\n").Value!.Ways[0];
        Assert.Null(way.Days);
        Assert.False(way.Startable);
        Assert.True(way.Errors > 0);
    }

    private const string Tubs = "vessels:\n  - {id: tub-a, name: tub a, inside: {length: 70 cm, width: 30 cm, height: 30 cm}, wall: polypropylene, lid: polypropylene, closure: snap-lid, count: 2}\n  - {id: tub-b, name: tub b, inside: {length: 80 cm, width: 30 cm, height: 30 cm}, wall: polypropylene, lid: polypropylene, closure: snap-lid, count: 2}\n";

    /// <summary>Two vessels for each of two steps and two options: 2 · 2 · 2 = 8 ways.</summary>
    [Fact]
    public void Few_ways_are_combined_each_with_each()
    {
        var stages = "  - {stage: immerse, id: fix, fluid: formalin 10 %, ratio: 10, last: 24 h}\n  - {stage: wash, id: wash, fluid: tap water, ratio: 3, last: 24 h}\n  - {stage: house, id: house, fluid: choice.keeping, ratio: 3}\n";
        var compared = Compare(stages, Bench + Tubs, "choices:\n  keeping: [ethanol 70 %vol, ethanol 80 %vol]\n");

        Assert.True(compared.Value!.IsCombined);
        Assert.Empty(compared.Findings);
        Assert.Equal(8, compared.Value.Ways.Length);
        Assert.Equal(["A", "B", "C", "D", "E", "F", "G", "H"], compared.Value.Ways.Select(w => w.Name));
        Assert.Equal(8, compared.Value.Ways.Select(w => (w.Choices["keeping"], w.Vessels["fix"], w.Vessels["house"])).Distinct().Count());
        Assert.All(compared.Value.Ways, w => Assert.Equal(["fix", "house"], w.Vessels.Keys));
        Assert.Equal(["ethanol 70 %vol", "ethanol 70 %vol", "ethanol 70 %vol", "ethanol 70 %vol", "ethanol 80 %vol", "ethanol 80 %vol", "ethanol 80 %vol", "ethanol 80 %vol"], compared.Value.Ways.Select(w => w.Choices["keeping"]));
    }

    [Fact]
    public void What_is_settled_stays_as_it_is()
    {
        var stages = "  - {stage: house, id: house, fluid: choice.keeping, ratio: 3}\n";
        var planner = By(stages, "choices:\n  keeping: [ethanol 70 %vol, ethanol 80 %vol]\n");
        var request = Request(Bench + Tubs);
        var settled = request with
        {
            Choices = ImmutableSortedDictionary<string, string>.Empty.Add("keeping", "ethanol 80 %vol"),
            Wishes = Protocolist.Plans.PlanWishes.None with { Vessels = ImmutableSortedDictionary<string, string>.Empty.Add("house", "tub-b") },
        };

        var way = Assert.Single(planner.Compare(settled).Value!.Ways);
        Assert.Equal(("ethanol 80 %vol", "tub-b"), (way.Choices["keeping"], way.Vessels["house"]));
        Assert.Equal(4, planner.Compare(request).Value!.Ways.Length);
    }

    private static string Many(int choices) => "choices:\n" + string.Concat(Enumerable.Range(1, choices).Select(i => $"  c{i}: [a, b]\n"));

    private static string Tasks(int choices) => string.Concat(Enumerable.Range(1, choices).Select(i => $"  - {{stage: task, id: t{i}, last: 1 h, when: choice.c{i} is a}}\n")) + "  - {stage: task, id: end, last: 1 h}\n";

    /// <summary>32 combinations are combined; 64 are more than 36 and vary one at a time, and all choices are there all the same.</summary>
    [Theory]
    [InlineData(5, 32, true)]
    [InlineData(6, 64, false)]
    public void Beyond_36_ways_they_vary_one_at_a_time(int choices, int ways, bool combined)
    {
        var compared = Compare(Tasks(choices), "zone: UTC\n", Many(choices));

        Assert.Equal((ways, combined), (compared.Value!.Ways.Length, compared.Value.IsCombined));
        if (combined) Assert.Empty(compared.Findings);
        else
            Assert.Equal(
                "note one-at-a-time: there are 64 ways in all, more than the 36 that are combined freely; vessels and stock vary one at a time against the planner's own way, A; settle some with --choose, --vessel or --supply to see the rest combined",
                Assert.Single(compared.Findings).ToString());
        Assert.Equal(["A", "Z", "AA", "AB"], ((int[])[0, 25, 26, 27]).Select(i => compared.Value.Ways[i].Name));
    }

    [Fact]
    public void Beyond_256_the_rest_is_left_and_it_says_so()
    {
        var compared = Compare(Tasks(9), "zone: UTC\n", Many(9));

        Assert.Equal(256, compared.Value!.Ways.Length);
        Assert.Contains("note ways-not-all-compared: 257 ways are too many; the first 256 are compared; settle some with --choose, --vessel or --supply", compared.Findings.Select(f => f.ToString()));
        Assert.Equal("IV", compared.Value.Ways[255].Name); // 255 = 9·26 + 21: the ninth letter and the 22nd
    }

    [Fact]
    public void Two_hundred_and_fifty_six_are_all_compared()
    {
        var compared = Compare(Tasks(8), "zone: UTC\n", Many(8));

        Assert.Equal(256, compared.Value!.Ways.Length);
        Assert.Equal("one-at-a-time", Assert.Single(compared.Findings).Id);
    }

    /// <summary>10 L of formalin 10 % come to 1 L of the reference stock, whether they are mixed, bought ready, or made of used fixative.</summary>
    [Fact]
    public void Formaldehyde_is_told_as_stock_whatever_it_is_taken_as()
    {
        const string Stages = "  - {stage: immerse, id: fix, fluid: formalin 10 %, ratio: 10, last: 24 h}\n";
        var ready = Compare(Stages, "zone: UTC\nstock:\n  - {fluid: formalin 10 %, id: ready, on-hand: 90 L}\n").Value!.Ways[0];
        Assert.InRange(ready.FormaldehydeStockLitres, 1.0, 1.08);
        Assert.Equal(0, ready.FlammableAlcoholLitres);
        var used = Compare(Stages, "zone: UTC\nstock:\n  - {fluid: formalin 10 %, id: kept, on-hand: 90 L, uses: 1, ph: 7.1, clear: yes}\n  - {fluid: formaldehyde stock 37 %mass, id: f37, on-hand: 9 L}\n").Value!.Ways;
        Assert.All(used, w => Assert.InRange(w.FormaldehydeStockLitres, 0.95, 1.1));
    }

    [Fact]
    public void No_plan_no_comparison()
    {
        var compared = By("  - {stage: task, id: t, last: 1 h}\n").Compare(Request() with { Specimen = Mammal("1 kg") with { Group = "gastropod" } });

        Assert.Null(compared.Value);
        Assert.Contains(compared.Findings, f => f.Id == "no-protocol");
    }

    private static ComparedWay Plain { get; } = new() { Name = "A", Choices = ImmutableSortedDictionary<string, string>.Empty, Days = 10, HandsOnHours = 3, FormaldehydeStockLitres = 2, FlammableAlcoholLitres = 1 };

    [Fact]
    public void Differences_below_a_thousandth_decide_nothing()
    {
        Assert.False((Plain with { Days = 10.0004 }).IsDominatedBy(Plain));
        var paid = Plain with { CostNow = Protocolist.Quantities.Money.Of(5, "EUR"), OverTenYears = Protocolist.Quantities.Money.Of(9, "EUR") };
        Assert.True((paid with { CostNow = Protocolist.Quantities.Money.Of(6, "EUR") }).IsDominatedBy(paid));
        Assert.True((paid with { OverTenYears = Protocolist.Quantities.Money.Of(10, "EUR") }).IsDominatedBy(paid));
        Assert.True((paid with { OverTenYears = null }).IsDominatedBy(paid));
        Assert.True((Plain with { Days = 10.0006 }).IsDominatedBy(Plain));
        Assert.True((Plain with { HandsOnHours = 3.1 }).IsDominatedBy(Plain));
        Assert.True((Plain with { FormaldehydeStockLitres = 2.1 }).IsDominatedBy(Plain));
        Assert.True((Plain with { FlammableAlcoholLitres = 1.1 }).IsDominatedBy(Plain));
        Assert.True((Plain with { Findings = [Finding.Error("e", Said.Of("m"), Said.Of("r"))] }).IsDominatedBy(Plain));
        Assert.False((Plain with { Findings = [Finding.Note("n", Said.Of("m"), Said.Of("r"))] }).IsDominatedBy(Plain));
        Assert.False((Plain with { Days = 1e20 }).IsDominatedBy(Plain with { Days = 1e16, FlammableAlcoholLitres = 1 }));
        Assert.True((Plain with { Days = 1e15 }).IsDominatedBy(Plain with { Days = 9.9e14 }));
        Assert.Equal((1, 2), ((Plain with { Findings = [Finding.Error("e", Said.Of("m"), Said.Of("r")), Finding.Warning("w", Said.Of("m"), Said.Of("r")), Finding.Warning("v", Said.Of("m"), Said.Of("r"))] }) is var w ? w.Errors : 0, (Plain with { Findings = [Finding.Warning("w", Said.Of("m"), Said.Of("r")), Finding.Warning("v", Said.Of("m"), Said.Of("r"))] }).Warnings));
    }
}
