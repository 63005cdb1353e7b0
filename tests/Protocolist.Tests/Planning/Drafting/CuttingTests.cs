using Protocolist.Plans;
using static Protocolist.Tests.Planning.PlanFixture;

namespace Protocolist.Tests.Planning.Drafting;

/// <summary>Cuts of a mammal of 1 kg: by custom about 12.5 mm long and 30 mm apart (the group's row), else as the protocol says.</summary>
public class CuttingTests
{
    private static Plan Of(string settings, string group = "mammal", string mass = "1 kg")
    {
        var shelf = Shelf(("cut", $"{{group: {group}}}", $"stages:\n  - {{stage: slit, id: cut{(settings.Length > 0 ? ", " : "")}{settings}}}\n  - {{stage: immerse, id: fix, fluid: formalin 10 %, ratio: 10, last: 24 h}}\n"));
        return Plan(Mammal(mass) with { Group = group }, shelf).Value!;
    }

    private static PlannedCut[] Cuts(string settings, string group = "mammal", string mass = "1 kg") => [.. Of(settings, group, mass).Step("cut")!.Cuts];

    [Fact]
    public void Settings_of_the_protocol_are_taken_as_they_are_within_what_the_part_allows()
    {
        var cut = Assert.Single(Cuts("places: [belly], count: 3, length: 10 mm to 20 mm, depth: 2 mm, spacing: 50 mm, side: left"));

        Assert.Equal(("abdomen", 3, "left"), (cut.Region.ToString(), cut.Count, cut.Side));
        Assert.Equal((15, 2, 50), (Math.Round(cut.Length!.Value.Millimeters, 9), Math.Round(cut.Depth!.Value.Millimeters, 9), Math.Round(cut.Spacing!.Value.Millimeters, 9)));
        Assert.False(cut.IsShortened);
        var long_ = Assert.Single(Cuts("places: [belly], length: 200 mm, depth: 40 mm"));
        Assert.InRange(long_.Length!.Value.Millimeters, 20, 45); // a third of a belly of about 100 mm
        Assert.Equal(3.2, long_.Depth!.Value.Millimeters, 0.01); // the wall of a mammal of 1 kg, and no deeper
        Assert.True(long_.IsShortened && long_.IsThroughWall);
    }

    /// <summary>An abdominal wall of a gull of 1 kg is about 2 mm; a fifth of its trunk would be 23 mm.</summary>
    [Fact]
    public void Cavities_are_opened_through_the_wall_alone() =>
        Assert.Equal(2, Assert.Single(Cuts("places: [abdomen]", "bird")).Depth!.Value.Millimeters, 0.1);

    /// <summary>A muscle is cut no deeper than the cut is long.</summary>
    [Fact]
    public void Muscle_is_cut_no_deeper_than_long() =>
        Assert.All(Cuts("places: [hindlimbs, neck, forelimbs], depth: 60 mm", mass: "20 kg"), c => Assert.True(c.Depth <= c.Length, $"{c}"));

    /// <summary>All legs of a turtle.</summary>
    [Fact]
    public void Four_limbs_have_four_cuts() => Assert.Equal(4, Assert.Single(Cuts("places: [limbs]", "turtle", "3 kg")).Count);

    /// <summary>The tail of a small mammal is thinner than fluid crosses from outside.</summary>
    [Fact]
    public void A_part_too_thin_is_left_out_and_a_step_of_nothing_else_too()
    {
        Assert.Equal(["abdomen"], Cuts("places: [abdomen, tail]", mass: "30 g").Select(c => c.Region.ToString()));
        var plan = Of("places: [tail]", mass: "30 g");
        Assert.Null(plan.Step("cut"));
        Assert.Single(plan.Findings, f => f.Id == "too-thin-to-cut");
    }

    [Fact]
    public void Custom_fills_in_what_the_protocol_leaves_open()
    {
        var cut = Assert.Single(Cuts("places: [abdomen]"));

        Assert.Equal(("abdomen", "any"), (cut.Region.ToString(), cut.Side));
        Assert.InRange(cut.Count, 2, 6);
        Assert.Equal(12.5, cut.Length!.Value.Millimeters, 9);
        Assert.Equal(30, cut.Spacing!.Value.Millimeters, 9);
        Assert.Equal(3.2, cut.Depth!.Value.Millimeters, 0.01); // the wall
    }

    [Fact]
    public void Wider_spacing_makes_fewer_cuts()
    {
        var (near, wide) = (Assert.Single(Cuts("places: [abdomen], spacing: 10 mm")), Assert.Single(Cuts("places: [abdomen], spacing: 60 mm")));

        Assert.True(near.Count > wide.Count, $"{near.Count} and {wide.Count}");
        Assert.Equal((10, 60), (Math.Round(near.Spacing!.Value.Millimeters, 9), Math.Round(wide.Spacing!.Value.Millimeters, 9)));
    }

    [Fact]
    public void Each_place_has_its_line_and_no_place_is_every_cavity()
    {
        Assert.Equal(["chest", "abdomen", "hindlimbs"], Cuts("places: [thorax, belly, thigh]").Select(c => c.Region.ToString()));
        Assert.Equal(["chest", "abdomen"], Cuts("").Select(c => c.Region.ToString()));
        Assert.All(Cuts(""), c => Assert.True(c is { Count: > 0, Length: not null, Depth: not null }));
    }

    /// <summary>One cut has no distance to the next.</summary>
    [Fact]
    public void Single_cut_has_no_spacing()
    {
        var cut = Assert.Single(Cuts("places: [neck]", mass: "3 kg"));
        Assert.Equal(cut.Count > 1, cut.Spacing is not null);
        var small = Assert.Single(Cuts("places: [abdomen], count: 1", mass: "30 g"));
        Assert.Equal(1, small.Count);
        Assert.Null(small.Spacing);
        Assert.NotNull(small.Length);
    }

    [Fact]
    public void Place_that_the_animal_does_not_have_is_warned_of_with_those_that_it_has()
    {
        var plan = Of("places: [belly, mantle]");

        var finding = Assert.Single(plan.Findings, f => f.Id == "unknown-region");
        Assert.Equal("a mammal has no region 'mantle' that is known", finding.Message.ToString());
        Assert.Equal("known here: head, neck, thorax, abdomen, forelimbs, hindlimbs, tail", finding.Remedy.ToString());
        Assert.Equal(("cut", 7), (finding.Subject, finding.Where.Line));
        Assert.Equal(["abdomen", "mantle"], plan.Step("cut")!.Cuts.Select(c => c.Region.ToString()));
        Assert.DoesNotContain(Of("places: [belly]").Findings, f => f.Id == "unknown-region");
    }

    [Fact]
    public void Cuts_shorten_the_way_of_the_fixative()
    {
        static double Hours(Plan plan)
        {
            Assert.Null(Protocolist.Notation.QuantityText.Read(plan.Figure("model.fixation")!.Exact, out var range));
            return range.High;
        }

        Assert.True(Hours(Of("places: [thorax, abdomen, neck, hindlimbs, forelimbs, tail]")) <= Hours(Of("places: [neck]")));
    }
}
