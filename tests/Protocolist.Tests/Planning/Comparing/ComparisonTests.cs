using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Plans;
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
    public void Every_option_has_a_way()
    {
        var protocol = Station.Bundled.Protocols.Single(p => p.Id == Wrasse.Value!.Protocol.Id);
        foreach (var choice in protocol.Choices)
            Assert.Equal(choice.Options.Order(StringComparer.Ordinal), Ways.Select(w => w.Choices[choice.Name]).Distinct().Order(StringComparer.Ordinal));
    }

    [Fact]
    public void First_way_is_the_plan_that_the_planner_makes_by_itself()
    {
        var plan = Made.Plan(Request()).Value!;
        Assert.Equal(("A", plan.Costs.Cash, plan.Costs.OverTenYears), (Ways[0].Name, Ways[0].CostNow, Ways[0].OverTenYears));
        Assert.Equal(plan.Choices, Ways[0].Choices);
    }

    /// <summary>The planner's own is the least harmful in the declared order, so that none of the others does no more of anything and less of something.</summary>
    [Fact]
    public void Nothing_that_is_shown_dominates_the_planners_own() => Assert.Null(Ways[0].DominatedBy);

    [Fact]
    public void Only_a_vessel_that_holds_the_body_has_a_way()
    {
        // A wrasse of 184 mm does not stand in a jar of 16 cm height.
        Assert.All(Ways, w => Assert.NotEqual("jar-1", w.Vessels["house"]));
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
}
