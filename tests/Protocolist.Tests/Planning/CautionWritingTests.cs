using Protocolist.Plans;
using static Protocolist.Tests.Planning.PlanFixture;

namespace Protocolist.Tests.Planning;

/// <summary>Cautions stand where they matter, once.</summary>
public class CautionWritingTests
{
    private const string Sharps = "Blades and needles: cut and push away from yourself, never recap a needle, sharps into a sharps box.";

    private static Plan Of(string stages, string bench = "zone: UTC\n", string group = "mammal", string cautions = "") =>
        Plan(Mammal("1 kg") with { Group = group }, Shelf(("one", $"{{group: {group}}}", $"{cautions}stages:\n{stages}")), bench).Value!;

    /// <summary>What is of some finer groups is told to them, and to whoever names none.</summary>
    [Theory]
    [InlineData("mammal", true, true)]
    [InlineData("mouse", true, false)]
    [InlineData("mole", false, false)]
    [InlineData("weasel", false, false)]
    [InlineData("deer", false, true)]
    public void Caution_of_a_finer_group_is_told_to_it_alone(string group, bool hantavirus, bool anthrax)
    {
        var told = Of("  - {stage: task, id: a, last: 1 h}\n", group: group).Step("a")!.Cautions.Texts();

        Assert.Equal(hantavirus, told.Any(t => t.Contains("hantavirus", StringComparison.Ordinal)));
        Assert.Equal(anthrax, told.Any(t => t.Contains("grazing", StringComparison.Ordinal)));
        Assert.Contains(told, t => t.Contains("tularaemia", StringComparison.Ordinal));
    }

    [Fact]
    public void What_holds_throughout_stands_at_the_first_step_alone()
    {
        var plan = Of("  - {stage: task, id: a, last: 1 h, cautions: [Mind the teeth.]}\n  - {stage: task, id: b, last: 1 h, cautions: [Mind the teeth., Mind the step.]}\n", cautions: "cautions: [Ask first.]\n");

        Assert.Equal("Ask first.", plan.Step("a")!.Cautions[0].ToString());
        Assert.Contains("Mammals may carry plague, tularaemia and leptospira: gloves, mask and eye protection.", plan.Step("a")!.Cautions.Texts());
        Assert.Equal("Mind the teeth.", plan.Step("a")!.Cautions[^1].ToString());
        Assert.Equal(["Mind the step."], plan.Step("b")!.Cautions.Texts());
    }

    /// <summary>What is law, and rabies, have checks of their own, with the place and the remedy.</summary>
    [Fact]
    public void Law_and_rabies_are_left_to_the_checks()
    {
        var whale = Of("  - {stage: task, id: a, last: 1 h}\n", group: "marine-mammal").Step("a")!.Cautions;
        Assert.DoesNotContain(whale, c => c.ToString().Contains("licence", StringComparison.Ordinal));
        Assert.Contains(whale, c => c.ToString().Contains("brucella", StringComparison.Ordinal));
        Assert.DoesNotContain(Of("  - {stage: task, id: a, last: 1 h}\n", group: "bat").Step("a")!.Cautions, c => c.ToString().Contains("rabies", StringComparison.Ordinal));
    }

    [Fact]
    public void Blade_and_needle_are_warned_of_once()
    {
        var plan = Of("  - {stage: slit, id: cut}\n  - {stage: inject, id: inject, fluid: formalin 10 %}\n");
        Assert.Equal(Sharps, plan.Step("cut")!.Cautions[^1].ToString());
        Assert.DoesNotContain(Sharps, plan.Step("inject")!.Cautions.Texts());
        Assert.Contains(Sharps, Of("  - {stage: inject, id: inject, fluid: formalin 10 %}\n").Step("inject")!.Cautions.Texts());
        Assert.DoesNotContain(Sharps, Of("  - {stage: pose, id: pose}\n").Step("pose")!.Cautions.Texts());
    }

    [Fact]
    public void Fluid_brings_its_hazards_and_the_sheet_of_the_bottle_and_water_none()
    {
        var plan = Of("  - {stage: task, id: a, last: 1 h}\n  - {stage: wash, id: wash, fluid: tap water, ratio: 3, last: 24 h}\n  - {stage: bath, id: bath, fluid: ethanol 70 %vol, ratio: 3, last: 24 h}\n  - {stage: house, id: house, fluid: ethanol 70 %vol, ratio: 3}\n");

        Assert.Empty(plan.Step("wash")!.Cautions.Texts());
        Assert.StartsWith("DANGER: ethanol 70 %vol: ", plan.Step("bath")!.Cautions[0].ToString(), StringComparison.Ordinal);
        Assert.Equal("The safety data sheet of your own bottle, local codes, and a licensed or competent person where they ask for one come before this sheet.", plan.Step("bath")!.Cautions[^1].ToString());
        Assert.Empty(plan.Step("house")!.Cautions.Texts());
    }

    [Fact]
    public void Stock_is_warned_of_where_it_is_mixed_and_not_where_it_comes_ready()
    {
        const string Stages = "  - {stage: task, id: a, last: 1 h}\n  - {stage: immerse, id: fix, fluid: formalin 10 %, ratio: 10, last: 24 h}\n  - {stage: house, id: house, fluid: formalin 10 %, ratio: 3}\n";
        var mixed = Of(Stages);
        Assert.Single(mixed.Step("fix")!.Cautions, c => c.ToString().StartsWith("DANGER, when mixing: formaldehyde stock 37 %mass: ", StringComparison.Ordinal));
        Assert.DoesNotContain(mixed.Step("house")!.Cautions, c => c.ToString().Contains("when mixing", StringComparison.Ordinal));
        var ready = Of(Stages, "zone: UTC\nstock:\n  - {fluid: formalin 10 %, id: ready, on-hand: 90 L}\n");
        Assert.DoesNotContain(ready.Steps, s => s.Cautions.Any(c => c.ToString().Contains("when mixing", StringComparison.Ordinal)));
    }

    /// <summary>23 kg is the most that one person should lift (NIOSH's constant of 1994): 20 L of formalin and a body of 1 kg in a tub of 1 or of 3 kg.</summary>
    [Fact]
    public void Load_that_one_person_should_not_lift_is_told_with_its_weight()
    {
        static string Tub(int kilograms) => $"zone: UTC\nvessels:\n  - {{id: tub, name: white tub, inside: {{length: 60 cm, width: 30 cm, height: 40 cm}}, wall: polypropylene, lid: polypropylene, closure: snap-lid, count: 3, empty-mass: {kilograms} kg}}\n";
        const string Stages = "  - {stage: immerse, id: fix, fluid: distilled water, ratio: 20, last: 24 h}\n";

        var heavy = Of(Stages, Tub(9)).Step("fix")!.Cautions;
        Assert.Single(heavy, c => System.Text.RegularExpressions.Regex.IsMatch(c.ToString(), @"^white tub, full, weighs [\d.]+ kg: fill it where it stands, and do not lift it alone\.$"));
        Assert.DoesNotContain(Of(Stages, Tub(1)).Step("fix")!.Cautions, c => c.ToString().Contains("weighs", StringComparison.Ordinal));
    }
}
