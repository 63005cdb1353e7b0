using Protocolist.Findings;
using Protocolist.Specimens;
using Protocolist.Specimens.Fixation;
using UnitsNet;

namespace Protocolist.Tests.Specimens.Fixation;

public class BodyFixationTests
{
    private static BodyMeasure Body(string group, double grams) =>
        BodyMeasure.Of(new Specimen { Id = "x", Group = group, Mass = Mass.FromGrams(grams) }).Value!;

    [Fact]
    public void Small_frog_is_done_in_days_without_a_warning()
    {
        var found = BodyFixation.Of(Body("frog", 5));
        Assert.DoesNotContain(found.Findings, f => f.Severity > Severity.Note);
        Assert.InRange(found.Value!.Time.LowHours, 24, 72);
        Assert.Equal(RegionFixation.FromOutside, found.Value.Slowest.By);
    }

    [Fact]
    public void Cuts_alone_help_and_injection_helps_more()
    {
        var body = Body("mammal", 7000);
        var whole = BodyFixation.Of(body).Value!;
        var cut = BodyFixation.Of(body, null, CutPlan.For(body, cover: true).Value).Value!;
        var both = BodyFixation.Of(body, InjectionPlan.For(body).Value, CutPlan.For(body).Value).Value!;
        Assert.True(cut.Time.LowHours < whole.Time.LowHours);
        Assert.True(both.Time.LowHours < cut.Time.LowHours);
        Assert.Equal(RegionFixation.ByCuts, cut.Regions.Single(r => r.Region.Id == "hindlimbs").By);
        Assert.Equal(RegionFixation.ByCavity, cut.Regions.Single(r => r.Region.Id == "abdomen").By);
        Assert.Equal(RegionFixation.ByInjection, both.Regions.Single(r => r.Region.Id == "abdomen").By);
    }

    [Fact]
    public void Cold_makes_it_longer_and_keeps_the_core()
    {
        var body = Body("mammal", 300);
        var warm = BodyFixation.Of(body, temperatureC: 20);
        var cold = BodyFixation.Of(body, temperatureC: 4);
        Assert.True(cold.Value!.Time.LowHours > warm.Value!.Time.LowHours);
        Assert.Contains(warm.Findings, f => f.Id == "core-may-rot");
        Assert.DoesNotContain(cold.Findings, f => f.Id == "core-may-rot");
    }

    [Fact]
    public void Closed_shell_is_a_warning_and_a_wedge_answers_it()
    {
        var mussel = Body("bivalve", 12);
        Assert.Contains(BodyFixation.Of(mussel).Findings, f => f.Id == "armour-closed" && f.Severity == Severity.Warning);
        Assert.DoesNotContain(BodyFixation.Of(mussel, cuts: CutPlan.For(mussel).Value).Findings, f => f.Id == "armour-closed");
    }

    [Theory]
    [InlineData(-1, "bath-too-cold")]
    [InlineData(41, "bath-too-warm")]
    [InlineData(double.NaN, "bath-too-warm")]
    public void Baths_outside_the_figures_are_findings(double celsius, string id)
    {
        var found = BodyFixation.Of(Body("frog", 5), temperatureC: celsius);
        Assert.Null(found.Value);
        Assert.Equal(id, Assert.Single(found.Findings).Id);
        Assert.Throws<ArgumentOutOfRangeException>(() => Warmth.RateFactor(celsius));
    }

    [Fact]
    public void Rule_that_over_promises_is_shown_beside_the_model_and_not_planned_on()
    {
        var found = BodyFixation.Of(Body("mammal", 300));
        Assert.Contains(found.Findings, f => f.Id == "rule-over-promises" && f.Message.ToString().Contains("1 mm in the first hour", StringComparison.Ordinal));
        Assert.True(found.Value!.PlannedHours >= found.Value.Time.HighHours);
    }

    [Fact]
    public void Safeguard_answers_what_makes_it_safe_by_a_day()
    {
        var body = Body("mammal", 7000);
        var plan = SafeguardPlan.For(body, 21 * 24).Value!;
        Assert.False(plan.IsSafeWhole);
        var best = plan.Injections[0];
        Assert.True(best.IsPractical);
        // Put back in, the depth left is the depth that is safe, and its time is the time asked for.
        var left = EffectiveDepth.DepotsMm(best.SiteMl, Math.Pow(best.SpacingMm / 10, 3));
        Assert.Equal(plan.SafeDepthMm, left, 6);
        Assert.Equal(21 * 24, Penetration.FixationTime(left, Tissue.Viscera, Fixative.Formaldehyde).HighHours, 6);
        var thickness = 2 * body.HalfThickness.Nominal.Millimeters;
        Assert.Equal(plan.SafeDepthMm, EffectiveDepth.CutsMm(plan.LongCutSpacingMm, plan.LongCutSpacingMm, plan.CutDepthMm, thickness), 6);
        Assert.Equal(plan.SafeDepthMm, EffectiveDepth.CutsMm(plan.ShortCutSpacingMm, 12.5, plan.CutDepthMm, thickness), 6);
    }

    [Fact]
    public void Safeguard_says_when_no_time_or_no_dose_suffices()
    {
        Assert.Equal("no-time-to-bind", Assert.Single(SafeguardPlan.For(Body("mammal", 7000), 30).Findings).Id);
        Assert.Equal("no-needle-work-suffices", Assert.Single(SafeguardPlan.For(Body("mammal", 7000), 60).Findings).Id);
        Assert.True(SafeguardPlan.For(Body("frog", 2), 14 * 24).Value!.IsSafeWhole);
    }
}
