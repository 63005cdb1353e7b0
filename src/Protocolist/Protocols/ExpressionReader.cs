using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Formulas;
using Protocolist.Reading;

namespace Protocolist.Protocols;

/// <summary>Reads the forms a value can have: a formula, a table of bands, one formula for each word of a choice, or any of these with its source.</summary>
internal sealed class ExpressionReader(FormulaScope scope, List<Finding> findings)
{
    private static readonly Phrase NotAChoice = new("not-a-choice", "'by' takes a quantity for bands, or a choice for cases");
    private static readonly Phrase NotAChoiceRemedy = new("not-a-choice.remedy", "for a condition use the function 'choose'");
    private static readonly Phrase UnknownValue = new("unknown-value.here", "'{name}' is not defined here");
    private static readonly Phrase UnknownWord = new("unknown-word.for", "'{word}' is not one of the words for {what}");
    private static readonly Phrase NotACondition = new("not-a-condition.setting", "{what} must be a yes-or-no condition, and this is {type}");
    private static readonly Phrase CompareIt = new(
        "not-a-condition.setting.remedy",
        "compare it with something, as in 'specimen.mass > 20 g' or 'choice.keeping is ethanol'");
    private static readonly Phrase NotAQuantity = new("not-a-quantity.setting", "{what} must be {wanted}, and this is {type}");
    private static readonly Phrase NotAQuantityRemedy = new(
        "not-a-quantity.setting.remedy",
        "give a quantity, such as '24 h', or use 'choose' to pick one by a condition");
    private static readonly Phrase WrongDimension = new("wrong-dimension.setting", "{what} must be {type}, and this is {is}");
    private static readonly Phrase WrongDimensionRemedy = new("wrong-dimension.setting.remedy", "check the units, and what is multiplied or divided by what");
    private static readonly Phrase MissingCase = new("missing-case", "{what} says nothing for '{word}'");
    private static readonly Phrase MissingCaseRemedy = new("missing-case.remedy", "add '{word}:'");
    private static readonly Phrase UnlikeCases = new("unlike-quantities.cases", "the cases of {what} do not measure the same kind of thing");
    private static readonly Phrase UnlikeCasesRemedy = new("unlike-quantities.remedy", "give them all in units of one kind");
    private static readonly Phrase NeedsBands = new("missing-key.bands", "{what} goes by a quantity and needs 'bands'");
    private static readonly Phrase NeedsBandsRemedy = new("missing-key.bands.remedy", "add 'bands:' with lines such as 'up to 20 g: 24 h'");

    public FormulaScope Scope => scope;

    /// <summary>A value of the wanted type; any type where none is given.</summary>
    public Expression? Read(DocumentNode node, Message what, FormulaType? wanted)
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
            _ => Fault("not-a-choice", NotAChoice, NotAChoiceRemedy, byText.Span),
        };
    }

    /// <summary>A fluid's name as it stands, or a name of the scope that stands for one.</summary>
    public Expression? ReadFluid(DocumentNode node, Message what)
    {
        if (node is not ScalarNode scalar) return Read(node, what, FormulaType.OneOf());
        if (scope.Names.TryGetValue(scalar.Value, out var type) && type.Kind == FormulaKind.Word)
            return Constant(scalar, scope.NodeOf(scalar.Value, type, 0, scalar.Value.Length));
        if (scalar.Value.StartsWith("choice.", StringComparison.Ordinal))
            return Fault("unknown-value", UnknownValue.With(("name", scalar.Value)), Suggestion.For(scalar.Value, [.. scope.Names.Keys]), scalar.Span);
        return Constant(scalar, new WordNode(scalar.Value, FormulaType.OneOf(), 0, scalar.Value.Length));
    }

    /// <summary>One of a closed list of words, or a name of the scope that stands for one.</summary>
    public Expression? ReadWord(DocumentNode node, Message what, ImmutableArray<string> words)
    {
        if (node is not ScalarNode scalar) return Read(node, what, FormulaType.OneOf(words));
        if (words.Contains(scalar.Value)) return Constant(scalar, new WordNode(scalar.Value, FormulaType.OneOf(words), 0, scalar.Value.Length));
        return scope.Names.TryGetValue(scalar.Value, out var type) && type.Kind == FormulaKind.Word && type.Words.All(words.Contains)
            ? Constant(scalar, scope.NodeOf(scalar.Value, type, 0, scalar.Value.Length))
            : Fault("unknown-word", UnknownWord.With(("word", scalar.Value), ("what", what)), Suggestion.For(scalar.Value, words), scalar.Span);
    }

    private Expression? Plain(ScalarNode scalar, Message what, FormulaType? wanted)
    {
        // A choice of words may be written without the quotes that a formula would need.
        if (wanted is { Kind: FormulaKind.Word } words)
            return words.Words.IsEmpty ? ReadFluid(scalar, what) : ReadWord(scalar, what, words.Words);
        if (Formula(scalar) is not { } formula) return null;
        if (wanted is { Kind: FormulaKind.Truth } && formula.Type.Kind != FormulaKind.Truth)
            return Fault("not-a-condition", NotACondition.With(("what", what), ("type", formula.Type.ToString())), CompareIt, scalar.Span);
        if (wanted is { Kind: FormulaKind.Quantity } && formula.Type.Kind != FormulaKind.Quantity)
            return Fault(
                "not-a-quantity",
                NotAQuantity.With(("what", what), ("wanted", $"{wanted}"), ("type", formula.Type.ToString())),
                NotAQuantityRemedy,
                scalar.Span);
        if (wanted is { } type && (formula.Type.Kind != type.Kind || formula.Type.Dimension != type.Dimension))
            return Fault(
                "wrong-dimension",
                WrongDimension.With(("what", what), ("type", type.ToString()), ("is", formula.Type.ToString())),
                WrongDimensionRemedy,
                scalar.Span);
        return new FormulaExpression(formula, scalar.Span);
    }

    private Formula? Formula(ScalarNode scalar)
    {
        var formula = Formulas.Formula.Parse(scalar.Value, scope, out var fault);
        if (fault is not null) findings.Add(ScalarReading.Found(scalar, fault));
        return formula;
    }

    private Expression? Cases(Fields fields, Formula by, Message what, FormulaType? wanted)
    {
        var cases = ImmutableArray.CreateBuilder<(string, Expression)>();
        var sound = true;
        var needed = scope.Needed(by);
        foreach (var word in by.Type.Words)
        {
            if (fields.Entry(word) is not { } entry)
            {
                if (!needed.Contains(word)) continue;
                sound = false;
                findings.Add(Finding.Error(
                    "missing-case",
                    MissingCase.With(("what", what), ("word", word)),
                    MissingCaseRemedy.With(("word", word)),
                    fields.Span));
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
            : Fault("unlike-quantities", UnlikeCases.With(("what", what)), UnlikeCasesRemedy, fields.Span);
    }

    private Expression? Bands(Fields fields, Formula by, Message what, FormulaType? wanted)
    {
        var table = fields.Nested("bands", Named.Bands(what));
        fields.Finish();
        if (table is null)
            return Fault("missing-key", NeedsBands.With(("what", what)), NeedsBandsRemedy, fields.Span);
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
