using System.Globalization;
using FsCheck;
using FsCheck.Fluent;
using Protocolist.Formulas;
using Protocolist.Testing;

namespace Protocolist.Properties.Formulas;

public class FormulaProperties
{
    [Property(MaxTest = 1000)]
    public Property A_well_typed_formula_loads_with_the_type_it_was_made_for() => Prop.ForAll(FormulaWorld.Sketches(), sketch =>
    {
        var type = Load(sketch).Type;
        Assert.Equal(sketch.Dimension is null ? FormulaKind.Truth : FormulaKind.Quantity, type.Kind);
        if (sketch.Dimension is { } dimension) Assert.Equal(dimension, type.Dimension);
    });

    [Property(MaxTest = 2000)]
    public Property A_formula_that_loads_has_a_value_of_its_dimension_for_any_inputs() => Prop.ForAll(FormulaWorld.Sketches(), FormulaWorld.Worlds(), (sketch, world) =>
    {
        var formula = Load(sketch);
        foreach (var inputs in (FormulaInputs[])[world.OverAll, world.OverSome, world.One, world.OneEstimated])
        {
            var value = formula.Evaluate(inputs);
            Assert.Equal(formula.Type.Kind, value.Kind);
            Assert.Equal(formula.Type.Dimension, value.Quantity.Dimension);
            Assert.True(value.Quantity.Low <= value.Quantity.High);
        }
    });

    [Property(MaxTest = 5000)]
    public Property The_bounds_over_a_class_hold_the_value_of_every_specimen_in_it() => Prop.ForAll(FormulaWorld.Sketches(), FormulaWorld.Worlds(), (sketch, world) =>
    {
        var formula = Load(sketch);
        AssertWithin(formula.Evaluate(world.OverAll), formula.Evaluate(world.One));
        AssertWithin(formula.Evaluate(world.OverSome), formula.Evaluate(world.One));
        AssertWithin(formula.Evaluate(world.OverAll), formula.Evaluate(world.OneEstimated));
    });

    [Property(MaxTest = 3000)]
    public Property Wider_inputs_never_give_narrower_bounds() => Prop.ForAll(FormulaWorld.Sketches(), FormulaWorld.Worlds(), (sketch, world) =>
    {
        var formula = Load(sketch);
        AssertWithin(formula.Evaluate(world.OverAll), formula.Evaluate(world.OverSome));
    });

    [Property(MaxTest = 500)]
    public Property The_value_of_a_reason_is_the_value_of_the_formula() => Prop.ForAll(FormulaWorld.Sketches(), FormulaWorld.Worlds(), (sketch, world) =>
    {
        var formula = Load(sketch);
        foreach (var inputs in (FormulaInputs[])[world.OverAll, world.One])
        {
            var reason = formula.Explain(inputs);
            Assert.Equal(formula.Evaluate(inputs), reason.Value);
            AssertTextsNest(reason);
        }
    });

    [Property(MaxTest = 3000)]
    public Property What_is_nearly_a_formula_loads_or_is_refused_at_a_place_within_it() => Prop.ForAll(FormulaGenerator.NearlyValid(FormulaVocabulary.Sample), FormulaWorld.Worlds(), (text, world) =>
    {
        if (Formula.Parse(text, FormulaWorld.Scope, out var fault) is { } formula)
        {
            Assert.Null(fault);
            Assert.Equal(formula.Type.Dimension, formula.Evaluate(world.One).Quantity.Dimension);
            return;
        }

        Assert.InRange(fault!.Offset, 0, text.Length);
        Assert.InRange(fault.Offset + fault.Length, 1, text.Length + 1);
        Assert.NotEmpty(fault.Message.ToString());
        Assert.NotEmpty(fault.Remedy.ToString());
    });

    [Property(MaxTest = 300)]
    public Property Values_and_faults_are_the_same_in_every_culture() => Prop.ForAll(FormulaWorld.Sketches(), FormulaGenerator.NearlyValid(FormulaVocabulary.Sample), FormulaWorld.Worlds(), (sketch, damaged, world) =>
    {
        var here = Cultures.Under(CultureInfo.InvariantCulture, Told);
        foreach (var culture in Cultures.Awkward) Assert.Equal(here, Cultures.Under(culture, Told));

        string Told()
        {
            var value = Load(sketch).Evaluate(world.One);
            Formula.Parse(damaged, FormulaWorld.Scope, out var fault);
            return string.Create(CultureInfo.InvariantCulture, $"{value}|{value.Quantity.Low:R}|{value.Quantity.High:R}|{fault?.Message.ToString()}|{fault?.Remedy.ToString()}");
        }
    });

    private static Formula Load(FormulaSketch sketch)
    {
        var formula = Formula.Parse(sketch.Text, FormulaWorld.Scope, out var fault);
        Assert.True(formula is not null, $"{sketch.Text}: {fault}");
        return formula;
    }

    private static void AssertWithin(FormulaValue bounds, FormulaValue value)
    {
        if (bounds.Kind == FormulaKind.Truth) Assert.True(bounds.Truth == Truth.Depends || bounds.Truth == value.Truth, $"{bounds} for all, {value} for one");
        else Assert.True(bounds.Quantity.Contains(value.Quantity), $"{value.Quantity.Low:R} to {value.Quantity.High:R} is not within {bounds.Quantity.Low:R} to {bounds.Quantity.High:R}");
    }

    private static void AssertTextsNest(Reason reason)
    {
        foreach (var part in reason.Parts)
        {
            Assert.Contains(part.Text, reason.Text, StringComparison.Ordinal);
            AssertTextsNest(part);
        }
    }
}
