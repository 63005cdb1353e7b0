using Protocolist.Formulas;

namespace Protocolist.Tests.Formulas;

public class FormulaFaultTests
{
    // Column: where the finding points, from 1; the marked width is given where it is more than a sign.
    [Theory]
    [InlineData("reech * 2", "unknown-value", 1, 5, "did you mean 'reach'?")]
    [InlineData("2 * specimen.mas", "unknown-value", 5, 12, "did you mean 'specimen.mass'?")]
    [InlineData("specimen.length-slit-spacing", "unknown-value", 1, 28, "a minus sign between two names has a space on each side")]
    [InlineData("specimen.mass-2 kg", "unknown-value", 1, 15, "a minus sign between two names has a space on each side")]
    [InlineData("10 mL / kg", "unknown-value", 9, 2, "a unit stands right behind its number, and '/' between units has no spaces: '10 kg', '10 mL/kg'")]
    [InlineData("least", "unknown-value", 1, 5, "it is a function: least(a, b, …)")]
    [InlineData("leest(reach, reach)", "unknown-function", 1, 5, "did you mean 'least'?")]
    [InlineData("reach(2)", "unknown-function", 1, 5, "it is a value; to multiply, put '*' before the bracket")]
    [InlineData("specimen.mass + 10 mL", "unlike-quantities", 17, 5, "both sides must measure the same kind of thing")]
    [InlineData("2 mL to 5 kg", "unlike-quantities", 9, 4, "both sides must measure the same kind of thing")]
    [InlineData("specimen.mass > 5 L", "unlike-quantities", 17, 3, "both sides must measure the same kind of thing")]
    [InlineData("70 %vol + 70 %mass", "unlike-quantities", 11, 8, "both sides must measure the same kind of thing")]
    [InlineData("2 to 5 mL * 3", "unlike-quantities", 6, 8, "both sides must measure the same kind of thing")]
    [InlineData("5 mL to 2 mL", "reversed-range", 1, 12, "put the lower end first")]
    [InlineData("2-5 mL", "range-with-dash", 2, 1, "write '2 to 5 mL'")]
    [InlineData("10 - 14 d", "range-with-dash", 4, 1, "write '10 to 14 d'")]
    [InlineData("2 mL-5 mL", "range-with-dash", 5, 1, "write '2 mL to 5 mL'")]
    [InlineData("2 mL – 5 mL", "range-with-dash", 6, 1, "write '2 to 5 mL'")]
    [InlineData("room + 5 degC", "temperature-arithmetic", 1, 4, "use a function that takes a temperature")]
    [InlineData("2 * room", "temperature-arithmetic", 5, 4, "use a function that takes a temperature")]
    [InlineData("-room", "temperature-arithmetic", 2, 4, "use a function that takes a temperature")]
    [InlineData("20 degC ± 2 degC", "temperature-arithmetic", 1, 16, "write the range as 'a to b'")]
    [InlineData("round-up(room, 5 degC)", "wrong-dimension", 1, 22, "it is round-up(quantity, step)")]
    [InlineData("-300 degC", "below-absolute-zero", 1, 9, "check the figure and its unit")]
    [InlineData("2,5 mL", "decimal-comma", 2, 1, "write the decimal sign as a point and leave thousands unseparated; a comma between arguments has a space behind it")]
    [InlineData("least(2,5 mL)", "decimal-comma", 8, 1, "write the decimal sign as a point and leave thousands unseparated; a comma between arguments has a space behind it")]
    [InlineData("10 mL/kgg * 2", "unknown-unit", 7, 3, "did you mean 'kg'?")]
    [InlineData("30 mm/slit-spacing", "unknown-unit", 7, 12, "to divide by a value, put a space on each side of '/'")]
    [InlineData("30 mm/m-ratio", "unknown-unit", 7, 7, "to divide by a value, put a space on each side of '/'")]
    [InlineData("2 slit-spacing", "unknown-unit", 3, 12, "put '*' between the number and 'slit-spacing'")]
    [InlineData("5 gal + 1 L", "ambiguous-unit", 3, 3, "say 'US gal' (3.785 L) or 'imp gal' (4.546 L)")]
    [InlineData("3 mL mL", "unexpected-text", 6, 2, "an operator such as + - * / 'to' 'and' may be missing")]
    [InlineData("1 to 2 to 3", "unexpected-text", 8, 2, "an operator such as + - * / 'to' 'and' may be missing")]
    [InlineData("1 < 2 < 3", "unexpected-text", 7, 1, "an operator such as + - * / 'to' 'and' may be missing")]
    [InlineData("(1 2)", "unexpected-text", 4, 2, "an operator such as + - * / 'to' 'and' may be missing")]
    [InlineData("least(reach reach)", "unexpected-text", 13, 6, "an operator such as + - * / 'to' 'and' may be missing")]
    [InlineData("reach ^ 2", "unexpected-text", 7, 1, "an operator such as + - * / 'to' 'and' may be missing")]
    [InlineData("* 2", "unexpected-text", 1, 1, "a quantity, a name or a function is wanted")]
    [InlineData("()", "unexpected-text", 2, 1, "a quantity, a name or a function is wanted")]
    [InlineData("2 * (3 + 4", "missing-bracket", 5, 1, "add ')'")]
    [InlineData("2 * 3)", "missing-bracket", 6, 1, "remove it")]
    [InlineData("1 + least(reach, reach", "missing-bracket", 5, 5, "add ')'")]
    [InlineData("choice.keeping is \"form", "missing-quote", 19, 1, "add '\"'")]
    [InlineData("2 +", "unfinished-formula", 3, 1, "finish it")]
    [InlineData("2 +  ", "unfinished-formula", 3, 1, "finish it")]
    [InlineData("", "empty-formula", 1, 1, "write a quantity such as '24 h', or a formula")]
    [InlineData("  ", "empty-formula", 1, 1, "write a quantity such as '24 h', or a formula")]
    [InlineData("choice.keeping is ethanoll", "unknown-word", 19, 8, "did you mean 'ethanol'?")]
    [InlineData("choice.keeping is not \"spirit\"", "unknown-word", 23, 8, "known here: ethanol, formalin, isopropanol")]
    [InlineData("choice.keeping is", "missing-word", 17, 1, "known here: ethanol, formalin, isopropanol")]
    [InlineData("specimen.taxon is", "missing-word", 17, 1, "write a word; one with spaces stands in double quotes")]
    [InlineData("penetration-time(reach, slwo)", "unknown-word", 25, 4, "did you mean 'slow'?")]
    [InlineData("specimen.mass is ethanol", "not-a-word", 1, 13, "compare quantities with <, >, <=, >= or =")]
    [InlineData("specimen.mass and specimen.bloated", "not-a-condition", 1, 13, "compare it with something")]
    [InlineData("not specimen.mass", "not-a-condition", 5, 13, "compare it with something")]
    [InlineData("choice.keeping * 2", "not-a-quantity", 1, 14, "use a quantity or a name of one")]
    [InlineData("-choice.keeping", "not-a-quantity", 2, 14, "use a quantity or a name of one")]
    [InlineData("at least choice.keeping", "not-a-quantity", 10, 14, "give a quantity")]
    [InlineData("choice.keeping < specimen.taxon", "not-comparable", 1, 31, "words are compared with 'is' and 'is not'")]
    [InlineData("least(reach)", "too-few-arguments", 1, 12, "it is least(a, b, …)")]
    [InlineData("low()", "too-few-arguments", 1, 5, "it is low(range)")]
    [InlineData("low(reach, reach)", "too-many-arguments", 12, 1, "it is low(range)")]
    [InlineData("least(reach, specimen.mass)", "wrong-dimension", 1, 27, "it is least(a, b, …)")]
    [InlineData("square-root(27 mL)", "wrong-dimension", 1, 18, "it is square-root(quantity)")]
    [InlineData("penetration-time(2 kg)", "wrong-dimension", 18, 4, "it is penetration-time(depth, [pace])")]
    [InlineData("choose(reach, 1, 2)", "wrong-dimension", 8, 5, "it is choose(condition, then, otherwise)")]
    [InlineData("choose(specimen.bloated, 1, 2 mL)", "wrong-dimension", 1, 33, "it is choose(condition, then, otherwise)")]
    public void A_fault_is_found_at_its_column_with_what_to_write_instead(string text, string id, int column, int width, string remedy)
    {
        var fault = TestScope.Fault(text);
        Assert.Equal((id, column, width, remedy), (fault.Id, fault.Offset + 1, fault.Length, fault.Remedy.ToString()));
    }

    [Theory]
    [InlineData("specimen.mass + 10 mL", "cannot add a mass and a volume")]
    [InlineData("2-5 mL", "a range is written with 'to'")]
    [InlineData("low(reach, reach)", "'low' takes one argument")]
    [InlineData("least(reach)", "'least' needs 2 arguments")]
    [InlineData("square-root(27 mL)", "'square-root' cannot take a root of a volume")]
    [InlineData("round-up(room, 5 degC)", "'round-up' takes no temperature")]
    [InlineData("-300 degC", "-300 degC is colder than anything can be (-273.15 degC)")]
    public void A_message_carries_the_cases_own_things(string text, string message) => Assert.Equal(message, TestScope.Fault(text).Message.ToString());

    [Fact]
    public void Length_is_limited()
    {
        var fault = TestScope.Fault($"{new string(' ', 590)}1 + 1 + 1 + 1");
        Assert.Equal(("formula-too-long", Formula.LongestText), (fault.Id, fault.Offset));
        Assert.Equal("formula-too-long", TestScope.Fault(new string('(', 100_000)).Id);
        Assert.Equal("formula-too-long", TestScope.Fault(new string('-', 100_000)).Id);
    }

    [Theory]
    [InlineData("(", ")")]
    [InlineData("- ", "")]
    [InlineData("low(", ")")]
    public void Depth_is_limited(string open, string close)
    {
        var deepest = string.Concat(Enumerable.Repeat(open, Formula.Deepest)) + "1" + string.Concat(Enumerable.Repeat(close, Formula.Deepest));
        Assert.Equal("1", TestScope.Evaluate(deepest).ToString().TrimStart('-'));
        var fault = TestScope.Fault(open + deepest + close);
        Assert.Equal(("formula-too-deep", open.Length * Formula.Deepest), (fault.Id, fault.Offset - (fault.Offset % open.Length)));
    }

    [Fact]
    public void Depth_of_negation_is_limited() =>
        Assert.Equal("formula-too-deep", TestScope.Fault($"{string.Concat(Enumerable.Repeat("not ", 30))}specimen.bloated").Id);

    [Fact]
    public void A_chain_as_long_as_the_limit_allows_is_evaluated() =>
        Assert.Equal("300", TestScope.Evaluate(string.Join('+', Enumerable.Repeat("1", 300))).ToString());

    [Fact]
    public void A_product_of_very_many_factors_cannot_wrap_its_dimension_round()
    {
        var fault = TestScope.Fault(string.Join('*', Enumerable.Repeat("reach", 99)));
        Assert.Equal("unreasonable-dimension", fault.Id);
        Assert.Equal((0, 149), (fault.Offset, fault.Length));
    }

    [Fact]
    public void No_fault_points_outside_its_text()
    {
        // Every prefix of a text that uses the whole language.
        const string Whole = "choose(not (choice.keeping is not \"formalin\" and -specimen.mass * 2 >= -10 kg), least(24 cm ± 1 cm, at least 2 to 5 mL), 10 mL/kg)";
        for (var length = 0; length <= Whole.Length; length++)
        {
            var text = Whole[..length];
            if (Formula.Parse(text, TestScope.Scope, out var fault) is not null) continue;
            Assert.InRange(fault!.Offset, 0, Math.Max(0, text.Length));
            Assert.InRange(fault.Offset + fault.Length, 1, Math.Max(1, text.Length + 1));
            Assert.NotEmpty(fault.Remedy.ToString());
        }
    }

    [Fact]
    public void An_empty_scope_has_the_common_functions_and_no_names()
    {
        Assert.NotNull(Formula.Parse("least(1, 2)", FormulaScope.Empty, out _));
        Assert.Null(Formula.Parse("x", FormulaScope.Empty, out var fault));
        Assert.Equal("nothing can stand here", fault!.Remedy.ToString());
    }
}
