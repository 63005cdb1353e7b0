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
        var plan = InjectionPlan.For(Body("mammal", 7000), new(100, sites)).Value!;
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
        var found = InjectionPlan.For(Body("mammal", 7000), new(100, new Dictionary<string, SiteVolume> { [name] = new(low, high) }));
        Assert.Null(found.Value);
        Assert.Equal(id, Assert.Single(found.Findings).Id);
    }

    [Fact]
    public void Wrong_doses_are_findings()
    {
        Assert.Equal("dose-not-positive", Assert.Single(InjectionPlan.For(Body("mammal", 7000), new(0)).Findings).Id);
        Assert.Contains(InjectionPlan.For(Body("mammal", 3000), new(300)).Findings, f => f.Id == "dose-over-published");
    }

    [Fact]
    public void Total_is_the_sum_and_each_part_has_the_syringe_of_its_own_sites()
    {
        var plan = InjectionPlan.For(Body("mammal", 300)).Value!;
        Assert.All(plan.Regions, r => Assert.Equal(r.TotalMl, r.Sites * r.SiteMl, 9));
        Assert.All(plan.Regions, r => Assert.Equal(Syringe.For(r.SiteMl, r.Sites), r.SyringeMl));
        Assert.True(plan.Regions.Select(r => r.SyringeMl).Distinct().Count() > 1);
        Assert.InRange(plan.DoseMlPerKg, 60, 150);
    }

    /// <summary>A newt of 2 g is left whole by custom; where a protocol asks, its cavity is filled once, and nothing else.</summary>
    [Fact]
    public void What_custom_leaves_whole_has_one_filling_of_its_cavity_where_a_protocol_asks()
    {
        var plan = InjectionPlan.For(Body("salamander", 2), new(75)).Value!;
        var cavity = Assert.Single(plan.Regions);
        Assert.Equal(("coelom", 1), (cavity.Region.Id, cavity.Sites));
        Assert.Equal(0.13, cavity.TotalMl, 0.02); // 2 g with 75 mL/kg are 0.15 mL; a cavity of 0.23 of the body takes 0.13 mL
    }

    /// <summary>A gecko of 0.1 g would have 0.0075 mL: nothing that a syringe doses, so nothing is filled and the whole depth is to be crossed.</summary>
    [Fact]
    public void Less_than_a_syringe_doses_is_no_injection()
    {
        var found = InjectionPlan.For(Body("lizard", 0.1), new(75));
        Assert.Empty(found.Value!.Regions);
        Assert.Equal("too-small-to-inject", Assert.Single(found.Findings).Id);
        Assert.Equal(RegionFixation.FromOutside, BodyFixation.Of(Body("lizard", 0.1), found.Value).Value!.Slowest.By);
    }

    /// <summary>95 cm and 400 g at 38 mm: 0.8 of 950 mm is 760 mm, 20 sites, and not three.</summary>
    [Fact]
    public void Spacing_sets_the_sites_along_a_snake()
    {
        var snake = BodyMeasure.Of(new Specimen { Id = "x", Group = "snake", Mass = Mass.FromGrams(400), SnoutVentLength = Length.FromMillimeters(950) }).Value!;
        var plan = InjectionPlan.For(snake, new(75, new Dictionary<string, SiteVolume> { ["coelom"] = new(2, 5), ["other"] = new(1, 3) }, 38)).Value!;
        Assert.Equal(20, plan.Regions.Single(r => r.Region.Id == "coelom").Sites);
        Assert.Equal(28.6, plan.TotalMl, 0.1); // 30 mL asked; the cavity, a quarter of the body, takes 286 mL/kg of itself
    }

    /// <summary>All of a protocol's dose goes in, though a mouse's muscle is spared: 22 g at 75 mL/kg are 1.65 mL.</summary>
    [Fact]
    public void The_dose_of_a_protocol_goes_into_the_parts_that_are_injected() =>
        Assert.Equal(1.65, InjectionPlan.For(Body("rodent", 22), new(75)).Value!.TotalMl, 0.001);

    /// <summary>A sea urchin of 1.7 kg is filled with all its 195 mL through one hole.</summary>
    [Fact]
    public void A_body_that_is_one_cavity_is_filled_through_one_opening()
    {
        var filled = Assert.Single(InjectionPlan.For(Body("sea-urchin", 1700), new(115)).Value!.Regions);
        Assert.Equal((1, 50), (filled.Sites, filled.SyringeMl));
        Assert.Equal(195.5, filled.TotalMl, 0.1);
    }

    [Fact]
    public void Arms_and_limbs_are_injected_in_equal_numbers()
    {
        Assert.Equal(0, InjectionPlan.For(Body("sea-star", 400), new(100)).Value!.Sites % 5);
        Assert.Equal(0, InjectionPlan.For(Body("turtle", 3000), new(75)).Value!.Regions.Single(r => r.Region.Id == "limbs").Sites % 4);
    }

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
