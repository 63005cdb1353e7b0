using Protocolist.Fluids;
using Protocolist.Specimens;

namespace Protocolist.Tests.Specimens;

/// <summary>
/// Flesh of 1050 kg/m³ floats in 10 % formalin with 3.3 % of air and in 70 % ethanol with 15.6 %: by the densities. What holds air and how much: common
/// practice.
/// </summary>
public class FloatingTests
{
    private static Floating Of(string group) => Floating.Of(Kinds.Bundled.Find(group)!);

    private static double In(string fluid) => Fluid.Read(fluid).Value!.DensityAt(UnitsNet.Temperature.FromDegreesCelsius(20)).KilogramsPerCubicMeter;

    [Theory]
    [InlineData("bird", "formalin 10 %", true)]
    [InlineData("bird", "ethanol 70 %vol", true)]
    [InlineData("mammal", "formalin 10 %", true)]
    [InlineData("mammal", "ethanol 70 %vol", false)]
    [InlineData("bony-fish", "formalin 10 %", true)]
    [InlineData("bony-fish", "ethanol 70 %vol", false)]
    [InlineData("insect", "ethanol 80 %vol", true)]
    [InlineData("insect-larva", "ethanol 80 %vol", false)]
    [InlineData("shark", "formalin 10 %", false)]
    [InlineData("flatfish", "formalin 10 %", false)]
    [InlineData("sea-urchin", "formalin 10 %", false)]
    [InlineData("jellyfish", "formalin 10 %", false)]
    public void A_body_floats_by_its_flesh_and_its_air(string group, string fluid, bool floats) => Assert.Equal(floats, Of(group).FloatsIn(In(fluid)));

    /// <summary>A gull of 1 kg at 884 kg/m³ displaces 1.131 L, 1.148 kg of formalin: 148 g of lift; glass of 2500 kg/m³ loses 0.406 of its weight in it.</summary>
    [Fact]
    public void A_gull_of_1_kg_takes_250_g_of_glass() => Assert.Equal(0.249, Floating.GlassKg(1, 884, 1015), 0.002);

    [Fact]
    public void Pierced_and_emptied_a_fish_sinks_and_a_bird_does_not()
    {
        Assert.False(Of("bony-fish").FloatsEmptiedIn(In("formalin 10 %")));
        Assert.True(Of("bird").FloatsEmptiedIn(In("formalin 10 %")));
    }

    [Fact]
    public void Eggs_of_a_fish_have_no_swim_bladder() => Assert.False(Floating.Of(BodyMeasure.Of(new Specimen
    {
        Id = "x",
        Group = "bony-fish",
        Mass = UnitsNet.Mass.FromMilligrams(2),
        LifeStage = LifeStage.Egg,
    }).Value!).FloatsIn(In("formalin 10 %")));

    [Fact]
    public void More_air_is_lighter() => Assert.All(Kinds.Bundled.Groups, g =>
    {
        var floating = Floating.Of(g);
        Assert.True(floating.LowKgPerM3 <= floating.NominalKgPerM3 && floating.NominalKgPerM3 <= floating.HighKgPerM3, g.Id);
        Assert.InRange(floating.NominalKgPerM3, 700, 2200);
    });
}
