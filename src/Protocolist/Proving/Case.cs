using Protocolist.Formulas;
using Protocolist.Planning.Measuring;
using Protocolist.Protocols;
using Protocolist.Quantities;
using Protocolist.Specimens;

namespace Protocolist.Proving;

/// <summary>Something that expressions can be evaluated over: a stretch of a class as a whole, or one specimen.</summary>
internal sealed class Case
{
    private readonly FormulaInputs _inputs;
    private Expression? _last;
    private FormulaValue _lastValue;

    private Case(Subject subject, Func<string, FormulaValue> given, bool overAll)
    {
        var inputs = default(FormulaInputs);
        _inputs = inputs = new(
            new FormulaValue[subject.Protocol.Scope.Slots.Count],
            name => subject.Definitions.TryGetValue(name, out var value) ? value.Expression.Evaluate(inputs!) : given(name),
            overAll);
    }

    /// <summary>The temperatures at which people work with fluids. The project's choice.</summary>
    private static readonly QuantityRange Room = new(273.15 + 5, 273.15 + 35, Dimension.OfTemperature);
    private static readonly QuantityRange Cold = new(273.15, 273.15 + 10, Dimension.OfTemperature);

    /// <summary>Bounds over every specimen of a stretch, at every temperature that people work at.</summary>
    public static Case Over(Subject subject, ClassPart part, WordCase words) => new(
        subject,
        name => words.Find(name) is { } word ? FormulaValue.Of(word)
            : part.Bounds.TryGetValue(name, out var range) ? FormulaValue.Of(range)
            : name switch
            {
                "bench.temperature" => FormulaValue.Of(Room),
                "bench.cold" => FormulaValue.Of(Cold),

                // A trait that no formula tells apart.
                _ => FormulaValue.Of(SpecimenScope.Unknown),
            },
        overAll: true);

    /// <summary>One specimen, itself without traits, at one temperature.</summary>
    public static Case At(Subject subject, BodyMeasure body, WordCase words, Benches.BenchTemperatures temperatures) =>
        new(subject, name => words.Find(name) is { } word ? FormulaValue.Of(word) : SpecimenValues.Of(name, body, temperatures), overAll: false);

    /// <summary>The value; one expression is asked of several times in a row.</summary>
    public FormulaValue Evaluate(Expression expression)
    {
        if (!ReferenceEquals(_last, expression)) (_last, _lastValue) = (expression, expression.Evaluate(_inputs));
        return _lastValue;
    }

    public FormulaValue Evaluate(FormulaNode node) => FormulaEvaluator.Evaluate(node, _inputs);

    /// <summary>Whether a stage runs.</summary>
    public Truth Runs(StageDefinition stage) => stage.Expression("when") is { } when ? Evaluate(when).Truth : Truth.Yes;
}
