using Protocolist.Findings;
using static Protocolist.Tests.Planning.PlanFixture;

namespace Protocolist.Tests.Planning;

public class ReviewPassTests
{
    [Fact]
    public void Plan_with_an_error_is_complete_and_not_to_be_started()
    {
        var made = Plan(Mammal("7 kg") with { CollectedBy = null }, Shelf.Bundled());

        Assert.NotNull(made.Value);
        Assert.False(made.Value.Startable);
        Assert.NotEmpty(made.Value.Steps);
        Assert.NotNull(made.Value.Start);
        Assert.Equal(Severity.Error, made.Value.Findings[0].Severity);
        Assert.Contains("collected-by", Assert.Single(made.Findings, f => f.Id == "missing-provenance").Message.ToString(), StringComparison.Ordinal);
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

    private static readonly Shelf Short = Shelf(("short", "{group: mammal}", "stages:\n  - {stage: immerse, id: fix, fluid: formalin 10 %, ratio: 10, last: 24 h}\n  - {stage: house, id: house, fluid: formalin 10 %, ratio: 3}\n  - {stage: inspect, id: look, every: 90 d}\n"));

    [Fact]
    public void Plan_says_what_it_was_made_of_and_between_what_it_lies()
    {
        var plan = Plan(Mammal("1 kg"), Short, "name: Wet room\nzone: UTC\n").Value!;

        Assert.Equal(("Wet room", "UTC", "short", 1, "short"), (plan.Bench, plan.Zone, plan.Protocol.Id, plan.Protocol.Revision, plan.Protocol.Title));
        Assert.Equal(new NodaTime.LocalDateTime(2027, 3, 1, 9, 0), plan.EarliestStart!.Value.LocalDateTime);
        Assert.Equal(plan.Steps.Min(s => s.Start!.Value.ToInstant()), plan.Start!.Value.ToInstant());
        Assert.Equal(plan.Steps.Max(s => s.End!.Value.ToInstant()), plan.End!.Value.ToInstant());
        Assert.Equal(["fix", "house"], plan.Steps.Select(s => s.Id));
        Assert.Null(plan.By);
        Assert.Null(plan.Wishes);
        Assert.Equal("", new Planner(Short).Plan(new(Mammal("1 kg"), Protocolist.Benches.Bench.Empty(NodaTime.DateTimeZone.Utc), Monday)).Value!.Bench);
    }

    [Fact]
    public void Gravest_findings_come_first_and_none_twice()
    {
        var findings = Plan(Mammal("7 kg") with { CollectedBy = null }, Shelf.Bundled()).Value!.Findings;

        Assert.Equal(findings.OrderByDescending(f => f.Severity).Select(f => f.ToString()), findings.Select(f => f.ToString()));
        Assert.Equal(findings.Length, findings.Select(f => (f.Id, f.Message.ToString(), f.Subject)).Distinct().Count());
        Assert.True(findings.Select(f => f.Severity).Distinct().Count() == 3);
    }

    /// <summary>A glass tank filled 30 cm deep and more is reckoned; a jar, a tub or a shallow tank is not.</summary>
    [Theory]
    [InlineData("glass", 40, true)]
    [InlineData("glass", 25, false)]
    [InlineData("polypropylene", 40, false)]
    public void Deep_tank_of_glass_is_reckoned(string wall, int height, bool told)
    {
        var plan = Plan(Mammal("1 kg"), Short, $"zone: UTC\nvessels:\n  - {{id: tank, name: tank, inside: {{length: 80 cm, width: 40 cm, height: {height} cm}}, wall: {wall}, lid: {wall}, seal: neutral-silicone, closure: sealed-plate, count: 2}}\n").Value!;

        Assert.Equal("tank", plan.Step("house")!.Vessel);
        Assert.Equal(told, plan.Findings.Any(f => f.Id.StartsWith("tank-", StringComparison.Ordinal)));
    }
}
