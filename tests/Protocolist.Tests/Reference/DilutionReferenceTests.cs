using Protocolist.Fluids;
using Protocolist.Fluids.Densities;
using Protocolist.Fluids.Mixing;
using UnitsNet;

namespace Protocolist.Tests.Reference;

/// <summary>Water to add when alcohol is diluted, contraction included.</summary>
public class DilutionReferenceTests
{
    // From %vol, to %vol; mL water to 100 mL at 20 °C, computed apart from this code out of OIML R 22.
    public static TheoryData<double, double, double> Computed() => new()
    {
        { 99.9, 90, 13.087 },
        { 99.9, 80, 28.376 },
        { 99.9, 75, 37.347 },
        { 99.9, 70, 47.492 },
        { 99.9, 60, 72.522 },
        { 99.9, 50, 107.059 },
        { 99.9, 40, 158.083 },
        { 96, 90, 7.718 },
        { 96, 80, 22.411 },
        { 96, 75, 31.031 },
        { 96, 70, 40.780 },
        { 96, 60, 64.833 },
        { 96, 50, 98.022 },
        { 96, 40, 147.053 },
        { 95, 90, 6.398 },
        { 95, 80, 20.938 },
        { 95, 75, 29.469 },
        { 95, 70, 39.116 },
        { 95, 60, 62.918 },
        { 95, 50, 95.761 },
        { 95, 40, 144.282 },
        { 90, 80, 13.774 },
        { 90, 75, 21.856 },
        { 90, 70, 30.996 },
        { 90, 60, 53.545 },
        { 90, 50, 84.660 },
        { 90, 40, 130.627 },
        { 80, 75, 7.184 },
        { 80, 70, 15.308 },
        { 80, 60, 35.352 },
        { 80, 50, 63.009 },
        { 80, 40, 103.869 },
    };

    [Theory]
    [MemberData(nameof(Computed))]
    public void Water_to_add_is_the_computed_tables(double from, double to, double water)
    {
        // 100 mL of stock, made up: the recipe for just the volume that they make.
        var recipe = RecipeSolver.Solve(new(Fluid.Ethanol(to), Volume.FromMilliliters(100 * from / to), [new(Fluid.Ethanol(from))])).Value!;
        Assert.Equal(100, recipe.Parts[0].Volume!.Value.Milliliters, 0.001);
        Assert.Equal(water, recipe.Parts[1].Volume!.Value.Milliliters, 0.02);
    }

    // Gay-Lussac's table for diluting spirit (15 °C), as printed in present-day copies. Its misprints are left out: 97 to 60, 60 to 50,
    // 80, 90 and 70 to 50, 70 to 30, 95 and 96 to 10, 99 to 15.
    public static TheoryData<double, double, double> GayLussac() => new()
    {
        { 96, 90, 7.73 },
        { 96, 80, 22.45 },
        { 96, 75, 31.08 },
        { 96, 70, 40.85 },
        { 96, 60, 64.92 },
        { 96, 50, 98.15 },
        { 96, 40, 147.22 },
        { 95, 90, 6.41 },
        { 95, 80, 20.95 },
        { 95, 75, 29.52 },
        { 95, 70, 39.18 },
        { 95, 60, 63 },
        { 95, 50, 95.89 },
        { 95, 40, 144.46 },
        { 90, 80, 13.79 },
        { 90, 75, 21.89 },
        { 90, 70, 31.05 },
        { 90, 60, 53.65 },
        { 90, 40, 130.8 },
        { 80, 75, 7.2 },
        { 80, 70, 15.35 },
        { 80, 60, 35.44 },
        { 80, 40, 104.01 },
    };

    [Theory]
    [MemberData(nameof(GayLussac))]
    public void Water_to_add_is_gay_lussacs_on_his_base(double from, double to, double water)
    {
        double strong = OimlReferenceTests.MassFractionOnBase(from / 100, 15), weak = OimlReferenceTests.MassFractionOnBase(to / 100, 15);
        var mass = 100 * EthanolWater.Density(strong, 15);
        Assert.Equal(water, mass * (strong / weak - 1) / EthanolWater.Density(0, 15), 0.1);
    }

    // Russian Pharmacopoeia, dilution table at 20 °C.
    [Theory]
    [InlineData(96, 90, 7.72)]
    [InlineData(96, 80, 22.42)]
    [InlineData(96, 70, 40.76)]
    public void Water_to_add_is_the_russian_pharmacopoeias(double from, double to, double water)
    {
        var recipe = RecipeSolver.Solve(new(Fluid.Ethanol(to), Volume.FromMilliliters(100 * from / to), [new(Fluid.Ethanol(from))])).Value!;
        Assert.Equal(water, recipe.Parts[1].Volume!.Value.Milliliters, 0.03);
    }

    // British Pharmacopoeia, Dilute Ethanols: mL of Ethanol (96 per cent), actual mean 96.3 %vol, to make 1000 mL.
    [Theory]
    [InlineData(20, 207)]
    [InlineData(25, 259)]
    [InlineData(45, 468)]
    [InlineData(50, 519)]
    [InlineData(60, 623)]
    [InlineData(70, 727)]
    [InlineData(80, 831)]
    [InlineData(90, 934)]
    public void Stock_to_make_up_is_the_british_pharmacopoeias(double to, double stock)
    {
        var recipe = RecipeSolver.Solve(new(Fluid.Ethanol(to), Volume.FromLiters(1), [new(Fluid.Ethanol(96.3))])).Value!;
        Assert.Equal(stock, recipe.Parts[0].Volume!.Value.Milliliters, 1.0);
    }

    // Worked examples in print, contraction included: mL and %vol of a first liquid, mL water, mL and %vol that result.
    [Theory]
    [InlineData(50, 95, 50, 97, 49, 0.1)] // a teaching page
    [InlineData(1000, 80, 1000, 1960, 40.8, 3)] // a distilling handbook
    [InlineData(50, 96, 50, 96.9, 49.5, 0.1)] // a worksheet on contraction
    [InlineData(100000, 100, 100000, 192750, 51.8, 200)] // a wine lexicon, at 15 °C
    public void Mixtures_contract_as_in_print(double first, double percent, double water, double volume, double strength, double tolerance)
    {
        var alcohol = Fluid.Ethanol(percent);
        double mass = first * alcohol.DensityAt(20), all = mass + water * EthanolWater.Density(0, 20);
        var p = mass * alcohol.EthanolMassPercent!.Value / 100 / all;
        Assert.Equal(volume, all / EthanolWater.Density(p, 20), tolerance);
        Assert.Equal(strength, 100 * EthanolWater.VolumeFraction(p), 0.1);
    }

    // A pharmacy page on weighing: 40 %vol from 96.2 %vol takes 35.36 g to 100 g, 33.549 g to 100 mL, 41.58 mL to 100 mL.
    [Fact]
    public void Weighing_agrees_with_the_printed_example()
    {
        var recipe = RecipeSolver.Solve(new(Fluid.Ethanol(40), Volume.FromMilliliters(100), [new(Fluid.Ethanol(96.2))])).Value!;
        Assert.Equal(33.549, recipe.Parts[0].Mass.Grams, 0.02);
        Assert.Equal(41.58, recipe.Parts[0].Volume!.Value.Milliliters, 0.01);
        Assert.Equal(35.36, 100 * recipe.Parts[0].Mass / recipe.Mass, 0.03);
    }

    // C1V1 in print is right for the stock and wrong for the water: 95 to 70 %, 100 mL, "73.68 mL and 26.32 mL of water".
    [Fact]
    public void Water_is_more_than_the_difference_of_volumes()
    {
        var recipe = RecipeSolver.Solve(new(Fluid.Ethanol(70), Volume.FromMilliliters(100), [new(Fluid.Ethanol(95))])).Value!;
        Assert.Equal(73.68, recipe.Parts[0].Volume!.Value.Milliliters, 0.01);
        Assert.Equal(28.82, recipe.Parts[1].Volume!.Value.Milliliters, 0.01);
        Assert.Equal(2.50, recipe.Contraction.Milliliters, 0.01);
    }

    // WHO handrub: 8333 mL of 96 % make 10 L of 80 %vol; 7515 mL of isopropanol 99.8 % make 10 L of 75 %vol.
    [Fact]
    public void Handrub_recipes_of_the_WHO_come_out()
    {
        var ethanol = RecipeSolver.Solve(new(Fluid.Ethanol(80), Volume.FromLiters(10), [new(Fluid.Ethanol(96))])).Value!;
        Assert.Equal(8333, ethanol.Parts[0].Volume!.Value.Milliliters, 1.0);
        var isopropanol = RecipeSolver.Solve(new(Fluid.Isopropanol(75), Volume.FromLiters(10), [new(Fluid.Isopropanol(99.8))])).Value!;
        Assert.Equal(7515, isopropanol.Parts[0].Volume!.Value.Milliliters, 1.0);
    }

    // Interpolated from Lebo 1921 apart from this code (spline of excess volume): mL water to 100 mL, good to 0.5.
    [Theory]
    [InlineData(99.8, 70, 46.3)]
    [InlineData(99.8, 60, 71.4)]
    [InlineData(99.8, 50, 106.2)]
    [InlineData(99.8, 45, 129.2)]
    [InlineData(99.8, 40, 157.6)]
    [InlineData(99, 70, 45.1)]
    [InlineData(99, 50, 104.5)]
    [InlineData(99, 40, 155.5)]
    [InlineData(91, 70, 32.3)]
    [InlineData(91, 50, 87.0)]
    [InlineData(91, 40, 133.8)]
    [InlineData(70, 50, 42.0)]
    [InlineData(70, 40, 78.0)]
    public void Isopropanol_takes_the_interpolated_water(double from, double to, double water)
    {
        var recipe = RecipeSolver.Solve(new(Fluid.Isopropanol(to), Volume.FromMilliliters(100 * from / to), [new(Fluid.Isopropanol(from))])).Value!;
        Assert.Equal(water, recipe.Parts[1].Volume!.Value.Milliliters, 0.5);
    }
}
