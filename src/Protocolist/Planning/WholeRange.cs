using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Formulas;
using Protocolist.Protocols;
using Protocolist.Quantities;
using Protocolist.Specimens;

namespace Protocolist.Planning;

/// <summary>
/// Bounds every value and setting of a protocol over all specimens of its class and every combination of choices, and says what could
/// go wrong for some specimen: a negative amount, one without a limit, a range that runs backwards, a table too short.
/// </summary>
internal static class WholeRange
{
    /// <summary>More combinations than this are not told apart; the choices are then bounded one by one, the others at their defaults.</summary>
    private const int MostCombinations = 256;

    /// <summary>The temperatures at which people work with fluids.</summary>
    private static readonly QuantityRange Room = new(273.15 + 5, 273.15 + 35, Dimension.OfTemperature);
    private static readonly QuantityRange Cold = new(273.15, 273.15 + 10, Dimension.OfTemperature);

    public static IEnumerable<Finding> Of(Protocol protocol)
    {
        if (TaxonGroups.Find(protocol.Class.Group) is not { } group || ClassBounds.Of(protocol.Class, group) is not { } bounds) return [];
        var found = new List<Finding>();
        foreach (var choices in Combinations(protocol.Choices))
        {
            var values = new Dictionary<string, FormulaValue>(StringComparer.Ordinal);
            var inputs = new FormulaInputs(name => Find(name, bounds, choices, values), OverAll: true);
            foreach (var value in protocol.Values)
            {
                values[value.Name] = value.Expression.Evaluate(inputs);
                found.AddRange(Judge(value.Expression, values[value.Name], $"the value '{value.Name}'", inputs));
            }

            foreach (var stage in protocol.Stages.Where(s => s.Expression("when") is not { } when || when.Evaluate(inputs).Truth != Truth.No))
            {
                foreach (var setting in stage.Settings.Values.OfType<ExpressionSetting>())
                    found.AddRange(Judge(setting.Expression, setting.Expression.Evaluate(inputs), $"'{setting.Key}' of '{stage.Id}'", inputs));
            }
        }

        return found.DistinctBy(f => (f.Id, f.Where));
    }

    private static IEnumerable<Finding> Judge(Expression expression, FormulaValue value, string what, FormulaInputs inputs)
    {
        if (value.Kind != FormulaKind.Quantity || value.Quantity.Dimension == Dimension.OfTemperature) yield break;
        var range = value.Quantity;
        if (range.High < 0) yield return Finding.Error("negative-amount", $"{what} is negative for every specimen of the class", "check the formula", expression.Span);
        else if (range.Low < 0) yield return Finding.Warning("negative-amount", $"{what} may be negative for some specimen of the class: {Measurable.Text(range)}", "put it inside 'greatest(0 …, …)', or narrow the class", expression.Span);
        if (double.IsInfinity(range.Low) || (double.IsPositiveInfinity(range.High) && !IsOpen(expression))) yield return Finding.Error("amount-without-limit", $"{what} has no limit for some specimen of the class", "check for a division by something that can be nothing", expression.Span);
        if (expression is BandExpression bands && bands.By.Evaluate(inputs).Quantity is var by && (by.Low < bands.Bands[0].Range.Low || by.High > bands.Bands[^1].Range.High))
            yield return Finding.Error("gap-between-bands", $"the bands of {what} do not reach from {Measurable.Text(by)}", "add 'up to …' or 'over …'", expression.Span);
    }

    /// <summary>Whether the author wrote 'at least' and meant it.</summary>
    private static bool IsOpen(Expression expression) => expression switch
    {
        FormulaExpression f => HasOpen(f.Formula.Root),
        BandExpression b => b.Bands.Any(x => HasOpen(x.Formula.Root)),
        CaseExpression c => c.Cases.Any(x => IsOpen(x.Value)),
        _ => false,
    };

    private static bool HasOpen(FormulaNode node) => node is OpenRangeNode or NameNode || node.Parts.Any(HasOpen);

    private static FormulaValue Find(string name, ImmutableDictionary<string, QuantityRange> bounds, ImmutableDictionary<string, string> choices, Dictionary<string, FormulaValue> values)
    {
        if (values.TryGetValue(name, out var value)) return value;
        if (name.StartsWith("choice.", StringComparison.Ordinal)) return FormulaValue.Of(choices[name["choice.".Length..]]);
        if (bounds.TryGetValue(name, out var range)) return FormulaValue.Of(range);
        return name switch
        {
            "bench.temperature" => FormulaValue.Of(Room),
            "bench.cold" => FormulaValue.Of(Cold),
            _ => FormulaValue.Of(SpecimenScope.Unknown),
        };
    }

    private static IEnumerable<ImmutableDictionary<string, string>> Combinations(ImmutableArray<ProtocolChoice> choices)
    {
        var first = choices.ToImmutableDictionary(c => c.Name, c => c.Options[0], StringComparer.Ordinal);
        if (choices.Aggregate(1L, (n, c) => Math.Min(MostCombinations + 1, n * c.Options.Length)) > MostCombinations)
            return choices.SelectMany(c => c.Options.Select(o => first.SetItem(c.Name, o)));
        IEnumerable<ImmutableDictionary<string, string>> all = [first];
        foreach (var choice in choices) all = all.SelectMany(c => choice.Options.Select(o => c.SetItem(choice.Name, o)));
        return all;
    }
}
