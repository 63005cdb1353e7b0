using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Notation;

namespace Protocolist.Formulas;

/// <summary>A formula that loaded: its text, its type, and the tree to evaluate. Immutable.</summary>
internal sealed record Formula(string Text, FormulaNode Root)
{
    private static readonly Phrase FormulaTooLong = new("formula-too-long", "a formula has {length} characters; {longest-text} is the most");
    private static readonly Phrase FormulaTooLongRemedy = new("formula-too-long.remedy", "name its parts under 'values'");

    /// <summary>No formula in a protocol comes near this; what is longer is a mistake or an attack.</summary>
    public const int LongestText = 600;

    /// <summary>Parts within parts.</summary>
    public const int Deepest = 24;

    public FormulaType Type => Root.Type;

    /// <summary>Reads a formula and checks every name, word and dimension in it. Null with a fault where it cannot stand.</summary>
    public static Formula? Parse(string text, FormulaScope scope, out TextFault? fault)
    {
        if (text.Length > LongestText)
        {
            fault = new("formula-too-long", FormulaTooLong.With(("length", text.Length), ("longest-text", LongestText)), FormulaTooLongRemedy, LongestText, 1);
            return null;
        }

        var parser = new FormulaParser(text, scope);
        var root = parser.Parse();
        fault = parser.Fault;
        return fault is null && root is not null ? new Formula(text, root) : null;
    }

    public FormulaValue Evaluate(FormulaInputs inputs) => FormulaEvaluator.Evaluate(Root, inputs);

    private readonly ImmutableArray<string> _names = [.. Root.All().OfType<NameNode>().Select(n => n.Name).Distinct(StringComparer.Ordinal)];

    /// <summary>Every name the formula looks up, in order of first use.</summary>
    public ImmutableArray<string> Names() => _names;

    /// <summary>Every part of it, in the order of reading.</summary>
    public ImmutableArray<FormulaNode> Nodes { get; } = Root.All();

    /// <summary>Why it has its value: the tree of its parts with theirs. Built only when asked for.</summary>
    public Reason Explain(FormulaInputs inputs) => Reason.For(Text, Root, inputs);
}
