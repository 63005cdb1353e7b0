using Protocolist.Planning.Scheduling;

namespace Protocolist.Tests.Planning.Scheduling;

public class ThawingTests
{
    // O'Shea 2003, Large Squid Fixing and Preservation Notes: a giant squid of 150 to 200 kg thaws at 15 to 20 °C in 72 h on a bench, and in 48 h under a cold shower.
    // How slender the thawing trunk is, nobody gives: six to ten times as long as thick is assumed here, four fifths water.
    [Theory]
    [InlineData(ThawMedium.StillAir, 72)]
    [InlineData(ThawMedium.RunningWater, 48)]
    public void A_giant_squid_thaws_in_the_published_time(object medium, double hours)
    {
        ThawTime Squid(double massKg, double slenderness, double temperatureC) =>
            Thawing.Of(Thawing.HalfThickness(massKg, slenderness), ThawShape.Cylinder, (ThawMedium)medium, temperatureC, 0.8);

        foreach (var slenderness in new[] { 6, 8, 10 })
            Assert.InRange(hours, Squid(150, slenderness, 20).Least.TotalHours, Squid(200, slenderness, 15).Most.TotalHours);

        // The middle of his masses and temperatures, the middle slenderness.
        Assert.InRange(Squid(175, 8, 17.5).Likely.TotalHours, 0.8 * hours, 1.25 * hours);
    }

    [Fact]
    public void A_mouse_thaws_within_a_morning_in_water_and_overnight_in_the_refrigerator()
    {
        // Sizes only; the order of magnitude is what every kitchen knows.
        var r = Thawing.HalfThickness(0.025, 3);

        Assert.InRange(Thawing.Of(r, ThawShape.Cylinder, ThawMedium.StillWater, 12).Likely.TotalHours, 0.3, 2);
        Assert.InRange(Thawing.Of(r, ThawShape.Cylinder, ThawMedium.StillAir, 4).Likely.TotalHours, 4, 16);
    }

    [Fact]
    public void Double_the_thickness_takes_between_two_and_four_times_as_long()
    {
        var thin = Thawing.Of(0.05, ThawShape.Cylinder, ThawMedium.StillAir, 10).Likely;
        var thick = Thawing.Of(0.10, ThawShape.Cylinder, ThawMedium.StillAir, 10).Likely;

        Assert.InRange(thick / thin, 2, 4);
    }

    [Fact]
    public void A_slab_takes_three_times_as_long_as_a_sphere() =>
        Assert.Equal(3, Thawing.Of(0.05, ThawShape.Slab, ThawMedium.StillWater, 10).Likely / Thawing.Of(0.05, ThawShape.Sphere, ThawMedium.StillWater, 10).Likely, tolerance: 0.01);

    [Fact]
    public void Warm_thawing_is_warned_of_and_freezing_never_thaws()
    {
        Assert.Equal("thawing-warm", Assert.Single(Thawing.Of(0.05, ThawShape.Slab, ThawMedium.StillWater, 30).Findings).Id);
        Assert.Equal("never-thaws", Assert.Single(Thawing.Of(0.05, ThawShape.Slab, ThawMedium.StillWater, -1).Findings).Id);
        Assert.Empty(Thawing.Of(0.05, ThawShape.Slab, ThawMedium.StillWater, 12).Findings);
    }
}
