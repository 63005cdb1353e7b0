using Protocolist.Fluids.Densities;

namespace Protocolist.Tests.Reference;

public class WaterReferenceTests
{
    // Handbook table of air-free water at one atmosphere (3 decimals or fewer).
    [Theory]
    [InlineData(5, 999.967, 0.001)]
    [InlineData(10, 999.702, 0.001)]
    [InlineData(15, 999.103, 0.001)]
    [InlineData(20, 998.207, 0.001)]
    [InlineData(25, 997.048, 0.0015)]
    [InlineData(30, 995.65, 0.005)]
    [InlineData(35, 994.03, 0.005)]
    [InlineData(40, 992.22, 0.006)]
    public void Water_has_the_handbooks_density(double celsius, double published, double tolerance) =>
        Assert.Equal(published, WaterDensity.Of(celsius), tolerance);

    // Greatest density 999.975 at 3.98 °C: Tanaka et al. 2001.
    [Fact]
    public void Water_is_densest_at_four_degrees()
    {
        Assert.Equal(999.975, WaterDensity.Of(3.983), 0.0001);
        Assert.True(WaterDensity.Of(3.983) > WaterDensity.Of(3.5) && WaterDensity.Of(3.983) > WaterDensity.Of(4.5));
    }

    // UNESCO 44 (1983) check values at S 35; S 8 and 10 °C: a published test of a plankton package.
    [Theory]
    [InlineData(35, 5, 1027.67547)]
    [InlineData(35, 25, 1023.34306)]
    [InlineData(8, 10, 1005.94659)]
    public void Sea_water_has_the_published_check_values(double salinity, double celsius, double published) =>
        Assert.Equal(published, SeaWaterDensity.Of(salinity, celsius), 0.00002);

    [Fact]
    public void Fresh_sea_water_joins_the_water_formula()
    {
        for (var celsius = 0; celsius <= 40; celsius++) Assert.Equal(WaterDensity.Of(celsius), SeaWaterDensity.Of(0, celsius), 0.01);
    }
}
