using System.Collections.Frozen;
using Protocolist.Formulas;
using Protocolist.Planning.Drafting;
using Protocolist.Planning.Measuring;
using Protocolist.Protocols;
using Protocolist.Quantities;
using Protocolist.Reading;
using Protocolist.Specimens;

namespace Protocolist.Proving;

/// <summary>Something that expressions can be evaluated over: a stretch of a class as a whole, or one specimen.</summary>
internal sealed class Case
{
    private readonly Dictionary<string, FormulaValue> _values = new(StringComparer.Ordinal);
    private readonly FrozenDictionary<string, ValueDefinition> _definitions;
    private readonly Func<string, FormulaValue> _given;
    private readonly FormulaInputs _inputs;

    private Case(Subject subject, Func<string, FormulaValue> given, bool overAll)
    {
        _definitions = subject.Definitions;
        _given = given;
        _inputs = new(Find, overAll);
    }

    /// <summary>The temperatures at which people work with fluids. The project's choice.</summary>
    private static readonly QuantityRange Room = new(273.15 + 5, 273.15 + 35, Dimension.OfTemperature);
    private static readonly QuantityRange Cold = new(273.15, 273.15 + 10, Dimension.OfTemperature);

    /// <summary>Bounds over every specimen of a stretch, at every temperature that people work at.</summary>
    public static Case Over(Subject subject, ClassPart part, WordCase words) => new(
        subject,
        name => words.Words.TryGetValue(name, out var word) ? FormulaValue.Of(word)
            : part.Bounds.TryGetValue(name, out var range) ? FormulaValue.Of(range)
            : name switch
            {
                "bench.temperature" => FormulaValue.Of(Room),
                "bench.cold" => FormulaValue.Of(Cold),

                // A trait that no formula tells apart.
                _ => FormulaValue.Of(SpecimenScope.Unknown),
            },
        overAll: true);

    /// <summary>One specimen at one temperature.</summary>
    public static Case At(Subject subject, BodyMeasure body, WordCase words, Benches.BenchTemperatures temperatures)
    {
        var worded = With(body, words);
        return new(
            subject,
            name => name.StartsWith("choice.", StringComparison.Ordinal) ? FormulaValue.Of(words.Words[name]) : SpecimenValues.Of(name, worded, temperatures),
            overAll: false);
    }

    public FormulaValue Evaluate(Expression expression) => expression.Evaluate(_inputs);

    public FormulaValue Evaluate(FormulaNode node) => FormulaEvaluator.Evaluate(node, _inputs);

    /// <summary>Whether a stage runs.</summary>
    public Truth Runs(StageDefinition stage) => stage.Expression("when") is { } when ? Evaluate(when).Truth : Truth.Yes;

    /// <summary>The same body with the traits of a combination.</summary>
    public static BodyMeasure With(BodyMeasure body, WordCase words) => body with
    {
        Specimen = body.Specimen with
        {
            Condition = Trait<Condition>(words, "specimen.condition"),
            LifeStage = Trait<LifeStage>(words, "specimen.life-stage"),
            IntendedUse = Trait<IntendedUse>(words, "specimen.intended-use"),
        },
    };

    private static T? Trait<T>(WordCase words, string name)
        where T : struct, Enum =>
        words.Words.TryGetValue(name, out var word) && word != SpecimenScope.Unknown ? EnumWords<T>.Parse(word) : null;

    private FormulaValue Find(string name)
    {
        if (!_definitions.TryGetValue(name, out var definition)) return _given(name);
        if (_values.TryGetValue(name, out var known)) return known;
        return _values[name] = definition.Expression.Evaluate(_inputs);
    }
}
