using Protocolist.Fluids;
using UnitsNet;

namespace Protocolist.Tests.Fluids;

public class FluidTests
{
    private static readonly Temperature Twenty = Temperature.FromDegreesCelsius(20);

    [Fact]
    public void Fluids_are_equal_by_what_they_are()
    {
        Assert.Equal(Fluid.Ethanol(70), Fluid.Ethanol(70.0001));
        Assert.NotEqual(Fluid.Ethanol(70), Fluid.Ethanol(70, StrengthBasis.Mass));
        Assert.NotEqual(Fluid.Formalin(10), Fluid.Formalin(10, Buffering.Phosphate));
        Assert.Equal(Fluid.Formalin(10, Buffering.Borax).GetHashCode(), Fluid.Formalin(10, Buffering.Borax).GetHashCode());
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(100.1)]
    [InlineData(double.NaN)]
    public void Impossible_strengths_are_the_callers_bug(double percent)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Fluid.Ethanol(percent));
        Assert.Throws<ArgumentOutOfRangeException>(() => Fluid.Isopropanol(percent));
        Assert.Throws<ArgumentOutOfRangeException>(() => Fluid.Formalin(percent));
        Assert.Throws<ArgumentOutOfRangeException>(() => Fluid.FormaldehydeStock(percent));
    }

    [Fact]
    public void Seventy_by_volume_knows_its_mass_percent_and_density()
    {
        var fluid = Fluid.Ethanol(70);
        Assert.True(fluid.IsAlcohol);
        Assert.Equal(70, fluid.EthanolVolumePercent);
        Assert.Equal(62.39, fluid.EthanolMassPercent!.Value, 0.01);
        Assert.Equal(885.56, fluid.DensityAt(Twenty).KilogramsPerCubicMeter, 0.01);
        Assert.Null(fluid.IsopropanolVolumePercent);
        Assert.Null(fluid.FormaldehydeGramsPerLitre);
    }

    // Computed apart from this code with OIML R 22: fluid growth between two temperatures.
    [Theory]
    [InlineData("ethanol 50 %vol", 15, 35, 1.67)]
    [InlineData("ethanol 70 %vol", 15, 35, 1.93)]
    [InlineData("ethanol 70 %vol", 20, 40, 1.97)]
    [InlineData("ethanol 80 %vol", 15, 40, 2.58)]
    [InlineData("ethanol 95 %vol", 20, 35, 1.64)]
    [InlineData("water", 15, 35, 0.51)]
    [InlineData("water", 20, 40, 0.60)]
    public void Fluids_grow_as_worked(string name, double from, double to, double percent) =>
        Assert.Equal(percent, 100 * (Fluid.Read(name).Value!.Expansion(Temperature.FromDegreesCelsius(from), Temperature.FromDegreesCelsius(to)) - 1), 0.006);

    [Fact]
    public void Formalin_grows_a_little_more_than_water()
    {
        Temperature cold = Temperature.FromDegreesCelsius(15), warm = Temperature.FromDegreesCelsius(35);
        var ratio = (Fluid.Formalin(10).Expansion(cold, warm) - 1) / (Fluid.Water.Expansion(cold, warm) - 1);
        Assert.InRange(ratio, 1.05, 1.25);
    }

    // Derived from Walker 1944 and the salts' weight: 1.015 to 1.02 g/mL.
    [Fact]
    public void Buffered_formalin_weighs_more_than_its_parent()
    {
        Assert.InRange(Fluid.Formalin(10, Buffering.Phosphate).DensityAt(20), 1013, 1020);
        Assert.True(Fluid.Formalin(10).DensityAt(20) < 1011);
    }

    [Fact]
    public void Isopropanol_states_a_wide_band_and_ethanol_a_narrow_one()
    {
        Assert.True(Fluid.Isopropanol(70).DensityDoubt(Twenty).KilogramsPerCubicMeter >= 1.5);
        Assert.True(Fluid.Isopropanol(70).DensityDoubt(Temperature.FromDegreesCelsius(35)) > Fluid.Isopropanol(70).DensityDoubt(Twenty));
        Assert.True(Fluid.Ethanol(70).DensityDoubt(Twenty).KilogramsPerCubicMeter < 0.2);
    }
}
