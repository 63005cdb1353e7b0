using Protocolist.Formulas;

namespace Protocolist.Tests.Formulas;

public class ReasonTests
{
    [Fact]
    public void A_reason_is_the_tree_of_parts_with_their_values()
    {
        var reason = TestScope.Parse("least(specimen.length / 10, slit-spacing / 2) * 2").Explain(TestScope.Inputs);
        Assert.Equal(
            """
            least(specimen.length / 10, slit-spacing / 2) * 2 = 30 mm
              least(specimen.length / 10, slit-spacing / 2) = 15 mm
                specimen.length / 10 = 75 mm
                  specimen.length = 750 mm
                  10 = 10
                slit-spacing / 2 = 15 mm
                  slit-spacing = 30 mm
                  2 = 2
              2 = 2

            """.ReplaceLineEndings("\n"),
            Print(reason, ""));
    }

    [Theory]
    [InlineData("not (choice.keeping is formalin)", "not (choice.keeping is formalin)", "(choice.keeping is formalin)")]
    [InlineData("  -reach ", "-reach", "reach")]
    [InlineData("at least ( 1 h + 2 h )", "at least ( 1 h + 2 h )", "( 1 h + 2 h )")]
    public void Each_part_shows_its_own_stretch_of_text(string text, string whole, string part)
    {
        var reason = TestScope.Parse(text).Explain(TestScope.Inputs);
        Assert.Equal(whole, reason.Text);
        Assert.Equal(part, reason.Parts[0].Text);
    }

    [Fact]
    public void The_value_of_a_reason_is_the_value_of_the_formula()
    {
        foreach (var text in (string[])["soak * 2 - low(soak)", "choose(soak > 2 wk, 1 d, 4 d)", "penetration-time(reach, slow)", "specimen.volume ± 1 L", "1 / 0", "choice.keeping is not formalin"])
        {
            var formula = TestScope.Parse(text);
            Assert.Equal(formula.Evaluate(TestScope.Inputs), formula.Explain(TestScope.Inputs).Value);
            Assert.Equal(formula.Evaluate(TestScope.Inputs with { OverAll = true }), formula.Explain(TestScope.Inputs with { OverAll = true }).Value);
        }
    }

    [Fact]
    public void Evaluating_builds_no_reasons()
    {
        // Arithmetic over names needs no memory at all when nobody asks why.
        var formula = TestScope.Parse("(specimen.length + slit-spacing) * 2 - reach / 3");
        var inputs = TestScope.Inputs;
        formula.Evaluate(inputs);
        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var i = 0; i < 100; i++) formula.Evaluate(inputs);
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    private static string Print(Reason reason, string indent) =>
        $"{indent}{reason.Text} = {reason.Value}\n{string.Concat(reason.Parts.Select(p => Print(p, indent + "  ")))}";
}
