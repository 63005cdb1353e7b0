using System.Collections.Immutable;

namespace Protocolist.Formulas;

/// <summary>Why a formula has its value: this part's text and value, and the parts it was made from.</summary>
internal sealed record Reason(string Text, FormulaValue Value, ImmutableArray<Reason> Parts)
{
    public static Reason For(string text, FormulaNode node, FormulaInputs inputs)
    {
        ImmutableArray<Reason> parts = [.. node.Parts.Select(p => For(text, p, inputs))];
        var value = parts.IsEmpty
            ? FormulaEvaluator.Evaluate(node, inputs)
            : FormulaEvaluator.Combine(node, [.. parts.Select(p => p.Value)], inputs.OverAll);
        return new(text.Substring(node.Offset, node.Length), value, parts);
    }
}
