using Protocolist.Findings;
using Protocolist.Notation;
using Protocolist.Quantities;

namespace Protocolist.Formulas;

/// <summary>What can be wrong, and what to write instead.</summary>
internal sealed partial class FormulaParser
{
    private static readonly Phrase FormulaTooDeep = new("formula-too-deep", "the formula is nested more than {deepest} deep");
    private static readonly Phrase FormulaTooDeepRemedy = new("formula-too-deep.remedy", "name its parts under 'values'");
    private static readonly Phrase UnlikeQuantities = new("unlike-quantities", "cannot {verb} {type} and {type-2}");
    private static readonly Phrase UnlikeQuantitiesRemedy = new("unlike-quantities.sides.remedy", "both sides must measure the same kind of thing");
    private static readonly Phrase NotAQuantity = new("not-a-quantity", "a quantity is wanted, and this is {type}");
    private static readonly Phrase NotAQuantityRemedy = new("not-a-quantity.remedy", "use a quantity or a name of one");
    private static readonly Phrase TemperatureArithmetic = new(
        "temperature-arithmetic",
        "temperatures are compared or passed to functions, never computed with");
    private static readonly Phrase TemperatureArithmeticRemedy = new("temperature-arithmetic.remedy", "use a function that takes a temperature");
    private static readonly Phrase RangeWithDashSaid = new("range-with-dash", "a range is written with 'to'");
    private static readonly Phrase RangeWithDashRemedy = new("range-with-dash.remedy", "write '{left} to {right}'");
    private static readonly Phrase MissingBracketRemedy = new("missing-bracket.remedy", "add ')'");
    private static readonly Phrase MissingBracket = new("missing-bracket", "a bracket is closed that was never opened");
    private static readonly Phrase BracketTooManyRemedy = new("missing-bracket.remove.remedy", "remove it");
    private static readonly Phrase SuchARange = new("range-with-dash.such.remedy", "write '2 to 5 mL'");
    private static readonly Phrase ItIsAFunction = new("unknown-name.function.remedy", "it is a function: {signature}");
    private static readonly Phrase SpacesAroundMinus = new("unknown-name.minus.remedy", "a minus sign between two names has a space on each side");
    private static readonly Phrase ItIsAUnit = new(
        "unknown-name.unit.remedy", "a unit stands right behind its number, and '/' between units has no spaces: '10 {unit}', '10 mL/kg'");
    private static readonly Phrase DecimalComma = new("decimal-comma", "a comma stands in a number");
    private static readonly Phrase DecimalCommaRemedy = new("decimal-comma.remedy", "write the decimal sign as a point");
    private static readonly Phrase NoSenseHere = new("unexpected-text.before", "'{word}' makes no sense after what stands before it");
    private static readonly Phrase NoSenseHereRemedy = new("unexpected-text.before.remedy", "an operator such as + - * / 'to' 'and' may be missing");

    private FormulaNode? Fail(string id, Message message, Message remedy, int offset, int length)
    {
        Fault ??= new(id, message, remedy, offset, Math.Max(1, length));
        return null;
    }

    private FormulaNode? Fail(string id, Message message, Message remedy, FormulaNode at) => Fail(id, message, remedy, at.Offset, at.Length);

    private bool Enter(int at)
    {
        if (++_depth <= Formula.Deepest) return true;
        Fail("formula-too-deep", FormulaTooDeep.With(("deepest", Formula.Deepest)), FormulaTooDeepRemedy, at, 1);
        return false;
    }

    private bool Alike(FormulaNode left, FormulaNode right, string verb)
    {
        if (!IsQuantity(left) || !IsQuantity(right)) return false;
        if (left.Type.Dimension == right.Type.Dimension) return true;
        Fail(
            "unlike-quantities",
            UnlikeQuantities.With(("verb", verb), ("type", left.Type.ToString()), ("type-2", right.Type.ToString())),
            UnlikeQuantitiesRemedy,
            right);
        return false;
    }

    private bool IsQuantity(FormulaNode node)
    {
        if (node.Type.Kind == FormulaKind.Quantity) return true;
        Fail("not-a-quantity", NotAQuantity.With(("type", node.Type.ToString())), NotAQuantityRemedy, node);
        return false;
    }

    private bool NoTemperature(FormulaNode node)
    {
        if (node.Type.Dimension.Temperature == 0) return true;
        Fail("temperature-arithmetic", TemperatureArithmetic, TemperatureArithmeticRemedy, node);
        return false;
    }

    /// <summary>Whether a minus between two plain numbers was meant as "to": 2-5 mL, 10 - 14 d. A small number minus a large one has no other use.</summary>
    private bool IsRangeWithDash(FormulaNode left, FormulaNode right) =>
        left is LiteralNode a && right is LiteralNode b && text[right.Offset] != '('
        && (a.Type.Dimension == b.Type.Dimension ? a.Value.Low < b.Value.Low : a.Literal.Unit is null);

    private FormulaNode? RangeWithDash(FormulaNode left, FormulaNode right, int at) =>
        Fail("range-with-dash", RangeWithDashSaid, RangeWithDashRemedy.With(("left", Of(left)), ("right", Of(right))), at, 1);

    private FormulaNode? Unclosed(Message message, int start, int length) =>
        _scan.At < text.Length ? Trailing() : Fail("missing-bracket", message, MissingBracketRemedy, start, length);

    private FormulaNode? Trailing()
    {
        var at = _scan.At;
        var word = QuantityText.Word(text, at);
        return text[at] switch
        {
            ')' when _depth == 0 => Fail("missing-bracket", MissingBracket, BracketTooManyRemedy, at, 1),
            '–' or '—' => Fail("range-with-dash", RangeWithDashSaid, SuchARange, at, 1),
            ',' when at + 1 < text.Length && char.IsAsciiDigit(text[at + 1]) => Fail("decimal-comma", DecimalComma, DecimalCommaRemedy, at, 1),
            _ => Fail("unexpected-text", NoSenseHere.With(("word", word)), NoSenseHereRemedy, at, word.Length),
        };
    }

    private Message UnknownRemedy(string name)
    {
        if (scope.Functions.TryGetValue(name, out var function)) return ItIsAFunction.With(("signature", function.Signature));
        if (UnitTable.TryFind(name, out var unit)) return ItIsAUnit.With(("unit", unit.Symbol));
        if (StartsWithNameAndMinus(name)) return SpacesAroundMinus;
        return Suggestion.For(name, [.. scope.Names.Keys]);
    }

    private bool StartsWithNameAndMinus(string name)
    {
        for (var at = name.IndexOf('-', StringComparison.Ordinal); at >= 0; at = name.IndexOf('-', at + 1))
        {
            if (scope.Names.ContainsKey(name[..at])) return true;
        }

        return false;
    }

    private string Of(FormulaNode node) => text.Substring(node.Offset, node.Length);
}
