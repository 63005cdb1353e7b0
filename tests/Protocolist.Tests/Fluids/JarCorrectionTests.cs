using System.Globalization;
using System.Text;
using Protocolist.Fluids;
using Protocolist.Fluids.Mixing;
using UnitsNet;

namespace Protocolist.Tests.Fluids;

/// <summary>Jars brought to another strength: amounts worked apart from this code with OIML R 22, and the words a person is told.</summary>
public class JarCorrectionTests
{
    private static readonly Temperature Twenty = Temperature.FromDegreesCelsius(20);

    // %vol in the jar, wanted, added (0 is water); litres in the jar, room, in the tissue; then mL drawn off, mL and g added, mL in the jar.
    [Theory]
    [InlineData(62, 70, 96, 1, 1, 0, 0.000, 295.402, 238.5135, 1290.837)]
    [InlineData(62, 70, 96, 1, 0, 0, 225.309, 228.845, 184.7743, 1000.000)]
    [InlineData(62, 70, 96, 1, 0.1, 0, 147.840, 251.730, 203.2517, 1100.000)]
    [InlineData(62, 70, 96, 1, 0.5, 0.5, 0.000, 443.103, 357.7702, 1436.256)]
    [InlineData(62, 70, 96, 1, 0, 0.5, 337.963, 343.268, 277.1614, 1000.000)]
    [InlineData(62, 70, 96, 1, 0.2909, 0, 0.000, 295.402, 238.5135, 1290.837)]
    [InlineData(62, 70, 96, 1, 0.2898, 0, 0.804, 295.165, 238.3218, 1289.800)]
    [InlineData(80, 70, 0, 1, 1, 0, 0.000, 153.075, 152.8008, 1142.857)]
    [InlineData(80, 70, 0, 1, 0, 0, 125.000, 133.941, 133.7007, 1000.000)]
    [InlineData(80, 70, 50, 2, 0.1, 0.3, 710.180, 816.288, 759.2639, 2100.000)]
    public void A_jar_is_brought_to_its_strength_as_worked(double has, double wants, double adds, double litres, double room, double tissue, double draw, double add, double grams, double result)
    {
        var stock = new StockFluid(adds == 0 ? Fluid.DistilledWater : Fluid.Ethanol(adds));
        var done = JarStrength.Bring(Fluid.Ethanol(has), Volume.FromLiters(litres), Fluid.Ethanol(wants), stock, Volume.FromLiters(room), Twenty, Volume.FromLiters(tissue)).Value!;
        Assert.Equal(draw, done.Draw.Milliliters, 0.01);
        Assert.Equal(add, done.Add.Milliliters, 0.01);
        Assert.Equal(grams, done.AddMass.Grams, 0.01);
        Assert.Equal(result, done.Result.Milliliters, 0.01);
        Assert.Equal((Fluid.Ethanol(wants), stock.Name), (done.Target, done.Stock));
    }

    [Fact]
    public void A_jar_that_has_its_strength_is_left_alone()
    {
        var done = JarStrength.Bring(Fluid.Ethanol(70), Volume.FromLiters(1), Fluid.Ethanol(70), new(Fluid.Ethanol(96)), Volume.Zero, Twenty).Value!;
        Assert.Equal((Volume.Zero, Volume.Zero, Mass.Zero, Volume.FromLiters(1)), (done.Draw, done.Add, done.AddMass, done.Result));
        // 70 %vol is 62.3861 % by mass: 62.386 is the same within a hundred-thousandth, 62.388 is not.
        Assert.Equal(Volume.Zero, To(62.386).Add);
        Assert.True(To(62.388).Add > Volume.Zero);

        static JarCorrection To(double massPercent) =>
            JarStrength.Bring(Fluid.Ethanol(70), Volume.FromLiters(1), Fluid.Ethanol(massPercent, StrengthBasis.Mass), new(Fluid.Ethanol(96)), Volume.FromLiters(1), Twenty).Value!;
    }

    [Fact]
    public void Warm_fluid_is_weighed_at_its_own_density()
    {
        var thirty = Temperature.FromDegreesCelsius(30);
        var done = JarStrength.Bring(Fluid.Ethanol(62), Volume.FromLiters(1), Fluid.Ethanol(70), new(Fluid.Ethanol(96)), Volume.FromLiters(1), thirty).Value!;
        var cold = JarStrength.Bring(Fluid.Ethanol(62), Volume.FromLiters(1), Fluid.Ethanol(70), new(Fluid.Ethanol(96)), Volume.FromLiters(1), Twenty).Value!;
        Assert.Equal(cold.AddMass.Grams * Fluid.Ethanol(62).DensityAt(30) / Fluid.Ethanol(62).DensityAt(20), done.AddMass.Grams, 1e-6);
        Assert.Equal(done.AddMass.Kilograms / Fluid.Ethanol(96).DensityAt(30), done.Add.CubicMeters, 1e-12);
    }

    [Fact]
    public void What_to_do_with_a_jar_is_told_as_read_and_kept()
    {
        (string Jar, string Target, string Stock, double Litres, double Room, double Tissue)[] jars =
        [
            ("ethanol 62 %vol", "ethanol 70 %vol", "ethanol 96 %vol", 1, 1, 0),
            ("ethanol 62 %vol", "ethanol 70 %vol", "ethanol 96 %vol", 1, 0, 0),
            ("ethanol 80 %vol", "ethanol 70 %vol", "distilled water", 1, 1, 0),
            ("ethanol 80 %vol", "ethanol 70 %vol", "water", 1, 1, 0),
            ("isopropanol 45 %vol", "isopropanol 50 %vol", "isopropanol 99 %vol", 2, 1, 0.2),
            ("formalin 8 %", "formalin 10 %", "formaldehyde stock 37 %mass", 1, 1, 0),
            ("borax-buffered formalin 8 %", "borax-buffered formalin 10 %", "formaldehyde stock 37 %mass", 1, 1, 0),
            ("neutral buffered formalin 12 %", "neutral buffered formalin 10 %", "tap water", 1, 1, 0),
            ("ethanol 62 %vol", "ethanol 70 %vol", "ethanol 65 %vol", 1, 1, 0),
            ("ethanol 62 %vol", "ethanol 70 %vol", "ethanol 70 %vol", 1, 1, 0),
            ("ethanol 80 %vol", "ethanol 70 %vol", "ethanol 96 %vol", 1, 1, 0),
            ("ethanol 62 %vol", "ethanol 70 %vol", "isopropanol 99 %vol", 1, 1, 0),
            ("ethanol 62 %vol", "isopropanol 70 %vol", "distilled water", 1, 1, 0),
            ("formalin 10 %", "ethanol 70 %vol", "ethanol 96 %vol", 1, 1, 0),
            ("ethanol 80 %vol", "ethanol 70 %vol", "tap water", 1, 1, 0),
            ("ethanol 80 %vol", "ethanol 70 %vol", "sea water", 1, 1, 0),
            ("sea water", "ethanol 70 %vol", "ethanol 96 %vol", 1, 1, 0),
            ("ethanol 70 %vol", "water", "water", 1, 1, 0),
            ("borax-buffered formalin 8 %", "borax-buffered formalin 10 %", "neutral buffered formalin 20 %", 1, 1, 0),
            ("borax-buffered formalin 8 %", "neutral buffered formalin 10 %", "formaldehyde stock 37 %mass", 1, 1, 0),
            ("neutral buffered formalin 12 %", "neutral buffered formalin 10 %", "sea water", 1, 1, 0),
            ("formalin 12 %", "formalin 10 %", "sea water", 1, 1, 0),
            ("sea-water formalin 12 %", "sea-water formalin 10 %", "distilled water", 1, 1, 0),
            ("sea-water formalin 12 %", "sea-water formalin 10 %", "sea water", 1, 1, 0),
            ("ethanol 50 %vol", "ethanol 70 %vol", "ethanol 96 %vol", 0.1, 0, 1),
            ("ethanol 62 %vol", "ethanol 70 %vol", "ethanol 96 %vol", 0, 1, 0),
            ("ethanol 62 %vol", "ethanol 70 %vol", "ethanol 96 %vol", 1, -0.001, 0),
            ("ethanol 62 %vol", "ethanol 70 %vol", "ethanol 96 %vol", 1, 0, -0.001),
        ];
        var text = new StringBuilder();
        foreach (var (jar, target, stock, litres, room, tissue) in jars)
        {
            var done = JarStrength.Bring(Fluid.Read(jar).Value!, Volume.FromLiters(litres), Fluid.Read(target).Value!, new(Fluid.Read(stock).Value!), Volume.FromLiters(room), Twenty, Volume.FromLiters(tissue));
            text.Append(CultureInfo.InvariantCulture, $"{litres} L of {jar} to {target} with {stock}, room for {room} L, {tissue} L in the tissue\n");
            if (done.Value is { } way) text.Append(CultureInfo.InvariantCulture, $"  {way}; then {way.Result.Milliliters:0} mL\n");
            foreach (var f in done.Findings) text.Append(CultureInfo.InvariantCulture, $"  {f.Severity.ToString().ToLowerInvariant()} {f.Id}\n    {f.Message.ToString()}\n    remedy: {f.Remedy.ToString()}\n");
        }

        KeptText.Holds("Fluids/kept/jar-strength.txt", text.ToString());
    }
}
