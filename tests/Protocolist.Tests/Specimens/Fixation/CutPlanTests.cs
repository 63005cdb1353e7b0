using Protocolist.Specimens;
using Protocolist.Specimens.Fixation;
using UnitsNet;

namespace Protocolist.Tests.Specimens.Fixation;

public class CutPlanTests
{
    private static BodyMeasure Body(string group, double grams) =>
        BodyMeasure.Of(new Specimen { Id = "x", Group = group, Mass = Mass.FromGrams(grams) }).Value!;

    [Fact]
    public void Wider_spacing_makes_fewer_cuts()
    {
        var body = Body("mammal", 7000);
        Assert.True(CutPlan.For(body, 60).Value!.Count < CutPlan.For(body, 30).Value!.Count);
    }

    [Fact]
    public void Covering_cuts_can_be_counted_on_and_a_row_cannot()
    {
        var body = Body("mammal", 7000);
        Assert.All(CutPlan.For(body).Value!.Regions, r => Assert.Null(r.ReachMm));
        var thigh = CutPlan.For(body, cover: true).Value!.Regions.Single(r => r.Region.Id == "hindlimbs");
        Assert.InRange(thigh.ReachMm!.Value, 25, 29); // slits of half an inch go no deeper than that into a thigh of 67 mm: half of what is left is 27 mm
        Assert.True(thigh.Count > CutPlan.For(body).Value!.Regions.Single(r => r.Region.Id == "hindlimbs").Count);
    }

    [Fact]
    public void Cuts_are_never_deeper_than_the_part() =>
        Assert.All(Kinds.Bundled.Groups, g => Assert.All(
            CutPlan.For(Body(g.Id, 5000)).Value!.Regions,
            c => Assert.InRange(c.DepthMm, c.Region.Cut!.DepthShare == 0 ? 0 : 0.1, 1.2 * Body(g.Id, 5000).HalfThickness.Nominal.Millimeters)));

    /// <summary>Common practice: 0.7 to 1 mm in a mouse, 5 to 8 in a fox, 1 to 1.5 in a pigeon, 1 in a fish of 10 g, 0.3 to 1 in a frog.</summary>
    [Theory]
    [InlineData("rodent", 25, 0.7, 1)]
    [InlineData("carnivore", 6000, 5, 8)]
    [InlineData("bird", 300, 1, 1.5)]
    [InlineData("bony-fish", 10, 0.9, 1.2)]
    [InlineData("bony-fish", 270, 3, 5)]
    [InlineData("frog", 40, 0.3, 1)]
    [InlineData("shark", 4000, 4, 8)]
    public void Walls_are_as_thick_as_custom_finds_them(string group, double grams, double least, double most)
    {
        var body = Body(group, grams);
        Assert.InRange(PartSize.WallMm(body.Regions.First(r => r.Region.IsCavity), body), least, most);
    }

    /// <summary>Slits every 4 cm from the heart to the vent: 0.8 of 820 mm is 656 mm, 17 slits; by its volume the cavity would be a short thick cylinder with 4.</summary>
    [Fact]
    public void A_snake_is_slit_along_its_whole_body_cavity()
    {
        var snake = BodyMeasure.Of(new Specimen { Id = "x", Group = "snake", Mass = Mass.FromGrams(410), SnoutVentLength = Length.FromMillimeters(820) }).Value!;
        Assert.Equal(17, CutPlan.For(snake).Value!.Regions.Single(r => r.Region.Id == "coelom").Count);
    }

    [Fact]
    public void Small_animals_are_left_whole() =>
        Assert.Equal("left-whole", Assert.Single(CutPlan.For(Body("bony-fish", 10)).Findings).Id);

    [Fact]
    public void Every_armoured_group_has_a_way_to_let_fluid_in() =>
        Assert.All(Kinds.Bundled.Groups.Where(g => g.Barrier is SkinBarrier.Armour), g =>
            Assert.True(CutPlan.For(Body(g.Id, 200)).Value!.Count + InjectionPlan.For(Body(g.Id, 200)).Value!.Sites > 0, g.Id));

    [Theory]
    [InlineData(0)]
    [InlineData(-5)]
    [InlineData(double.NaN)]
    public void Spacing_that_is_none_is_a_finding(double spacing)
    {
        var found = CutPlan.For(Body("mammal", 7000), spacing);
        Assert.Null(found.Value);
        Assert.Equal("spacing-not-positive", Assert.Single(found.Findings).Id);
    }

    [Fact]
    public void Too_many_cuts_are_a_warning() =>
        Assert.Contains(CutPlan.For(Body("mammal", 20_000), 20, cover: true).Findings, f => f.Id == "many-cuts");
}
