using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Formulas;
using Protocolist.Reading;

namespace Protocolist.Protocols;

/// <summary>Reads the forms a value can have: a formula, a table of bands, one formula for each word of a choice, or any of these with its source.</summary>
internal sealed class ExpressionReader(FormulaScope scope, List<Finding> findings)
{
    public FormulaScope Scope => scope;

    /// <summary>A value of the wanted type; any type where none is given.</summary>
    public Expression? Read(DocumentNode node, string what, FormulaType? wanted)
    {
        if (node is ScalarNode scalar) return Plain(scalar, what, wanted);
        if (Fields.Of(node, what, findings) is not { } fields) return null;
        fields.Entry("source");
        fields.Entry("note");
        if (fields.Entry("value") is { } value)
        {
            fields.Finish();
            return Read(value.Value, what, wanted);
        }

        if (fields.Required("by") is not { } byText || Formula(byText) is not { } by) return null;
        return by.Type.Kind switch
        {
            FormulaKind.Quantity => Bands(fields, by, what, wanted),
            FormulaKind.Word => Cases(fields, by, what, wanted),
            _ => Fault("not-a-choice", "'by' takes a quantity for bands, or a choice for cases", "for a condition use the function 'choose'", byText.Span),
        };
    }

    /// <summary>A fluid's name as it stands, or a name of the scope that stands for one.</summary>
    public Expression? ReadFluid(DocumentNode node, string what)
    {
        if (node is not ScalarNode scalar) return Read(node, what, FormulaType.OneOf());
        if (scope.Names.TryGetValue(scalar.Value, out var type) && type.Kind == FormulaKind.Word) return Constant(scalar, scope.NodeOf(scalar.Value, type, 0, scalar.Value.Length));
        if (scalar.Value.StartsWith("choice.", StringComparison.Ordinal))
            return Fault("unknown-value", $"'{scalar.Value}' is not defined here", Suggestion.For(scalar.Value, [.. scope.Names.Keys]), scalar.Span);
        return Constant(scalar, new WordNode(scalar.Value, FormulaType.OneOf(), 0, scalar.Value.Length));
    }

    /// <summary>One of a closed list of words, or a name of the scope that stands for one.</summary>
    public Expression? ReadWord(DocumentNode node, string what, ImmutableArray<string> words)
    {
        if (node is not ScalarNode scalar) return Read(node, what, FormulaType.OneOf(words));
        if (words.Contains(scalar.Value)) return Constant(scalar, new WordNode(scalar.Value, FormulaType.OneOf(words), 0, scalar.Value.Length));
        return scope.Names.TryGetValue(scalar.Value, out var type) && type.Kind == FormulaKind.Word && type.Words.All(words.Contains)
            ? Constant(scalar, scope.NodeOf(scalar.Value, type, 0, scalar.Value.Length))
            : Fault("unknown-word", $"'{scalar.Value}' is not one of the words for {what}", Suggestion.For(scalar.Value, words), scalar.Span);
    }

    private Expression? Plain(ScalarNode scalar, string what, FormulaType? wanted)
    {
        // A choice of words may be written without the quotes that a formula would need.
        if (wanted is { Kind: FormulaKind.Word } words)
            return words.Words.IsEmpty ? ReadFluid(scalar, what) : ReadWord(scalar, what, words.Words);
        if (Formula(scalar) is not { } formula) return null;
        if (wanted is { Kind: FormulaKind.Truth } && formula.Type.Kind != FormulaKind.Truth)
            return Fault("not-a-condition", $"{what} must be a yes-or-no condition, and this is {formula.Type}", "compare it with something, as in 'specimen.mass > 20 g' or 'choice.keeping is ethanol'", scalar.Span);
        if (wanted is { Kind: FormulaKind.Quantity } && formula.Type.Kind != FormulaKind.Quantity)
            return Fault("not-a-quantity", $"{what} must be {wanted}, and this is {formula.Type}", "give a quantity, such as '24 h', or use 'choose' to pick one by a condition", scalar.Span);
        if (wanted is { } type && (formula.Type.Kind != type.Kind || formula.Type.Dimension != type.Dimension))
            return Fault("wrong-dimension", $"{what} must be {type}, and this is {formula.Type}", "check the units, and what is multiplied or divided by what", scalar.Span);
        return new FormulaExpression(formula, scalar.Span);
    }

    private Formula? Formula(ScalarNode scalar)
    {
        var formula = Formulas.Formula.Parse(scalar.Value, scope, out var fault);
        if (fault is not null) findings.Add(ScalarReading.Found(scalar, fault));
        return formula;
    }

    private Expression? Cases(Fields fields, Formula by, string what, FormulaType? wanted)
    {
        var cases = ImmutableArray.CreateBuilder<(string, Expression)>();
        var sound = true;
        var needed = by.Root is NameNode name ? scope.Selectable.GetValueOrDefault(name.Name, by.Type.Words) : by.Type.Words;
        foreach (var word in by.Type.Words)
        {
            if (fields.Entry(word) is not { } entry)
            {
                if (!needed.Contains(word)) continue;
                sound = false;
                findings.Add(Finding.Error("missing-case", $"{what} says nothing for '{word}'", $"add '{word}:'", fields.Span));
                continue;
            }

            if (Read(entry.Value, what, wanted) is { } value) cases.Add((word, value));
            else sound = false;
        }

        fields.Finish();
        if (!sound || cases.Count == 0) return null;
        var first = cases[0].Item2.Type;
        return cases.All(c => c.Item2.Type.Kind == first.Kind && c.Item2.Type.Dimension == first.Dimension)
            ? new CaseExpression(by, cases.DrainToImmutable(), fields.Span)
            : Fault("unlike-quantities", $"the cases of {what} do not measure the same kind of thing", "give them all in units of one kind", fields.Span);
    }

    private Expression? Bands(Fields fields, Formula by, string what, FormulaType? wanted)
    {
        var table = fields.Nested("bands", $"the bands of {what}");
        fields.Finish();
        if (table is null)
            return Fault("missing-key", $"{what} goes by a quantity and needs 'bands'", "add 'bands:' with lines such as 'up to 20 g: 24 h'", fields.Span);
        var bands = BandReader.Read(table, by, what, wanted, this, findings);
        return bands.IsDefaultOrEmpty ? null : new BandExpression(by, bands, fields.Span);
    }

    private static FormulaExpression Constant(ScalarNode scalar, FormulaNode node) => new(new(scalar.Value, node), scalar.Span);

    private FormulaExpression? Fault(string id, Message message, Message remedy, SourceSpan where)
    {
        findings.Add(Finding.Error(id, message, remedy, where));
        return null;
    }
}
