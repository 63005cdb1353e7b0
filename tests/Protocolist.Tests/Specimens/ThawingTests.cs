using Protocolist.Specimens;

namespace Protocolist.Tests.Specimens;

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
            Thawing.Of(HalfThickness(massKg, slenderness), ThawShape.Cylinder, (ThawMedium)medium, temperatureC, 0.8);

        foreach (var slenderness in new[] { 6, 8, 10 })
            Assert.InRange(hours, Squid(150, slenderness, 20).Least.TotalHours, Squid(200, slenderness, 15).Most.TotalHours);

        // The middle of his masses and temperatures, the middle slenderness.
        Assert.InRange(Squid(175, 8, 17.5).Likely.TotalHours, 0.8 * hours, 1.25 * hours);
    }

    [Fact]
    public void A_mouse_thaws_within_a_morning_in_water_and_overnight_in_the_refrigerator()
    {
        // Sizes only; the order of magnitude is what every kitchen knows.
        var r = HalfThickness(0.025, 3);

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

    /// <summary>
    /// By hand for a cylinder of 5 cm half-thickness in still water of 10 °C: 1050 x 0.75 x 333600 / 11 = 23 882 727 s K/m; usual 0.05/(2 x 100) + 0.0025/(2 x 2 x 0.5)
    /// = 0.0015, 35 824 s = 597.07 min, so 598; with 200 and 0.55: 0.000125 + 0.00113636 = 0.00126136, 30 124 s = 502.07, so 503; with 60 and 0.45: 0.00041667 + 0.00138889
    /// = 0.00180556, 43 121 s = 718.69, so 719, and a fifth more.
    /// </summary>
    [Fact]
    public void Thawing_by_planks_equation_worked_by_hand()
    {
        var thaw = Thawing.Of(0.05, ThawShape.Cylinder, ThawMedium.StillWater, 10);
        Assert.Equal((503, 598, 719 * 1.2), (thaw.Least.TotalMinutes, thaw.Likely.TotalMinutes, Math.Round(thaw.Most.TotalMinutes, 6)));
        Assert.Empty(Thawing.Of(0.05, ThawShape.Slab, ThawMedium.StillAir, 20).Findings);
        var warm = Assert.Single(Thawing.Of(0.05, ThawShape.Slab, ThawMedium.StillAir, 20.5).Findings);
        Assert.Equal(("at 20.5 °C the outside rots while the inside is still frozen", "thaw cold, never in warm water; a cold shower or running cold water shortens it"), (warm.Message.ToString(), warm.Remedy.ToString()));
        var never = Assert.Single(Thawing.Of(0.05, ThawShape.Slab, ThawMedium.StillAir, -0.5).Findings);
        Assert.Equal(("at -0.5 °C a frozen body does not thaw", "thaw at 2 to 15 °C"), (never.Message.ToString(), never.Remedy.ToString()));
        Assert.Empty(Thawing.Of(0.05, ThawShape.Slab, ThawMedium.StillAir, -0.4).Findings);
        Assert.True(Thawing.Of(0.05, ThawShape.Slab, ThawMedium.RunningWater, 10).Likely < Thawing.Of(0.05, ThawShape.Slab, ThawMedium.StillWater, 10).Likely);
    }

    /// <summary>Half the thickness in metres of a cylinder so many times as long as thick, of 1050 kg/m3.</summary>
    private static double HalfThickness(double massKg, double slenderness) => 0.5 * Math.Cbrt(4 * massKg / 1050 / (Math.PI * slenderness));
}
