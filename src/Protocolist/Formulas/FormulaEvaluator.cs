using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Protocolist.Quantities;

namespace Protocolist.Formulas;

/// <summary>Values for the names of a formula.</summary>
/// <param name="Find">The value of a name that the scope declares.</param>
/// <param name="OverAll">
/// Whether the values span all specimens of a class rather than describe one. The result then bounds every single specimen's result.
/// </param>
internal sealed record FormulaInputs(Func<string, FormulaValue> Find, bool OverAll = false)
{
    private static readonly Func<string, FormulaValue> Nowhere = name => throw new InvalidOperationException($"'{name}' has no place among the values.");

    private readonly FormulaValue[]? _slots;

    /// <summary>Values by their places, for one specimen; the caller fills the table as it goes.</summary>
    public FormulaInputs(FormulaValue[] slots)
        : this(slots, Nowhere)
    {
    }

    /// <summary>Values by their places; one that is not there yet is found by its name, and kept.</summary>
    public FormulaInputs(FormulaValue[] slots, Func<string, FormulaValue> find, bool overAll = false)
        : this(find, overAll) => _slots = slots;

    public FormulaValue Of(NameNode name)
    {
        if (_slots is null || name.Slot < 0) return Find(name.Name);
        ref var value = ref _slots[name.Slot];
        if (value.IsNothing) value = Find(name.Name);
        return value;
    }
}

/// <summary>Walks a formula. Total: every formula that loaded has a value, whatever the inputs.</summary>
internal static class FormulaEvaluator
{
    public static FormulaValue Evaluate(FormulaNode node, FormulaInputs inputs) => node switch
    {
        LiteralNode n => FormulaValue.Of(n.Value),
        WordNode n => FormulaValue.Of(n.Word),
        NameNode n => inputs.Of(n),
        PairNode n => Pair(n.Operation, Evaluate(n.Left, inputs), Evaluate(n.Right, inputs)),
        _ => Combine(node, EvaluateAll(node.Parts, inputs), inputs.OverAll),
    };

    private static ImmutableArray<FormulaValue> EvaluateAll(ImmutableArray<FormulaNode> nodes, FormulaInputs inputs)
    {
        var values = new FormulaValue[nodes.Length];
        for (var i = 0; i < values.Length; i++) values[i] = Evaluate(nodes[i], inputs);
        return ImmutableCollectionsMarshal.AsImmutableArray(values);
    }

    /// <summary>The value of a node whose parts have these values.</summary>
    public static FormulaValue Combine(FormulaNode node, ImmutableArray<FormulaValue> parts, bool overAll) => node switch
    {
        NegativeNode => FormulaValue.Of(RangeArithmetic.Negate(parts[0].Quantity)),
        NotNode => FormulaValue.Of(TruthTable.Not(parts[0].Truth)),
        OpenRangeNode n => Open(n.AtLeast, parts[0].Quantity),
        CallNode n => overAll && n.Function.Bound is { } bound ? bound(parts) : n.Function.Evaluate(parts),
        PairNode n => Pair(n.Operation, parts[0], parts[1]),
        _ => throw new InvalidOperationException($"A {node.GetType().Name} has no parts to combine."),
    };

    private static FormulaValue Pair(Operation operation, FormulaValue a, FormulaValue b) => operation switch
    {
        Operation.Add => FormulaValue.Of(RangeArithmetic.Add(a.Quantity, b.Quantity)),
        Operation.Subtract => FormulaValue.Of(RangeArithmetic.Subtract(a.Quantity, b.Quantity)),
        Operation.Multiply => FormulaValue.Of(RangeArithmetic.Multiply(a.Quantity, b.Quantity)),
        Operation.Divide => FormulaValue.Of(RangeArithmetic.Divide(a.Quantity, b.Quantity)),
        Operation.Range => FormulaValue.Of(QuantityRange.Hull(a.Quantity, b.Quantity)),
        Operation.Tolerance => FormulaValue.Of(RangeArithmetic.Around(a.Quantity, b.Quantity)),
        Operation.Less => FormulaValue.Of(RangeArithmetic.Less(a.Quantity, b.Quantity)),
        Operation.Greater => FormulaValue.Of(RangeArithmetic.Less(b.Quantity, a.Quantity)),
        Operation.LessOrEqual => FormulaValue.Of(TruthTable.Not(RangeArithmetic.Less(b.Quantity, a.Quantity))),
        Operation.GreaterOrEqual => FormulaValue.Of(TruthTable.Not(RangeArithmetic.Less(a.Quantity, b.Quantity))),
        Operation.Equal => FormulaValue.Of(Same(a.Quantity, b.Quantity)),
        Operation.Is => FormulaValue.Of(SameWord(a, b)),
        Operation.IsNot => FormulaValue.Of(TruthTable.Not(SameWord(a, b))),
        Operation.And => FormulaValue.Of(TruthTable.And(a.Truth, b.Truth)),
        _ => FormulaValue.Of(TruthTable.Or(a.Truth, b.Truth)),
    };

    private static FormulaValue Open(bool atLeast, QuantityRange bound) => FormulaValue.Of(atLeast
        ? new QuantityRange(bound.Low, double.PositiveInfinity, bound.Dimension)
        : new QuantityRange(Math.Min(0, bound.Low), bound.High, bound.Dimension));

    private static Truth SameWord(FormulaValue a, FormulaValue b) =>
        a.IsAnyWord || b.IsAnyWord ? Truth.Depends : TruthTable.Of(string.Equals(a.Word, b.Word, StringComparison.Ordinal));

    private static Truth Same(QuantityRange a, QuantityRange b)
    {
        if (a.High < b.Low || b.High < a.Low) return Truth.No;
        return a.IsPoint && b.IsPoint ? Truth.Yes : Truth.Depends;
    }
}
