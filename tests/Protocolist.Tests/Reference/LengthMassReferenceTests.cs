using Protocolist.Specimens;
using Protocolist.Specimens.Measuring;
using static Protocolist.Specimens.LengthKind;

namespace Protocolist.Tests.Reference;

/// <summary>Length-mass relations against the figures that their publications print or that follow from their coefficients.</summary>
public class LengthMassReferenceTests
{
    // Arithmetic means of FishBase a and b per species (open table of species length-weight parameters), over 1.15.
    [Theory]
    [InlineData("Gadus morhua", 100, 9.3)]
    [InlineData("Gadus morhua", 500, 1320)]
    [InlineData("Clupea harengus", 200, 75)]
    [InlineData("Scomber scombrus", 300, 285)]
    [InlineData("Pleuronectes platessa", 300, 322)]
    [InlineData("Scyliorhinus canicula", 500, 455)]
    [InlineData("Squalus acanthias", 500, 690)]
    public void Means_of_FishBase_records(string species, double lengthMm, double massG) =>
        Assert.InRange(RelationsByName.Find(species)!.MassG(lengthMm) * 1.15 / massG, 0.99, 1.01);

    // Standard-weight equations log10 W = i + s log10 TL, as tabulated in the FSA package, times 0.925.
    [Theory]
    [InlineData("Salmo trutta", 300, 292)]
    [InlineData("Oncorhynchus mykiss", 500, 1376)]
    [InlineData("Cyprinus carpio", 200, 120)]
    [InlineData("Micropterus salmoides", 300, 380)]
    public void Standard_weight_curves(string species, double lengthMm, double massG) =>
        Assert.InRange(RelationsByName.Find(species)!.MassG(lengthMm) / 0.925 / massG, 0.99, 1.01);

    // Single animals and curves of publications that the group's row was not fitted to lie within its accept factor: Pough 1980 as coded in TrenchR (frog,
    // salamander, turtle), FishBase manual (a spindle-shaped fish of 10 cm is about 10 g), keepers and field guides from memory for the rest.
    [Theory]
    [InlineData("frog", 60, 19.9)]
    [InlineData("salamander", 60, 3.5)]
    [InlineData("turtle", 200, 1233)]
    [InlineData("spindle-fish", 100, 10)]
    [InlineData("eel", 500, 230)]
    [InlineData("crocodilian", 2000, 30_000)]
    [InlineData("bird", 95, 9)]
    [InlineData("songbird", 250, 100)]
    [InlineData("gull", 600, 1000)]
    [InlineData("squid", 200, 185)]
    public void Group_accepts_what_others_printed(string group, double lengthMm, double massG)
    {
        var found = Kinds.Bundled.Find(group)!;
        var relation = found.RelationOf(found.Length)!;
        Assert.InRange(massG, relation.MassG(lengthMm) / relation.Accept, relation.MassG(lengthMm) * relation.Accept);
    }

    // Points of the rows' own sources: J. M. Diaz et al. 2001 (pink shrimp), Baggio 2011 (American lobster), Klaoudatos et al. 2013 (edible crab),
    // Froese, Thorson & Reyes 2014 (the four body forms at 30 cm), a sphere of density 1.04.
    [Theory]
    [InlineData("prawn", Carapace, 20, 6.28)]
    [InlineData("lobster", Carapace, 83, 446)]
    [InlineData("eel-like", Total, 300, 33.9)]
    [InlineData("pike-like", Total, 300, 158)]
    [InlineData("spindle-fish", Total, 300, 347)]
    [InlineData("deep-fish", Total, 300, 557)]
    [InlineData("embryo", EggDiameter, 5, 0.068)]
    public void Row_gives_what_its_source_gives(string group, LengthKind kind, double lengthMm, double massG) =>
        Assert.InRange(Kinds.Bundled.Find(group)!.RelationOf(kind)!.MassG(lengthMm) / massG, 0.98, 1.02);

    [Fact]
    public void LengthMm_undoes_MassG()
    {
        var relation = Kinds.Bundled.Find("frog")!.RelationOf(SnoutVent)!;
        Assert.Equal(73, relation.LengthMm(relation.MassG(73)), 9);
    }

    // Arvanitidis and others 2002, Illex coindetii, Bulletin of Marine Science 71(1): up to 360 mm of mantle and 1630 g, the heaviest on record.
    [Fact]
    public void Squid_of_360_mm_may_be_the_heaviest_on_record()
    {
        var squid = new Specimen { Id = "squid", Group = "squid", MantleLength = UnitsNet.Length.FromMillimeters(360) };
        Assert.InRange(BodyMeasure.Of(squid).Value!.Mass.Nominal.Grams, 1630.0 / 3, 1630);
        Assert.Empty(BodyMeasure.Of(squid with { Mass = UnitsNet.Mass.FromGrams(1630) }).Findings);
    }
}
