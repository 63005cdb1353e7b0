using System.Collections.Immutable;
using Protocolist.Plans;
using Protocolist.Specimens;
using UnitsNet;
using static Protocolist.Tests.Planning.PlanFixture;

namespace Protocolist.Tests.Planning.Provisioning;

/// <summary>The posture that the vessels are chosen for is the one that the plan tells, and it stays.</summary>
public class PostureChoiceTests
{
    private const string Stages = """
        stages:
          - {stage: pose, id: pose}
          - {stage: immerse, id: fix, fluid: formalin 10 %, ratio: 10, last: 24 h}
          - {stage: wash, id: wash, fluid: tap water, ratio: 3, last: 24 h}
          - {stage: house, id: house, fluid: ethanol 70 %vol, ratio: 3}

        """;

    private static string Jar(string id, int wide, int high) =>
        $"  - {{id: {id}, name: {id}, inside: {{diameter: {wide} mm, height: {high} mm}}, wall: glass, lid: polypropylene, seal: polyethylene, closure: screw-lid, count: 4}}\n";

    private static Plan Of(Specimen specimen, string vessels, string? stages = null, PlanWishes? wishes = null) =>
        new Planner(Shelf(("one", $"{{group: {specimen.Group}}}", stages ?? Stages)))
            .Plan(new(specimen, PlanFixture.Bench($"zone: UTC\nvessels:\n{vessels}"), Monday) { Wishes = wishes ?? PlanWishes.None }).Value!;

    private static readonly Specimen Mouse = Mammal("25 g") with
    {
        Group = "mouse",
        HeadBodyLength = Length.FromMillimeters(90),
        TotalLength = Length.FromMillimeters(175),
    };

    private static readonly Specimen Snake = Mammal("300 g") with { Group = "snake", SnoutVentLength = Length.FromMillimeters(900) };

    private static readonly string Jars = Jar("small", 90, 130) + Jar("large", 180, 260);

    [Fact]
    public void Tail_is_bent_where_that_saves_half_of_the_fluid_and_the_step_tells_so_and_why()
    {
        var plan = Of(Mouse, Jars);

        Assert.All(plan.Steps.Where(s => s.Vessel is not null), s => Assert.Equal("small", s.Vessel));
        var told = plan.Step("pose")!.Instructions.Select(i => i.ToString()).ToArray();
        Assert.Equal("Curve the tail up along the back or the side.", told[0]);
        Assert.Matches("^By custom one would lay the tail straight behind the body; so it takes .+ of fluid in all, and this .+'posture: tail-straight' with the specimen\\.$", told[1]);
    }

    [Fact]
    public void Tail_stays_straight_where_that_is_wished_or_saves_little()
    {
        foreach (var plan in (Plan[])[Of(Mouse with { Posture = "tail-straight" }, Jars), Of(Mouse, Jar("large", 180, 260)), Of(Mouse, Jar("tall", 70, 230))])
        {
            Assert.Equal("Lay the tail straight behind the body.", plan.Step("pose")!.Instructions[0].ToString());
            Assert.DoesNotContain(plan.Step("pose")!.Instructions, i => i.ToString().StartsWith("By custom", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Tail_is_bent_where_no_vessel_holds_it_straight()
    {
        var told = Of(Mouse, Jar("small", 90, 130)).Step("pose")!.Instructions;
        Assert.Equal("By custom one would lay the tail straight behind the body; no vessel at hand holds it so.", told[1].ToString());
    }

    /// <summary>What has hardened in a coil is not laid in another.</summary>
    [Fact]
    public void Coil_has_the_same_layers_in_every_vessel()
    {
        var plan = Of(Snake, Jar("narrow", 140, 200) + Jar("wide", 320, 320));

        var layers = plan.Steps.SelectMany(s => s.Instructions).Select(i => i.ToString())
            .Select(t => System.Text.RegularExpressions.Regex.Match(t, @"(coiled in |; )(\d) layers?")).Where(m => m.Success).Select(m => m.Groups[2].Value).ToArray();
        Assert.True(layers.Length >= 3, string.Join(' ', layers));
        Assert.Single(layers.Distinct());
    }

    /// <summary>Where one vessel is insisted on, the posture is one that goes into it.</summary>
    [Fact]
    public void Wished_vessel_decides_the_posture()
    {
        var wishes = PlanWishes.None with { Vessels = ImmutableSortedDictionary<string, string>.Empty.Add("house", "small") };
        var plan = Of(Mouse, Jars, wishes: wishes);

        Assert.Equal("small", plan.Step("house")!.Vessel);
        Assert.StartsWith("Curve the tail", plan.Step("pose")!.Instructions[0].ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Where_no_step_sets_the_posture_the_first_soak_tells_it()
    {
        var plan = Of(Mouse, Jars, Stages.Replace("  - {stage: pose, id: pose}\n", "", StringComparison.Ordinal));
        Assert.Contains(plan.Step("fix")!.Instructions, i => i.ToString() == "Curve the tail up along the back or the side.");
        Assert.DoesNotContain(plan.Step("wash")!.Instructions, i => i.ToString().Contains("tail", StringComparison.Ordinal));
    }
}
