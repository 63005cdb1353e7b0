using Protocolist.Planning.Comparing;
using Protocolist.Plans;
using Protocolist.Specimens;
using static Protocolist.Tests.Planning.PlanFixture;

namespace Protocolist.Tests.Planning.Comparing;

/// <summary>What is published of shrinkage and colour, for the fluids and the animal that it was published of.</summary>
public class KeepingRemarksTests
{
    private const string Larvae = "fish larvae come out at down to 90.6 % of their live length (Tucker and Chester 1984, Copeia)";
    private const string SmallFish = "small fish of 32 to 82 mm lost 2.48 mm of standard length in 70 % ethanol (median; 3.86 mm at most after a year): measure before fixing (Grant and Archdeacon 2021)";
    private const string Lizards = "lizards lost 3.5 % of snout-vent length in ten years: measure before fixing (Maayan et al., Anolis sagrei)";
    private const string Isopropanol = "isopropanol shrinks more than ethanol, layers when it is not mixed, and may decalcify below 50 % (Simmons, natural-history collections list, 2009)";
    private const string Unfixed = "alcohol alone does not fix: it shrinks, and histology is lost (Simmons, natural-history collections list, 2009)";
    private const string Strong = "above 80 % alcohol specimens turn stiff and appendages drop (Michonneau 2017)";
    private const string InFormalin = "kept in formalin it stays supple in form but DNA is lost: take tissue first (common practice)";
    private const string Borax = "borax clears pigment in time (Tucker and Chester 1984, Copeia)";
    private const string SeaWater = "buffered sea-water formalin bleaches (Tucker and Chester 1984, Copeia)";
    private const string Fades = "colour fades in every fluid: photograph first (Allen, Marine Fishes of South-East Asia; Michonneau 2017)";

    private static string[] Of(string group, string? fix, string? kept, LifeStage? stage = null)
    {
        var stages = (fix is null ? "" : $"  - {{stage: immerse, id: fix, fluid: {fix}, ratio: 10, last: 24 h}}\n") + (kept is null ? "  - {stage: task, id: look, last: 1 h}\n" : $"  - {{stage: house, id: house, fluid: {kept}, ratio: 3}}\n");
        Plan plan = Plan(Mammal("30 g") with { Group = group, LifeStage = stage }, Shelf(("one", $"{{group: {group}}}", "stages:\n" + stages))).Value!;
        return KeepingRemarks.Of(plan, Kinds.Bundled).Texts();
    }

    [Fact]
    public void Fixed_and_kept_in_formalin() => Assert.Equal([InFormalin, Fades], Of("mammal", "formalin 10 %", "formalin 10 %"));

    [Fact]
    public void Fixed_in_formalin_and_kept_in_ethanol() => Assert.Equal([Fades], Of("mammal", "formalin 10 %", "ethanol 70 %vol"));

    [Fact]
    public void Never_fixed() => Assert.Equal([Unfixed, Fades], Of("mammal", null, "ethanol 70 %vol"));

    [Theory]
    [InlineData("80", false)]
    [InlineData("81", true)]
    [InlineData("95", true)]
    public void Strong_alcohol_above_80_percent(string percent, bool strong) => Assert.Equal(strong ? [Unfixed, Strong, Fades] : [Unfixed, Fades], Of("mammal", "ethanol 70 %vol", $"ethanol {percent} %vol"));

    [Fact]
    public void Isopropanol_anywhere() => Assert.Equal([Isopropanol, Fades], Of("mammal", "formalin 10 %", "isopropanol 50 %vol"));

    [Fact]
    public void Borax_and_sea_water()
    {
        Assert.Equal([Borax, Fades], Of("mammal", "borax-buffered formalin 10 %", "ethanol 70 %vol"));
        Assert.Equal([SeaWater, Fades], Of("mammal", "sea-water formalin 10 %", "ethanol 70 %vol"));
    }

    [Fact]
    public void Fish_in_ethanol_and_fish_larvae_in_formalin()
    {
        Assert.Equal([SmallFish, Fades], Of("bony-fish", "formalin 10 %", "ethanol 70 %vol"));
        Assert.Equal([Larvae, Fades], Of("bony-fish", "formalin 10 %", "ethanol 70 %vol", LifeStage.Larva));
        Assert.Equal([SmallFish, Unfixed, Fades], Of("bony-fish", null, "ethanol 70 %vol", LifeStage.Larva));
        Assert.Equal([Isopropanol, Fades], Of("bony-fish", "formalin 10 %", "isopropanol 50 %vol"));
        Assert.Equal([InFormalin, Fades], Of("bony-fish", "formalin 10 %", "formalin 10 %", LifeStage.Adult));
    }

    [Fact]
    public void Lizards_and_nothing_of_them_for_snakes()
    {
        Assert.Equal([Lizards, Fades], Of("lizard", "formalin 10 %", "ethanol 70 %vol"));
        Assert.Equal([Fades], Of("snake", "formalin 10 %", "ethanol 70 %vol"));
    }

    [Fact]
    public void What_is_not_kept_in_fluid_fades_in_none() => Assert.Empty(Of("mammal", "formalin 10 %", null));
}
