using Protocolist.Findings;
using Protocolist.Specimens;
using UnitsNet;

namespace Protocolist.Tests.Specimens;

public class BodyMeasureTests
{
    private static readonly Specimen Fish = new() { Id = "f", Group = "bony-fish", TotalLength = Length.FromCentimeters(20), Mass = Mass.FromGrams(85) };

    private static readonly Specimen Otter = new() { Id = "o", Group = "carnivore", Mass = Mass.FromKilograms(7) };

    [Fact]
    public void Of_a_weighed_animal_gives_volume_by_density_with_its_range()
    {
        var body = BodyMeasure.Of(Otter).Value!;
        Assert.True(body.Mass.IsMeasured);
        Assert.False(body.Volume.IsMeasured);
        Assert.Equal(6.796, body.Volume.Nominal.Liters, 0.001);
        Assert.True(body.Volume.Low < body.Volume.Nominal && body.Volume.Nominal < body.Volume.High);
        Assert.Contains("mass over", body.Volume.How.ToString(), StringComparison.Ordinal);
        Assert.NotEmpty(body.Volume.Source);
    }

    [Fact]
    public void Of_takes_displacement_before_mass()
    {
        var body = BodyMeasure.Of(Otter with { DisplacementVolume = Volume.FromLiters(7.1) }).Value!;
        Assert.True(body.Volume.IsMeasured);
        Assert.Equal(7.1, body.Volume.Nominal.Liters, 9);
    }

    [Fact]
    public void Of_takes_a_measured_thickness_before_any_reckoning()
    {
        var body = BodyMeasure.Of(Otter with { Thickness = Length.FromCentimeters(12) }).Value!;
        Assert.True(body.HalfThickness.IsMeasured);
        Assert.Equal(60, body.HalfThickness.Nominal.Millimeters, 9);
        Assert.Equal(60 * 0.47, body.Regions.Single(r => r.Region.Id == "hindlimbs").HalfThickness.Nominal.Millimeters, 6);
    }

    [Fact]
    public void Of_a_longer_body_of_the_same_mass_is_thinner()
    {
        var stout = BodyMeasure.Of(Otter with { Length = Length.FromCentimeters(55) }).Value!;
        var slender = BodyMeasure.Of(Otter with { Length = Length.FromCentimeters(70) }).Value!;
        Assert.True(slender.HalfThickness.Nominal < stout.HalfThickness.Nominal);
    }

    [Fact]
    public void Of_a_length_alone_reckons_the_rest_and_says_so()
    {
        var found = BodyMeasure.Of(Fish with { Mass = null });
        Assert.True(found.IsSound);
        Assert.Equal("size-reckoned", Assert.Single(found.Findings).Id);
        Assert.False(found.Value.Mass.IsMeasured);
        Assert.InRange(found.Value.Mass.Nominal.Grams, 70, 95);
        Assert.True(found.Value.Mass.High / found.Value.Mass.Low > 3);
    }

    [Fact]
    public void Of_regions_shares_the_whole_out()
    {
        var body = BodyMeasure.Of(Otter).Value!;
        Assert.Equal(body.Volume.Nominal.Milliliters, body.Regions.Sum(r => r.Volume.Nominal.Milliliters), 6);
        Assert.Equal(body.Mass.Nominal.Grams, body.Regions.Sum(r => r.Mass.Nominal.Grams), 6);
    }

    [Fact]
    public void Of_a_lot_multiplies_the_volume_and_keeps_the_thickness_of_one()
    {
        var one = BodyMeasure.Of(Fish).Value!;
        var lot = BodyMeasure.Of(Fish with { Count = 12 }).Value!;
        Assert.Equal(12 * one.Volume.Nominal.Milliliters, lot.LotVolume.Nominal.Milliliters, 6);
        Assert.Equal(one.HalfThickness.Nominal, lot.HalfThickness.Nominal);

        var weighed = BodyMeasure.Of(Fish with { Count = 12, Mass = null, TotalLength = null, LotMass = Mass.FromGrams(600) }).Value!;
        Assert.Equal(50, weighed.Mass.Nominal.Grams, 6);
        Assert.Equal(600 / 1.05, weighed.LotVolume.Nominal.Milliliters, 6);
    }

    [Fact]
    public void Fish_of_20_cm_and_2_kg_is_an_error_that_names_the_likely_slip()
    {
        var found = BodyMeasure.Of(Fish with { Mass = Mass.FromKilograms(2) });
        Assert.NotNull(found.Value);
        var finding = Assert.Single(found.Findings);
        Assert.Equal("mass-against-length", finding.Id);
        Assert.Equal(Severity.Error, finding.Severity);
        Assert.Contains("weighs about 90 g", finding.Message.ToString(), StringComparison.Ordinal);
        Assert.Contains("2000 g is given", finding.Message.ToString(), StringComparison.Ordinal);
        Assert.Contains("inches", finding.Remedy.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(8.5, "decimal point of the mass (85 g rather than 8.5 g)")]
    [InlineData(85000, "unit of the mass (85 g rather than 85 kg)")]
    [InlineData(0.085, "unit of the mass (0.085 kg rather than 0.085 g)")]
    public void Slip_of_the_mass_is_named(double massG, string slip)
    {
        var finding = Assert.Single(BodyMeasure.Of(Fish with { Mass = Mass.FromGrams(massG) }).Findings);
        Assert.Equal("mass-against-length", finding.Id);
        Assert.Contains(slip, finding.Remedy.ToString(), StringComparison.Ordinal);
    }

    /// <summary>A toad of 48 g with the point a place too far, and a sea cucumber that drew itself together: the first is named, of the second nothing.</summary>
    [Fact]
    public void Only_a_slip_that_fits_is_offered_and_never_one_of_ounces_for_what_scatters_so()
    {
        var toad = BodyMeasure.Of(new Specimen { Id = "t", Group = "toad", Mass = Mass.FromGrams(480), SnoutVentLength = Length.FromMillimeters(74) });
        Assert.Contains("48 g rather than 480 g", Assert.Single(toad.Findings).Remedy.ToString(), StringComparison.Ordinal);

        var cucumber = BodyMeasure.Of(new Specimen { Id = "c", Group = "sea-cucumber", Mass = Mass.FromGrams(14), TotalLength = Length.FromMillimeters(190) });
        Assert.DoesNotContain("ounces", Assert.Single(cucumber.Findings).Remedy.ToString(), StringComparison.Ordinal);
    }

    /// <summary>Bony fishes scatter by six: four times the usual mass may be one, and a slip; it is said, and nobody is stopped.</summary>
    [Fact]
    public void Mass_within_what_a_wide_relation_takes_in_is_said_where_it_is_far_out()
    {
        var said = Assert.Single(BodyMeasure.Of(Fish with { Mass = Mass.FromGrams(380) }).Findings);
        Assert.Equal((Severity.Note, "mass-against-length"), (said.Severity, said.Id));
        Assert.Contains("38 g rather than 380 g", said.Remedy.ToString(), StringComparison.Ordinal);
        Assert.Empty(BodyMeasure.Of(Fish with { Mass = Mass.FromGrams(250) }).Findings);
    }

    /// <summary>A ray's "length" is tip to tip, its disc is measured across; a length that only follows from another never makes the thickness less sure.</summary>
    [Fact]
    public void Length_of_a_ray_is_not_its_width()
    {
        var ray = new Specimen { Id = "r", Group = "ray", Mass = Mass.FromGrams(1500), Length = Length.FromMillimeters(560) };
        var body = BodyMeasure.Of(ray).Value!;
        var byMass = BodyMeasure.Of(ray with { Length = null }).Value!;

        Assert.Equal(560, body.TotalLength.Nominal.Millimeters, 9);
        Assert.InRange(body.Length.Nominal.Millimeters, 300, 450);
        Assert.True(body.HalfThickness.High / body.HalfThickness.Low <= (byMass.HalfThickness.High / byMass.HalfThickness.Low) + 1e-9);
        Assert.True(body.HalfThickness.High / body.HalfThickness.Low < 3, $"{body.HalfThickness.Low} to {body.HalfThickness.High}");

        var skate = BodyMeasure.Of(ray with { Group = "skate" }).Value!;
        Assert.True(skate.Length.High / skate.Length.Low < body.Length.High / body.Length.Low);
        Assert.Equal(330, BodyMeasure.Of(ray with { Length = null, DiscWidth = Length.FromMillimeters(330) }).Value!.Length.Nominal.Millimeters, 9);
    }

    [Fact]
    public void Total_length_given_as_snout_vent_length_is_named()
    {
        // A lizard of 15 g is 100 mm from snout to vent, and some 240 mm in all.
        var lizard = new Specimen { Id = "l", Group = "lizard", Mass = Mass.FromGrams(15), Length = Length.FromMillimeters(240) };
        var finding = Assert.Single(BodyMeasure.Of(lizard).Findings);
        Assert.Equal("mass-against-length", finding.Id);
        Assert.Contains("total length given as the snout-vent length", finding.Remedy.ToString(), StringComparison.Ordinal);
        Assert.Empty(BodyMeasure.Of(lizard with { Length = null, TotalLength = Length.FromMillimeters(240) }).Findings);
    }

    [Fact]
    public void Girth_against_mass_is_found()
    {
        Assert.Empty(BodyMeasure.Of(Otter with { Girth = Length.FromCentimeters(43) }).Findings);
        var finding = Assert.Single(BodyMeasure.Of(Otter with { Girth = Length.FromCentimeters(21) }).Findings);
        Assert.Equal("girth-against-mass", finding.Id);
        Assert.Contains("half of the girth", finding.Remedy.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Thickness_against_mass_is_found()
    {
        var finding = Assert.Single(BodyMeasure.Of(Otter with { Thickness = Length.FromCentimeters(1.4) }).Findings);
        Assert.Equal("thickness-against-mass", finding.Id);
        Assert.Equal(Severity.Error, finding.Severity);
        Assert.Contains("unit or decimal point of the thickness", finding.Remedy.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Mass_against_displacement_is_found()
    {
        Assert.Empty(BodyMeasure.Of(Otter with { DisplacementVolume = Volume.FromLiters(6.9) }).Findings);
        var finding = Assert.Single(BodyMeasure.Of(Otter with { DisplacementVolume = Volume.FromMilliliters(690) }).Findings);
        Assert.Equal("mass-against-displacement", finding.Id);
        Assert.Contains("decimal point", finding.Remedy.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Gadus morhua", 238)]
    [InlineData("Esox lucius", 128)]
    public void Species_relation_is_used_where_the_name_is_known(string species, double massG)
    {
        var body = BodyMeasure.Of(Fish with { ScientificName = species, Mass = null, TotalLength = Length.FromCentimeters(30) }).Value!;
        Assert.Equal(massG, body.Mass.Nominal.Grams, 2.0);
    }

    [Fact]
    public void Of_what_cannot_be_gives_no_measure_and_no_exception()
    {
        Assert.Null(BodyMeasure.Of(Fish with { Mass = Mass.FromGrams(-1) }).Value);
        Assert.Null(BodyMeasure.Of(Fish with { Mass = null, TotalLength = null, Girth = Length.FromCentimeters(3) }).Value);
        Assert.Null(BodyMeasure.Of(Fish with { Group = "dragon" }).Value);
    }

    [Fact]
    public void Every_group_can_be_measured_from_its_mass()
    {
        foreach (var group in Kinds.Bundled.Groups)
        {
            var found = BodyMeasure.Of(new Specimen { Id = "x", Group = group.Id, Mass = Mass.FromGrams(30) });
            Assert.True(found.IsSound, group.Id);
            Assert.Empty(found.Findings);
            Assert.InRange(found.Value.HalfThickness.Nominal.Millimeters, 0.5, 40);
        }
    }
}
