using Protocolist.Findings;
using Protocolist.Plans;
using static Protocolist.Tests.Planning.PlanFixture;

namespace Protocolist.Tests.Planning;

/// <summary>Where and how much is injected: 50 mL into a mammal of 1 kg, of which all but the tail, 2 %, is thick enough; its share goes into the cavities.</summary>
public class InjectionTests
{
    private static Plan Of(string settings, int count = 1, string mass = "1 kg") =>
        Plan(Mammal(mass) with { Count = count }, Shelf(("one", "{group: mammal}", $"stages:\n  - {{stage: inject, id: it, fluid: formalin 10 %{settings}}}\n"))).Value!;

    private static Step Step(string settings, int count = 1, string mass = "1 kg") => Of(settings, count, mass).Step("it")!;

    [Fact]
    public void Dose_is_shared_out_by_mass()
    {
        var step = Step(", dose: 50 mL");

        // Each site is what a syringe shows, to a tenth of a millilitre, so that a region may be off by half of that at each of its sites.
        Assert.Equal(step.Sites.Sum(s => s.Total.Milliliters), step.Volume!.Value.Milliliters, 0.002);
        Assert.Equal(50, step.Volume!.Value.Milliliters, 0.05 * step.Sites.Sum(s => s.Sites));
        var abdomen = step.Sites.Single(s => s.Region.ToString() == "abdomen");
        Assert.Equal(13 + (1 * 0.26 / 0.5), abdomen.Total.Milliliters, 0.05 * abdomen.Sites);
        Assert.All(step.Sites, s => Assert.Equal(s.PerSite.Milliliters, Math.Round(s.PerSite.Milliliters, 1), 1e-9));
        Assert.All(step.Sites, s => Assert.Equal(s.Total.Milliliters, s.Sites * s.PerSite.Milliliters, 0.002)); // a plan stands on the grid of its JSON
    }

    /// <summary>A lot of three takes three times as much in three times as many sites, the site being as large as it was; the dose is for all of them.</summary>
    [Fact]
    public void Lot_takes_it_for_each_of_its_animals()
    {
        var (one, three) = (Step(", dose: 50 mL"), Step(", dose: 150 mL", 3));

        Assert.Equal(3 * one.Volume!.Value.Milliliters, three.Volume!.Value.Milliliters, 0.002);
        Assert.Equal(one.Sites.Select(s => (s.Region, 3 * s.Sites, Math.Round(s.PerSite.Milliliters, 2), Math.Round(3 * s.Total.Milliliters, 1))), three.Sites.Select(s => (s.Region, s.Sites, Math.Round(s.PerSite.Milliliters, 2), Math.Round(s.Total.Milliliters, 1))));
    }

    [Fact]
    public void Range_of_a_site_is_the_protocols()
    {
        var abdomen = Step(", dose: 50 mL, sites: {abdomen: 2 mL to 4 mL, other: 1 mL to 3 mL}").Sites.Single(s => s.Region.ToString() == "abdomen");

        Assert.Equal((2, 4), (Math.Round(abdomen.PerSiteLow.Milliliters, 6), Math.Round(abdomen.PerSiteHigh.Milliliters, 6)));
        Assert.InRange(abdomen.PerSite.Milliliters, 2, 4);
        Assert.Equal("abdominal cavity and gut, fluid spread to all quarters", abdomen.At.ToString());
    }

    /// <summary>Nothing to inject is no step, and the amount is told as impossible where it is below nothing.</summary>
    [Theory]
    [InlineData(", dose: 0 mL")]
    [InlineData(", dose: \"1 mL - 3 mL/kg * specimen.mass\"")]
    public void Dose_of_nothing_injects_nothing(string dose)
    {
        Assert.Null(Of(dose).Step("it"));
    }

    [Fact]
    public void Middle_of_a_range_is_the_dose() => Assert.Equal(Step(", dose: 50 mL").Volume, Step(", dose: 40 mL to 60 mL").Volume);

    [Fact]
    public void What_is_too_much_is_warned_of_at_the_step()
    {
        var warned = Assert.Single(Of(", dose: 900 mL").Findings, f => f.Id == "dose-over-published");

        Assert.Equal(("it", Severity.Warning), (warned.Subject, warned.Severity));
        Assert.True(warned.Where.IsKnown);
    }

    [Fact]
    public void Dose_without_a_number_is_the_groups_own() => Assert.InRange(Step("").Volume!.Value.Milliliters, 20, 100);
}
