using Protocolist.Notation;
using Protocolist.Plans;
using static Protocolist.Tests.Planning.PlanFixture;

namespace Protocolist.Tests.Planning.Drafting;

/// <summary>The model's word beside the protocol's: how long a body takes to be fixed to the core.</summary>
public class FixationTimeTests
{
    private static Plan Of(string stages, string mass = "1 kg", string group = "mammal") => Plan(Mammal(mass) with { Group = group }, Shelf(("one", $"{{group: {group}}}", "stages:\n" + stages))).Value!;

    private static (double Low, double High) Days(Plan plan)
    {
        Assert.Null(QuantityText.Read(plan.Figure("model.fixation")!.Exact, out var range));
        return (range.Low / 86400, range.High / 86400);
    }

    private static string Soak(string fluid, string last, string id = "fix") => $"  - {{stage: immerse, id: {id}, fluid: {fluid}, ratio: 10, last: {last}}}\n";

    [Fact]
    public void Nothing_that_fixes_no_figure() => Assert.Null(Of("  - {stage: task, id: t, last: 1 h}\n").Figure("model.fixation"));

    /// <summary>The short first soak only hardens the skin: what is said is said of the long one.</summary>
    [Fact]
    public void Longest_soak_is_the_one_that_fixes()
    {
        var findings = Of(Soak("formalin 10 %", "1 h", "harden") + Soak("formalin 10 %", "24 h")).Findings.Where(f => f.Id.StartsWith("core-", StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(findings);
        Assert.All(findings, f => Assert.Equal("fix", f.Subject));
        Assert.All(Of(Soak("formalin 10 %", "20 d to 40 d") + Soak("formalin 10 %", "30 d", "second")).Findings.Where(f => f.Id.StartsWith("core-", StringComparison.Ordinal)), f => Assert.Equal("fix", f.Subject));
    }

    [Fact]
    public void Ethanol_goes_its_own_way_and_from_90_percent_on_another()
    {
        var (formalin, weak, strong, almost) = (Days(Of(Soak("formalin 10 %", "9 d"), "30 g")), Days(Of(Soak("ethanol 70 %vol", "9 d"), "30 g")), Days(Of(Soak("ethanol 90 %vol", "9 d"), "30 g")), Days(Of(Soak("ethanol 89 %vol", "9 d"), "30 g")));

        Assert.NotEqual(formalin, weak);
        Assert.NotEqual(weak, strong);
        Assert.Equal(weak, almost);
        Assert.Equal(strong, Days(Of(Soak("ethanol 96 %vol", "9 d"), "30 g")));
    }

    [Fact]
    public void Injection_shortens_it_and_the_figure_says_by_what()
    {
        var (whole, injected) = (Of(Soak("formalin 10 %", "9 d")), Of("  - {stage: inject, id: inject, fluid: formalin 10 %}\n" + Soak("formalin 10 %", "9 d")));

        Assert.True(Days(injected).High < Days(whole).High);
        Assert.Contains("from outside", whole.Figure("model.fixation")!.Formula.ToString(), StringComparison.Ordinal);
        Assert.Matches(@"^penetration of \d+ mm in the slowest region \(\w+, from outside\), binding included$", whole.Figure("model.fixation")!.Formula.ToString());
    }

    /// <summary>Regions that are reached too late are told once, by the slowest of them; what would have to be done is reckoned for the time that the soaks have, a fortnight at most.</summary>
    [Fact]
    public void Core_out_of_reach_names_the_others_and_the_ways_out()
    {
        var told = Assert.Single(Of(Soak("formalin 10 %", "10 d"), "9 kg").Findings, f => f.Id == "core-out-of-reach");

        Assert.Matches(@": it will rot; too late too: abdomen, neck, head, hindlimbs, forelimbs$", told.Message.ToString());
        Assert.Matches(@"; safe within 10 days: long cuts \d+ mm apart and \d+ mm deep, or \d+ injections of [\d.]+ mL, \d+ mm apart$", told.Remedy.ToString());
        Assert.Contains("; safe within 14 days: ", Assert.Single(Of(Soak("formalin 10 %", "40 d"), "9 kg").Findings, f => f.Id == "core-out-of-reach").Remedy.ToString(), StringComparison.Ordinal);
        Assert.Contains("; safe within 14 days: ", Assert.Single(Of(Soak("formalin 10 %", "at least 1 d"), "9 kg").Findings, f => f.Id == "core-out-of-reach").Remedy.ToString(), StringComparison.Ordinal);
        Assert.Contains("; safe within 5 days: ", Assert.Single(Of(Soak("formalin 10 %", "2 d", "a") + Soak("formalin 10 %", "3 d", "b"), "9 kg").Findings, f => f.Id == "core-out-of-reach").Remedy.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Thin_body_is_reached_in_time() => Assert.DoesNotContain(Of(Soak("formalin 10 %", "9 d"), "3 g").Findings, f => f.Id.StartsWith("core-", StringComparison.Ordinal));

    /// <summary>A shell that is opened is closed no longer.</summary>
    [Fact]
    public void Armour_is_warned_of_until_it_is_opened()
    {
        static bool Warned(Plan plan) => plan.Findings.Any(f => f.Id == "armour-closed");
        var closed = Of(Soak("formalin 10 %", "9 d"), "600 g", "turtle");

        Assert.False(Warned(Of("  - {stage: slit, id: cut, places: [coelom]}\n" + Soak("formalin 10 %", "9 d"), "600 g", "turtle")));
        Assert.Equal(closed.Findings.Where(f => f.Id == "armour-closed").Select(f => f.Subject), Warned(closed) ? ["fix"] : []);
    }
}
