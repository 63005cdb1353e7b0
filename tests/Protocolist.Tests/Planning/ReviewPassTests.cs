using Protocolist.Findings;
using static Protocolist.Tests.Planning.PlanFixture;

namespace Protocolist.Tests.Planning;

public class ReviewPassTests
{
    [Fact]
    public void Plan_with_an_error_is_complete_and_not_to_be_started()
    {
        var made = Plan(Mammal("7 kg") with { CollectedBy = null }, Protocolist.Protocols.Shelf.Bundled());

        Assert.NotNull(made.Value);
        Assert.False(made.Value.Startable);
        Assert.NotEmpty(made.Value.Steps);
        Assert.NotNull(made.Value.Start);
        Assert.Equal(Severity.Error, made.Value.Findings[0].Severity);
        Assert.Contains("collected-by", Assert.Single(made.Findings, f => f.Id == "missing-provenance").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_without_an_error_may_be_started()
    {
        var plan = Otter();

        Assert.True(plan.Startable, string.Join('\n', plan.Findings));
        Assert.DoesNotContain(plan.Findings, f => f.Severity == Severity.Error);
    }

    [Fact]
    public void Checks_see_the_whole_plan()
    {
        var shelf = Shelf(("mixed", "{group: mammal}", """
            stages:
              - {stage: immerse, id: fix, fluid: formalin 10 %, ratio: 10, last: 24 h}
              - {stage: house, id: house, fluid: neutral buffered formalin 10 %, ratio: 3}
            """));

        var mixed = Assert.Single(Plan(Mammal("1 kg"), shelf).Findings, f => f.Id == "mixed-buffering");
        Assert.Equal((Severity.Error, "house"), (mixed.Severity, mixed.Subject));
    }

    [Fact]
    public void Alcohol_straight_after_formalin_is_an_error()
    {
        var shelf = Shelf(("unwashed", "{group: mammal}", """
            stages:
              - {stage: immerse, id: fix, fluid: formalin 10 %, ratio: 10, last: 24 h}
              - {stage: house, id: house, fluid: ethanol 70 %vol, ratio: 3}
            """));

        Assert.Contains(Plan(Mammal("1 kg"), shelf).Findings, f => f is { Id: "unwashed-into-alcohol", Severity: Severity.Error, Subject: "house" });
    }

    [Fact]
    public void Care_is_dated_from_the_closing_and_is_no_step()
    {
        var plan = Otter();
        var closed = plan.Step("seal")!.End!.Value.Date;

        Assert.Null(plan.Step("round"));
        Assert.Contains(plan.Care, c => c.EveryMonths == 6 && c.On == closed.PlusMonths(6));
        Assert.Contains(plan.Care, c => c.On == closed.PlusDays(28));
    }
}
