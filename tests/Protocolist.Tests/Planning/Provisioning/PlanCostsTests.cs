using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Quantities;

namespace Protocolist.Tests.Planning.Provisioning;

public class PlanCostsTests
{
    private const string Ethanol = "stock:\n  - {fluid: ethanol 96 %vol, id: e96, on-hand: 500 mL, packs: [{size: 1 L, price: 9.00 CODE, lead: 2 d}]}";

    [Fact]
    public void The_parts_of_the_cost_add_up_to_its_total()
    {
        var costs = Station.Plan(Station.Whelk, Station.With(Ethanol.Replace("CODE", "EUR", StringComparison.Ordinal))).Costs;
        Assert.Equal(costs.Total, costs.Used! + costs.Wear! + costs.Labour! + costs.Disposal!);
        Assert.Equal(costs.Disposal, Money.Sum(costs.DisposalByClass.Select(d => d.Cost), "EUR"));
        Assert.Equal(costs.OverTenYears, costs.Total! + costs.CareByYear! * 10);
    }

    /// <summary>Two half-yearly rounds of 10 minutes at 18 EUR/h: 365.25 / 180 x 10 min x 0.30 EUR/min = 6.09 EUR; a published 0.75 mL a year (below) is 0.5 cents.</summary>
    [Fact]
    public void A_year_of_care_is_its_rounds_at_the_rate_for_work() =>
        Assert.Equal(609, Station.Plan(Station.Whelk, Station.With(Ethanol.Replace("CODE", "EUR", StringComparison.Ordinal))).Costs.CareLabourByYear!.Minor);

    /// <summary>
    /// A jar that loses 100 mL a year of the 75 % in which whelks are kept. By volume of pure alcohol, 1 L of it is 75/96 L of 96 %, at 9 EUR a litre:
    /// 0.1 x 0.78125 x 9.00 = 0.70 EUR, on top of 6.09 EUR of work.
    /// </summary>
    [Fact]
    public void What_evaporates_in_a_year_is_paid_for_by_what_it_is_made_from()
    {
        var bench = Station.With(Ethanol.Replace("CODE", "EUR", StringComparison.Ordinal));
        bench = bench with { Vessels = [.. bench.Vessels.Select(v => v with { LossPerYear = UnitsNet.Volume.FromMilliliters(100) })] };
        var costs = Station.Plan(Station.Whelk, bench).Costs;
        Assert.Equal((70, 609, 679), (costs.CareFluidByYear!.Minor, costs.CareLabourByYear!.Minor, costs.CareByYear!.Minor));
        Assert.Equal(100, costs.TopUpByYear!.Value.Milliliters, 9);
        Assert.Equal(costs.OverTenYears, costs.Total! + costs.CareByYear! * 10);
    }

    /// <summary>0.75 mL a year through a screw lid with a polyethylene liner (Labedz, collections mailing list 2005).</summary>
    [Fact]
    public void A_published_loss_serves_where_nobody_measured_and_an_unknown_one_is_said()
    {
        var bench = Station.With(Ethanol.Replace("CODE", "EUR", StringComparison.Ordinal));
        Assert.Equal(0.75, Station.Plan(Station.Whelk, bench).Costs.TopUpByYear!.Value.Milliliters, 9);
        bench = bench with { Vessels = [.. bench.Vessels.Select(v => v with { Closure = Protocolist.Vessels.Closure.GroundStopper })] };
        var plan = Station.Plan(Station.Whelk, bench);
        Assert.Null(plan.Costs.CareFluidByYear);
        Assert.Contains(plan.Findings, f => f.Id == "top-up-not-reckoned" && f.Severity == Severity.Note);
    }

    [Fact]
    public void Disposal_without_a_price_is_told_once_for_all_classes_and_with_prices_not_at_all()
    {
        var bench = Station.With(Ethanol.Replace("CODE", "EUR", StringComparison.Ordinal));
        var note = Assert.Single(Station.Plan(Station.Whelk, bench).Findings, f => f.Id == "disposal-without-price");
        Assert.Contains("contaminated solids", note.Message.ToString(), StringComparison.Ordinal);
        var priced = Station.Read(Ethanol.Replace("CODE", "EUR", StringComparison.Ordinal) + "\nwaste: {containers: {contaminated-solids: {name: bin G2, holds: 200, price: 26 EUR}, sharps: {name: box S1, holds: 60, price: 9 EUR}}}").Value!;
        var plan = Station.Plan(Station.Whelk, priced);
        Assert.DoesNotContain(plan.Findings, f => f.Id == "disposal-without-price");
        var pieces = plan.Waste.Where(w => w.Class == WasteClass.ContaminatedSolids).Sum(w => w.Amount.Units);

        // 26 EUR over 200 pieces is 13 cents each.
        Assert.Equal(pieces * 13, plan.Costs.DisposalByClass.Single(d => d.Class == WasteClass.ContaminatedSolids).Cost.Minor);
        Assert.All(plan.Waste.Where(w => w.Class == WasteClass.ContaminatedSolids), w => Assert.Equal("bin G2", w.Destination.ToString()));
    }

    [Theory]
    [InlineData("waste: {containers: {sharps: {name: box, holds: 60}}}", "container-without-price")]
    [InlineData("waste: {containers: {sharps: {name: box, holds: 0, price: 9 EUR}}}", "container-without-price")]
    [InlineData("waste: {containers: {sharps: {holds: 60, price: 9 EUR}}}", "missing-key")]
    [InlineData("waste: {containers: {sharps: {name: box, holds: 60, price: 9}}}", "price-without-currency")]
    public void A_container_told_by_halves_is_found(string yaml, string id) =>
        Assert.Contains(Station.Read(yaml).Findings, f => f.Id == id && f.Where.Line > 0);

    [Fact]
    public void Sharps_are_priced_by_the_piece_and_never_by_the_litre()
    {
        static Checked<Protocolist.Benches.Bench> Read(string price) => Protocolist.Benches.BenchReader.Read(
            new SourceText("bench.yaml", $"format: 1\nbench: test\nzone: Atlantic/Azores\ndisposal: {{sharps: {price}}}\n"), NodaTime.DateTimeZoneProviders.Tzdb);
        Assert.Empty(Read("0.20 EUR/piece").Findings);
        Assert.Equal(["priced-by-another-measure"], Read("0.20 EUR/L").Findings.Select(f => f.Id));
    }

    /// <summary>A bottle out of date and one of unknown strength are left alone; then the part bottle that was opened first, then the other, then the full one.</summary>
    [Fact]
    public void Unfit_bottles_are_warnings_and_the_oldest_part_bottle_is_emptied_first()
    {
        var read = Station.Read("""
            stock:
              - {fluid: ethanol 96 %vol, id: old, on-hand: 9 L, expires: 2027-02-01}
              - {fluid: ethanol, id: nameless, on-hand: 9 L}
              - {fluid: ethanol, strength: 96 %vol, id: full, on-hand: 9 L, expires: 2028-01-01}
              - {fluid: ethanol 96 %vol, id: part, on-hand: 60 mL, opened: 2026-12-01}
              - {fluid: ethanol 96 %vol, id: part-older, on-hand: 40 mL, opened: 2026-10-01}
            """);
        Assert.Contains(read.Findings, f => f.Id == "unknown-strength" && f.Severity == Severity.Warning && f.Where.Line > 0);
        Assert.False(read.HasErrors, string.Join('\n', read.Findings));
        var plan = Station.Plan(Station.Whelk, read.Value!);
        Assert.Equal(["part-older", "part", "full"], plan.Material("ethanol 96 %vol").Draws.Select(d => d.Stock));
        Assert.Equal([Severity.Warning, Severity.Warning], plan.Findings.Where(f => f.Id is "stock-expired" or "stock-strength-unknown").Select(f => f.Severity));
    }

    [Fact]
    public void Two_currencies_without_a_rate_are_a_finding_and_with_one_are_not()
    {
        var without = Station.Plan(Station.Whelk, Station.With(Ethanol.Replace("CODE", "USD", StringComparison.Ordinal)));
        Assert.Contains(without.Findings, f => f.Id == "two-currencies" && f.Severity == Severity.Error);
        var with = Station.Plan(Station.Whelk, Station.With(Ethanol.Replace("CODE", "USD", StringComparison.Ordinal) + "\nexchange-rates: {USD: 0.5}"));
        Assert.DoesNotContain(with.Findings, f => f.Id == "two-currencies");
        Assert.Equal(450 * with.Purchases[0].Count, with.Costs.Cash!.Minor);
    }

    [Fact]
    public void What_takes_days_to_arrive_is_said_and_names_the_steps_that_wait()
    {
        var plan = Station.Plan(Station.Whelk, Station.With(Ethanol.Replace("CODE", "EUR", StringComparison.Ordinal)));
        var ethanol = plan.Purchases.First(p => p.Item.ToString().StartsWith("ethanol", StringComparison.Ordinal));
        Assert.Equal(2, ethanol.LeadDays);
        Assert.Contains("fix", ethanol.For);
        Assert.Equal("house", Assert.Single(plan.Findings, f => f.Id is "supplies-late" or "waits-for-delivery").Subject);
    }

    [Theory]
    [InlineData("  - {fluid: ethanol 96 %vol, on-hand: -1 L}", "negative-stock")]
    [InlineData("  - {fluid: ethanol 96 %vol, on-hand: 1 L, packs: [{size: 1 L}]}", "pack-without-price")]
    [InlineData("  - {fluid: ethanol 96 %vol, on-hand: 1 L, packs: [{size: 1 L, price: 9.00}]}", "price-without-currency")]
    [InlineData("  - {fluid: ethanol 96 %vol, on-hand: 1 L, packs: [{size: 1 L, price: 9.00 XYZ}]}", "unknown-currency")]
    public void Bad_stock_is_found_with_its_line(string item, string id)
    {
        var read = Station.Read("stock:\n" + item);
        Assert.Contains(read.Findings, f => f.Id == id && f.Where.Line > 0);
    }
}
