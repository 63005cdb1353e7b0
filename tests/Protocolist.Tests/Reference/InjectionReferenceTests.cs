using Protocolist.Specimens;
using Protocolist.Specimens.Fixation;
using UnitsNet;

namespace Protocolist.Tests.Reference;

/// <summary>Sites, doses and the customary treatment of a mammal against worked examples and common practice.</summary>
public class InjectionReferenceTests
{
    private static BodyMeasure Mammal(double kg) =>
        BodyMeasure.Of(new Specimen { Id = "m", Group = "mammal", Mass = Mass.FromKilograms(kg) }).Value!;

    // max(1, ⌈m·dose/v⌉) for each region, by the shares of horse (three Thoroughbreds) and Plagenhoef 1983, rounded.
    [Theory]
    [InlineData("mammal", 7, 100, 10, new[] { 6, 5, 17, 19, 10, 16, 2 }, 75)]
    [InlineData("mammal", 4, 100, 10, new[] { 4, 3, 10, 11, 6, 10, 1 }, 45)]
    [InlineData("mammal", 0.3, 100, 2, new[] { 2, 2, 4, 4, 2, 4, 1 }, 19)]
    [InlineData("bony-fish", 2, 80, 10, new[] { 3, 5, 5, 3, 3 }, 19)]
    public void Sites_of_the_worked_examples(string group, double kg, double dose, double siteMl, int[] expected, int total)
    {
        int[] sites =
        [
            .. Kinds.Bundled.Find(group)!.Regions.Select(r => r.Count * SiteVolume.Sites(kg * 1000 * r.Share / r.Count, dose, siteMl)),
        ];
        Assert.Equal(expected, sites);
        Assert.Equal(total, sites.Sum());
    }

    // Frog of 40 g at 0.5 mL a site: head 2, wall 2, coelom 3, forelimbs 1, hindlimbs 3 = 11 sites, 4 mL; here pairs count as one.
    [Fact]
    public void Sites_of_the_worked_frog() => Assert.Equal(
        [2, 2, 3, 1, 3], Kinds.Bundled.Find("frog")!.Regions.Select(r => SiteVolume.Sites(40 * r.Share, 100, 0.5)));

    // A dose of 89 to 103 mL per litre in 10 mL depots leaves 16 to 17 mm: worked for a 7 kg mammal.
    [Fact]
    public void Depots_of_a_7_kg_mammal_leave_16_to_17_mm()
    {
        var plan = InjectionPlan.For(Mammal(7)).Value!;
        var abdomen = plan.Regions.Single(r => r.Region.Id == "abdomen");
        Assert.InRange(abdomen.SiteMl, 9, 10);
        Assert.InRange(abdomen.ReachMm, 16, 17);
        Assert.Equal(19, abdomen.Sites);
    }

    // Published: needle work 60 to 150 mL/kg planned between 63 (Dhonau and Nunamaker) and 286 mL/kg (Anat Sci Educ 2020).
    [Fact]
    public void Dose_lies_between_the_published_ones()
    {
        var plan = InjectionPlan.For(Mammal(7)).Value!;
        Assert.InRange(plan.DoseMlPerKg, 63, 286);
        Assert.InRange(plan.TotalMl, 650, 760);
        Assert.All(plan.Regions.Where(r => r.Region.IsCavity), r => Assert.Equal(20, r.SyringeMl)); // 10 or 20 mL syringes: common practice
    }

    // Common practice: a mammal of about 7 kg, cut and injected, lies in 10 % formalin for some two weeks.
    [Fact]
    public void Mammal_of_7_kg_cut_and_injected_takes_10_to_21_days()
    {
        var body = Mammal(7);
        var found = BodyFixation.Of(body, InjectionPlan.For(body).Value, CutPlan.For(body).Value);
        Assert.True(found.IsSound);
        Assert.Equal("rule-over-promises", Assert.Single(found.Findings).Id);
        Assert.InRange(found.Value.PlannedHours / 24, 10, 21);
        Assert.InRange(14, found.Value.Time.LowHours / 24, found.Value.Time.HighHours / 24);
    }

    // R = 67 mm (0.65·√(V/HB) at the head-body length usual for 7 kg), K = 2: 46 days and two to bind. It rots.
    [Fact]
    public void Mammal_of_7_kg_left_uncut_takes_48_days_and_rots()
    {
        var found = BodyFixation.Of(Mammal(7));
        Assert.Equal(48, found.Value!.Time.LowHours / 24, 1.0);
        Assert.Contains(found.Findings, f => f.Id == "core-will-rot" && f.Message.ToString().Contains("it will rot", StringComparison.Ordinal));
    }

    // Common practice: slits of about half an inch, 12 to 13 mm, in limbs, tail, neck, abdomen and between the ribs.
    [Fact]
    public void Cuts_of_a_7_kg_mammal_are_half_an_inch_and_everywhere()
    {
        var plan = CutPlan.For(Mammal(7)).Value!;
        Assert.Equal(["neck", "thorax", "abdomen", "forelimbs", "hindlimbs", "tail"], plan.Regions.Select(r => r.Region.Id));
        Assert.All(plan.Regions, r => Assert.InRange(r.LengthMm, 12, 13));
        Assert.InRange(plan.Count, 20, 80);
        Assert.Equal("left", plan.SpareSide);
    }

    // Meador, Cuffney and Gurtz 1993 (USGS OFR 93-104): a fish over 150 mm is slit some 30 mm along the abdominal wall, on the right; 2 d to 1 week. No slit is
    // longer than a third of the cavity, which is 0.35 of the length (common practice): 23 mm at 200 mm.
    [Theory]
    [InlineData(140, false, 0, 0)]
    [InlineData(200, true, 23, 24)]
    [InlineData(280, true, 25, 40)]
    public void Fish_over_150_mm_is_slit_on_the_right(double lengthMm, bool slit, double least, double most)
    {
        var body = BodyMeasure.Of(new Specimen
        {
            Id = "f",
            Group = "bony-fish",
            TotalLength = Length.FromMillimeters(lengthMm),
            Width = Length.FromMillimeters(lengthMm * 0.11),
        }).Value!;
        var plan = CutPlan.For(body).Value!;
        Assert.Equal(slit, plan.Count > 0);
        Assert.Equal("left", plan.SpareSide);
        if (slit) Assert.Contains(plan.Regions, r => r.Region.Id == "cavity" && r.Count == 1 && r.LengthMm >= least && r.LengthMm <= most);
        Assert.InRange(BodyFixation.Of(body, InjectionPlan.For(body).Value, plan).Value!.Time.LowHours / 24, 1, 7);
    }
}
