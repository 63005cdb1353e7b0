using Protocolist.Fluids;
using Protocolist.Fluids.Densities;
using Protocolist.Fluids.Mixing;
using UnitsNet;

namespace Protocolist.Tests.Fluids;

public class JarStrengthTests
{
    private static readonly Temperature Twenty = Temperature.FromDegreesCelsius(20);
    private static readonly StockFluid Strong = new(Fluid.Ethanol(96));

    [Fact]
    public void A_jar_with_room_is_raised_without_drawing_off()
    {
        var result = JarStrength.Bring(Fluid.Ethanol(62), Volume.FromLiters(1), Fluid.Ethanol(70), Strong, Volume.FromLiters(1), Twenty).Value!;
        Assert.Equal(Volume.Zero, result.Draw);
        AssertEndsAt(70, 62, 1, result);
    }

    [Fact]
    public void A_full_jar_is_raised_with_the_least_drawn_off()
    {
        var result = JarStrength.Bring(Fluid.Ethanol(62), Volume.FromLiters(1), Fluid.Ethanol(70), Strong, Volume.Zero, Twenty).Value!;
        Assert.InRange(result.Draw.Milliliters, 200, 260);
        AssertEndsAt(70, 62, 1, result);
        Assert.Equal(1000, result.Result.Milliliters, 0.5);
        // Drawing off a little less would not have sufficed: the jar is full to the brim.
        Assert.Contains("draw off", result.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_specimens_own_fluid_has_to_be_raised_too()
    {
        var alone = JarStrength.Bring(Fluid.Ethanol(62), Volume.FromLiters(1), Fluid.Ethanol(70), Strong, Volume.FromLiters(1), Twenty).Value!;
        var filled = JarStrength.Bring(Fluid.Ethanol(62), Volume.FromLiters(1), Fluid.Ethanol(70), Strong, Volume.FromLiters(1), Twenty, Volume.FromLiters(0.5)).Value!;
        Assert.Equal(1.5, filled.Add / alone.Add, 1e-9);
    }

    [Fact]
    public void Too_strong_a_jar_is_lowered_with_water()
    {
        var result = JarStrength.Bring(Fluid.Ethanol(80), Volume.FromLiters(1), Fluid.Ethanol(70), new(Fluid.DistilledWater), Volume.FromLiters(1), Twenty).Value!;
        // 80 to 70 %vol takes 15.31 mL of water to 100 mL (computed from OIML R 22).
        Assert.Equal(153.1, result.Add.Milliliters, 0.2);
    }

    [Theory]
    [InlineData("ethanol 62 %vol", "ethanol 70 %vol", "ethanol 65 %vol", "target-too-strong")]
    [InlineData("ethanol 80 %vol", "ethanol 70 %vol", "ethanol 96 %vol", "target-out-of-reach")]
    [InlineData("ethanol 62 %vol", "ethanol 70 %vol", "isopropanol 99 %vol", "mixed-alcohols")]
    [InlineData("ethanol 80 %vol", "ethanol 70 %vol", "tap water", "water-unfit-for-alcohol")]
    [InlineData("borax-buffered formalin 8 %", "borax-buffered formalin 10 %", "neutral buffered formalin 20 %", "mixed-buffering")]
    public void What_cannot_be_done_is_a_finding(string inJar, string target, string stock, string id)
    {
        var result = JarStrength.Bring(Fluid.Read(inJar).Value!, Volume.FromLiters(1), Fluid.Read(target).Value!, new(Fluid.Read(stock).Value!), Volume.FromLiters(1), Twenty);
        Assert.Equal(id, Assert.Single(result.Findings).Id);
    }

    [Fact]
    public void A_full_jar_that_is_mostly_specimen_cannot_be_raised_at_once() =>
        Assert.Equal("target-out-of-reach", Assert.Single(JarStrength.Bring(Fluid.Ethanol(50), Volume.FromMilliliters(100), Fluid.Ethanol(70), Strong, Volume.Zero, Twenty, Volume.FromLiters(1)).Findings).Id);

    private static void AssertEndsAt(double percent, double from, double litres, JarCorrection result)
    {
        Fluid jar = Fluid.Ethanol(from), strong = Strong.Fluid;
        double left = (litres - result.Draw.Liters) * jar.DensityAt(20), added = result.Add.Liters * strong.DensityAt(20);
        var p = (left * jar.EthanolMassPercent!.Value + added * strong.EthanolMassPercent!.Value) / (left + added) / 100;
        Assert.Equal(percent, 100 * EthanolWater.VolumeFraction(p), 0.01);
    }
}
