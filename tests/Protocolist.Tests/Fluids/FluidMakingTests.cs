using Protocolist.Fluids;
using Protocolist.Fluids.Densities;
using UnitsNet;

namespace Protocolist.Tests.Fluids;

/// <summary>Fluids as they are made: limits of strength, compositions worked apart from this code, and what a fluid says of itself.</summary>
public class FluidMakingTests
{
    // A litre of a working solution, worked to the last digit by its own density: CH2O, methanol, sea salt, buffer salts by mass, and kg/m³.
    [Theory]
    [InlineData("formalin 10 %", 0.039742208, 0.012889365, 0, 0, 1008.161331)]
    [InlineData("neutral buffered formalin 10 %", 0.039437836, 0.012790649, 0, 0.009821229, 1015.942091)]
    [InlineData("borax-buffered formalin 10 %", 0.039693218, 0.012873476, 0, 0.001570707, 1009.405628)]
    [InlineData("sea-water formalin 10 %", 0.038787538, 0.012579742, 0.031330909, 0, 1032.975005)]
    [InlineData("sea-water formaldehyde 30 % w/v, salinity 42", 0.278780486, 0.090415293, 0.010354648, 0, 1076.115494)]
    [InlineData("formaldehyde 4 % w/v", 0.039676834, 0.012868162, 0, 0, 1008.144960)]
    [InlineData("phosphate-NaOH buffered formalin 10 %", 0.039130375, 0.012690932, 0, 0.019895731, 1023.924694)]
    [InlineData("marble-chip formalin 10 %", 0.039742208, 0.012889365, 0, 0, 1008.161331)]
    [InlineData("formaldehyde stock 37 %mass", 0.37, 0.12, 0, 0, 1082.879929)]
    [InlineData("sea water, salinity 35", 0, 0, 0.035, 0, 1024.7634)]
    [InlineData("water", 0, 0, 0, 0, 998.206746)]
    public void A_fluid_has_its_worked_composition(string name, double formaldehyde, double methanol, double seaSalt, double bufferSalts, double density)
    {
        var fluid = Fluid.Read(name).Value!;
        var composition = fluid.Composition;
        Assert.Equal(formaldehyde, composition[Solute.Formaldehyde], 1e-8);
        Assert.Equal(methanol, composition[Solute.Methanol], 1e-8);
        Assert.Equal(seaSalt, composition[Solute.SeaSalt], 1e-8);
        Assert.Equal(bufferSalts, composition[Solute.BufferSalts], 1e-8);
        Assert.Equal(1 - formaldehyde - methanol - seaSalt - bufferSalts, composition.Water, 4e-8);
        Assert.Equal(density, fluid.DensityAt(20.0), 0.0005);
    }

    [Fact]
    public void Each_fluid_says_what_is_in_it_and_nothing_of_what_is_not()
    {
        var ethanol = Fluid.Ethanol(50, StrengthBasis.Mass);
        // 50 % by mass: 913.766 kg/m³ at 20 °C, 456.883 g/L of 789.239 g/L: 57.889 %vol (OIML R 22).
        Assert.Equal(57.889, ethanol.EthanolVolumePercent!.Value, 0.001);
        Assert.Equal(57.889, ethanol.AlcoholVolumePercent, 0.001);
        Assert.Equal(50, ethanol.EthanolMassPercent!.Value, 1e-9);
        Assert.Equal((null, null, null, null, null), (ethanol.IsopropanolVolumePercent, ethanol.IsopropanolMassPercent, ethanol.FormaldehydeGramsPerLitre, ethanol.FormaldehydeMassPercent, ethanol.FormaldehydeMolPerLitre));
        Assert.Equal((0, 0), (ethanol.MethanolMassPercent, ethanol.Salinity));

        // Lebo's point: 53.07 % by mass, 898.68 kg/m³: 60.712 %vol.
        var isopropanol = Fluid.Isopropanol(53.07, StrengthBasis.Mass);
        Assert.Equal(60.712, isopropanol.IsopropanolVolumePercent!.Value, 0.001);
        Assert.Equal(60.712, isopropanol.AlcoholVolumePercent, 0.001);
        Assert.Equal(53.07, isopropanol.IsopropanolMassPercent!.Value, 1e-9);
        Assert.Equal((null, null), (isopropanol.EthanolVolumePercent, isopropanol.EthanolMassPercent));
        Assert.Equal(50, Fluid.Isopropanol(50).AlcoholVolumePercent);

        var stock = Fluid.FormaldehydeStock(37);
        Assert.Equal(400.6656, stock.FormaldehydeGramsPerLitre!.Value, 0.0001);
        Assert.Equal(37, stock.FormaldehydeMassPercent!.Value, 1e-9);
        Assert.Equal(400.6656 / 30.026, stock.FormaldehydeMolPerLitre!.Value, 0.0001);
        Assert.Equal(12, stock.MethanolMassPercent, 1e-9);
        Assert.Equal(0, stock.AlcoholVolumePercent);
        Assert.Equal(0, stock.Salinity);
        Assert.Equal((null, null), (stock.EthanolVolumePercent, stock.IsopropanolMassPercent));

        Assert.Equal((true, false, false), (ethanol.IsAlcohol, ethanol.HasFormaldehyde, ethanol.IsWater));
        Assert.Equal((true, false, false), (isopropanol.IsAlcohol, isopropanol.HasFormaldehyde, isopropanol.IsWater));
        Assert.Equal((false, true, false), (stock.IsAlcohol, stock.HasFormaldehyde, stock.IsWater));
        Assert.Equal((false, true, false), (Fluid.Formalin(10).IsAlcohol, Fluid.Formalin(10).HasFormaldehyde, Fluid.Formalin(10).IsWater));
        foreach (var water in (Fluid[])[Fluid.Water, Fluid.DistilledWater, Fluid.TapWater, Fluid.OceanWater]) Assert.Equal((false, false, true), (water.IsAlcohol, water.HasFormaldehyde, water.IsWater));
        Assert.Equal(35, Fluid.OceanWater.Salinity);
        Assert.Equal(28, Fluid.Formalin(10, Buffering.SeaWater, 28).Salinity);
        Assert.Equal(0, Fluid.Formalin(10, Buffering.Borax, 28).Salinity);
        Assert.Equal("ethanol 50 %mass", ethanol.ToString());
    }

    // 37 % by mass with 12 % methanol is 400.67 g/L (Walker's tables).
    [Fact]
    public void A_stock_by_weight_per_volume_knows_its_mass_percent()
    {
        var stock = Fluid.FormaldehydeStock(40.067, StrengthBasis.WeightPerVolume);
        Assert.Equal(37, stock.FormaldehydeMassPercent!.Value, 0.001);
        Assert.Equal(400.67, stock.FormaldehydeGramsPerLitre!.Value, 0.001);
        Assert.Equal(StrengthBasis.WeightPerVolume, stock.Basis);
    }

    [Fact]
    public void Strengths_are_kept_to_a_thousandth_above_nothing()
    {
        foreach (var make in (Func<double, Fluid>[])[p => Fluid.Ethanol(p), p => Fluid.Isopropanol(p), p => Fluid.Formalin(p), p => Fluid.FormaldehydeWeightPerVolume(p)])
        {
            Assert.Equal(0.001, make(0.0006).Strength);
            Assert.Throws<ArgumentOutOfRangeException>(() => make(0.0004));
        }
    }

    [Fact]
    public void Each_limit_takes_its_last_value_and_refuses_the_next()
    {
        foreach (var (taken, refused) in (ReadOnlySpan<(Func<Fluid>, Func<Fluid>)>)
        [
            (() => Fluid.Ethanol(100), () => Fluid.Ethanol(100.001)),
            (() => Fluid.Isopropanol(100, StrengthBasis.Mass), () => Fluid.Isopropanol(100.001, StrengthBasis.Mass)),
            (() => Fluid.SeaWater(2), () => Fluid.SeaWater(1.999)),
            (() => Fluid.SeaWater(42), () => Fluid.SeaWater(42.001)),
            (() => Fluid.Formalin(30), () => Fluid.Formalin(30.001)),
            (() => Fluid.FormaldehydeWeightPerVolume(30), () => Fluid.FormaldehydeWeightPerVolume(30.001)),
            (() => Fluid.FormaldehydeStock(10), () => Fluid.FormaldehydeStock(9.999)),
            (() => Fluid.FormaldehydeStock(50), () => Fluid.FormaldehydeStock(50.001)),
            (() => Fluid.FormaldehydeStock(57, StrengthBasis.WeightPerVolume, 0), () => Fluid.FormaldehydeStock(57.001, StrengthBasis.WeightPerVolume, 0)),
            (() => Fluid.FormaldehydeStock(37, methanolMassPercent: 0), () => Fluid.FormaldehydeStock(37, methanolMassPercent: -0.001)),
            (() => Fluid.FormaldehydeStock(37, methanolMassPercent: 20), () => Fluid.FormaldehydeStock(37, methanolMassPercent: 20.001)),
            (() => Fluid.Formalin(10, Buffering.SeaWater, 2), () => Fluid.Formalin(10, Buffering.SeaWater, 1.999)),
            (() => Fluid.Formalin(10, Buffering.SeaWater, 42), () => Fluid.Formalin(10, Buffering.SeaWater, 42.001)),
        ])
        {
            Assert.NotNull(taken());
            Assert.Contains("Out of range: ", Assert.Throws<ArgumentOutOfRangeException>(refused).Message.ToString(), StringComparison.Ordinal);
        }
    }

    // 50 % by mass with 20 % methanol is 553.4 g/L: 55.4 % w/v is stronger than any such stock.
    [Fact]
    public void What_no_fluid_of_that_kind_can_be_is_the_callers_bug()
    {
        Assert.StartsWith("No stock of this methanol content is so strong.", Assert.Throws<ArgumentOutOfRangeException>(() => Fluid.FormaldehydeStock(55.4, StrengthBasis.WeightPerVolume, 20)).Message.ToString(), StringComparison.Ordinal);
        Assert.Equal(50, Fluid.FormaldehydeStock(55.336, StrengthBasis.WeightPerVolume, 20).FormaldehydeMassPercent!.Value, 0.001);
        Assert.StartsWith("A stock's strength is by mass or weight per volume.", Assert.Throws<ArgumentOutOfRangeException>(() => Fluid.FormaldehydeStock(37, StrengthBasis.Volume)).Message.ToString(), StringComparison.Ordinal);
        Assert.StartsWith("The strength of a liquid in water is by volume or by mass.", Assert.Throws<ArgumentOutOfRangeException>(() => Fluid.Ethanol(70, StrengthBasis.WeightPerVolume)).Message.ToString(), StringComparison.Ordinal);
        Assert.StartsWith("The strength of a liquid in water is by volume or by mass.", Assert.Throws<ArgumentOutOfRangeException>(() => Fluid.Isopropanol(70, StrengthBasis.PartsOfStock)).Message.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Beyond_its_formula_the_nearest_temperature_is_taken()
    {
        // OIML R 22 from -20 °C; water from 0; both to 40.
        Assert.Equal(EthanolWater.Density(1, -20), Fluid.Ethanol(100).DensityAt(-30));
        Assert.Equal(EthanolWater.Density(1, 40), Fluid.Ethanol(100).DensityAt(50));
        Assert.Equal(WaterDensity.Of(0), Fluid.Water.DensityAt(-5));
        Assert.Equal(WaterDensity.Of(40), Fluid.Water.DensityAt(45));
        Assert.Equal((-20, 40), (Substance.Ethanol.LowestCelsius, Substance.Ethanol.HighestCelsius));
        Assert.Equal((0, 40), (Substance.Isopropanol.LowestCelsius, Substance.Isopropanol.HighestCelsius));
    }

    [Theory]
    [InlineData("water", 0.02)]
    [InlineData("sea water", 0.02)]
    [InlineData("ethanol 70 %vol", 0.15)]
    [InlineData("isopropanol 70 %mass", 1.5)]
    [InlineData("formalin 10 %", 4)]
    [InlineData("formaldehyde stock 37 %mass", 4)]
    public void A_density_says_how_well_it_is_known(string name, double doubt) =>
        Assert.Equal(doubt, Fluid.Read(name).Value!.DensityDoubt(Temperature.FromDegreesCelsius(20)).KilogramsPerCubicMeter, 1e-9);

    // 1 kg of formalin with 0.1 kg each of several things, worked by hand.
    [Fact]
    public void Masses_of_fluids_mix_by_shares()
    {
        Solute[] all = [Solute.Ethanol, Solute.Isopropanol, Solute.Formaldehyde, Solute.Methanol, Solute.SeaSalt, Solute.BufferSalts];
        var one = new Composition((all[0], 0.1), (all[1], 0.2), (all[2], 0.04), (all[3], 0.02), (all[4], 0.03), (all[5], 0.01));
        var mixed = Composition.Mix([one, default], [1, 3]);
        Assert.Equal([0.025, 0.05, 0.01, 0.005, 0.0075, 0.0025], all.Select(s => mixed[s]));
        Assert.Equal(0.9, mixed.Water, 1e-12);
        Assert.Equal(0, Composition.Mix([one], [0]).Shares.Length);
        // 1 kg and 0.15 kg of salt with 0.1 kg of crystal water: 1.25 kg.
        var salted = one.WithSalts(1, 0.15, 0.1);
        double[] expected = [0.08, 0.16, 0.032, 0.016, 0.024, 0.128];
        for (var i = 0; i < all.Length; i++) Assert.Equal(expected[i], salted[all[i]], 1e-12);
        // What is not there takes no room.
        Assert.Equal(1, new Composition((all[0], 0), (all[1], 0.5)).Shares.Length);
        Assert.Equal(0.3, new Composition((all[2], 0.3), (all[3], 0.1)).Shares[0].Share);
    }

    // Sea salt beside formaldehyde counts as salinity of the water that is left: 31.33 g to 948.6 g is 32.0; EOS-80 at 20 °C.
    [Fact]
    public void Density_adds_the_sea_and_the_buffer_to_what_it_is()
    {
        double Formalin(Solute what, double share) => Substance.Formaldehyde.Density(new((what, share)), 25);
        Assert.Equal(WaterDensity.Of(25) + 8, Formalin(Solute.BufferSalts, 0.01), 1e-9);
        Assert.Equal(FormaldehydeWater.Density(0, 0.05, 25), Formalin(Solute.Methanol, 0.05), 1e-9);
        Assert.Equal(FormaldehydeWater.Density(0.05, 0, 25), Formalin(Solute.Formaldehyde, 0.05), 1e-9);
        Assert.Equal(WaterDensity.Of(25) + SeaWaterDensity.Of(35, 25) - SeaWaterDensity.Of(0, 25), Formalin(Solute.SeaSalt, 0.035), 1e-9);
        // Brine beyond the formula is taken at its end.
        Assert.Equal(WaterDensity.Of(25) + SeaWaterDensity.Of(42, 25) - SeaWaterDensity.Of(0, 25), Formalin(Solute.SeaSalt, 0.08), 1e-9);
        Assert.Equal(EthanolWater.Density(0.5, 25), Substance.Ethanol.Density(new((Solute.Ethanol, 0.5)), 25));
        Assert.Equal(IsopropanolWater.Density(0.5, 25), Substance.Isopropanol.Density(new((Solute.Isopropanol, 0.5)), 25));
    }
}
