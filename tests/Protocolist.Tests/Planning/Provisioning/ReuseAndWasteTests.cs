using Protocolist.Fluids;

namespace Protocolist.Tests.Planning.Provisioning;

public class ReuseAndWasteTests
{
    private const string Spent = "  - {fluid: BUFFER formalin 8 %, id: kept, on-hand: 400 mL, uses: USES, ph: PH, clear: yes, uses-allowed: 3}\n";

    private const string Rest = """
          - {fluid: formaldehyde stock 37 %mass, id: strong, on-hand: 9 L}
          - {fluid: ethanol 96 %vol, id: e96, on-hand: 100 L}
          - {salt: sodium dihydrogen phosphate, hydrate: monohydrate, id: acid, on-hand: 900 g}
          - {salt: disodium phosphate, hydrate: anhydrous, id: base, on-hand: 900 g}
          - {salt: borax, id: borax, on-hand: 900 g}
        """;

    private static string Stock(string buffer = "neutral buffered", string uses = "1", string ph = "7.1") => "stock:\n"
        + Spent.Replace("BUFFER", buffer, StringComparison.Ordinal).Replace("USES", uses, StringComparison.Ordinal).Replace("PH", ph, StringComparison.Ordinal) + Rest;

    [Fact]
    public void Spent_fixative_of_the_same_buffering_is_restored_to_strength_first()
    {
        var plan = Station.Plan(Station.Wrasse, Station.With(Stock()), ("fixative", "neutral buffered formalin 10 %"));
        var recipe = plan.Recipes.Single(r => r.For.Contains("fix"));
        Assert.Contains(recipe.Parts, p => p.Stock == "kept");
        Assert.Contains(recipe.Parts, p => p.Stock == "strong");

        // Formaldehyde in = formaldehyde wanted, each from the fluids' own contents.
        var inGrams = recipe.Parts.Where(p => p.Stock is "kept" or "strong").Sum(p => p.Volume!.Value.Liters * (p.Fluid!.FormaldehydeGramsPerLitre ?? 0));
        Assert.Equal(recipe.Volume.Liters * recipe.Fluid.FormaldehydeGramsPerLitre!.Value, inGrams, 0.5);
    }

    [Theory]
    [InlineData("borax-buffered", "1", "8.2")]
    [InlineData("neutral buffered", "3", "7.0")]
    [InlineData("neutral buffered", "1", "6.1")]
    public void Spent_fixative_of_another_buffering_used_up_or_too_acid_is_never_taken(string buffer, string uses, string ph)
    {
        var read = Station.Read(Stock(buffer, uses, ph));
        var plan = Station.Plan(Station.Wrasse, read.Value!, ("fixative", "neutral buffered formalin 10 %"));
        Assert.DoesNotContain(plan.Recipes.SelectMany(r => r.Parts), p => p.Stock == "kept");
    }

    /// <summary>At so high a ratio the second water of a small fish holds less than the gram in a litre from which it is hazardous.</summary>
    [Fact]
    public void The_first_water_is_collected_with_the_formalin_and_the_next_by_what_it_holds()
    {
        var plan = Station.Plan(Station.Wrasse, Station.With(Stock()));
        var (first, second) = (plan.Fluids.Single(m => m.From.Step == "wash" && m.Filling == 0), plan.Fluids.Single(m => m.From.Step == "wash" && m.Filling == 1));

        Assert.Equal([WasteClass.Formaldehyde, WasteClass.RinseWater], plan.Waste.Where(w => w is { Step: "wash", Fluid: not null }).Select(w => w.Class));
        Assert.NotEqual(first.To.Destination, second.To.Destination);
        Assert.Equal(first.Volume, second.Volume);
    }

    [Fact]
    public void A_bath_that_hardened_serves_again_and_no_fluid_is_made_for_it_twice()
    {
        var shark = Station.Wrasse with { Id = "S-1", Group = "shark", ScientificName = null, Mass = UnitsNet.Mass.FromGrams(250), StandardLength = null, TotalLength = UnitsNet.Length.FromCentimeters(40) };
        var plan = Station.Plan(shark, Station.With(Stock()));
        var again = plan.Fluids.Single(m => m.From.Step == "harden" && m.To.Step == "fix");

        Assert.DoesNotContain(plan.Waste, w => w is { Step: "harden", Fluid: not null } && w.Amount.Volume > plan.Step("harden")!.Volume!.Value - again.Volume + UnitsNet.Volume.FromMilliliters(1));
        Assert.Contains(plan.Step("fix")!.Instructions, i => i.ToString().EndsWith("is the fluid of 'harden', used again.", StringComparison.Ordinal));
        Assert.Contains(plan.Step("harden")!.Instructions, i => i.ToString() == "Keep the fluid: it serves again in 'fix'.");
        var fresh = plan.Fluids.Where(m => m.To.Step == "fix" && m.From.Kind == Protocolist.Plans.FluidPlaceKind.Recipe).Sum(m => m.Volume.Milliliters);
        Assert.Equal((plan.Step("fix")!.Volume!.Value.Milliliters * 2) - again.Volume.Milliliters, fresh, 0.01);
    }

    [Fact]
    public void Fixative_is_kept_where_the_bench_keeps_it_and_its_uses_are_counted()
    {
        const string Waste = "\nwaste: {containers: {formaldehyde: drum F1, flammable-alcohol: can A1, dilute-alcohol: can A2}, keep-fixative: {in: carboy R1, uses: 3}}";
        var fresh = Station.Plan(Station.Wrasse, Station.With("stock:\n" + Rest + Waste), ("fixative", "neutral buffered formalin 10 %"));
        var kept = fresh.Waste.Single(w => w.Step == "fix" && w.Way == WasteWay.KeptForReuse);
        Assert.Equal("carboy R1", kept.Destination.ToString());
        Assert.Equal(1, kept.Uses);
        Assert.Contains("carboy R1", string.Join(' ', fresh.Step("spent-fixative")!.Instructions), StringComparison.Ordinal);

        var again = Station.Plan(Station.Wrasse, Station.With(Stock(uses: "2") + Waste), ("fixative", "neutral buffered formalin 10 %"));
        Assert.Equal("drum F1", again.Waste.First(w => w.Step == "fix" && w.Fluid is not null).Destination.ToString());
    }

    [Fact]
    public void No_waste_is_without_a_destination_and_nothing_is_drained_without_a_permit()
    {
        var plan = Station.Plan(Station.Wrasse, Station.With("stock:\n" + Rest));
        Assert.All(plan.Waste, w => Assert.False(string.IsNullOrWhiteSpace(w.Destination.ToString())));
        Assert.DoesNotContain(plan.Waste, w => w.Way == WasteWay.DrainedWhereAllowed);
        var permitted = Station.Plan(Station.Wrasse, Station.With("stock:\n" + Rest + "\nwaste: {drains: {rinse-water: water authority note 12}}"));
        Assert.All(permitted.Waste.Where(w => w.Way == WasteWay.DrainedWhereAllowed), w => Assert.Equal("water authority note 12", w.Destination.ToString()));
    }

    [Fact]
    public void Draining_hazardous_waste_is_questioned_in_the_bench_file() =>
        Assert.Contains(Station.Read("waste: {drains: {formaldehyde: some note}}").Findings, f => f.Id == "hazardous-waste-to-the-drain" && f.Where.Line > 0);
}
