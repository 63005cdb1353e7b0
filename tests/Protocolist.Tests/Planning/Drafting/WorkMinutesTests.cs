using Protocolist.Plans;
using static Protocolist.Tests.Planning.PlanFixture;

namespace Protocolist.Tests.Planning.Drafting;

/// <summary>Work by what there is to do; all of it common practice: half a minute a site under 2 mL, a minute up to 10 mL; a minute for one cut of a row.</summary>
public class WorkMinutesTests
{
    private static double Minutes(string stage, string mass = "1 kg", int count = 1, string group = "mammal") =>
        Plan(Mammal(mass) with { Group = group, Count = count }, Shelf(("one", $"{{group: {group}}}", $"stages:\n  - {{{stage}, id: it}}\n"))).Value!.Step("it")!.HandsOn.TotalMinutes;

    private static Step Injected(string mass) =>
        Plan(Mammal(mass), Shelf(("one", "{group: mammal}", "stages:\n  - {stage: inject, id: it, fluid: formalin 10 %, dose: 100 mL/kg * specimen.mass}\n"))).Value!.Step("it")!;

    [Fact]
    public void Injection_takes_as_long_as_it_has_sites()
    {
        var (small, large) = (Injected("200 g"), Injected("7 kg"));
        Assert.InRange(large.HandsOn.TotalMinutes, 5 + (0.5 * large.Sites.Sum(s => s.Sites)), 10 + (1.5 * large.Sites.Sum(s => s.Sites)));
        Assert.True(small.HandsOn.TotalMinutes <= 20 && large.HandsOn.TotalMinutes >= 60, $"{small.HandsOn} {large.HandsOn}");
        Assert.Equal(large.HandsOn, large.End!.Value.ToInstant() - large.Start!.Value.ToInstant());
    }

    /// <summary>More than four hours are shared out, and the plan says that they are too many for one person.</summary>
    [Fact]
    public void Nobody_injects_for_more_than_four_hours_at_a_stretch()
    {
        var plan = Plan(Mammal("55 kg"), Shelf(("one", "{group: mammal}", "stages:\n  - {stage: inject, id: it, fluid: formalin 10 %, dose: 100 mL/kg * specimen.mass}\n"))).Value!;
        Assert.Equal(240, plan.Step("it")!.HandsOn.TotalMinutes);
        Assert.Contains("perfuse", plan.Findings.Single(f => f.Id == "many-sites").Remedy.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void More_animals_and_more_cuts_take_longer()
    {
        Assert.True(Minutes("stage: sample", count: 8) > Minutes("stage: sample"));
        Assert.Equal(Minutes("stage: sample", count: 10), Minutes("stage: sample", count: 2000));
        Assert.True(Minutes("stage: slit, places: [belly], count: 20") > Minutes("stage: slit, places: [belly], count: 1"));
    }

    [Fact]
    public void What_a_protocol_says_comes_first() => Assert.Equal(45, Minutes("stage: slit, places: [belly], count: 20, hands-on: 45 min"));
}
