using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Fluids.Buffers;
using Protocolist.Fluids.Mixing;
using UnitsNet;

namespace Protocolist.Tests.Fluids;

/// <summary>Recipes and refusals as a person reads them at the bench.</summary>
public class RecipeTextTests
{
    [Fact]
    public void Recipes_are_what_was_read_and_kept()
    {
        var text = new StringBuilder();
        foreach (var request in (MixRequest[])
        [
            Request("ethanol 70 %vol", 1, Stock("ethanol 96 %vol")),
            Request("ethanol 70 %vol", 1, Stock("ethanol 96 %vol"), Stock("water")) with { At = Temperature.FromDegreesCelsius(28) },
            Request("ethanol 70 %vol", 2, Stock("ethanol 96 %vol", 0.5), Stock("ethanol 90 %vol", 0.7), Stock("ethanol 95 %vol", 0.9)),
            Request("ethanol 70 %vol", 1, Stock("ethanol 95 %vol"), Stock("ethanol 50 %vol"), Stock("distilled water", 0)),
            Request("ethanol 70 %vol", 1, Stock("ethanol 70 %vol")),
            Request("ethanol 70 %vol", 1, Stock("ethanol 40 %vol", 0.2) with { UseUp = true, Label = "weak jar ethanol" }, Stock("ethanol 96 %vol")),
            Request("isopropanol 50 %vol", 5, Stock("isopropanol 99.8 %vol")),
            Request("formalin 10 %", 1, Stock("formaldehyde stock 37 %mass")),
            Request("neutral buffered formalin 10 %", 1, Stock("formaldehyde stock 37 %mass")),
            Request("neutral buffered formalin 10 %", 1, Stock("formaldehyde stock 37 %mass"), Stock("distilled water")) with { Salts = [Salts.SodiumDihydrogenPhosphateDihydrate, Salts.DisodiumPhosphateDodecahydrate] },
            Request("phosphate-NaOH buffered formalin 10 %", 1, Stock("formaldehyde stock 40 % w/v")),
            Request("borax-buffered formalin 10 %", 10, Stock("formaldehyde stock 37 %mass"), Stock("tap water")),
            Request("hexamine-buffered formalin 5 %", 1, Stock("formaldehyde stock 37 %mass")),
            Request("marble-chip formalin 5 %", 1, Stock("formaldehyde stock 37 %mass")),
            Request("sea-water formalin 10 %, salinity 30", 1, Stock("formaldehyde stock 37 %mass")),
            Request("neutral buffered formalin 10 %", 1, Stock("neutral buffered formaldehyde 3 % w/v", 0.9) with { UseUp = true, Label = "spent fixative" }, Stock("formaldehyde stock 37 %mass")),
            Request("neutral buffered formalin 10 %", 1, Stock("neutral buffered formalin 20 %"), Stock("water")),
            Request("neutral buffered formalin 10 %", 0.02, Stock("neutral buffered formalin 5 %"), Stock("formaldehyde stock 37 %mass"), Stock("water", 0)),
            Request("marble-chip formalin 10 %", 1, Stock("marble-chip formalin 20 %"), Stock("marble-chip formalin 5 %"), Stock("water", 0)),
            Request("formaldehyde stock 20 %mass", 1, Stock("formaldehyde stock 37 %mass")),
            Request("distilled water", 3),
            Request("sea water, salinity 30", 0.5) with { At = Temperature.FromDegreesCelsius(5) },
            Request("ethanol 70 %vol", 1, Stock("ethanol 96 %vol") with { Condition = StockCondition.Expired }, Stock("tap water"), Stock("ethanol 80 %vol") with { Condition = StockCondition.Cloudy }),
            Request("formalin 10 %", 1, Stock("formaldehyde stock 37 %mass") with { Condition = StockCondition.Expired }, Stock("sea water")),
        ])
        {
            Head(text, request);
            var solved = RecipeSolver.Solve(request);
            Assert.True(solved.Value is not null, $"{request.Target}: {string.Join(", ", solved.Findings)}");
            var recipe = solved.Value!;
            text.Append(CultureInfo.InvariantCulture, $"  {recipe.Result}, {recipe.Mass.Grams:0.0} g, contraction {recipe.Contraction.Milliliters:0.0} mL\n");
            foreach (var part in recipe.Parts) text.Append(CultureInfo.InvariantCulture, $"  {(part.IsDiluent ? "water" : part.Salt is null ? "stock" : "salt")}: {part.Amount} {part.Name}\n");
            text.Append(CultureInfo.InvariantCulture, $"  {recipe.MakeUp}\n{(recipe.AddWater.IsEmpty ? "" : $"  or: {recipe.AddWater}\n")}");
            Tell(text, solved.Findings);
        }

        KeptText.Holds("Fluids/kept/recipes.txt", text.ToString());
    }

    [Fact]
    public void What_cannot_be_mixed_is_told_as_read_and_kept()
    {
        var text = new StringBuilder();
        foreach (var request in (MixRequest[])
        [
            Request("ethanol 70 %vol", 0, Stock("ethanol 96 %vol")),
            Request("ethanol 70 %vol", 1, Stock("ethanol 96 %vol")) with { At = Temperature.FromDegreesCelsius(-0.1) },
            Request("formalin 10 %", 1, Stock("formaldehyde stock 37 %mass")) with { At = Temperature.FromDegreesCelsius(40.1) },
            Request("ethanol 70 %vol", 1),
            Request("isopropanol 70 %vol", 1, Stock("ethanol 96 %vol")),
            Request("ethanol 70 %vol", 1, Stock("isopropanol 99.8 %vol"), Stock("sea water"), Stock("formalin 10 %")),
            Request("formalin 10 %", 1, Stock("ethanol 96 %vol"), Stock("borax-buffered formalin 20 %")),
            Request("formaldehyde stock 37 %mass", 1, Stock("borax-buffered formalin 20 %"), Stock("formalin 20 %")),
            Request("formaldehyde stock 20 %mass", 1, Stock("borax-buffered formalin 20 %")),
            Request("ethanol 96 %vol", 1, Stock("ethanol 70 %vol"), Stock("ethanol 90 %vol")),
            Request("ethanol 70 %vol", 1, Stock("ethanol 96 %vol", 0.5)),
            Request("ethanol 70 %vol", 1, Stock("ethanol 96 %vol", 0.5), Stock("ethanol 60 %vol", 0.1)),
            Request("ethanol 70 %vol", 1, Stock("ethanol 96 %vol", 0.5), Stock("distilled water", 0.2)),
            Request("ethanol 70 %vol", 1, Stock("ethanol 96 %vol", 0.3), Stock("ethanol 90 %vol", 0.2), Stock("distilled water", 0.1), Stock("water", 0.05)),
            Request("ethanol 90 %vol", 1, Stock("ethanol 96 %vol", 0.5), Stock("ethanol 60 %vol"), Stock("distilled water", 0)),
            Request("ethanol 70 %vol", 1, Stock("ethanol 96 %vol"), Stock("distilled water", 0.2)),
            Request("ethanol 70 %vol", 1, Stock("ethanol 40 %vol", 0.9) with { UseUp = true }, Stock("ethanol 96 %vol")),
            Request("ethanol 70 %vol", 1, Stock("ethanol 40 %vol", 0.9) with { UseUp = true }, Stock("ethanol 50 %vol", 0.3) with { UseUp = true }, Stock("ethanol 96 %vol")),
            Request("formalin 10 %", 1, Stock("formaldehyde stock 37 %mass") with { Condition = StockCondition.Cloudy }),
            Request("ethanol 70 %vol", 1, Stock("ethanol 96 %vol") with { Condition = StockCondition.Cloudy, Label = "old ethanol" }),
            Request("neutral buffered formalin 10 %", 1, Stock("formaldehyde stock 37 %mass")) with { Salts = [Salts.DisodiumPhosphateHeptahydrate] },
            Request("borax-buffered formalin 10 %", 1, Stock("formaldehyde stock 37 %mass")) with { Salts = [Salts.Menthol] },
            Request("hexamine-buffered formalin 10 %", 1, Stock("formaldehyde stock 37 %mass")) with { Salts = [Salts.Borax] },
        ])
        {
            Head(text, request);
            var solved = RecipeSolver.Solve(request);
            Assert.Null(solved.Value);
            Tell(text, solved.Findings);
        }

        KeptText.Holds("Fluids/kept/not-mixed.txt", text.ToString());
    }

    // 90 %vol holds 710.3 g of ethanol, half a litre of 96 %vol 378.8 g, the rest filled with 60 %vol 221.6 g: 109.9 g are missing, and each gram of the
    // strong one brings 0.4175 g more than the weak one that it takes the place of.
    [Fact]
    public void What_is_missing_takes_the_place_of_the_weakest_that_there_is() =>
        Assert.Contains("needs 326 mL more of ethanol 96 %vol than there is", Assert.Single(RecipeSolver.Solve(Request("ethanol 90 %vol", 1, Stock("ethanol 96 %vol", 0.5), Stock("ethanol 60 %vol"), Stock("distilled water", 0))).Findings).Message.ToString(), StringComparison.Ordinal);

    // Fifteen bottles are tried and water beside them; of sixteen the smallest is left out, and that is said.
    [Fact]
    public void Of_too_many_bottles_the_largest_are_tried()
    {
        StockFluid[] Bottles(int count) => [.. Enumerable.Range(0, count).Select(i => Stock($"ethanol {80 + i} %vol", 0.1 + 0.01 * i))];
        Assert.Empty(RecipeSolver.Solve(Request("ethanol 70 %vol", 0.1, Bottles(15))).Findings);
        var shelf = FitStocks.For(Request("ethanol 70 %vol", 0.1, Bottles(17)));
        Assert.Equal(16, shelf.Stocks.Length);
        Assert.Equal(["ethanol 82 %vol", "ethanol 83 %vol"], shelf.Stocks.Take(2).Select(s => s.Name));
        Assert.Equal("distilled water", shelf.Stocks[^1].Name);
        Assert.Equal("note stocks-left-out: 17 stocks fit; the 15 largest were tried; pour part bottles of one strength together", Assert.Single(shelf.Unfit).ToString());
        Assert.Equal(16, FitStocks.For(Request("ethanol 70 %vol", 0.1, Bottles(15))).Stocks.Length);
        Assert.Empty(FitStocks.For(Request("ethanol 70 %vol", 0.1, Bottles(15))).Unfit);
        Assert.Single(FitStocks.For(Request("ethanol 70 %vol", 0.1, Bottles(16))).Unfit);
        // A bottle without a stated amount is the largest.
        Assert.Contains("ethanol 70.5 %vol", FitStocks.For(Request("ethanol 70 %vol", 0.1, [Stock("ethanol 70.5 %vol"), .. Bottles(17)])).Stocks.Select(s => s.Name));
    }

    [Fact]
    public void A_shelf_knows_mass_and_price_of_a_kilogram()
    {
        var shelf = FitStocks.For(Request("ethanol 70 %vol", 1, Stock("ethanol 96 %vol", 2) with { CostPerLitre = 8 }, Stock("ethanol 50 %vol", 0.5) with { UseUp = true }, Stock("ethanol 60 %vol", -1)));
        // 807.42 and 930.14 kg/m³ at 20 °C.
        Assert.Equal(2 * 0.80742, shelf.Blendables[0].Most, 0.0001);
        Assert.Equal(8 / 0.80742, shelf.Blendables[0].CostPerKilogram, 0.0005);
        Assert.Equal(0.93838, shelf.Blendables[0].Share, 0.00001);
        Assert.Equal(0.5 * 0.93014, shelf.UsedUp[1], 0.0001);
        Assert.Equal((0, 0), (shelf.UsedUp[0], shelf.UsedUp[2]));
        Assert.Equal(0, shelf.Blendables[2].Most);
        Assert.Equal((shelf.Blendables[0].Most, 0.0, double.PositiveInfinity), (shelf.Free[0].Most, shelf.Free[1].Most, shelf.Free[3].Most));
    }

    [Fact]
    public void What_is_at_hand_is_the_target_where_there_is_enough_of_it()
    {
        Assert.Single(RecipeSolver.Solve(Request("ethanol 70 %vol", 1, Stock("ethanol 96 %vol"), Stock("ethanol 70 %vol", 1))).Value!.Parts);
        Assert.Equal(2, RecipeSolver.Solve(Request("ethanol 70 %vol", 1, Stock("ethanol 96 %vol"), Stock("ethanol 70 %vol", 0.999))).Value!.Parts.Length);
        // What must be used up goes in all the same.
        var used = RecipeSolver.Solve(Request("ethanol 70 %vol", 1, Stock("ethanol 40 %vol", 0.1) with { UseUp = true }, Stock("ethanol 96 %vol"), Stock("ethanol 70 %vol"))).Value!;
        Assert.Equal(100, used.Parts.Single(p => p.Name == "ethanol 40 %vol").Volume!.Value.Milliliters, 1e-6);
    }

    [Fact]
    public void The_usual_stock_and_diluent_of_each_target_are_named()
    {
        Assert.Equal(["ethanol 96 %vol", "isopropanol 99.8 %vol", "formaldehyde stock 37 %mass"], ((Fluid[])[Fluid.Ethanol(70), Fluid.Isopropanol(50), Fluid.Formalin(10)]).Select(f => f.Substance.UsualStock!.Name));
        Assert.Equal(["distilled water", "distilled water", "water", "sea water, salinity 30", "water"], ((Fluid[])[Fluid.Ethanol(70), Fluid.Isopropanol(50), Fluid.Formalin(10, Buffering.Borax), Fluid.Formalin(10, Buffering.SeaWater, 30), Fluid.FormaldehydeStock(20)]).Select(f => f.Substance.DiluentOf(f).Name));
    }

    // Batches are equal and as few as the vessel allows; a hair of rounding makes none more.
    [Theory]
    [InlineData(95, 95, 1)]
    [InlineData(95, 94.9, 2)]
    [InlineData(95, 47.5, 2)]
    [InlineData(95, 31.6, 4)]
    [InlineData(1, 100, 1)]
    public void A_mixture_is_parted_into_batches_that_fit(double litres, double vessel, int count)
    {
        var recipe = RecipeSolver.Solve(Request("neutral buffered formalin 10 %", litres, Stock("formaldehyde stock 37 %mass"))).Value!;
        var (batches, each) = recipe.InBatches(Volume.FromLiters(vessel));
        Assert.Equal(count, batches);
        Assert.Equal(litres / count, each.Volume.Liters, 1e-9);
        Assert.Equal(recipe.Contraction.Liters / count, each.Contraction.Liters, 1e-12);
        for (var i = 0; i < recipe.Parts.Length; i++)
        {
            Assert.Equal(recipe.Parts[i].Mass.Grams / count, each.Parts[i].Mass.Grams, 1e-6);
            Assert.Equal(recipe.Parts[i].Volume?.Liters / count ?? 0, each.Parts[i].Volume?.Liters ?? 0, 1e-9);
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    public void A_vessel_that_holds_nothing_is_the_callers_bug(double litres)
    {
        var recipe = RecipeSolver.Solve(Request("distilled water", 1)).Value!;
        Assert.StartsWith("A vessel holds more than nothing.", Assert.Throws<ArgumentOutOfRangeException>(() => recipe.InBatches(Volume.FromLiters(litres))).Message.ToString(), StringComparison.Ordinal);
    }

    // Salts go by the litre at 20 °C: a litre at 35 °C is less of it by water's and the solution's expansion.
    [Fact]
    public void Salts_of_a_warm_litre_are_those_of_its_volume_at_20()
    {
        var target = Fluid.Formalin(10, Buffering.Phosphate);
        var recipe = RecipeSolver.Solve(Request("neutral buffered formalin 10 %", 1, Stock("formaldehyde stock 37 %mass")) with { At = Temperature.FromDegreesCelsius(35) }).Value!;
        Assert.Equal(4.0 * target.DensityAt(35) / target.DensityAt(20), recipe.Parts.Single(p => p.Salt == Salts.SodiumDihydrogenPhosphateMonohydrate).Mass.Grams, 1e-9);
    }

    [Fact]
    public void The_hydrate_called_for_is_taken_before_another_and_any_where_none_is_listed()
    {
        Salt called = Salts.DisodiumPhosphateAnhydrous, other = Salts.DisodiumPhosphateHeptahydrate;
        Assert.Equal(called, SaltParts.OnShelf(called, []));
        Assert.Equal(called, SaltParts.OnShelf(called, default));
        Assert.Equal(called, SaltParts.OnShelf(called, [other, called]));
        Assert.Equal(other, SaltParts.OnShelf(called, [Salts.Borax, other]));
        Assert.Null(SaltParts.OnShelf(called, [Salts.Borax]));
    }

    // 12.274 g of the heptahydrate hold 6.5 g of salt and 5.774 g of water: only what is dissolved counts, chips do not.
    [Fact]
    public void Crystal_water_is_told_apart_from_salt()
    {
        var salts = new SaltParts(Request("neutral buffered formalin 10 %", 2) with { Salts = [Salts.SodiumDihydrogenPhosphateMonohydrate, Salts.DisodiumPhosphateHeptahydrate] });
        Assert.Equal((4.0 + 12.274) / 1000, salts.Dissolved, 1e-6);
        Assert.Equal(9.97780 / 1000, salts.Anhydrous, 1e-6);
        Assert.Equal(0, new SaltParts(Request("marble-chip formalin 10 %", 1)).Dissolved);
        Assert.Empty(salts.For(0.9e-6 * 2, 2));
        Assert.Equal(2, salts.For(1e-6 * 2, 2).Count());
    }

    private static void Head(StringBuilder text, MixRequest r)
    {
        static string Stocked(StockFluid s) => string.Create(CultureInfo.InvariantCulture, $"{s.Name}{(s.OnHand is { } v ? $" ({v.Liters} L{(s.UseUp ? ", all of it" : "")})" : "")}{(s.Condition is StockCondition.Sound ? "" : $" [{s.Condition}]")}");
        text.Append(CultureInfo.InvariantCulture, $"{r.Volume.Liters} L of {r.Target} at {r.At.DegreesCelsius} degC from {(r.Stocks.IsEmpty ? "nothing" : string.Join(", ", r.Stocks.Select(Stocked)))}{(r.Salts.IsEmpty ? "" : $" and {string.Join(", ", r.Salts.Select(s => s.Formula))}")}\n");
    }

    private static void Tell(StringBuilder text, ImmutableArray<Finding> findings)
    {
        foreach (var f in findings) text.Append(CultureInfo.InvariantCulture, $"  {f.Severity.ToString().ToLowerInvariant()} {f.Id}\n    {f.Message.ToString()}\n    remedy: {f.Remedy.ToString()}\n");
        text.Append('\n');
    }

    private static MixRequest Request(string target, double litres, params StockFluid[] stocks) =>
        new(Fluid.Read(target).Value!, Volume.FromLiters(litres), [.. stocks]) { StocksAreNamed = true };

    private static StockFluid Stock(string name, double? litres = null) =>
        new(Fluid.Read(name).Value!) { OnHand = litres is { } l ? Volume.FromLiters(l) : null };
}
