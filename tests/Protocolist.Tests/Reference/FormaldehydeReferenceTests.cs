using Protocolist.Fluids;
using Protocolist.Fluids.Densities;

namespace Protocolist.Tests.Reference;

public class FormaldehydeReferenceTests
{
    // Auerbach and Barschall, in Walker, Formaldehyde (1944), table 7, 18 °C: % by mass, g/100 cc, g/mL. Not the table interpolated.
    [Theory]
    [InlineData(2.23, 2.24, 1.0054)]
    [InlineData(4.60, 4.66, 1.0126)]
    [InlineData(10.74, 11.08, 1.0311)]
    [InlineData(13.59, 14.15, 1.0410)]
    [InlineData(18.82, 19.89, 1.0568)]
    [InlineData(23.73, 25.44, 1.0719)]
    [InlineData(27.80, 30.17, 1.0853)]
    [InlineData(34.11, 37.72, 1.1057)]
    [InlineData(37.53, 41.87, 1.1158)]
    public void Methanol_free_solutions_are_auerbachs(double massPercent, double gramsPer100, double density)
    {
        var p = massPercent / 100;
        Assert.Equal(1000 * density, FormaldehydeWater.Density(p, 0, 18), 2.0);
        Assert.Equal(10 * gramsPer100, FormaldehydeWater.GramsPerLitre(p, 0, 18), 0.9);
    }

    // Walker 1944, table 4: 37 % formaldehyde with methanol, 18 °C: g/mL, g/100 mL, mol/L.
    [Theory]
    [InlineData(0, 1.1128, 41.17, 13.71)]
    [InlineData(5, 1.1009, 40.73, 13.57)]
    [InlineData(10, 1.0890, 40.29, 13.42)]
    [InlineData(15, 1.0764, 39.83, 13.26)]
    [InlineData(20, 1.0639, 39.36, 13.11)]
    public void Methanol_lowers_the_stocks_density_as_walker_found(double methanol, double density, double gramsPer100, double mol)
    {
        Assert.Equal(1000 * density, FormaldehydeWater.Density(0.37, methanol / 100, 18), 0.2);
        var grams = FormaldehydeWater.GramsPerLitre(0.37, methanol / 100, 18);
        Assert.Equal(10 * gramsPer100, grams, 0.1);
        Assert.Equal(mol, FormaldehydeWater.MolPerLitre(grams), 0.01);
    }

    // Walker's rule of thumb holds to 2 kg/m³ up to 40 % and fails at 50 %.
    [Fact]
    public void Walkers_rule_is_kept_as_far_as_it_holds()
    {
        for (var percent = 0; percent <= 40; percent += 5)
            Assert.Equal(FormaldehydeWater.WalkersRule(percent / 100.0), FormaldehydeWater.Density(percent / 100.0, 0, 18), 2.1);
        Assert.True(FormaldehydeWater.Density(0.5, 0, 18) - FormaldehydeWater.WalkersRule(0.5) > 6);
    }

    // Histology handbooks: the stock is 37 % by mass and "40 %" by volume; 1 + 9 of it is 39.8 to 40.3 g/L, 1.326 to 1.343 mol/L.
    [Fact]
    public void Ten_percent_formalin_is_four_percent_formaldehyde()
    {
        var stock = Fluid.FormaldehydeStock(37);
        Assert.Equal(400, stock.FormaldehydeGramsPerLitre!.Value, 3.0);
        var formalin = Fluid.Formalin(10);
        Assert.InRange(formalin.FormaldehydeGramsPerLitre!.Value, 39.8, 40.3);
        Assert.InRange(formalin.FormaldehydeMolPerLitre!.Value, 1.326, 1.343);
        Assert.InRange(formalin.FormaldehydeMassPercent!.Value, 3.7, 4.05);
    }

    // Published: 5 % formalin is 0.667 mol/L; 4 % w/v takes 99.8 mL of a 37 % stock of 1.083 g/mL to the litre.
    [Fact]
    public void Other_strengths_follow()
    {
        Assert.Equal(0.667, Fluid.Formalin(5).FormaldehydeMolPerLitre!.Value, 0.005);
        var stock = Fluid.FormaldehydeStock(37);
        Assert.Equal(99.8, 1000 * 40 / stock.FormaldehydeGramsPerLitre!.Value, 0.3);
    }

    // Density of 37 % with 10 to 15 % methanol: 1.08 to 1.09 (suppliers, British Pharmacopoeia).
    [Theory]
    [InlineData(10)]
    [InlineData(12)]
    [InlineData(15)]
    public void The_stock_weighs_what_suppliers_state(double methanol) =>
        Assert.InRange(Fluid.FormaldehydeStock(37, methanolMassPercent: methanol).DensityAt(20), 1074, 1090);
}
