using System.Collections.Immutable;
using Protocolist.Formulas;
using Protocolist.Protocols;

namespace Protocolist.Plans;

/// <summary>
/// The parts of a figure's formula with their values, worked out again from the figures that the plan kept. Nothing is paid for it until somebody asks.
/// </summary>
internal static class FormulaParts
{
    /// <summary>Parts of two or more terms, the largest first; empty where the figure has no formula of the language, such as a given value.</summary>
    public static ImmutableArray<ExplainedPart> Of(Figure figure, Plan plan)
    {
        var values = figure.Inputs
            .Select(plan.Figure)
            .OfType<Figure>()
            .DistinctBy(f => f.Id)
            .Select(f => (f.Id, Value: f.Answer))
            .ToDictionary(f => f.Id, f => f.Value, StringComparer.Ordinal);
        var scope = FormulaScope.Empty with
        {
            Names = values.ToDictionary(v => v.Key, v => TypeOf(v.Value), StringComparer.Ordinal),
            Functions = FormulaLibrary.ByName,
        };
        if (values.Count == 0 || Formula.Parse(figure.Formula.ToString(), scope, out _) is not { } formula) return [];
        return [
            .. Compound(formula.Explain(new FormulaInputs(name => values[name])).Parts).Select(r => new ExplainedPart(r.Text, r.Value.ToString())).Distinct(),
        ];
    }

    private static IEnumerable<Reason> Compound(IEnumerable<Reason> parts) =>
        parts.Where(p => !p.Parts.IsEmpty).SelectMany(p => Compound(p.Parts).Prepend(p));

    /// <summary>A word may be compared with any word here: what it can be was checked when the protocol loaded.</summary>
    private static FormulaType TypeOf(FormulaValue value) =>
        value.Kind == FormulaKind.Quantity ? FormulaType.Of(value.Quantity.Dimension) : FormulaType.OneOf();
}
