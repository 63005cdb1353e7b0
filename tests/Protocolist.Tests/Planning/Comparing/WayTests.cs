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

    /// <summary>Two tubs of which the bigger serves nothing, and two options: a way for each option, each in the smaller tub.</summary>
    [Fact]
    public void What_nobody_would_take_is_folded_away_and_each_option_stays()
    {
        var stages = "  - {stage: immerse, id: fix, fluid: formalin 10 %, ratio: 10, last: 24 h}\n  - {stage: wash, id: wash, fluid: tap water, ratio: 3, last: 24 h}\n  - {stage: house, id: house, fluid: choice.keeping, ratio: 3}\n";
        var compared = Compare(stages, Bench + Tubs, "choices:\n  keeping: [ethanol 70 %vol, ethanol 80 %vol]\n");

        Assert.Equal(["ethanol 70 %vol", "ethanol 80 %vol"], compared.Value!.Ways.Select(w => w.Choices["keeping"]).Distinct());
        Assert.Equal(["A", "B"], compared.Value.Ways.Select(w => w.Name));
        Assert.All(compared.Value.Ways, w => Assert.Equal(("tub-a", "tub-a"), (w.Vessels["fix"], w.Vessels["house"])));
        Assert.Equal(2, compared.Value.Weighed);
        Assert.Empty(compared.Findings);
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
        Assert.Equal(2, planner.Compare(request).Value!.Ways.Length);
    }

    private static string Many(int choices) => "choices:\n" + string.Concat(Enumerable.Range(1, choices).Select(i => $"  c{i}: [a, b]\n"));

    private static string Tasks(int choices) => string.Concat(Enumerable.Range(1, choices).Select(i => $"  - {{stage: task, id: t{i}, last: 1 h, when: choice.c{i} is a}}\n")) + "  - {stage: task, id: end, last: 1 h}\n";

    /// <summary>The task of an option that is left out is work saved, so that every combination is worth something to somebody.</summary>
    [Theory]
    [InlineData(5, 32)]
    [InlineData(8, 256)]
    public void Every_combination_is_weighed(int choices, int ways)
    {
        var compared = Compare(Tasks(choices), "zone: UTC\n", Many(choices));

        Assert.Equal(ways, compared.Value!.Weighed);
        Assert.DoesNotContain(compared.Findings, f => f.Id == "ways-not-all-compared");
        Assert.Equal("A", compared.Value.Ways[0].Name);
    }

    [Fact]
    public void Beyond_256_the_rest_is_left_and_it_says_so()
    {
        var compared = Compare(Tasks(9), "zone: UTC\n", Many(9));

        Assert.InRange(compared.Value!.Weighed, 255, 256);
        Assert.Contains(compared.Findings, f => f.Id == "ways-not-all-compared");
    }

    /// <summary>A cheaper tub without a lid that seals against a jar that has to be bought: what each is good for is told against the planner's own.</summary>
    [Fact]
    public void A_way_says_what_it_is_good_for_and_what_it_costs()
    {
        const string Vessels = "vessels:\n  - {id: open, name: open tub, inside: {length: 60 cm, width: 40 cm, height: 60 cm}, wall: glass, lid: glass, closure: loose-lid, count: 1}\n  - {id: jar, name: jar, inside: {diameter: 55 cm, height: 60 cm}, wall: glass, lid: polypropylene, seal: polyethylene, closure: screw-lid, count: 0, price: 21 EUR}\n";
        var ways = Compare("  - {stage: house, id: house, fluid: ethanol 70 %vol, ratio: 3}\n", Bench + Vessels).Value!.Ways;

        Assert.Equal("jar open", string.Join(' ', ways.Select(w => w.Vessels.GetValueOrDefault("house") ?? string.Join(';', w.Findings))));
        Assert.True(ways[0].GoodFor.IsEmpty);
        Assert.Contains("less money", ways[1].GoodFor.ToString(), StringComparison.Ordinal);
        Assert.Contains("; but it ", ways[1].GoodFor.ToString(), StringComparison.Ordinal);
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
}
