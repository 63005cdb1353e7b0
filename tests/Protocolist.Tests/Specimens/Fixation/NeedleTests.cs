using Protocolist.Specimens;
using Protocolist.Specimens.Fixation;
using UnitsNet;

namespace Protocolist.Tests.Specimens.Fixation;

/// <summary>Needles by part and dose: common practice, 30 G to 5 g, 27 G to 20 g, 25 G to 100 g, 23 G to 500 g, 21 G to 2 kg, 18 G to 10 kg, thicker above.</summary>
public class NeedleTests
{
    private static RegionInjection[] Injected(string group, double grams) => [.. InjectionPlan.For(
        BodyMeasure.Of(new Specimen { Id = "x", Group = group, Mass = Mass.FromGrams(grams) }).Value!, new(80)).Value!.Regions];

    [Theory]
    [InlineData(25, 25)]
    [InlineData(300, 23)]
    [InlineData(7000, 18)]
    [InlineData(40_000, 14)]
    public void The_trunk_of_a_mammal_has_the_needle_of_its_size(double grams, int gauge) =>
        Assert.Equal(gauge, Injected("mammal", grams).Single(r => r.Region.Id == "abdomen").Needle.Gauge);

    [Fact]
    public void No_thin_needle_goes_into_the_thick_muscle_of_a_large_animal() =>
        Assert.All(Injected("mammal", 7000).Where(r => !r.Region.IsCavity && r.Region.Id != "tail"), r => Assert.True(r.Needle.Gauge <= 21, $"{r.Region.Id} {r.Needle.Gauge} G"));

    /// <summary>Longer than 150 mm no hypodermic needle is sold.</summary>
    [Fact]
    public void Every_needle_is_one_of_the_trade_and_reaches_where_it_should()
    {
        foreach (var group in Kinds.Bundled.Groups)
        {
            foreach (var grams in (double[])[1, 30, 500, 8000, 90_000])
            {
                foreach (var injected in Injected(group.Id, grams))
                {
                    Assert.Contains(injected.NeedleLengthMm, injected.Needle.LengthsMm);
                    Assert.InRange(injected.NeedleLengthMm, 4, 150);
                    Assert.True(injected.SiteMl <= injected.Needle.UpToMl * 4, $"{group} {grams} g: {injected}");
                }
            }
        }
    }

    /// <summary>A cavity is entered just through its wall: a longer needle goes into the organs.</summary>
    [Fact]
    public void A_cavity_has_a_shorter_needle_than_muscle_as_thick()
    {
        var trunk = Injected("mammal", 7000).Single(r => r.Region.Id == "abdomen");
        Assert.InRange(trunk.NeedleLengthMm, 16, 25); // a wall of 6 mm, 5 mm inside it, 5 mm outside
    }

    [Theory]
    [InlineData(0.04, 3, 1)]
    [InlineData(0.9, 1, 1)]
    [InlineData(0.9, 3, 2)]
    [InlineData(1.6, 18, 5)]
    [InlineData(10.5, 1, 20)]
    [InlineData(10, 2, 20)]
    [InlineData(120, 2, 50)]
    public void The_syringe_is_the_smallest_that_holds_one_site_or_two_of_several(double siteMl, int sites, int sizeMl) => Assert.Equal(sizeMl, Syringe.For(siteMl, sites));

    [Theory]
    [InlineData(0.15, 1, true)]
    [InlineData(0.15, 5, false)]
    [InlineData(1, 5, true)]
    [InlineData(1, 10, false)]
    [InlineData(2, 10, true)]
    public void A_volume_is_read_on_three_marks_of_a_syringe(double siteMl, int sizeMl, bool isRead) => Assert.Equal(isRead, Syringe.Reads(siteMl, sizeMl));

    [Theory]
    [InlineData(21, new[] { 18, 23 })]
    [InlineData(20, new[] { 18, 21 })]
    [InlineData(30, new[] { 27 })]
    [InlineData(14, new[] { 16 })]
    public void The_next_thicker_needle_serves_before_the_next_thinner(int gauge, int[] others) => Assert.Equal(others, Needle.InPlaceOf(gauge));
}
