using Protocolist.Specimens;
using Protocolist.Specimens.Measuring;

namespace Protocolist.Tests.Reference;

/// <summary>Length-mass relations against the figures that their publications print or that follow from their coefficients.</summary>
public class LengthMassReferenceTests
{
    // Arithmetic means of FishBase a and b per species (open table of species length-weight parameters), before correction.
    [Theory]
    [InlineData("Gadus morhua", 100, 9.3)]
    [InlineData("Gadus morhua", 500, 1320)]
    [InlineData("Clupea harengus", 200, 75)]
    [InlineData("Scomber scombrus", 300, 285)]
    [InlineData("Pleuronectes platessa", 300, 322)]
    [InlineData("Scyliorhinus canicula", 500, 455)]
    [InlineData("Squalus acanthias", 500, 690)]
    public void Means_of_FishBase_records(string species, double lengthMm, double massG) =>
        Assert.InRange(SpeciesLengthMass.Find(species)!.PrintedMassG(lengthMm) / massG, 0.99, 1.01);

    // Standard-weight equations log10 W = i + s log10 TL, as tabulated in the FSA package.
    [Theory]
    [InlineData("Salmo trutta", 300, 292)]
    [InlineData("Oncorhynchus mykiss", 500, 1376)]
    [InlineData("Esox lucius", 500, 830)]
    [InlineData("Cyprinus carpio", 200, 120)]
    [InlineData("Perca flavescens", 300, 412)]
    [InlineData("Micropterus salmoides", 300, 380)]
    [InlineData("Sander vitreus", 500, 1348)]
    [InlineData("Lepomis macrochirus", 200, 180)]
    public void Standard_weight_curves(string species, double lengthMm, double massG) =>
        Assert.InRange(SpeciesLengthMass.Find(species)!.PrintedMassG(lengthMm) / massG, 0.99, 1.01);

    // Pough 1980, Meiri 2010, as coded in the TrenchR package, m(g) = A L(m)^B.
    [Theory]
    [InlineData("lizard", 60, 3.3)]
    [InlineData("lizard", 100, 15.6)]
    [InlineData("lizard", 200, 126)]
    [InlineData("salamander", 60, 3.5)]
    [InlineData("salamander", 100, 15.7)]
    [InlineData("frog", 40, 5.4)]
    [InlineData("frog", 60, 19.9)]
    [InlineData("frog", 100, 104)]
    [InlineData("snake", 400, 45)]
    [InlineData("snake", 600, 155)]
    [InlineData("snake", 1000, 724)]
    [InlineData("turtle", 100, 191)]
    [InlineData("turtle", 200, 1233)]
    public void Reptiles_and_amphibians(string group, double lengthMm, double massG) =>
        Assert.InRange(Kinds.Bundled.Find(group)!.LengthMass!.MassG(lengthMm) / massG, 0.98, 1.02);

    // FishBase manual, page LENGTH-WEIGHT table: a normal spindle-shaped fish of 10 cm weighs about 10 g.
    [Fact]
    public void Ordinary_fish_of_10_cm_weighs_about_10_g() =>
        Assert.Equal(10, Kinds.Bundled.Find("bony-fish")!.LengthMass!.MassG(100), 0.1);

    // From memory: an eel of 50 cm weighs about 230 g; the mean of FishBase records would say 385 g.
    [Fact]
    public void Eel_of_50_cm_weighs_about_230_g() =>
        Assert.Equal(230, Kinds.Bundled.Find("eel")!.LengthMass!.MassG(500), 2.0);

    [Fact]
    public void LengthMm_undoes_MassG()
    {
        var relation = Kinds.Bundled.Find("frog")!.LengthMass!;
        Assert.Equal(73, relation.LengthMm(relation.MassG(73)), 9);
    }

    // Arvanitidis and others 2002, Illex coindetii, Bulletin of Marine Science 71(1): up to 360 mm of mantle and 1630 g; no squid of that length is much heavier.
    [Fact]
    public void Squid_of_360_mm_does_not_outweigh_the_heaviest_on_record()
    {
        var mass = BodyMeasure.Of(new Specimen { Id = "squid", Group = "squid", MantleLength = UnitsNet.Length.FromMillimeters(360) }).Value!.Mass;

        Assert.InRange(mass.Nominal.Grams, 1630.0 / 3, 1630);
        Assert.InRange(1630, mass.Nominal.Grams, mass.High.Grams);
    }

    // From memory, as field guides and keepers give them: a fair-sized animal lies within the range that its length leads to.
    [Theory]
    [InlineData("bird", 95, 9)]
    [InlineData("bird", 250, 100)]
    [InlineData("bird", 550, 1100)]
    [InlineData("bird", 600, 1000)]
    [InlineData("crocodilian", 1000, 3000)]
    [InlineData("crocodilian", 2000, 30_000)]
    [InlineData("squid", 200, 185)]
    public void Mass_of_an_ordinary_animal_is_within_what_its_length_leads_to(string group, double lengthMm, double massG)
    {
        var length = UnitsNet.Length.FromMillimeters(lengthMm);
        var specimen = new Specimen { Id = "one", Group = group };
        var mass = BodyMeasure.Of(group == "squid" ? specimen with { MantleLength = length } : specimen with { TotalLength = length }).Value!.Mass;

        Assert.InRange(massG, mass.Low.Grams, mass.High.Grams);
    }
}
