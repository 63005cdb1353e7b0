using Protocolist.Formulas;
using Protocolist.Notation;
using Protocolist.Quantities;

namespace Protocolist.Tests.Formulas;

public class FormulaEvaluationTests
{
    [Theory]
    [InlineData("1 + 2 * 3", "7")]
    [InlineData("(1 + 2) * 3", "9")]
    [InlineData("10 - 4 - 3", "3")]
    [InlineData("24 / 4 / 3", "2")]
    [InlineData("24 / 4 * 3", "18")]
    [InlineData("-2 * 3", "-6")]
    [InlineData("- 2 * -3", "6")]
    [InlineData("--2", "2")]
    [InlineData("2 − 1", "1")]
    [InlineData("3 × 2", "6")]
    [InlineData("1 to 2 * 3", "1 to 6")]
    [InlineData("1 + 1 to 2 + 2", "2 to 4")]
    [InlineData("(1 to 2) * 3", "3 to 6")]
    [InlineData("(2 to 5 mL) * 2", "4 to 10 mL")]
    public void Operators_bind_as_in_arithmetic(string text, string value) => Assert.Equal(value, TestScope.Evaluate(text).ToString());

    [Theory]
    [InlineData("10 mL/kg * specimen.mass", "70 mL")]
    [InlineData("specimen.mass*10 mL/kg", "70 mL")]
    [InlineData("10 mL / 2 h * 4 h", "20 mL")]
    [InlineData("10 mL/2 h*4 h", "20 mL")]
    [InlineData("slit-spacing / 2", "15 mm")]
    [InlineData("slit-spacing/2", "15 mm")]
    [InlineData("least(specimen.length / 10, slit-spacing / 2)", "15 mm")]
    [InlineData("specimen.length - slit-spacing", "720 mm")]
    [InlineData("specimen.length -slit-spacing", "720 mm")]
    [InlineData("60 mm / slit-spacing", "2")]
    [InlineData("50 % * 1 L", "500 mL")]
    [InlineData("specimen.mass * ratio * 1 L/kg", "84 L")]
    [InlineData("cube-root(27 mL)", "30 mm")]
    [InlineData("square-root(9 cm2)", "30 mm")]
    [InlineData("square-root(-9 cm2)", "0 mm")]
    public void Units_bind_tighter_than_operators(string text, string value) => Assert.Equal(value, TestScope.Evaluate(text).ToString());

    [Theory]
    [InlineData("2 to 5 mL", 2e-6, 5e-6)]
    [InlineData("-5 to 4 degC", 268.15, 277.15)]
    [InlineData("-2 to 5 mL", -2e-6, 5e-6)]
    [InlineData("24 ± 1 cm", 0.23, 0.25)]
    [InlineData("24 cm +- 1 cm", 0.23, 0.25)]
    [InlineData("24 cm +/- 1 cm", 0.23, 0.25)]
    [InlineData("specimen.length ± 5 cm", 0.7, 0.8)]
    [InlineData("at least 24 h", 86400, double.PositiveInfinity)]
    [InlineData("at most 2 h + 1 h", 0, 10800)]
    [InlineData("at most -5 mL", -5e-6, -5e-6)]
    [InlineData("specimen.volume * 2", 0.013, 0.0142)]
    [InlineData("penetration-time(reach) + 24 h to penetration-time(reach, slow) + 48 h", 225000 + 86400, 450000 + 172800)]
    [InlineData("5 mL to 2 mL + 1 mL", 3e-6, 5e-6)]
    public void Ranges_are_values_like_any_other(string text, double low, double high)
    {
        var range = TestScope.Evaluate(text).Quantity;
        Assert.Equal(low, range.Low, Math.Abs(low) * 1e-12);
        Assert.True(range.High == high || Math.Abs(range.High - high) < Math.Abs(high) * 1e-12, $"{range.High:R}");
    }

    [Fact]
    public void Text_alone_and_formula_read_a_literal_range_alike()
    {
        foreach (var text in (string[])["2 to 5 mL", "-5 to 4 degC", "at least 24 h", "at most 1 mo", "24 cm ± 1 cm", "24 +/- 1 cm", "-20 degC", "70 %vol", ".5 L", "1e3 mL"])
        {
            Assert.Null(QuantityText.Read(text, out var read));
            Assert.Equal(read, TestScope.Evaluate(text).Quantity);
        }
    }

    [Theory]
    [InlineData("choice.keeping is ethanol", "yes")]
    [InlineData("choice.keeping is not formalin", "yes")]
    [InlineData("choice.keeping is \"formalin\"", "no")]
    [InlineData("not choice.keeping is formalin", "yes")]
    [InlineData("specimen.taxon is \"Vulpes vulpes\"", "yes")]
    [InlineData("specimen.taxon is choice.keeping", "no")]
    [InlineData("specimen.mass > 5 kg and choice.keeping is ethanol", "yes")]
    [InlineData("specimen.mass > 9 kg or choice.keeping is ethanol and not specimen.bloated", "yes")]
    [InlineData("(specimen.mass > 9 kg or choice.keeping is ethanol) and specimen.bloated", "no")]
    [InlineData("specimen.mass >= 7 kg", "yes")]
    [InlineData("specimen.mass ≤ 7 kg", "yes")]
    [InlineData("specimen.mass < 7 kg", "no")]
    [InlineData("specimen.mass = 7000 g", "yes")]
    [InlineData("room > 4 degC", "yes")]
    [InlineData("room = 20 °C", "yes")]
    [InlineData("soak > 2 wk", "depends")]
    [InlineData("soak > 4 wk", "no")]
    [InlineData("soak >= 10 d", "yes")]
    [InlineData("soak = 14 d", "depends")]
    [InlineData("soak > 2 wk and specimen.bloated", "no")]
    [InlineData("soak > 2 wk or choice.keeping is ethanol", "yes")]
    [InlineData("not soak > 2 wk", "depends")]
    public void Conditions_are_yes_no_or_depends(string text, string answer) => Assert.Equal(answer, TestScope.Evaluate(text).ToString());

    [Theory]
    [InlineData("choose(specimen.mass > 5 kg, 1 d, 2 d)", "24 h")]
    [InlineData("choose(specimen.bloated, 1 d, 4 d)", "4 d")]
    [InlineData("choose(soak > 2 wk, 1 d, 4 d)", "1 to 4 d")]
    [InlineData("low(soak)", "10 d")]
    [InlineData("high(soak)", "21 d")]
    [InlineData("middle(2 to 5 mL)", "3.5 mL")]
    [InlineData("low(at least 24 h)", "24 h")]
    [InlineData("high(at least 24 h)", "without limit")]
    [InlineData("greatest(0, 3, 2)", "3")]
    [InlineData("greatest( 2 mL , 5 mL )", "5 mL")]
    [InlineData("round-up(32 mm, 10 mm)", "40 mm")]
    [InlineData("round-up(30 mm, 10 mm)", "30 mm")]
    [InlineData("round-up(0.3, 0.1)", "0.3")]
    [InlineData("round-down(0.3, 0.1)", "0.3")]
    [InlineData("round-down(39 mm, 1 cm)", "30 mm")]
    public void Functions_give_what_the_guide_says(string text, string value) => Assert.Equal(value, TestScope.Evaluate(text).ToString());

    [Theory]
    [InlineData("1 / 0")]
    [InlineData("0 / 0")]
    [InlineData("1 / (0 to 1)")]
    [InlineData("high(at least 1 h) - high(at least 1 h)")]
    [InlineData("round-up(5 mL, 0 mL)")]
    [InlineData("round-up(5 mL, -1 mL)")]
    [InlineData("round-up(5 mL, at least 1 mL)")]
    [InlineData("round-down(at least 1 mL, at least 1 mL)")]
    [InlineData("round-down(-high(at least 1 mL), 1 to 2 mL)")]
    [InlineData("round-up(high(at least 1 mL), 1 to 2 mL)")]
    public void What_has_no_value_is_anything_and_never_a_fault(string text) => Assert.False(TestScope.Evaluate(text).Quantity.IsFinite);

    [Theory]
    [InlineData("0 * high(at least 1 h)", 0, 0)]
    [InlineData("1 h / high(at least 1 h)", 0, 0)]
    [InlineData("high(at least 1 h) / high(at least 1 h)", 0, double.PositiveInfinity)]
    [InlineData("high(at least 1 h) / -high(at least 1 h)", double.NegativeInfinity, 0)]
    [InlineData("1e15 * 1e15 * 1e15 * 1e15 * 1e15 * 1e15 * 1e15 * 1e15 * 1e15 * 1e15 * 1e15 * 1e15 * 1e15 * 1e15 * 1e15 * 1e15 * 1e15 * 1e15 * 1e15 * 1e15 * 1e15", double.PositiveInfinity, double.PositiveInfinity)]
    [InlineData("1e-300 * 1e-300", 0, 0)]
    [InlineData("(at least 5 mL) ± high(at least 1 mL)", double.NegativeInfinity, double.PositiveInfinity)]
    public void Without_limit_keeps_its_sense(string text, double low, double high)
    {
        var range = TestScope.Evaluate(text).Quantity;
        Assert.Equal((low, high), (range.Low, range.High));
    }

    [Fact]
    public void A_bound_of_exactly_nothing_is_never_less_than_nothing()
    {
        var some = new QuantityRange(0, 3, Dimension.OfMass);
        var factor = new QuantityRange(0.1, 0.3, Dimension.None);
        Assert.Equal(0, RangeArithmetic.Multiply(some, factor).Low);
        Assert.Equal(0, RangeArithmetic.Add(some, some).Low);
        Assert.Equal(0, RangeArithmetic.Divide(some, factor).Low);
        Assert.Equal(0, RangeArithmetic.Rising(some, Math.Sqrt, Dimension.OfMass).Low);
    }

    [Fact]
    public void Over_a_class_a_word_that_is_not_settled_leaves_the_condition_open()
    {
        var inputs = new FormulaInputs(name => name == "choice.keeping" ? FormulaValue.AnyWord : TestScope.Inputs.Find(name), OverAll: true);
        Assert.Equal("4 to 9 d", TestScope.Parse("choose(choice.keeping is formalin, 4 d, 9 d)").Evaluate(inputs).ToString());
        Assert.Equal(Truth.Depends, TestScope.Parse("choice.keeping is not formalin").Evaluate(inputs).Truth);
        Assert.Equal("any word", FormulaValue.AnyWord.ToString());
    }

    [Fact]
    public void Over_a_class_the_low_end_of_each_specimen_can_lie_anywhere_in_the_range_of_all()
    {
        var formula = TestScope.Parse("low(soak)");
        Assert.Equal(10 * 86400, formula.Evaluate(TestScope.Inputs).Quantity.High);
        Assert.Equal(21 * 86400, formula.Evaluate(TestScope.Inputs with { OverAll = true }).Quantity.High);
    }

    [Fact]
    public void Names_are_listed_once_in_order_of_first_use() =>
        Assert.Equal(["reach", "slit-spacing", "specimen.length"], TestScope.Parse("least(reach, slit-spacing / 2, specimen.length - reach)").Names());
}
