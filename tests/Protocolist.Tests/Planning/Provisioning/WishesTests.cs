using Protocolist.Findings;
using Protocolist.Plans;

namespace Protocolist.Tests.Planning.Provisioning;

public class WishesTests
{
    private static readonly Protocolist.Benches.Bench Bench = Station.With("""
        stock:
          - {fluid: ethanol 96 %vol, id: e96, on-hand: 9 L}
          - {fluid: ethanol 70 %vol, id: e70, on-hand: 9 L}
        """);

    private static Plan With(string? vessel = null, string? supply = null, Protocolist.Benches.Bench? bench = null)
    {
        var wishes = PlanWishes.None;
        if (vessel is not null) wishes = wishes with { Vessels = wishes.Vessels.Add("house", vessel) };
        if (supply is not null) wishes = wishes with { Supplies = wishes.Supplies.Add("ethanol 80 %vol", supply) };
        return new Planner(Station.Bundled).Plan(new(Station.Whelk, bench ?? Bench, Station.Start) { Wishes = wishes }).Value!;
    }

    [Fact]
    public void A_wished_vessel_is_taken_where_the_body_fits()
    {
        Assert.NotEqual("jar-4", With().Step("house")!.Vessel);
        Assert.Equal("jar-4", With("jar-4").Step("house")!.Vessel);
    }

    [Fact]
    public void A_wished_supply_is_taken_where_the_fluid_can_be_made_of_it()
    {
        Assert.Equal("ethanol 96 %vol", Assert.Single(With(supply: "e96").Materials, m => m.Kind == MaterialKind.Fluid).Name.ToString());
        Assert.Equal(["ethanol 70 %vol", "ethanol 96 %vol"], With(supply: "shelf").Materials.Where(m => m.Kind == MaterialKind.Fluid).Select(m => m.Name.ToString()));
    }

    [Theory]
    [InlineData("jar-44", null, "unknown-vessel")]
    [InlineData(null, "ethanol 60 %vol", "unknown-supply")]
    public void A_wish_that_cannot_be_is_an_error_and_the_planner_chooses(string? vessel, string? supply, string id)
    {
        var plan = With(vessel, supply);
        Assert.Contains(plan.Findings, f => f.Id == id && f.Severity == Severity.Error && f.Remedy.ToString().Length > 0);
        Assert.False(plan.Startable);
        Assert.NotNull(plan.Step("house")!.Vessel);
    }

    [Fact]
    public void A_wished_vessel_that_is_too_small_says_why()
    {
        var bench = Bench with { Vessels = [.. Bench.Vessels.Select(v => v.Id == "jar-1" ? v with { Shape = new Protocolist.Vessels.VesselShape.Cylinder(UnitsNet.Length.FromMillimeters(20), UnitsNet.Length.FromMillimeters(30)) } : v)] };
        Assert.Contains(With("jar-1", bench: bench).Findings, f => f.Id == "wished-vessel-does-not-fit" && f.Message.ToString().Contains("jar-1", StringComparison.Ordinal));
    }

    [Fact]
    public void Where_no_free_vessel_holds_the_body_one_is_bought_with_its_price_and_waiting()
    {
        var big = Bench.Vessels.Single(v => v.Id == "jar-4") with { Count = 0, Price = Protocolist.Quantities.Money.Of(6.5m, "EUR"), LeadDays = 4 };
        var bench = Bench with { Vessels = [big] };
        var plan = With(bench: bench);
        var bought = Assert.Single(plan.Purchases, p => p.Id == "jar-4");
        Assert.Equal((1, 650, 4), (bought.Count, bought.Price!.Minor, bought.LeadDays));
        Assert.Equal(650, plan.Costs.Cash!.Minor);
        var line = Assert.Single(plan.Materials, m => m.Kind == MaterialKind.Vessel);
        Assert.Equal(line.OnHand + line.Bought, line.Used + line.Left);
        Assert.True(plan.Step("house")!.Start!.Value.Date >= Station.Start.Date.PlusDays(4) || plan.Findings.Any(f => f.Id is "supplies-late" or "delivery-comes-too-late"));
    }

    [Fact]
    public void Plan_keeps_what_was_wished_and_nothing_where_nothing_was()
    {
        Assert.Equal("jar-4", With("jar-4").Wishes!.Vessels["house"]);
        Assert.Null(With().Wishes);
    }
}
