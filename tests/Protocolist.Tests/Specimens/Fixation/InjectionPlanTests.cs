using Protocolist.Specimens;
using Protocolist.Specimens.Fixation;
using UnitsNet;

namespace Protocolist.Tests.Specimens.Fixation;

public class InjectionPlanTests
{
    private static BodyMeasure Body(string group, double grams) =>
        BodyMeasure.Of(new Specimen { Id = "x", Group = group, Mass = Mass.FromGrams(grams) }).Value!;

    [Fact]
    public void Newt_of_2_g_is_left_whole()
    {
        var found = InjectionPlan.For(Body("salamander", 2));
        Assert.Empty(found.Value!.Regions);
        Assert.Null(found.Value.Syringe);
        Assert.Equal("left-whole", Assert.Single(found.Findings).Id);
    }

    [Fact]
    public void Mammal_of_60_kg_has_too_many_sites_and_is_better_perfused()
    {
        var found = InjectionPlan.For(Body("mammal", 60_000));
        var finding = Assert.Single(found.Findings);
        Assert.Equal("many-sites", finding.Id);
        Assert.Contains("6 to 17.2 L", finding.Remedy.ToString(), StringComparison.Ordinal);
        Assert.InRange(found.Value!.TotalMl, 5500, 6500);
    }

    [Fact]
    public void Protocol_sets_the_volume_of_a_site_by_the_names_it_uses()
    {
        var sites = new Dictionary<string, SiteVolume> { ["abdomen"] = new(5, 10), ["thigh"] = new(5, 10), ["other"] = new(2, 5) };
        var plan = InjectionPlan.For(Body("mammal", 7000), 100, sites).Value!;
        Assert.InRange(plan.Regions.Single(r => r.Region.Id == "abdomen").SiteMl, 9, 10);
        Assert.InRange(plan.Regions.Single(r => r.Region.Id == "hindlimbs").SiteMl, 9, 10);
        Assert.InRange(plan.Regions.Single(r => r.Region.Id == "neck").SiteMl, 4, 5);
        Assert.All(plan.Regions, r => Assert.InRange(r.SiteMl, r.SiteRange.LowMl, r.SiteRange.HighMl));
    }

    [Theory]
    [InlineData("thihg", 2, 5, "unknown-region")]
    [InlineData("thigh", 0, 5, "site-volume-not-positive")]
    [InlineData("thigh", 5, 2, "site-volume-not-positive")]
    public void Wrong_sites_are_findings(string name, double low, double high, string id)
    {
        var found = InjectionPlan.For(Body("mammal", 7000), 100, new Dictionary<string, SiteVolume> { [name] = new(low, high) });
        Assert.Null(found.Value);
        Assert.Equal(id, Assert.Single(found.Findings).Id);
    }

    [Fact]
    public void Wrong_doses_are_findings()
    {
        Assert.Equal("dose-not-positive", Assert.Single(InjectionPlan.For(Body("mammal", 7000), 0).Findings).Id);
        Assert.Contains(InjectionPlan.For(Body("mammal", 3000), 300).Findings, f => f.Id == "dose-over-published");
    }

    [Fact]
    public void Total_is_the_sum_and_the_syringe_holds_it_in_its_fills()
    {
        var plan = InjectionPlan.For(Body("mammal", 300)).Value!;
        Assert.All(plan.Regions, r => Assert.Equal(r.TotalMl, r.Sites * r.SiteMl, 9));
        Assert.True(plan.Syringe!.SizeMl * plan.Syringe.Fills >= plan.TotalMl);
        Assert.True(plan.Syringe.SizeMl * (plan.Syringe.Fills - 1) < plan.TotalMl);
        Assert.InRange(plan.DoseMlPerKg, 60, 150);
    }

    [Theory]
    [InlineData(0.25, 27)]
    [InlineData(1, 25)]
    [InlineData(5, 20)]
    [InlineData(10, 18)]
    public void Thicker_needles_for_more_fluid(double siteMl, int gauge) => Assert.Equal(gauge, Syringe.Gauge(siteMl));

    // Nagorsen and Peterson 1980, from memory: a mouse is injected into abdomen and chest, its muscle is not.
    [Fact]
    public void Mouse_is_injected_into_its_cavities_alone() =>
        Assert.Equal(["thorax", "abdomen"], InjectionPlan.For(Body("rodent", 25)).Value!.Regions.Select(r => r.Region.Id));

    [Fact]
    public void Worms_and_jellyfish_are_never_injected_nor_cut()
    {
        foreach (var group in (string[])["earthworm", "polychaete", "jellyfish", "sponge", "amphibian-larva", "brittle-star"])
        {
            Assert.Empty(InjectionPlan.For(Body(group, 400)).Value!.Regions);
            Assert.Empty(CutPlan.For(Body(group, 400)).Value!.Regions);
        }
    }
}
