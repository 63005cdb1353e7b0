using Protocolist.Formulas;
using Protocolist.Notation;
using Protocolist.Plans;

namespace Protocolist.Planning;

/// <summary>What a finished plan says under a name: a figure's quantity or word.</summary>
internal static class PlanValues
{
    /// <summary>The value of that name; null where the plan has no such figure, as of a stage that it leaves out.</summary>
    public static FormulaValue? Find(Plan plan, string name)
    {
        if (plan.Figure(name) is not { } figure) return null;
        if (figure.Exact.Length == 0) return FormulaValue.Of(figure.Value);
        return QuantityText.Read(figure.Exact, out var quantity) is null ? FormulaValue.Of(quantity) : null;
    }
}
