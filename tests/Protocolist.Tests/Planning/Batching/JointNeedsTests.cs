using System.Collections.Immutable;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Planning.Batching;
using Protocolist.Plans;
using static Protocolist.Tests.Planning.PlanFixture;

namespace Protocolist.Tests.Planning.Batching;

/// <summary>One list for many plans. Each body has 1 L and goes into 3 L of ethanol 70 %.</summary>
public class JointNeedsTests
{
    private static readonly NodaTime.LocalDate Day = new(2027, 3, 1);

    private static Bench Shelf96(string onHand, string more = "") => Bench("zone: UTC\ncurrency: EUR\nstock:\n  - {fluid: ethanol 96 %vol, id: e96, on-hand: " + onHand + ", packs: [{size: 5 L, price: 40 EUR, lead: 2 d}]}\n  - {consumable: scalpel blade, id: blades, on-hand: 1, packs: [{size: 10, price: 3 EUR, lead: 1 d}]}\n" + more);

    private static Plan One(Bench bench) =>
        new Planner(Shelf(("one", "{group: mammal}", "stages:\n  - {stage: slit, id: cut}\n  - {stage: house, id: house, fluid: ethanol 70 %vol, ratio: 3}\n"))).Plan(new(Mammal("1.03 kg"), bench, Monday)).Value!;

    private static JointNeeds Of(Bench bench, int plans)
    {
        var needs = new JointNeeds();
        for (var i = 0; i < plans; i++) needs.Add(One(bench));
        return needs;
    }

    [Fact]
    public void Nothing_is_wanted_by_no_plan()
    {
        var list = new JointNeeds().List(Shelf96("1 L"), Day);

        Assert.Empty(list.Purchases);
        Assert.Empty(list.Findings);
        Assert.Equal((0, 0), (list.Cost!.Minor, list.ApartAtLeast!.Minor));
    }

    [Fact]
    public void State_sums_litres_uses_and_cash()
    {
        var (one, three) = (Of(Shelf96("0 L"), 1).State, Of(Shelf96("0 L"), 3).State);

        Assert.Equal(["ethanol 70 %vol"], three.Litres.Keys);
        Assert.Equal(3 * one.Litres["ethanol 70 %vol"], three.Litres["ethanol 70 %vol"], 9);
        Assert.InRange(one.Litres["ethanol 70 %vol"], 3, 3.3);
        Assert.Equal((4000, 12000), (one.ApartMinor, three.ApartMinor));
        Assert.Equal(3 * one.Uses["blades"], three.Uses["blades"]);
        Assert.True(one.Uses["blades"] >= 1);
        Assert.Empty(three.Vessels);
        var again = new JointNeeds(three).State;
        Assert.Equal(three.Litres, again.Litres);
        Assert.Equal(three.Uses, again.Uses);
        Assert.Equal(three.ApartMinor, again.ApartMinor);
    }

    /// <summary>Six bodies want 18 L of 70 %, that is 13.1 L of 96 % and a little: three bottles, of six that they would buy apart; six blades less one, a pack.</summary>
    [Fact]
    public void Packs_are_chosen_for_the_sum()
    {
        var list = Of(Shelf96("0 L"), 6).List(Shelf96("0 L"), Day);

        Assert.Equal([("ethanol 96 %vol", "5 L", 3, 12000L, 2), ("scalpel blade", "10 pieces", 1, 300L, 1)], list.Purchases.Where(p => p.Price is not null).Select(p => (p.Item.ToString(), p.Pack.ToString(), p.Count, p.Price!.Minor, p.LeadDays)));
        Assert.Equal(12300, list.Cost!.Minor);
        Assert.Equal(6 * 4000, list.ApartAtLeast!.Minor);
        Assert.All(list.Purchases, p => Assert.Empty(p.For));
    }

    [Fact]
    public void Shelf_is_drawn_on_once()
    {
        var list = Of(Shelf96("9 L"), 6).List(Shelf96("9 L"), Day);

        Assert.Equal(1, Assert.Single(list.Purchases, p => p.Item.ToString() == "ethanol 96 %vol").Count);
        Assert.DoesNotContain(Of(Shelf96("30 L"), 6).List(Shelf96("30 L"), Day).Purchases, p => p.Item.ToString() == "ethanol 96 %vol");
    }

    /// <summary>900 t of it: beyond 400,000 L the purchase is made in equal rounds, and the shelf serves the first alone.</summary>
    [Fact]
    public void More_than_can_be_mixed_at_once_is_bought_in_rounds()
    {
        static JointNeedsState State(double litres) => new(ImmutableSortedDictionary<string, double>.Empty.Add("ethanol 96 %vol", litres), ImmutableSortedDictionary<string, long>.Empty, ImmutableSortedDictionary<string, long>.Empty, 7);
        var bench = Shelf96("100 L");

        var list = new JointNeeds(State(900_000)).List(bench, Day);
        Assert.Equal("note bought-in-rounds: so much is wanted that it is bought in 3 equal rounds; order each round when the one before is used up", Assert.Single(list.Findings, f => f.Id == "bought-in-rounds").ToString());
        Assert.Equal(180_000 - 20, list.Purchases.Where(p => p.Item.ToString() == "ethanol 96 %vol").Sum(p => p.Count));
        Assert.Equal((180_000L - 20) * 4000, list.Cost!.Minor);
        Assert.Equal(7, list.ApartAtLeast!.Minor);

        Assert.DoesNotContain(new JointNeeds(State(400_000)).List(bench, Day).Findings, f => f.Id == "bought-in-rounds");
        Assert.Contains("2 equal rounds", Assert.Single(new JointNeeds(State(400_001)).List(bench, Day).Findings, f => f.Id == "bought-in-rounds").Message.ToString(), StringComparison.Ordinal);
    }

    private const string Jar = "vessels:\n  - {id: jar, name: tall jar, inside: {diameter: 20 cm, height: 60 cm}, wall: glass, lid: polypropylene, seal: polyethylene, closure: screw-lid, count: 2";

    [Fact]
    public void Final_vessels_beyond_the_free_ones_are_told_or_bought()
    {
        var free = Shelf96("90 L", Jar + "}\n");
        Assert.Equal(2, Of(free, 2).State.Vessels["jar"]);
        Assert.Empty(Of(free, 2).List(free, Day).Findings);
        Assert.Equal("warning not-enough-vessels: 3 specimens end in 'jar', of which 2 can be had now; get more of them, or let some specimens share a vessel as a lot", Assert.Single(Of(free, 3).List(free, Day).Findings).ToString());

        var priced = Shelf96("90 L", Jar + ", price: 6.50 EUR, lead: 4 d}\n");
        Assert.DoesNotContain(Of(priced, 2).List(priced, Day).Purchases, p => p.Item.ToString() == "tall jar");
        var list = Of(priced, 5).List(priced, Day);
        var jars = Assert.Single(list.Purchases, p => p.Item.ToString() == "tall jar");
        Assert.Equal((3, 1950L, 4), (jars.Count, jars.Price!.Minor, jars.LeadDays));
        Assert.DoesNotContain(list.Findings, f => f.Id == "not-enough-vessels");
        Assert.Equal(1950, list.Purchases.Where(p => p.Item.ToString() == "tall jar").Sum(p => p.Price!.Minor));
    }

    [Fact]
    public void Price_in_another_money_without_a_rate_is_told_and_left_out()
    {
        var foreign = Shelf96("90 L", Jar.Replace("count: 2", "count: 0", StringComparison.Ordinal) + ", price: 6.50 CAD, lead: 4 d}\n");
        var state = new JointNeedsState(ImmutableSortedDictionary<string, double>.Empty, ImmutableSortedDictionary<string, long>.Empty, ImmutableSortedDictionary<string, long>.Empty.Add("jar", 2), 0);

        var list = new JointNeeds(state).List(foreign, Day);

        Assert.Null(Assert.Single(list.Purchases).Price);
        Assert.Equal(0, list.Cost!.Minor);
        Assert.Contains(list.Findings, f => f.Message.ToString().Contains("CAD", StringComparison.Ordinal));
    }

    [Fact]
    public void Bench_without_money_has_no_cost()
    {
        var bench = Bench("zone: UTC\nstock:\n  - {fluid: ethanol 96 %vol, id: e96, on-hand: 1 L}\n");

        var list = Of(bench, 2).List(bench, Day);

        Assert.Null(list.Cost);
        Assert.Null(list.ApartAtLeast);
    }

    [Fact]
    public void Vessel_that_the_bench_no_longer_has_is_told()
    {
        var state = new JointNeedsState(ImmutableSortedDictionary<string, double>.Empty, ImmutableSortedDictionary<string, long>.Empty, ImmutableSortedDictionary<string, long>.Empty.Add("gone", 1), 0);

        var list = new JointNeeds(state).List(Shelf96("1 L"), Day);

        Assert.Equal("1 specimens end in 'gone', of which 0 can be had now", Assert.Single(list.Findings).Message.ToString());
        Assert.Empty(list.Purchases);
    }

    [Fact]
    public void A_row_of_a_batch_tells_its_work_vessel_and_cost()
    {
        var plan = One(Shelf96("0 L", Jar + "}\n"));
        var row = new BatchRow(1, 2, "X-1", plan, [.. plan.Findings]);

        Assert.Equal(("tall jar", 45.0), (row.FinalVessel, row.HandsOn.TotalMinutes));
        Assert.Equal(plan.Costs.Total, row.Total);
        Assert.Equal(plan.Findings.Count(f => f.Severity == Severity.Warning), row.Count(Severity.Warning));
        Assert.Equal(plan.Startable, row.Startable);
        Assert.False((row with { Findings = row.Findings.Add(Finding.Error("e", Said.Of("m"), Said.Of("r"))) }).Startable);
        var none = new BatchRow(1, 2, "X-1", null, []);
        Assert.Equal((null, null, 0.0, false), (none.FinalVessel, none.Total, none.HandsOn.TotalMinutes, none.Startable));
    }

    private static JointNeedsState State(params (string Fluid, double Litres)[] fluids) => new(
        ImmutableSortedDictionary.CreateRange(StringComparer.Ordinal, fluids.Select(f => KeyValuePair.Create(f.Fluid, f.Litres))), ImmutableSortedDictionary<string, long>.Empty, ImmutableSortedDictionary<string, long>.Empty, 0);

    /// <summary>Two fluids of 300,000 L are 600,000 together: two rounds of each.</summary>
    [Fact]
    public void Rounds_count_all_fluids_together()
    {
        var list = new JointNeeds(State(("ethanol 70 %vol", 300_000), ("ethanol 96 %vol", 300_000))).List(Shelf96("0 L"), Day);

        Assert.Contains("2 equal rounds", Assert.Single(list.Findings, f => f.Id == "bought-in-rounds").Message.ToString(), StringComparison.Ordinal);
        Assert.Equal(Math.Ceiling(((300_000 * 70 / 96.0) + 300_000) / 5), list.Purchases.Where(p => p.Item.ToString() == "ethanol 96 %vol").Sum(p => p.Count), 100.0);
    }

    /// <summary>In three rounds of 300,000 L, 25 blades are 9 a round: a pack of ten each time, less the one that lies there in the first.</summary>
    [Fact]
    public void Things_are_shared_over_the_rounds_too()
    {
        var state = State(("ethanol 96 %vol", 900_000)) with { Uses = ImmutableSortedDictionary<string, long>.Empty.Add("blades", 25) };

        var list = new JointNeeds(state).List(Shelf96("0 L"), Day);

        Assert.Equal(3, list.Purchases.Where(p => p.Item.ToString() == "scalpel blade").Sum(p => p.Count));
        Assert.Equal(3, new JointNeeds(state with { Litres = state.Litres.Clear() }).List(Shelf96("0 L"), Day).Purchases.Where(p => p.Item.ToString() == "scalpel blade").Sum(p => p.Count)); // 24 are lacking
    }

    [Fact]
    public void Thing_or_fluid_that_the_bench_does_not_know_does_not_stop_the_list()
    {
        var state = State(("brandy 40 %", 3), ("ethanol 96 %vol", 0)) with { Uses = ImmutableSortedDictionary<string, long>.Empty.Add("tweezers", 5) };

        Assert.Empty(new JointNeeds(state).List(Shelf96("0 L"), Day).Purchases);
    }

    [Fact]
    public void What_is_lacking_and_not_for_sale_is_told()
    {
        var bench = Bench("zone: UTC\ncurrency: EUR\nstock:\n  - {fluid: ethanol 96 %vol, id: e96, on-hand: 1 L}\n");

        Assert.Contains(new JointNeeds(State(("ethanol 96 %vol", 3))).List(bench, Day).Findings, f => f.Id == "lacking-and-not-for-sale");
    }

    [Fact]
    public void Tools_are_counted_by_their_uses()
    {
        var bench = Bench("zone: UTC\ncurrency: EUR\nstock:\n  - {tool: \"forceps, pointed\", id: forceps, on-hand: 1, lasts-uses: 10, used-so-far: 0, packs: [{size: 1, price: 7 EUR}]}\n");
        var plan = new Planner(Shelf(("one", "{group: mammal}", "stages:\n  - {stage: sample, id: s}\n  - {stage: slit, id: cut}\n"))).Plan(new(Mammal("1.03 kg"), bench, Monday)).Value!;
        var uses = plan.Materials.Single(m => m.Kind == MaterialKind.Tool).Uses;
        var needs = new JointNeeds();
        for (var i = 0; i < 25; i++) needs.Add(plan);

        Assert.True(uses > 0);
        Assert.Equal(25 * uses, needs.State.Uses["forceps"]);
        Assert.Equal((int)Math.Ceiling(25 * uses / 10.0) - 1, Assert.Single(needs.List(bench, Day).Purchases).Count);
    }
}
