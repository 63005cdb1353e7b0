using System.Collections.Immutable;
using Protocolist.Plans;
using Protocolist.Specimens;
using UnitsNet;
using static Protocolist.Tests.Planning.PlanFixture;

namespace Protocolist.Tests.Planning.Provisioning;

/// <summary>Which of the vessels at hand a step takes, and how the body lies in it.</summary>
public class VesselChoiceTests
{
    private static string Box(string id, string inside, int count = 1, string more = "") =>
        $"  - {{id: {id}, name: {id}, inside: {{{inside}}}, wall: polypropylene, lid: polypropylene, closure: snap-lid, count: {count}{more}}}\n";

    private static Plan Of(Specimen specimen, string vessels, string stage = "stage: immerse, fluid: formalin 10 %, ratio: 3, last: 24 h", string more = "", PlanWishes? wishes = null) => new Planner(Shelf(("one", $"{{group: {specimen.Group}}}", $"stages:\n  - {{{stage}, id: it}}\n  - {{stage: house, id: house, fluid: formalin 10 %, ratio: 2}}\n"))).Plan(new(specimen, PlanFixture.Bench($"zone: UTC\n{more}vessels:\n{vessels}"), Monday) { Wishes = wishes ?? PlanWishes.None }).Value!;

    private static readonly Specimen Stoat = Mammal("206 g") with { HeadBodyLength = Length.FromCentimeters(24), TotalLength = Length.FromCentimeters(32) };

    [Fact]
    public void Least_room_that_does_is_taken()
    {
        var plan = Of(Stoat, Box("large", "length: 60 cm, width: 40 cm, height: 30 cm", 2) + Box("middle", "length: 45 cm, width: 20 cm, height: 20 cm", 2) + Box("small", "length: 20 cm, width: 10 cm, height: 10 cm", 2));

        Assert.Equal("middle", plan.Step("it")!.Vessel);
        Assert.Equal("a", Of(Stoat, Box("b", "length: 45 cm, width: 20 cm, height: 20 cm", 2) + Box("a", "length: 45 cm, width: 20 cm, height: 20 cm", 2)).Step("it")!.Vessel);
    }

    /// <summary>A small vessel of 30 kg is too heavy to be lifted by one person, and that is warned of: a larger and lighter one is better.</summary>
    [Fact]
    public void Fewest_warnings_come_before_least_room()
    {
        var plan = Of(Stoat, Box("heavy", "length: 45 cm, width: 20 cm, height: 20 cm", 2, ", empty-mass: 30 kg") + Box("light", "length: 45 cm, width: 21 cm, height: 20 cm", 2, ", empty-mass: 1 kg"));

        Assert.Equal("light", plan.Step("house")!.Vessel);
    }

    [Fact]
    public void Where_none_does_the_reasons_of_the_largest_come_first()
    {
        var plan = Of(Stoat, Box("tiny", "length: 5 cm, width: 5 cm, height: 5 cm") + Box("small", "length: 20 cm, width: 10 cm, height: 10 cm"));

        Assert.Null(plan.Step("it")!.Vessel);
        Assert.Equal(600, plan.Step("it")!.Volume!.Value.Milliliters, 6); // 200 mL of body, three to one
        var finding = Assert.Single(plan.Findings, f => f.Id == "vessel-too-small");
        Assert.StartsWith("no vessel at hand will do for 'it', 'house': ", finding.Message.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Bodies_lie_as_they_are_shaped()
    {
        var tubs = Box("tub", "length: 60 cm, width: 50 cm, height: 40 cm", 3);
        string How(Specimen s) => Of(s, tubs).Step("it")!.Instructions[0].ToString();

        Assert.Contains("tub, lying", How(Stoat), StringComparison.Ordinal);
        Assert.Contains("tub, laid loosely", How(Stoat with { Count = 3 }), StringComparison.Ordinal);
        Assert.Contains("coil", How(Mammal("300 g") with { Group = "snake", SnoutVentLength = Length.FromCentimeters(80) }), StringComparison.Ordinal);
        Assert.Contains("tub, lying", How(Mammal("300 g") with { Group = "ray", DiscWidth = Length.FromCentimeters(22) }), StringComparison.Ordinal);
    }

    [Fact]
    public void Hardened_flat_body_may_stand_on_edge_where_it_is_kept_and_lies_while_it_is_fixed()
    {
        var ray = Mammal("300 g") with { Group = "ray", DiscWidth = Length.FromCentimeters(20), TotalLength = Length.FromCentimeters(30) };
        var narrow = Box("slot", "length: 45 cm, width: 9 cm, height: 30 cm", 3);

        var plan = Of(ray, narrow);

        Assert.Null(plan.Step("it")!.Vessel);
        Assert.Equal("slot", plan.Step("house")!.Vessel);
    }

    /// <summary>Two lift a vessel, however many work at the bench.</summary>
    [Fact]
    public void Bench_of_many_people_is_planned_as_one_of_two()
    {
        var tub = Box("tub", "length: 60 cm, width: 40 cm, height: 30 cm", 2, ", empty-mass: 30 kg");
        string[] Heavy(int people) => [.. Of(Stoat, tub, more: $"people: {people}\n").Findings.Where(f => f.Id == "vessel-too-heavy-to-lift").Select(f => f.ToString())];

        Assert.NotEmpty(Heavy(2));
        Assert.Equal(Heavy(2), Heavy(5));
        Assert.NotEqual(Heavy(1), Heavy(2));
    }

    [Fact]
    public void Wished_vessels_that_cannot_be_say_why()
    {
        var vessels = Box("large", "length: 60 cm, width: 40 cm, height: 30 cm", 2) + Box("small", "length: 20 cm, width: 10 cm, height: 10 cm") + Box("gone", "length: 60 cm, width: 40 cm, height: 30 cm", 0);
        string Told(string step, string vessel, string id)
        {
            var plan = Of(Stoat, vessels, wishes: PlanWishes.None with { Vessels = ImmutableSortedDictionary<string, string>.Empty.Add(step, vessel) });
            Assert.False(plan.Startable);
            return Assert.Single(plan.Findings, f => f.Id == id).ToString();
        }

        Assert.Equal("error no-vessel-wanted: 'hous' is no step of this plan that uses a vessel; did you mean 'house'?", Told("hous", "large", "no-vessel-wanted"));
        Assert.Equal("error unknown-vessel: the bench lists no vessel 'larg'; did you mean 'large'?", Told("house", "larg", "unknown-vessel"));
        Assert.Equal("error wished-vessel-not-free: no 'gone' is free, and none can be bought; take another, start later, or give it a price in the bench file", Told("house", "gone", "wished-vessel-not-free"));
        Assert.Matches("^error wished-vessel-does-not-fit: 'small' does not do for 'house': .+; leave the choice to the planner, or see which ones do with 'compare'$", Told("house", "small", "wished-vessel-does-not-fit"));
        Assert.DoesNotContain(Of(Stoat, vessels, wishes: PlanWishes.None with { Vessels = ImmutableSortedDictionary<string, string>.Empty.Add("house", "large") }).Findings, f => f.Id.Contains("wished", StringComparison.Ordinal));
    }
}
