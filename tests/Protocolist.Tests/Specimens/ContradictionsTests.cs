using Protocolist.Findings;
using Protocolist.Specimens;
using UnitsNet;

namespace Protocolist.Tests.Specimens;

public class ContradictionsTests
{
    private static readonly Specimen Snake = new() { Id = "s", Group = "snake", SnoutVentLength = Length.FromMillimeters(730), Mass = Mass.FromGrams(9) };

    [Fact]
    public void Check_tells_a_contradiction_at_line_and_column()
    {
        var found = SpecimenReader.Check(new("vole.yaml", "format: 1\nspecimen: V-1\ngroup: vole\nhead-body-length: 11 cm\nmass: 270 g\n"), Kinds.Bundled);
        var finding = Assert.Single(found);
        Assert.Equal(("mass-against-length", 5, 1), (finding.Id, finding.Where.Line, finding.Where.Column));
    }

    [Fact]
    public void A_body_that_is_not_fresh_is_judged_more_widely_and_never_told_not_to_start()
    {
        var vole = new Specimen { Id = "v", Group = "vole", HeadBodyLength = Length.FromMillimeters(110), Mass = Mass.FromGrams(36.4 * 4) };
        Assert.Equal(Severity.Warning, Assert.Single(BodyMeasure.Of(vole).Findings).Severity);
        Assert.Empty(BodyMeasure.Of(vole with { Condition = Condition.Frozen }).Findings);
        Assert.Equal(Severity.Error, Assert.Single(BodyMeasure.Of(vole with { Mass = vole.Mass * 100 }).Findings).Severity);
        Assert.Equal(Severity.Warning, Assert.Single(BodyMeasure.Of(vole with { Mass = vole.Mass * 100, Condition = Condition.Thawed }).Findings).Severity);
    }

    [Fact]
    public void Finer_words_are_named_where_the_group_is_wide()
    {
        var finding = Assert.Single(BodyMeasure.Of(Snake).Findings);
        Assert.Contains("thread-snake", finding.Remedy.ToString(), StringComparison.Ordinal);
        Assert.Contains("tree-snake", finding.Remedy.ToString(), StringComparison.Ordinal);
        Assert.Empty(BodyMeasure.Of(Snake with { Group = "thread-snake" }).Findings);
        Assert.Empty(BodyMeasure.Of(Snake with { ScientificName = "Imantodes cenchoa" }).Findings);
    }

    [Fact]
    public void A_mass_given_as_a_range_stays_one()
    {
        var read = SpecimenReader.Read(new("v.yaml", "format: 1\nspecimen: V-1\ngroup: vole\nmass: 20 to 40 g\n")).Value!;
        Assert.Equal((30, 10), (read.Mass!.Value.Grams, read.MassMargin!.Value.Grams));
        var mass = BodyMeasure.Of(read).Value!.Mass;
        Assert.Equal((20, 30, 40, false), (mass.Low.Grams, mass.Nominal.Grams, mass.High.Grams, mass.IsMeasured));

        // 30 g lies beyond the curve of a vole of 70 mm, 20 g does not.
        Assert.Empty(BodyMeasure.Of(read with { Mass = Mass.FromGrams(30), MassMargin = Mass.FromGrams(10), HeadBodyLength = Length.FromMillimeters(70) }).Findings);
        Assert.Single(BodyMeasure.Of(read with { MassMargin = null, HeadBodyLength = Length.FromMillimeters(70) }).Findings);
        Assert.Contains(BodyMeasure.Of(read with { MassMargin = Mass.FromGrams(40) }).Findings, f => f.Id == "mass-margin");
    }

    // "Pounds written as kilograms" of a shrimp of 1.5 g: nobody weighs in thousandths of a pound.
    [Fact]
    public void Only_a_slip_that_a_person_makes_is_offered()
    {
        var prawn = new Specimen { Id = "p", Group = "prawn", CarapaceLength = Length.FromMillimeters(9), Mass = Mass.FromGrams(1.5) };
        Assert.DoesNotContain("pounds", Assert.Single(BodyMeasure.Of(prawn).Findings).Remedy.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Proportions_that_are_assumed_judge_nobody()
    {
        var slug = new Specimen { Id = "s", Group = "sea-slug", Mass = Mass.FromGrams(2), Length = Length.FromMillimeters(200), Thickness = Length.FromMillimeters(40) };
        Assert.Empty(BodyMeasure.Of(slug).Findings);
    }

    [Fact]
    public void Forearm_of_a_bat_tells_its_mass_and_its_head_body_length()
    {
        var bat = BodyMeasure.Of(new Specimen { Id = "b", Group = "vesper-bat", ForearmLength = Length.FromMillimeters(31.5) }).Value!;
        Assert.InRange(bat.Mass.Nominal.Grams, 4.5, 5.5);
        Assert.Equal(31.5 / 0.69, bat.Length.Nominal.Millimeters, 0.1);
    }
}
