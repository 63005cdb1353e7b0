using System.Collections.Immutable;
using Protocolist.Notation;
using Protocolist.Quantities;

namespace Protocolist.Formulas;

/// <summary>One part of a parsed formula, with its type and the stretch of text it came from.</summary>
internal abstract record FormulaNode(FormulaType Type, int Offset, int Length)
{
    /// <summary>The parts a reader sees inside it, left to right.</summary>
    public virtual ImmutableArray<FormulaNode> Parts => [];

    /// <summary>It and all parts within it, in the order of reading.</summary>
    public ImmutableArray<FormulaNode> All()
    {
        if (this is LiteralNode or WordNode or NameNode) return [this];
        var all = ImmutableArray.CreateBuilder<FormulaNode>();
        AddTo(all);
        return all.DrainToImmutable();
    }

    private void AddTo(ImmutableArray<FormulaNode>.Builder all)
    {
        all.Add(this);
        foreach (var part in Parts) part.AddTo(all);
    }
}

internal sealed record LiteralNode(Literal Literal, QuantityRange Value, FormulaType Type, int Offset, int Length) : FormulaNode(Type, Offset, Length);

internal sealed record WordNode(string Word, FormulaType Type, int Offset, int Length) : FormulaNode(Type, Offset, Length);

internal sealed record NameNode(string Name, FormulaType Type, int Offset, int Length) : FormulaNode(Type, Offset, Length)
{
    /// <summary>Its place in a table of values; below 0 where it has none.</summary>
    public int Slot { get; init; } = -1;
}

internal sealed record NegativeNode(FormulaNode Of, FormulaType Type, int Offset, int Length) : FormulaNode(Type, Offset, Length)
{
    public override ImmutableArray<FormulaNode> Parts => [Of];
}

internal enum Operation
{
    Add,
    Subtract,
    Multiply,
    Divide,
    Range,
    Tolerance,
    Less,
    LessOrEqual,
    Greater,
    GreaterOrEqual,
    Equal,
    Is,
    IsNot,
    And,
    Or,
}

internal sealed record PairNode(Operation Operation, FormulaNode Left, FormulaNode Right, FormulaType Type, int Offset, int Length)
    : FormulaNode(Type, Offset, Length)
{
    public override ImmutableArray<FormulaNode> Parts => [Left, Right];
}

internal sealed record NotNode(FormulaNode Of, FormulaType Type, int Offset, int Length) : FormulaNode(Type, Offset, Length)
{
    public override ImmutableArray<FormulaNode> Parts => [Of];
}

/// <summary><c>at least a</c> or <c>at most a</c>.</summary>
internal sealed record OpenRangeNode(bool AtLeast, FormulaNode Bound, FormulaType Type, int Offset, int Length) : FormulaNode(Type, Offset, Length)
{
    public override ImmutableArray<FormulaNode> Parts => [Bound];
}

internal sealed record CallNode(FormulaFunction Function, ImmutableArray<FormulaNode> Arguments, FormulaType Type, int Offset, int Length)
    : FormulaNode(Type, Offset, Length)
{
    public override ImmutableArray<FormulaNode> Parts => Arguments;
}
