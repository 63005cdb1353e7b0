using System.Text.RegularExpressions;
using Protocolist.Plans;
using static Protocolist.Tests.Planning.PlanFixture;

namespace Protocolist.Tests.Plans;

public class ExplanationTests
{
    [Fact]
    public void Reasons_go_down_to_what_was_measured()
    {
        var explanation = Explanation.Of(Otter(), "fix.last").Value!;

        Assert.Contains("specimen.half-thickness", Ids(explanation));
        Assert.Contains("bench.temperature", Ids(explanation));
    }

    [Fact]
    public void Inputs_of_a_figure_that_two_figures_use_are_explained_once()
    {
        var ids = Ids(Explanation.Of(Otter(), "fix.last").Value!, onlyWithInputs: true).ToList();

        Assert.Equal(ids.Distinct(), ids);
    }

    /// <summary>Found by fuzzing: a file of a plan may say an input twice.</summary>
    [Fact]
    public void An_input_that_is_named_twice_is_taken_once()
    {
        var doubled = Regex.Replace(PlanJson.Write(Otter()), """(?m)^(\s+"specimen\.half-thickness")(,?)$""", "$1,$1$2");
        var plan = PlanJson.Read(new("plan.json", doubled)).Value!;

        foreach (var figure in plan.Figures) Assert.NotNull(Explanation.Of(plan, figure.Id).Value);
        Assert.Contains(plan.Figures, f => f.Inputs.Count(i => i == "specimen.half-thickness") == 2);
    }

    [Fact]
    public void Unknown_figure_names_the_nearest() =>
        Assert.Equal("did you mean 'fix.last'?", Assert.Single(Explanation.Of(Otter(), "fix.lst").Findings).Remedy.ToString());

    private static IEnumerable<string> Ids(Explanation of, bool onlyWithInputs = false) =>
        (onlyWithInputs && of.Inputs.IsEmpty ? [] : (string[])[of.Id]).Concat(of.Inputs.SelectMany(i => Ids(i, onlyWithInputs)));
}
