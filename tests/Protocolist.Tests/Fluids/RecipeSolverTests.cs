using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Fluids.Buffers;
using Protocolist.Fluids.Mixing;
using UnitsNet;

namespace Protocolist.Tests.Fluids;

public class RecipeSolverTests
{
    [Fact]
    public void A_stock_that_is_the_target_is_taken_as_it_is()
    {
        var recipe = Solve("neutral buffered formalin 10 %", 2, Stock("neutral buffered formalin 10 %")).Value!;
        var part = Assert.Single(recipe.Parts);
        Assert.Equal(2000, part.Volume!.Value.Milliliters, 0.01);
        Assert.Equal(0, recipe.Contraction.Milliliters, 0.01);
    }

    [Fact]
    public void Ten_percent_formalin_is_one_part_and_nine()
    {
        var recipe = Solve("formalin 10 %", 1, Stock("formaldehyde stock 37 %mass")).Value!;
        Assert.Equal(100, recipe.Parts[0].Volume!.Value.Milliliters, 0.01);
        Assert.Equal(900, recipe.Parts[1].Volume!.Value.Milliliters, 2.0);
        Assert.Equal("water", recipe.Parts[1].Name);
    }

    [Fact]
    public void Neutral_buffered_formalin_comes_with_its_salts()
    {
        var recipe = Solve("neutral buffered formalin 10 %", 5, Stock("formaldehyde stock 37 %mass")).Value!;
        Assert.Equal(500, recipe.Parts[0].Volume!.Value.Milliliters, 0.1);
        Assert.Equal(20.0, recipe.Parts[2].Mass.Grams, 0.001);
        Assert.Equal(32.5, recipe.Parts[3].Mass.Grams, 0.001);
        Assert.Contains("dissolve 20 g of sodium dihydrogen phosphate monohydrate and 32.5 g of disodium phosphate anhydrous in most of the water", recipe.MakeUp.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Salts_are_weighed_for_the_hydrate_on_the_shelf()
    {
        var request = Request("neutral buffered formalin 10 %", 1, Stock("formaldehyde stock 37 %mass")) with { Salts = [Salts.SodiumDihydrogenPhosphateAnhydrous, Salts.DisodiumPhosphateHeptahydrate] };
        var recipe = RecipeSolver.Solve(request).Value!;
        Assert.Equal(3.478, recipe.Parts[2].Mass.Grams, 0.01);
        Assert.Equal(12.274, recipe.Parts[3].Mass.Grams, 0.01);
    }

    [Fact]
    public void A_salt_that_is_not_there_is_asked_for()
    {
        var request = Request("neutral buffered formalin 10 %", 1, Stock("formaldehyde stock 37 %mass")) with { Salts = [Salts.DisodiumPhosphateHeptahydrate] };
        Assert.Equal("salt-not-on-shelf", Assert.Single(RecipeSolver.Solve(request).Findings).Id);
    }

    [Fact]
    public void Spent_fixative_is_restored_with_stock_and_only_the_salts_it_lacks()
    {
        var recipe = Solve("neutral buffered formalin 10 %", 1, Stock("neutral buffered formaldehyde 3 % w/v", 0.9) with { UseUp = true }, Stock("formaldehyde stock 37 %mass")).Value!;
        Assert.Equal(["neutral buffered formaldehyde 3 % w/v", "formaldehyde stock 37 %mass", "water"], recipe.Parts.Where(p => p.Volume is not null).Select(p => p.Name));
        Assert.Equal(900, recipe.Parts[0].Volume!.Value.Milliliters, 0.001);
        var salts = recipe.Parts.Where(p => p.Salt is not null).ToArray();
        Assert.Equal(2, salts.Length);
        Assert.All(salts, s => Assert.InRange(s.Mass.Grams, 0.05, 1.0));
        Assert.Equal(40.07, Grams(recipe, c => c[Solute.Formaldehyde]), 0.1);
    }

    [Fact]
    public void More_to_use_up_than_the_target_can_take_is_a_finding() =>
        Assert.Equal("use-up-out-of-reach", Assert.Single(Solve("ethanol 70 %vol", 1, Stock("ethanol 40 %vol", 0.9) with { UseUp = true }, Stock("ethanol 96 %vol")).Findings).Id);

    [Fact]
    public void Part_bottles_are_emptied_when_one_does_not_suffice()
    {
        var recipe = Solve("ethanol 70 %vol", 2, Stock("ethanol 96 %vol", 0.5), Stock("ethanol 90 %vol", 0.4), Stock("ethanol 95 %vol", 5)).Value!;
        // One bottle of 5 L alone does it: the fewest liquids.
        Assert.Equal(["ethanol 95 %vol", "distilled water"], recipe.Parts.Select(p => p.Name));
        var scarce = Solve("ethanol 70 %vol", 2, Stock("ethanol 96 %vol", 0.5), Stock("ethanol 90 %vol", 0.7), Stock("ethanol 95 %vol", 0.9)).Value!;
        Assert.Equal(3, scarce.Parts.Length);
        Assert.Equal(1400, Grams(scarce, c => c[Solute.Ethanol]) / 0.789239, 0.01);
    }

    [Fact]
    public void Among_equally_few_liquids_the_cheapest_is_taken()
    {
        var dear = Stock("ethanol 96 %vol") with { CostPerLitre = 20 };
        var cheap = Stock("ethanol 90 %vol") with { CostPerLitre = 8 };
        Assert.Equal("ethanol 90 %vol", Solve("ethanol 70 %vol", 1, dear, cheap).Value!.Parts[0].Name);
    }

    [Fact]
    public void Two_strengths_meet_without_water_by_alligation()
    {
        // Pharmacy alligation, 95 % and 50 % to 70 %, gives 4 to 5 by volume; contraction takes some of the strong one off.
        var none = new StockFluid(Fluid.DistilledWater) { OnHand = Volume.Zero };
        var recipe = Solve("ethanol 70 %vol", 1, Stock("ethanol 95 %vol"), Stock("ethanol 50 %vol"), none).Value!;
        double strong = recipe.Parts[0].Volume!.Value.Milliliters, weak = recipe.Parts[1].Volume!.Value.Milliliters;
        Assert.InRange(strong / weak, 0.74, 0.8);
        Assert.Equal(700, 0.95 * strong + 0.50 * weak, 0.01);
        Assert.Equal(strong + weak - 1000, recipe.Contraction.Milliliters, 1e-6);
    }

    [Theory]
    [InlineData("ethanol 96 %vol", "ethanol 70 %vol", "target-too-strong")]
    [InlineData("ethanol 70 %vol", "isopropanol 99 %vol", "mixed-alcohols")]
    [InlineData("ethanol 70 %vol", "formaldehyde stock 37 %mass", "mixed-fixative-and-alcohol")]
    [InlineData("neutral buffered formalin 10 %", "borax-buffered formalin 20 %", "mixed-buffering")]
    [InlineData("ethanol 70 %vol", "sea water", "water-unfit-for-alcohol")]
    [InlineData("ethanol 70 %vol", "tap water", "water-unfit-for-alcohol")]
    [InlineData("formalin 10 %", "formalin 5 %", "target-too-strong")]
    [InlineData("formalin 10 %", "water", "stock-missing")]
    public void What_cannot_be_mixed_says_why_and_what_to_do(string target, string from, string id)
    {
        var result = Solve(target, 1, Stock(from));
        Assert.Null(result.Value);
        Assert.Contains(result.Findings, f => f.Id == id && f.Severity == Severity.Error && f.Remedy.ToString().Length > 0);
    }

    [Fact]
    public void A_short_stock_says_how_much_is_missing()
    {
        var finding = Assert.Single(Solve("ethanol 70 %vol", 1, Stock("ethanol 96 %vol", 0.5)).Findings);
        Assert.Equal("stock-short", finding.Id);
        // 729.2 mL are needed in all.
        Assert.Contains("229 mL more of ethanol 96 %vol", finding.Message.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Unfit_water_beside_a_fit_stock_is_a_warning_and_distilled_water_is_taken()
    {
        var result = Solve("ethanol 70 %vol", 1, Stock("ethanol 96 %vol"), Stock("tap water"));
        Assert.Equal("distilled water", result.Value!.Parts[1].Name);
        Assert.Equal(Severity.Warning, Assert.Single(result.Findings).Severity);
    }

    [Fact]
    public void A_whole_shelf_is_passed_over_in_silence()
    {
        StockFluid[] shelf = [Stock("isopropanol 99 %vol"), Stock("tap water"), Stock("ethanol 96 %vol"), Stock("formaldehyde stock 37 %mass"), Stock("borax-buffered formalin 10 %")];
        Assert.Empty(RecipeSolver.Solve(Request("ethanol 70 %vol", 1, shelf) with { StocksAreNamed = false }).Findings);
        Assert.Empty(RecipeSolver.Solve(Request("neutral buffered formalin 10 %", 1, shelf) with { StocksAreNamed = false }).Findings);
    }

    [Fact]
    public void Cloudy_and_expired_stocks_are_named()
    {
        var stock = Stock("formaldehyde stock 37 %mass");
        Assert.Contains(RecipeSolver.Solve(Request("formalin 10 %", 1, stock with { Condition = StockCondition.Cloudy })).Findings, f => f.Id == "stock-cloudy" && f.Severity == Severity.Error);
        var expired = RecipeSolver.Solve(Request("formalin 10 %", 1, stock with { Condition = StockCondition.Expired }));
        Assert.NotNull(expired.Value);
        Assert.Equal("stock-expired", Assert.Single(expired.Findings).Id);
    }

    [Theory]
    [InlineData(0, 20, "volume-out-of-range")]
    [InlineData(-1, 20, "volume-out-of-range")]
    [InlineData(1, 60, "temperature-out-of-range")]
    [InlineData(1, -10, "temperature-out-of-range")]
    public void Impossible_requests_are_findings(double litres, double celsius, string id)
    {
        var request = Request("ethanol 70 %vol", litres, Stock("ethanol 96 %vol")) with { At = Temperature.FromDegreesCelsius(celsius) };
        Assert.Equal(id, Assert.Single(RecipeSolver.Solve(request).Findings).Id);
    }

    [Fact]
    public void Sea_water_formalin_is_made_up_with_sea_water()
    {
        var recipe = Solve("sea-water formalin 10 %", 1, Stock("formaldehyde stock 37 %mass"), Stock("distilled water")).Value!;
        Assert.Equal("sea water", recipe.Parts[1].Name);
        Assert.Equal(recipe.Mass.Kilograms, Fluid.Read("sea-water formalin 10 %").Value!.DensityAt(20) / 1000, 1e-6);
    }

    [Fact]
    public void Warm_measuring_keeps_the_strength()
    {
        var request = Request("ethanol 70 %vol", 1, Stock("ethanol 96 %vol")) with { At = Temperature.FromDegreesCelsius(30) };
        var recipe = RecipeSolver.Solve(request).Value!;
        Assert.Equal(Fluid.Ethanol(70).DensityAt(30), 1000 * recipe.Mass.Kilograms, 1e-6);
        Assert.Equal(Fluid.Ethanol(70).EthanolMassPercent!.Value, 100 * Grams(recipe, c => c[Solute.Ethanol]) / recipe.Mass.Grams, 1e-6);
    }

    [Fact]
    public void Both_procedures_are_told()
    {
        var recipe = Solve("ethanol 70 %vol", 1, Stock("ethanol 96 %vol")).Value!;
        Assert.Equal("measure 729 mL of ethanol 96 %vol and make up to 1 L with distilled water at 20 degC", recipe.MakeUp.ToString());
        Assert.Equal("to 729 mL (589 g) of ethanol 96 %vol add 297 mL (297 g) of distilled water", recipe.AddWater.ToString());
    }

    [Fact]
    public void Large_mixtures_come_in_equal_batches()
    {
        var recipe = Solve("ethanol 70 %vol", 95, Stock("ethanol 96 %vol")).Value!;
        var (count, each) = recipe.InBatches(Volume.FromLiters(20));
        Assert.Equal(5, count);
        Assert.Equal(19, each.Volume.Liters, 1e-9);
        Assert.Equal(recipe.Mass.Kilograms, count * each.Mass.Kilograms, 1e-9);
        Assert.Equal(1, recipe.InBatches(Volume.FromLiters(95)).Count);
    }

    [Fact]
    public void Sixteen_part_bottles_are_solved_quickly()
    {
        var bottles = Enumerable.Range(0, 18).Select(i => Stock($"ethanol {80 + i} %vol", 0.1 + 0.01 * i)).ToArray();
        Assert.NotNull(Solve("ethanol 70 %vol", 3, bottles).Value);
    }

    private static Checked<Recipe> Solve(string target, double litres, params StockFluid[] stocks) => RecipeSolver.Solve(Request(target, litres, stocks));

    private static MixRequest Request(string target, double litres, params StockFluid[] stocks) =>
        new(Fluid.Read(target).Value!, Volume.FromLiters(litres), [.. stocks]) { StocksAreNamed = true };

    private static StockFluid Stock(string name, double? litres = null) =>
        new(Fluid.Read(name).Value!) { OnHand = litres is { } l ? Volume.FromLiters(l) : null };

    private static double Grams(Recipe recipe, Func<Composition, double> component) =>
        recipe.Parts.Where(p => p.Fluid is not null).Sum(p => p.Mass.Grams * component(p.Fluid!.Composition));
}
