using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Formulas;
using Protocolist.Protocols;
using Protocolist.Quantities;

namespace Protocolist.Plans;

/// <summary>What a figure is made by, whatever its value: shared by all plans where a protocol says it.</summary>
internal record FigureOrigin(string Id, ImmutableArray<string> Inputs, string Source)
{
    /// <summary>The protocol's formula; null where a rule of the planner made it.</summary>
    public Expression? Expression { get; init; }

    /// <summary>The rule in words, where no formula made it.</summary>
    public virtual Message Rule { get; init; }

    public SourceSpan Where { get; init; }

    public virtual Message Note { get; init; }

    public Message HowItIsMade => Expression is null ? Rule : Message.Text(Expression.Text);

    public Figure Of(FormulaValue value) => new(this, value);

    public Figure Of(QuantityRange value) => new(this, FormulaValue.Of(value));

    public Figure Of(double si, Dimension dimension) => Of(QuantityRange.Point(si, dimension));

    public Figure Of(string word) => new(this, FormulaValue.Of(word));

    /// <summary>What a protocol says of a value or a setting.</summary>
    public static FigureOrigin Of(string id, Expression expression, string source, string note, SourceSpan where) =>
        new(id, [.. expression.Names().Distinct(StringComparer.Ordinal)], source) { Expression = expression, Note = Message.Text(note), Where = where };
}
