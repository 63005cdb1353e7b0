using Protocolist.Fluids;
using Protocolist.Fluids.Densities;
using UnitsNet;

namespace Protocolist.Tests.Fluids;

public class AlcoholStrengthTests
{
    private static readonly Temperature Twenty = Temperature.FromDegreesCelsius(20);

    [Fact]
    public void Density_of_seventy_percent_gives_seventy_percent()
    {
        var strength = AlcoholStrength.FromDensity(Substance.Ethanol, Density.FromKilogramsPerCubicMeter(885.56), Twenty).Value!;
        Assert.Equal(70.0, strength.VolumePercent, 0.01);
        Assert.Equal(62.39, strength.MassPercent, 0.01);
        Assert.Equal(55.25, strength.GramsPer100Millilitres, 0.01);
    }

    [Fact]
    public void Ethanol_inverse_returns_what_went_in_over_the_whole_field()
    {
        for (var percent = 0; percent <= 1000; percent++)
        {
            var p = percent / 1000.0;
            for (var celsius = -20.0; celsius <= 40; celsius += 2.5)
                Assert.Equal(p, EthanolWater.MassFraction(EthanolWater.Density(p, celsius), celsius), 1e-9);
            Assert.Equal(p, EthanolWater.MassFractionOfVolume(EthanolWater.VolumeFraction(p)), 1e-12);
        }
    }

    [Fact]
    public void Isopropanol_inverse_returns_what_went_in()
    {
        for (var percent = 0; percent <= 100; percent++)
        {
            var p = percent / 100.0;
            foreach (var celsius in (double[])[0, 10, 20, 25, 40])
                Assert.Equal(p, IsopropanolWater.MassFraction(IsopropanolWater.Density(p, celsius), celsius), 1e-9);
        }
    }

    [Theory]
    [InlineData("ethanol", 885.56, 45, "temperature-out-of-range")]
    [InlineData("ethanol", 885.56, double.NaN, "temperature-out-of-range")]
    [InlineData("isopropanol", 885.56, -5, "temperature-out-of-range")]
    [InlineData("ethanol", 1005, 20, "density-out-of-range")]
    [InlineData("ethanol", 785, 20, "density-out-of-range")]
    [InlineData("ethanol", double.NaN, 20, "density-out-of-range")]
    [InlineData("isopropanol", 780, 20, "density-out-of-range")]
    public void What_no_mixture_has_is_a_finding(string id, double density, double celsius, string finding)
    {
        var alcohol = SubstanceCatalogue.Bundled.Find(id)!;
        if (double.IsNaN(celsius) || double.IsNaN(density))
        {
            // UnitsNet refuses what is not a number before it comes here.
            Assert.ThrowsAny<ArgumentException>(() => AlcoholStrength.FromDensity(alcohol, Density.FromKilogramsPerCubicMeter(density), Temperature.FromDegreesCelsius(celsius)));
            return;
        }

        var result = AlcoholStrength.FromDensity(alcohol, Density.FromKilogramsPerCubicMeter(density), Temperature.FromDegreesCelsius(celsius));
        Assert.Null(result.Value);
        Assert.Equal(finding, Assert.Single(result.Findings).Id);
    }

    [Fact]
    public void A_warm_alcoholometer_reads_too_strong()
    {
        var warm = AlcoholStrength.FromAlcoholometer(70, Temperature.FromDegreesCelsius(28)).Value!;
        Assert.InRange(warm.VolumePercent, 66.5, 68.5);
        Assert.Equal(70, AlcoholStrength.FromAlcoholometer(70, Twenty).Value!.VolumePercent, 1e-6);
        var cold = AlcoholStrength.FromAlcoholometer(70, Temperature.FromDegreesCelsius(12)).Value!;
        Assert.InRange(cold.VolumePercent, 71.5, 73.5);
    }

    [Fact]
    public void A_glass_hydrometer_is_corrected_for_its_own_growth()
    {
        var read = Density.FromKilogramsPerCubicMeter(900);
        Assert.Equal(900 - 900 * 25e-6 * 10, AlcoholStrength.HydrometerDensity(read, Temperature.FromDegreesCelsius(30)).KilogramsPerCubicMeter, 1e-9);
        Assert.Equal(900, Hydrometer.Reading(Hydrometer.TrueDensity(900, 33), 33), 1e-9);
    }

    [Fact]
    public void Isopropanol_says_how_far_it_may_be_off()
    {
        var strength = AlcoholStrength.FromDensity(Substance.Isopropanol, Density.FromKilogramsPerCubicMeter(875.7), Twenty).Value!;
        Assert.Equal(70, strength.VolumePercent, 0.2);
        Assert.InRange(strength.VolumePercentDoubt, 0.4, 1.0);
    }
}
