using Protocolist.Fluids;
using Protocolist.Fluids.Contact;
using Protocolist.Fluids.Densities;
using Protocolist.Fluids.Mixing;
using Protocolist.Fluids.Safety;
using UnitsNet;

namespace Protocolist.Tests.Reference;

/// <summary>Glycerol and water against published tables.</summary>
public class GlycerolReferenceTests
{
    // Bosart and Snoddy's specific gravities 20/20 °C in air (Lange's Handbook of Chemistry, 15th edition), brought to true density.
    [Theory]
    [InlineData(10, 1.0221)]
    [InlineData(20, 1.0469)]
    [InlineData(30, 1.0727)]
    [InlineData(40, 1.0993)]
    [InlineData(50, 1.1263)]
    [InlineData(60, 1.1538)]
    [InlineData(70, 1.1812)]
    [InlineData(80, 1.2085)]
    [InlineData(90, 1.2350)]
    [InlineData(100, 1.2610)]
    public void Density_agrees_with_Bosart_and_Snoddy(double massPercent, double published) =>
        Assert.Equal(1000 * published, GlycerolWater.Density(massPercent / 100, 20), 0.5);

    // CRC Handbook of Chemistry and Physics, 102nd edition, concentrative properties of aqueous solutions, 20 °C.
    [Theory]
    [InlineData(10, 1.0215)]
    [InlineData(20, 1.0459)]
    [InlineData(40, 1.0984)]
    [InlineData(60, 1.1530)]
    [InlineData(80, 1.2085)]
    [InlineData(100, 1.2611)]
    public void Density_agrees_with_the_CRC_Handbook_within_its_band(double massPercent, double published) =>
        Assert.InRange(1000 * published, GlycerolWater.Density(massPercent / 100, 20) - GlycerolWater.SourcesDiffer, GlycerolWater.Density(massPercent / 100, 20) + GlycerolWater.SourcesDiffer);

    // The relation of Volk and Kähler 2018 as it stands, its own water and all, worked out apart.
    [Theory]
    [InlineData(0.6, 15, 1156.2)]
    [InlineData(0.6, 25, 1150.8)]
    [InlineData(0.6, 30, 1148.1)]
    public void Density_follows_the_relation_over_temperature(double massFraction, double celsius, double relation) =>
        Assert.Equal(relation, GlycerolWater.Density(massFraction, celsius), 0.2);

    [Fact]
    public void The_dilute_end_is_water_and_the_strong_end_pure()
    {
        for (var celsius = 0; celsius <= 40; celsius++) Assert.Equal(WaterDensity.Of(celsius), GlycerolWater.Density(0, celsius), 1e-9);
        Assert.Equal(1261.06, GlycerolWater.PureAt20, 0.01);
        Assert.Equal((1, 2.5, 2), (GlycerolWater.DensityError(20), GlycerolWater.DensityError(0), GlycerolWater.DensityError(40)));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0.05)]
    [InlineData(0.5)]
    [InlineData(0.999)]
    [InlineData(1)]
    public void Inverses_come_back(double massFraction)
    {
        foreach (var celsius in (double[])[0, 15, 20, 30, 40])
            Assert.Equal(massFraction, GlycerolWater.MassFraction(GlycerolWater.Density(massFraction, celsius), celsius), massFraction < 1 ? 1e-9 : 1e-4);
        var byVolume = massFraction * GlycerolWater.Density(massFraction, 20) / GlycerolWater.PureAt20;
        Assert.Equal(massFraction, GlycerolWater.MassFractionOfVolume(byVolume), massFraction < 1 ? 1e-9 : 1e-4);
        Assert.True(double.IsNaN(GlycerolWater.MassFraction(GlycerolWater.PureAt20 + 0.01, 20)));
        Assert.True(double.IsNaN(GlycerolWater.MassFraction(WaterDensity.Of(20) - 0.01, 20)));
        Assert.True(double.IsNaN(GlycerolWater.MassFractionOfVolume(1.001)));
    }

    // Of the same relation: 44.65 %vol is 50 % by mass; 60 %vol is 756.6 g/L and 410.2 g of water; 50 and 50 mL make 98.9.
    [Fact]
    public void Strengths_and_contraction_are_those_of_the_tables()
    {
        Assert.Equal(44.65, Fluid.Find("glycerol 50 %mass")!.VolumePercent!.Value, 0.02);
        var sixty = Fluid.Find("glycerol 60 %vol")!;
        Assert.Equal(756.6, sixty.MassPercent!.Value / 100 * sixty.DensityAt(20.0), 0.2);
        Assert.Equal(410.2, sixty.WaterMassPercent / 100 * sixty.DensityAt(20.0), 0.2);
        double glycerol = 50 * 1.26106, water = 50 * 0.998207, fraction = glycerol / (glycerol + water);
        Assert.Equal(98.9, (glycerol + water) / GlycerolWater.Density(fraction, 20) * 1000, 0.1);
        var recipe = RecipeSolver.Solve(new(sixty, Volume.FromLiters(1), [new(Fluid.Find("glycerol 99.5 %mass")!)])).Value!;
        Assert.Equal(1, recipe.Parts[0].Mass.Kilograms * 0.995 / 0.7566, 0.001);
        Assert.InRange(recipe.Contraction.Milliliters, 8, 12);
    }

    // Producers' tables at 25 °C give 79, 71, 59 and 39 % over 60, 70, 80 and 90 % by mass (from memory, within 2).
    [Theory]
    [InlineData(60, 79)]
    [InlineData(70, 71)]
    [InlineData(80, 59)]
    [InlineData(90, 39)]
    public void The_air_over_it_is_as_dry_as_producers_say(double massPercent, double humidity)
    {
        var fluid = Substance.Glycerol.Of(massPercent, StrengthBasis.Mass);
        Assert.Equal(humidity, 100 * fluid.VapourPressureAt(25) / Vapour.Water(25), 3.5);
    }

    [Theory]
    [InlineData("glycerine 85 %mass", "glycerol 85 %mass")]
    [InlineData("Glycerin 70 % v/v", "glycerol 70 %vol")]
    [InlineData("70 %vol glycerol", "glycerol 70 %vol")]
    public void It_is_read_by_its_names(string text, string canonical)
    {
        var read = Fluid.Read(text);
        Assert.Empty(read.Findings);
        Assert.Equal(canonical, read.Value!.Name);
    }

    [Fact]
    public void It_is_no_danger_and_no_water()
    {
        var fluid = Fluid.Find("glycerol 70 %vol")!;
        Assert.Equal((false, false, false, false), (fluid.IsWater, fluid.IsAlcohol, fluid.HasFormaldehyde, fluid.IsFlammable));
        var hazards = Hazards.Of(fluid);
        Assert.True(hazards.Statements.IsEmpty && hazards.Limits.IsEmpty && hazards.SignalWord.Length == 0 && hazards.FlashPoint is null);
        Assert.Equal(160, Hazards.Of(Fluid.Find("glycerol 99.5 %mass")!).FlashPoint!.Value.DegreesCelsius);
        Assert.Equal(WasteClass.OrganicInWater, fluid.WasteClass);
        Assert.Equal("stock-foreign", Assert.Single(RecipeSolver.Solve(new(fluid, Volume.FromLiters(1), [new(Fluid.Find("glycerol 85 %mass")!), new(Fluid.Ethanol(96))]) { StocksAreNamed = true }).Findings).Id);
        Assert.StartsWith("'glycerol 70 % w/v' gives glycerol on a basis", Fluid.Read("glycerol 70 % w/v").Findings[0].Message.ToString(), StringComparison.Ordinal);
    }

    // A refractometer aside, a density tells its strength too: heavier than water is no fault here, lighter is.
    [Fact]
    public void Its_strength_is_told_by_a_density()
    {
        var at = Temperature.FromDegreesCelsius(20);
        var read = AlcoholStrength.FromDensity(Substance.Glycerol, Density.FromKilogramsPerCubicMeter(1153.5), at).Value!;
        Assert.Equal(60, read.MassPercent, 0.1);
        Assert.InRange(read.VolumePercentDoubt, 0.2, 0.6);
        var light = AlcoholStrength.FromDensity(Substance.Glycerol, Density.FromKilogramsPerCubicMeter(990), at).Findings[0];
        Assert.Contains("less than water's 998.21", light.Message.ToString(), StringComparison.Ordinal);
        var dense = AlcoholStrength.FromDensity(Substance.Glycerol, Density.FromKilogramsPerCubicMeter(1300), at).Findings[0];
        Assert.Contains("more than glycerol's 1261.06", dense.Message.ToString(), StringComparison.Ordinal);
    }
}
