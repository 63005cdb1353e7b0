using Protocolist.Fluids.Contact;
using Protocolist.Vessels;
using UnitsNet;

namespace Protocolist.Tests.Reference;

/// <summary>Thermal expansion, headspace and pressure worked out from OIML R 22 (ethanol) and the usual table of water's density.</summary>
public class HeadspaceReferenceTests
{
    [Theory]
    [InlineData(0, 15, 35, 0.51, 0.45)]
    [InlineData(0, 15, 40, 0.69, 0.62)]
    [InlineData(0, 20, 35, 0.42, 0.38)]
    [InlineData(0, 20, 40, 0.60, 0.55)]
    [InlineData(50, 15, 35, 1.67, 1.59)]
    [InlineData(50, 15, 40, 2.11, 2.00)]
    [InlineData(50, 20, 35, 1.26, 1.21)]
    [InlineData(50, 20, 40, 1.70, 1.62)]
    [InlineData(70, 15, 35, 1.93, 1.84)]
    [InlineData(70, 15, 40, 2.44, 2.32)]
    [InlineData(70, 20, 35, 1.46, 1.40)]
    [InlineData(70, 20, 40, 1.97, 1.88)]
    [InlineData(80, 15, 35, 2.04, 1.95)]
    [InlineData(80, 15, 40, 2.58, 2.45)]
    [InlineData(80, 20, 35, 1.54, 1.48)]
    [InlineData(80, 20, 40, 2.08, 1.98)]
    [InlineData(95, 15, 35, 2.18, 2.09)]
    [InlineData(95, 15, 40, 2.76, 2.62)]
    [InlineData(95, 20, 35, 1.64, 1.58)]
    [InlineData(95, 20, 40, 2.21, 2.11)]
    public void A_fluid_grows_and_needs_headspace_as_its_density_says(int strength, double cold, double hot, double growth, double headspace)
    {
        var density = OimlDensity.Of(strength);
        Assert.Equal(growth, 100 * Headspace.Growth(density, C(cold), C(hot)), 0.006);
        Assert.Equal(headspace, 100 * (1 - Headspace.FullestFill(density, C(cold), C(hot))), 0.011);
    }

    /// <summary>Worked by hand: ideal gas, Antoine vapour pressures, rigid glass.</summary>
    [Theory]
    [InlineData(0, 0.02, 41, 51)]
    [InlineData(0, 0.03, 29, 35)]
    [InlineData(0, 0.05, 21, 24)]
    [InlineData(0, 0.10, 15, 17)]
    [InlineData(70, 0.03, 176, 184)]
    [InlineData(70, 0.05, 73, 76)]
    [InlineData(70, 0.10, 36, 39)]
    public void A_sealed_jar_builds_up_the_pressure_worked_by_hand(int strength, double headspace, double from15To35, double from20To40)
    {
        Assert.Equal(from15To35, Gauge(strength, headspace, 15, 35)!.Value.Kilopascals, Math.Max(1, 0.01 * from15To35));
        Assert.Equal(from20To40, Gauge(strength, headspace, 20, 40)!.Value.Kilopascals, Math.Max(1, 0.01 * from20To40));
    }

    [Fact]
    public void Two_percent_over_alcohol_bursts_the_jar_or_its_seal()
    {
        Assert.True(Gauge(70, 0.02, 15, 35) is null or { Kilopascals: > 1000 });
        Assert.Null(Gauge(70, 0.015, 15, 35));
    }

    /// <summary>Van Laar and Antoine at 25 °C, worked by hand: ethanol and water over 50, 70, 80 and 95 % by volume.</summary>
    [Theory]
    [InlineData(0.424257, 3.61, 2.73)]
    [InlineData(0.623861, 4.39, 2.51)]
    [InlineData(0.734800, 4.93, 2.28)]
    [InlineData(0.924076, 6.59, 1.15)]
    public void Both_vapours_over_alcohol_come_out(double massFraction, double ethanol, double water)
    {
        var vapour = Vapour.OverMixture(massFraction, 25);
        Assert.Equal(ethanol, vapour.Ethanol, 0.02);
        Assert.Equal(water, vapour.Water, 0.02);
    }

    private static Pressure? Gauge(int strength, double headspace, double cold, double hot)
    {
        Func<double, double> vapour = strength == 0
            ? Vapour.Water
            : t => Vapour.OverMixture(0.623861, t) is var both ? both.Ethanol + both.Water : 0;
        return Headspace.GaugePressure(headspace, OimlDensity.Of(strength), vapour, C(cold), C(hot));
    }

    private static Temperature C(double degrees) => Temperature.FromDegreesCelsius(degrees);
}
