using Protocolist.Fluids.Densities;

namespace Protocolist.Tests.Reference;

public class IsopropanolReferenceTests
{
    // CRC Handbook, 102nd ed., Concentrative Properties of Aqueous Solutions, 20 °C: the other table, not the one interpolated.
    [Theory]
    [InlineData(1, .9960)]
    [InlineData(2, .9939)]
    [InlineData(3, .9920)]
    [InlineData(4, .9902)]
    [InlineData(5, .9884)]
    [InlineData(6, .9871)]
    [InlineData(7, .9855)]
    [InlineData(8, .9843)]
    [InlineData(9, .9831)]
    [InlineData(10, .9816)]
    [InlineData(12, .9793)]
    [InlineData(14, .9772)]
    [InlineData(16, .9751)]
    [InlineData(18, .9725)]
    [InlineData(20, .9696)]
    [InlineData(40, .9302)]
    [InlineData(60, .8824)]
    [InlineData(80, .8341)]
    [InlineData(100, .7848)]
    public void The_stated_band_holds_the_CRC_table(double massPercent, double published)
    {
        var p = massPercent / 100;
        Assert.InRange(1000 * published, IsopropanolWater.Density(p, 20) - IsopropanolWater.DensityError(p, 20), IsopropanolWater.Density(p, 20) + IsopropanolWater.DensityError(p, 20));
    }

    // Lebo 1921 at the table's own points.
    [Theory]
    [InlineData(9.58, .98293)]
    [InlineData(53.07, .89868)]
    [InlineData(90.35, .80866)]
    public void The_curve_goes_through_its_points(double massPercent, double published) =>
        Assert.Equal(1000 * published, IsopropanolWater.Density(massPercent / 100, 20), 1e-9);

    // Interpolated apart from this code by a spline of the excess specific volume: %vol, % by mass, g/mL.
    [Theory]
    [InlineData(10, 7.97, .9852)]
    [InlineData(20, 16.11, .9753)]
    [InlineData(30, 24.46, .9634)]
    [InlineData(40, 33.22, .9458)]
    [InlineData(50, 42.44, .9256)]
    [InlineData(60, 52.34, .9005)]
    [InlineData(70, 62.79, .8757)]
    [InlineData(75, 68.30, .8627)]
    [InlineData(80, 74.02, .8491)]
    [InlineData(90, 86.25, .8197)]
    [InlineData(91, 87.60, .8161)]
    [InlineData(95, 93.09, .8017)]
    [InlineData(99, 98.61, .7887)]
    public void Another_interpolation_gives_the_same(double volumePercent, double massPercent, double density)
    {
        var p = IsopropanolWater.MassFractionOfVolume(volumePercent / 100);
        Assert.Equal(massPercent, 100 * p, 0.03);
        Assert.Equal(1000 * density, IsopropanolWater.Density(p, 20), 0.2);
    }

    // A supplier's specification: 70 % v/v is 62.8 % m/m.
    [Fact]
    public void Seventy_by_volume_is_the_suppliers_mass_percent() =>
        Assert.Equal(62.8, 100 * IsopropanolWater.MassFractionOfVolume(0.70), 0.1);

    // USP: rubbing alcohol 68.0 to 72.0 % v/v has a gravity of 0.883 to 0.872 at 20 °C; azeotropic 91.0 to 93.0 % v/v 0.815 to 0.810 at 25 °C.
    [Theory]
    [InlineData(68, 72, 20, 0.872, 0.883)]
    [InlineData(91, 93, 25, 0.810, 0.815)]
    public void Usp_grades_have_their_gravities(double least, double most, double celsius, double low, double high)
    {
        var middle = IsopropanolWater.MassFractionOfVolume((least + most) / 200);
        Assert.InRange(IsopropanolWater.Density(middle, celsius) / WaterDensity.Of(celsius), low, high);
    }

    // Pure at 25 °C: CRC 780.9, TRC 781.26 (from memory).
    [Fact]
    public void Pure_isopropanol_expands_to_the_handbooks_value() =>
        Assert.InRange(IsopropanolWater.Density(1, 25), 780.9 - IsopropanolWater.DensityError(1, 25), 781.26 + IsopropanolWater.DensityError(1, 25));

    // Perry's Handbook (from memory, unsure by 3): half by mass at 30 °C, 900.
    [Fact]
    public void Half_by_mass_at_30_degrees_is_perrys_within_the_bands() =>
        Assert.Equal(900, IsopropanolWater.Density(0.5, 30), 3 + IsopropanolWater.DensityError(0.5, 30));
}
