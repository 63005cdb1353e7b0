using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Specimens;
using static Protocolist.Tests.Planning.PlanFixture;

namespace Protocolist.Tests.Planning.Drafting;

/// <summary>What the draft refuses, in words.</summary>
public class DraftWordsTests
{
    private static Checked<Plan> Of(string text, Specimen? specimen = null, params (string, string)[] choices) => Plan(specimen ?? Mammal("1 kg"), Shelf(("draft", "{group: mammal}", text)), choices: choices);

    [Fact]
    public void Choice_that_is_none_and_option_that_is_none()
    {
        var made = Of("choices:\n  keeping: [formalin, ethanol]\n" + Fix, null, ("keeping", "spirit"), ("posture", "curled"));

        Assert.Equal(
            ["error unknown-option: 'spirit' cannot be chosen for 'keeping'; known here: ethanol, formalin", "error unknown-choice: 'draft' leaves no choice called 'posture'; known here: keeping"],
            made.Findings.Where(f => f.Severity == Severity.Error).Select(f => f.ToString()).OrderByDescending(f => f, StringComparer.Ordinal));
        Assert.Null(made.Value);
    }

    [Fact]
    public void No_stage_left_is_told()
    {
        var made = Of("stages:\n  - {stage: thaw, id: thaw, fluid: tap water, last: 24 h, when: specimen.condition is frozen}\n", Mammal("1 kg") with { Condition = Condition.Fresh });

        var none = Assert.Single(made.Findings, f => f.Id == "no-steps");
        Assert.Equal(("'draft' has no stage for this specimen", "check its 'when' conditions"), (none.Message.ToString(), none.Remedy.ToString()));
        Assert.True(none.Where.IsKnown);
        Assert.Empty(made.Value!.Steps);
        Assert.Null(made.Value.Start);
        Assert.Null(made.Value.End);
    }

    [Fact]
    public void Value_below_nothing_is_a_warning_and_a_setting_below_nothing_an_error()
    {
        var made = Of("values:\n  less: {value: \"24 h - 10 h/kg * specimen.mass\", source: from memory}\nstages:\n  - {stage: immerse, id: fix, fluid: formalin 10 %, ratio: 10, last: 24 h}\n", Mammal("7 kg"));
        var warned = Assert.Single(made.Findings, f => f.Id == "impossible-amount");
        Assert.Equal((Severity.Warning, "less", "'less' comes out negative or without a limit for this specimen", "check the measurements, and the formula in the protocol"), (warned.Severity, warned.Subject, warned.Message.ToString(), warned.Remedy.ToString()));
        Assert.Equal(-46, made.Value!.Figure("less")!.Exact.Length > 0 && Protocolist.Notation.QuantityText.Read(made.Value.Figure("less")!.Exact, out var range) is null ? Math.Round(range.Low / 3600, 6) : 0);
    }

    [Fact]
    public void Temperature_below_freezing_is_no_impossible_amount() =>
        Assert.DoesNotContain(Of("values:\n  cold: {value: -18 degC, source: common practice}\n" + Fix).Findings, f => f.Id == "impossible-amount");

    [Fact]
    public void Nothing_is_no_impossible_amount() =>
        Assert.DoesNotContain(Of("values:\n  none: {value: \"0 * specimen.mass\", source: common practice}\n" + Fix).Findings, f => f.Id == "impossible-amount");
}
