using Protocolist.Findings;
using Protocolist.Specimens;

namespace Protocolist.Tests.Specimens;

public class KindsTests
{
    public static TheoryData<string> Ids => [.. Kinds.Bundled.Groups.Select(g => g.Id)];

    [Theory]
    [InlineData("mammal")]
    [InlineData("bat")]
    [InlineData("bird")]
    [InlineData("snake")]
    [InlineData("lizard")]
    [InlineData("turtle")]
    [InlineData("crocodilian")]
    [InlineData("frog")]
    [InlineData("salamander")]
    [InlineData("amphibian-larva")]
    [InlineData("bony-fish")]
    [InlineData("flatfish")]
    [InlineData("eel")]
    [InlineData("shark")]
    [InlineData("ray")]
    [InlineData("lamprey")]
    [InlineData("decapod")]
    [InlineData("barnacle")]
    [InlineData("insect")]
    [InlineData("arachnid")]
    [InlineData("myriapod")]
    [InlineData("gastropod")]
    [InlineData("bivalve")]
    [InlineData("cephalopod")]
    [InlineData("polychaete")]
    [InlineData("earthworm")]
    [InlineData("leech")]
    [InlineData("flatworm")]
    [InlineData("nematode")]
    [InlineData("jellyfish")]
    [InlineData("hydroid")]
    [InlineData("anemone")]
    [InlineData("hard-coral")]
    [InlineData("octocoral")]
    [InlineData("ctenophore")]
    [InlineData("sponge")]
    [InlineData("bryozoan")]
    [InlineData("ascidian")]
    [InlineData("sea-star")]
    [InlineData("brittle-star")]
    [InlineData("crinoid")]
    [InlineData("sea-urchin")]
    [InlineData("sea-cucumber")]
    [InlineData("fish-larva")]
    [InlineData("embryo")]
    public void Find_knows_the_words_of_the_trade(string id)
    {
        var group = Kinds.Bundled.Find(id);
        Assert.NotNull(group);
        Assert.True(group.IsA("animal"));
        Assert.NotEqual(group.IsA("vertebrate"), group.IsA("invertebrate") || id == "embryo");
    }

    [Fact]
    public void Tree_has_one_top_and_every_group_once()
    {
        Assert.Single(Kinds.Bundled.Groups, g => g.Parent is null);
        Assert.Equal(Kinds.Bundled.Groups.Length, Kinds.Bundled.Groups.DistinctBy(g => g.Id).Count());
        Assert.All(Kinds.Bundled.Groups, g => Assert.Matches("^[a-z]+(-[a-z]+)*$", g.Id));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Region_shares_of_a_group_sum_to_the_whole(string id)
    {
        var group = Kinds.Bundled.Find(id)!;
        Assert.Equal(1, group.Regions.Sum(r => r.Share), 9);
        Assert.Equal(1, group.Regions.Max(r => r.Thickness), 9);
        Assert.Equal(group.Regions.Length, group.Regions.Select(r => r.Id).Distinct().Count());
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Bands_of_a_group_are_in_order_and_name_their_source(string id)
    {
        var group = Kinds.Bundled.Find(id)!;
        SourcedBand?[] bands = [group.DensityKgPerM3, group.WaterFraction, group.WholeUpToMm, group.DoseMlPerKg, group.TotalPerLength];
        Assert.All(bands.OfType<SourcedBand>(), b =>
        {
            Assert.True(b.Low > 0 && b.Low <= b.Nominal && b.Nominal <= b.High);
            Assert.NotEmpty(b.Source);
        });
        Assert.InRange(group.WaterFraction.High, 0.1, 0.99);
        Assert.NotEmpty(group.Shape.Source);
        Assert.True(group.Shape.Spread > 1);
        Assert.All(group.Regions, r => Assert.NotEmpty(r.Source));
        Assert.All(group.Cautions, c => Assert.NotEmpty(c.Source));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Relations_of_a_group_are_one_of_a_kind_and_in_order(string id)
    {
        var group = Kinds.Bundled.Find(id)!;
        Assert.Equal(group.LengthMass.Length, group.LengthMass.Select(r => r.Length).Distinct().Count());
        Assert.All(group.LengthMass, r =>
        {
            Assert.NotEmpty(r.Source);
            Assert.InRange(r.B, 1, 4.1);
            Assert.True(r.A > 0 && r.Within90 > 1);
            Assert.InRange(r.Accept, 1.3, 8);
        });

        // Nobody can be judged by a length that cannot be given.
        var lengths = group.OtherLengths.Select(o => o.Kind).Append(group.Length).Append(LengthKind.Total);
        Assert.All(group.LengthMass, r => Assert.Contains(r.Length, lengths));
    }

    // The shape and the length-mass relation are two ways to the same body: they must not part by more than either admits.
    [Theory]
    [MemberData(nameof(Ids))]
    public void Shape_and_length_relation_of_a_group_agree(string id)
    {
        var group = Kinds.Bundled.Find(id)!;
        if (group.RelationOf(group.Length) is not { } relation) return;
        var ml = relation.MassG(100) / group.DensityKgPerM3.Nominal * 1000;

        // Of the thickness: what a finer word tells of the mass for the length the shape of its parent takes in.
        Assert.InRange(
            group.Shape.HalfThicknessMm(ml, 100) / group.Shape.HalfThicknessMm(ml), 1 / Math.Pow(group.Shape.Spread, 2.5), Math.Pow(group.Shape.Spread, 2.5));
    }

    [Theory]
    [InlineData("Mammalia", "mammal")]
    [InlineData("Chiroptera", "bat")]
    [InlineData("Actinopterygii", "bony-fish")]
    [InlineData("Gastropoda", "gastropod")]
    [InlineData("holothuroidea", "sea-cucumber")]
    public void FindByTaxon_maps_exact_names(string taxon, string id) => Assert.Equal(id, Kinds.Bundled.FindByTaxon(taxon)?.Id);

    [Fact]
    public void Resolve_never_guesses_by_spelling_but_says_what_was_likely_meant()
    {
        var found = Kinds.Bundled.Resolve(null, "Chiropterra");
        Assert.Null(found.Value);
        var finding = Assert.Single(found.Findings);
        Assert.Equal("unknown-higher-taxon", finding.Id);
        Assert.Equal(Severity.Error, finding.Severity);
        Assert.Contains("Chiroptera", finding.Remedy.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Resolve_takes_the_more_specific_of_group_and_taxon()
    {
        Assert.Equal("bat", Kinds.Bundled.Resolve("mammal", "Chiroptera").Value?.Id);
        Assert.Equal("bat", Kinds.Bundled.Resolve("bat", "Mammalia").Value?.Id);
        Assert.Equal("bat", Kinds.Bundled.Resolve(null, "Chordata; Mammalia; Chiroptera").Value?.Id);
    }

    /// <summary>What lies in a taxon that means another group here is still what it is.</summary>
    [Theory]
    [InlineData(null, "Carnivora; Phocidae", "true-seal")]
    [InlineData("seal", "Carnivora", "seal")]
    [InlineData(null, "Cetartiodactyla; Cetacea", "whale")]
    [InlineData("slug", "Mollusca; Gastropoda", "slug")]
    [InlineData(null, "Cnidaria; Hydrozoa; Siphonophorae", "hydromedusa")]
    [InlineData("ray", "Rajidae", "skate")]
    public void Taxon_that_means_another_group_is_no_contradiction_to_what_lies_in_it(string? group, string taxa, string meant)
    {
        var resolved = Kinds.Bundled.Resolve(group, taxa);
        Assert.Empty(resolved.Findings);
        Assert.Equal(meant, resolved.Value!.Id);
    }

    [Theory]
    [InlineData("bird", "Chiroptera", "group-against-taxon")]
    [InlineData(null, "Aves, Mammalia", "group-against-taxon")]
    [InlineData("mamal", null, "unknown-group")]
    [InlineData(" ", null, "missing-group")]
    public void Resolve_finds_what_cannot_be(string? group, string? taxon, string id)
    {
        var found = Kinds.Bundled.Resolve(group, taxon);
        Assert.Null(found.Value);
        Assert.Equal(id, Assert.Single(found.Findings).Id);
    }

    [Fact]
    public void Cautions_come_down_from_the_parents()
    {
        var bat = Kinds.Bundled.Find("bat")!;
        Assert.Contains(bat.Cautions, c => c.Id == "rabies");
        Assert.Contains(bat.Cautions, c => c.Id == "mammal-zoonoses");
        Assert.Contains(bat.Cautions, c => c.Id == "not-sterile");
        Assert.Contains(Kinds.Bundled.Find("crocodilian")!.Cautions, c => c.Id == "cites" && c.IsLegal);
    }

    [Fact]
    public void Lime_and_jelly_are_known()
    {
        Assert.True(Kinds.Bundled.Find("bivalve")!.IsCalcareous);
        Assert.True(Kinds.Bundled.Find("octocoral")!.IsSpiculate);
        Assert.True(Kinds.Bundled.Find("jellyfish")!.IsGelatinous);
        Assert.False(Kinds.Bundled.Find("slug")!.IsCalcareous);
    }

    /// <summary>Another language lays its words over these by their ids.</summary>
    [Fact]
    public void Each_word_of_the_groups_has_an_id_of_its_own()
    {
        var words = Kinds.Bundled.Groups.SelectMany(g => (Phrase?[])
        [
            g.Name, .. g.Cautions.Select(c => c.Text), .. g.Regions.SelectMany(r => (Phrase?[])[r.Name, r.InjectAt, r.Cut?.Where]),
        ]).OfType<Phrase>().Distinct().ToList();
        Assert.True(words.Count > 200);
        Assert.Equal(words.Count, words.Select(w => w.Id).Distinct(StringComparer.Ordinal).Count());
        Assert.All(words, w => Assert.Empty(w.Places()));
        Assert.Equal("group.bony-fish", Kinds.Bundled.Find("bony-fish")!.Name.Id);
    }
}
