using Protocolist.Findings;
using static Protocolist.Tests.Planning.PlanFixture;

namespace Protocolist.Tests.Planning.Drafting;

public class DraftPassTests
{
    private static readonly Shelf TwoWays = Shelf(("two-ways", "{group: mammal}", """
        choices:
          keeping: [formalin, ethanol]
        values:
          soak: choose(choice.keeping is ethanol, 48 h, 72 h)
        stages:
          - {stage: immerse, id: fix, fluid: formalin 10 %, ratio: 10, last: soak}
          - {stage: wash, id: wash, fluid: tap water, ratio: 3, last: 24 h, when: choice.keeping is ethanol}
        """));

    [Fact]
    public void First_option_is_the_default()
    {
        var plan = Plan(Mammal("1 kg"), TwoWays).Value!;

        Assert.Equal("formalin", plan.Choices["keeping"]);
        Assert.Equal("taken before 'ethanol', which keeps the specimen less well", plan.Figure("choice.keeping")!.Formula.ToString());
        Assert.Equal(72, plan.Step("fix")!.Least.TotalHours);
        Assert.Null(plan.Step("wash"));
    }

    [Fact]
    public void Choice_reaches_values_and_conditions()
    {
        var plan = Plan(Mammal("1 kg"), TwoWays, choices: ("keeping", "ethanol")).Value!;

        Assert.Equal("chosen", plan.Figure("choice.keeping")!.Formula.ToString());
        Assert.Equal(48, plan.Step("fix")!.Least.TotalHours);
        Assert.NotNull(plan.Step("wash"));
    }

    [Fact]
    public void Every_wrong_choice_is_found_at_once()
    {
        var made = Plan(Mammal("1 kg"), TwoWays, choices: [("keeping", "vodka"), ("keepin", "ethanol")]);

        Assert.Null(made.Value);
        Assert.Contains(made.Findings, f => f is { Id: "unknown-option", Severity: Severity.Error });
        Assert.Contains(made.Findings, f => f.Id == "unknown-choice" && f.Remedy.ToString() == "did you mean 'keeping'?");
    }

    [Fact]
    public void Amount_below_nothing_is_an_error_at_its_place()
    {
        var shelf = Shelf(("negative", "{group: mammal}", """
            stages:
              - {stage: immerse, id: fix, fluid: formalin 10 %, ratio: 10, last: "24 h - 10 h/kg * specimen.mass"}
            """));

        var made = Plan(Mammal("7 kg"), shelf);

        Assert.False(made.Value!.Startable);
        var fault = Assert.Single(made.Findings, f => f.Id == "impossible-amount");
        Assert.Equal(("negative.yaml", 7, "fix.last"), (fault.Where.File, fault.Where.Line, fault.Subject));
    }

    [Fact]
    public void Protocol_with_no_stage_for_the_specimen_is_an_error()
    {
        var shelf = Shelf(("frozen-only", "{group: mammal}", "stages:\n  - {stage: thaw, id: thaw, fluid: tap water, last: 24 h, when: specimen.condition is frozen}\n"));

        Assert.Contains(Plan(Mammal("7 kg"), shelf).Findings, f => f is { Id: "no-steps", Severity: Severity.Error });
    }

    /// <summary>A lot takes fluid for all its animals: 10 times 12 animals of about 1 L each (mammal tissue, close to 1.03 kg/L).</summary>
    [Fact]
    public void Lot_takes_fluid_for_all_its_animals()
    {
        var one = Plan(Mammal("1 kg"), TwoWays).Value!.Step("fix")!.Volume!.Value.Liters;
        var twelve = Plan(Mammal("1 kg") with { Count = 12 }, TwoWays).Value!.Step("fix")!.Volume!.Value.Liters;

        Assert.Equal(12, twelve / one, 6);
        Assert.InRange(one, 9, 10.2);
    }
}
