using Protocolist.Plans;
using Protocolist.Specimens;
using static Protocolist.Tests.Planning.PlanFixture;

namespace Protocolist.Tests.Planning.Provisioning;

/// <summary>How a body is held in its final vessel, and how that is closed: 100 g of animal in a tall jar or a glass tank.</summary>
public class FinalVesselTests
{
    private const string Jar = "  - {id: jar, name: jar, inside: {diameter: 20 cm, height: 60 cm}, wall: glass, lid: polypropylene, seal: polyethylene, closure: screw-lid, count: 2}\n";
    private const string Tank = "  - {id: tank, name: tank, inside: {length: 60 cm, width: 25 cm, height: 40 cm}, wall: glass, lid: glass, seal: neutral-silicone, closure: sealed-plate, count: 2}\n";

    private static Plan Of(string group, string fluid, string vessel, string closure = "screw lid", IntendedUse? use = null)
    {
        var animal = Mammal("100 g") with { Group = group, IntendedUse = use };
        var stages = $"stages:\n  - {{stage: immerse, id: fix, fluid: {fluid}, ratio: 3, last: 24 h}}\n  - {{stage: mount, id: mount}}\n  - {{stage: house, id: house, fluid: {fluid}, ratio: 3}}\n  - {{stage: seal, id: seal, closure: {closure}}}\n";
        var plan = Plan(animal, Shelf(("one", $"{{group: {group}}}", stages)), "zone: UTC\nvessels:\n" + vessel).Value!;
        Assert.NotNull(plan.Step("house")!.Vessel);
        return plan;
    }

    private static string Mount(Plan plan) => string.Join('\n', plan.Step("mount")!.Instructions);

    private static string Seal(Plan plan) => string.Join('\n', plan.Step("seal")!.Instructions);

    /// <summary>A mammal of 1030 kg/m³ sinks in 70 % ethanol (890 kg/m³); a bird, lighter than formalin by the air in it, floats; jelly sags.</summary>
    [Fact]
    public void Body_sinks_floats_or_sags_by_its_group_and_its_fluid()
    {
        Assert.StartsWith("It sinks and fits, so it needs no mount.", Mount(Of("mammal", "ethanol 70 %vol", Jar)), StringComparison.Ordinal);
        var (sinks, floats, sags) = (Mount(Of("mammal", "formalin 10 %", Jar)), Mount(Of("bird", "formalin 10 %", Jar)), Mount(Of("jellyfish", "formalin 10 %", Jar)));
        Assert.Contains("sinks", sinks, StringComparison.Ordinal);
        Assert.Contains("float", floats, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("float", sags, StringComparison.OrdinalIgnoreCase);
        Assert.NotEqual(sinks, sags);
    }

    [Fact]
    public void What_is_shown_is_mounted() => Assert.NotEqual(Mount(Of("mammal", "formalin 10 %", Jar)), Mount(Of("mammal", "formalin 10 %", Jar, use: IntendedUse.Display)));

    [Fact]
    public void Lid_plate_is_taped_where_it_is_opened_again_and_bedded_in_silicone_where_it_is_not()
    {
        Assert.StartsWith("The lid will be opened again; tape comes off without harm.", Seal(Of("mammal", "formalin 10 %", Tank, "tape")), StringComparison.Ordinal);
        Assert.Equal(Seal(Of("mammal", "formalin 10 %", Tank, "tape")), Seal(Of("mammal", "formalin 10 %", Tank)));
        var silicone = Seal(Of("mammal", "formalin 10 %", Tank, "neutral-cure silicone"));
        Assert.Matches(@"Leave it to cure open for \d+ h before the lid goes on for good\.", silicone);
        Assert.DoesNotContain("tape comes off", silicone, StringComparison.Ordinal);
        Assert.DoesNotContain("cure open", Seal(Of("mammal", "formalin 10 %", Tank, "tape")), StringComparison.Ordinal);
    }

    [Fact]
    public void Screw_lid_is_its_own_closure_whatever_the_protocol_had_in_mind() =>
        Assert.StartsWith("Its own lid with a sound liner seals better than anything laid over it; ", Seal(Of("mammal", "formalin 10 %", Jar, "tape")), StringComparison.Ordinal);

    /// <summary>All that is said of holding and closing, read once: three bearings, two vessels, two fluids.</summary>
    [Fact]
    public void Holding_and_closing_read_as_they_were_kept() => KeptText.Holds("Planning/Provisioning/kept/final-vessels.txt", string.Join("\n\n",
        from vessel in (string[])[Jar, Tank]
        from fluid in (string[])["formalin 10 %", "ethanol 70 %vol"]
        from animal in (string[])["mammal", "bird", "jellyfish"]
        from use in (IntendedUse?[])[null, IntendedUse.Display]
        let plan = Of(animal, fluid, vessel, use is null ? "tape" : "neutral-cure silicone", use)
        select $"{animal} in {fluid}, {plan.Step("house")!.Vessel}{(use is null ? "" : ", shown")}\n{Mount(plan)}\n{string.Join('\n', plan.Step("house")!.Instructions)}\n{Seal(plan)}"));
}
