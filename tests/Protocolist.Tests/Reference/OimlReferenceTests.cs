using Protocolist.Fluids.Densities;

namespace Protocolist.Tests.Reference;

/// <summary>The ethanol formula against tables and formulas published elsewhere.</summary>
public class OimlReferenceTests
{
    // Dilution table of a pharmacopoeia-type alcoholometric table (European Pharmacopoeia, 20 °C): %vol, kg/m³.
    [Theory]
    [InlineData(10, 984.71)]
    [InlineData(20, 973.56)]
    [InlineData(30, 962.21)]
    [InlineData(40, 948.05)]
    [InlineData(50, 930.14)]
    [InlineData(60, 909.11)]
    [InlineData(70, 885.56)]
    [InlineData(80, 859.27)]
    [InlineData(90, 829.18)]
    [InlineData(91, 825.83)]
    [InlineData(92, 822.39)]
    [InlineData(93, 818.85)]
    [InlineData(94, 815.18)]
    [InlineData(95, 811.38)]
    [InlineData(96, 807.42)]
    [InlineData(97, 803.27)]
    [InlineData(98, 798.90)]
    [InlineData(99, 794.25)]
    [InlineData(100, 789.24)]
    public void Density_at_20_degrees_is_the_alcoholometric_tables(double volumePercent, double published) =>
        Assert.Equal(published, EthanolWater.Density(EthanolWater.MassFractionOfVolume(volumePercent / 100), 20), 0.006);

    // Ph.Eur. alcoholometric table: 70 %vol is 62.39 %m/m, 96 %vol is 93.84 %m/m.
    [Theory]
    [InlineData(70, 62.39)]
    [InlineData(96, 93.84)]
    public void Mass_percent_is_the_pharmacopoeias(double volumePercent, double massPercent) =>
        Assert.Equal(massPercent, 100 * EthanolWater.MassFractionOfVolume(volumePercent / 100), 0.006);

    // Pure ethanol against temperature, handbook values in kg/m³.
    [Theory]
    [InlineData(5, 801.99)]
    [InlineData(10, 797.76)]
    [InlineData(15, 793.51)]
    [InlineData(20, 789.24)]
    [InlineData(25, 784.95)]
    [InlineData(30, 780.65)]
    [InlineData(35, 776.31)]
    [InlineData(40, 771.93)]
    public void Pure_ethanol_expands_as_published(double celsius, double published) =>
        Assert.Equal(published, EthanolWater.Density(1, celsius), 0.006);

    // British Pharmacopoeia 1999, Ethanol (96 per cent): limits by volume, mass and relative density to water at 20 °C.
    [Theory]
    [InlineData(95.1, 92.6, 0.8124)]
    [InlineData(96.9, 95.2, 0.8051)]
    public void British_pharmacopoeia_limits_agree(double volumePercent, double massPercent, double relativeDensity)
    {
        var p = EthanolWater.MassFractionOfVolume(volumePercent / 100);
        Assert.Equal(massPercent, 100 * p, 0.06);
        Assert.Equal(relativeDensity, EthanolWater.Density(p, 20) / WaterDensity.Of(20), 0.0001);
    }

    // Osborne, McKelvy and Bearce 1913, Bulletin of the Bureau of Standards 9, 327: g/cc by weight % at 10, 15 ... 40 °C.
    [Theory]
    [InlineData(45, new[] { .93226, .92852, .92472, .92085, .91692, .91291, .90884 })]
    [InlineData(50, new[] { .92162, .91776, .91384, .90985, .90580, .90168, .89750 })]
    [InlineData(55, new[] { .91055, .90659, .90258, .89850, .89437, .89016, .88589 })]
    [InlineData(60, new[] { .89927, .89523, .89113, .88699, .88278, .87851, .87417 })]
    [InlineData(65, new[] { .88774, .88364, .87948, .87527, .87100, .86667, .86227 })]
    [InlineData(70, new[] { .87602, .87187, .86766, .86340, .85908, .85470, .85025 })]
    [InlineData(75, new[] { .86408, .85988, .85564, .85134, .84698, .84257, .83809 })]
    [InlineData(80, new[] { .85197, .84772, .84344, .83911, .83473, .83029, .82578 })]
    [InlineData(85, new[] { .83951, .83525, .83095, .82660, .82220, .81774, .81322 })]
    public void Density_is_that_of_the_bureau_of_standards_1913(double massPercent, double[] published)
    {
        for (var i = 0; i < published.Length; i++)
            Assert.Equal(1000 * published[i], EthanolWater.Density(massPercent / 100, 10 + 5 * i), 0.15);
    }

    // CRC Handbook, 102nd ed., Concentrative Properties of Aqueous Solutions: mass %, g/cm³ at 20 °C.
    [Theory]
    [InlineData(0.5, .9973)]
    [InlineData(1, .9963)]
    [InlineData(5, .9893)]
    [InlineData(10, .9819)]
    [InlineData(20, .9687)]
    [InlineData(30, .9539)]
    [InlineData(40, .9352)]
    [InlineData(50, .9139)]
    [InlineData(60, .8911)]
    [InlineData(70, .8676)]
    [InlineData(80, .8436)]
    [InlineData(90, .8180)]
    [InlineData(92, .8125)]
    [InlineData(94, .8070)]
    [InlineData(96, .8013)]
    [InlineData(98, .7954)]
    [InlineData(100, .7893)]
    public void Density_is_that_of_the_CRC_handbook(double massPercent, double published) =>
        Assert.Equal(1000 * published, EthanolWater.Density(massPercent / 100, 20), 0.25);

    // USP 29 alcoholometric table, base 60 °F (15.56 °C): %vol, % by weight, specific gravity in air 25/25 and 15.56/15.56 °C.
    [Theory]
    [InlineData(5, 4.00, 0.9927, 0.9928)]
    [InlineData(10, 8.05, 0.9862, 0.9866)]
    [InlineData(15, 12.14, 0.9802, 0.9810)]
    [InlineData(20, 16.27, 0.9744, 0.9759)]
    [InlineData(25, 20.44, 0.9685, 0.9708)]
    [InlineData(30, 24.67, 0.9622, 0.9653)]
    public void Usp_rows_come_out_to_their_last_digit(double volumePercent, double massPercent, double at25, double at60F)
    {
        const double sixtyFahrenheit = 140.0 / 9;
        var p = MassFractionOnBase(volumePercent / 100, sixtyFahrenheit);
        Assert.Equal(massPercent, 100 * p, 0.006);
        Assert.Equal(at25, GravityInAir(p, 25), 0.0001);
        Assert.Equal(at60F, GravityInAir(p, sixtyFahrenheit), 0.0001);
    }

    // USP 29, the same table by weight.
    [Theory]
    [InlineData(5, 6.24)]
    [InlineData(10, 12.39)]
    [InlineData(15, 18.47)]
    [InlineData(20, 24.47)]
    [InlineData(25, 30.39)]
    [InlineData(30, 36.18)]
    public void Usp_rows_by_weight_come_out_to_their_last_digit(double massPercent, double volumePercent)
    {
        const double sixtyFahrenheit = 140.0 / 9;
        var p = massPercent / 100;
        Assert.Equal(volumePercent, 100 * p * EthanolWater.Density(p, sixtyFahrenheit) / EthanolWater.Density(1, sixtyFahrenheit), 0.006);
    }

    // ANP (Brazil), hydrous ethanol at 20 °C.
    [Theory]
    [InlineData(92.5, 811.2)]
    [InlineData(94.6, 805.2)]
    public void Hydrous_fuel_ethanol_agrees(double massPercent, double published) =>
        Assert.Equal(published, EthanolWater.Density(massPercent / 100, 20), 0.1);

    // British proof spirit: 57.1 %vol at 60 °F weighs 12/13 of water at 51 °F.
    [Fact]
    public void Proof_spirit_weighs_twelve_thirteenths_of_water_at_51_fahrenheit()
    {
        const double fiftyOneFahrenheit = (51 - 32) / 1.8;
        var p = MassFractionOnBase(0.571, 140.0 / 9);
        Assert.Equal(12.0 / 13, EthanolWater.Density(p, fiftyOneFahrenheit) / EthanolWater.Density(0, fiftyOneFahrenheit), 0.0001);
    }

    // USP 29: 500 mL Alcohol (94.9 %vol at 60 °F) and 500 mL water make "about 970 mL" at 25 °C, of 48.4 to 49.5 %vol.
    [Fact]
    public void Usp_diluted_alcohol_comes_out_as_stated()
    {
        const double sixtyFahrenheit = 140.0 / 9;
        var p = MassFractionOnBase(0.949, sixtyFahrenheit);
        var spirit = 0.5 * EthanolWater.Density(p, 25);
        var whole = spirit + 0.5 * EthanolWater.Density(0, 25);
        var mixed = spirit * p / whole;
        Assert.Equal(0.9714, whole / EthanolWater.Density(mixed, 25), 0.0005);
        Assert.InRange(100 * mixed * EthanolWater.Density(mixed, sixtyFahrenheit) / EthanolWater.Density(1, sixtyFahrenheit), 48.4, 49.5);
    }

    internal static double MassFractionOnBase(double volumeFraction, double baseCelsius)
    {
        double low = 0, high = 1;
        for (var step = 0; step < 60; step++)
        {
            var p = (low + high) / 2;
            if (p * EthanolWater.Density(p, baseCelsius) / EthanolWater.Density(1, baseCelsius) < volumeFraction) low = p;
            else high = p;
        }

        return low;
    }

    // Air of 1.2 kg/m³, as pharmacopoeial gravities are weighed.
    private static double GravityInAir(double p, double celsius) =>
        (EthanolWater.Density(p, celsius) - 1.2) / (EthanolWater.Density(0, celsius) - 1.2);
}
