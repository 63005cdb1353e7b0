using System.Globalization;
using Protocolist.Findings;
using Protocolist.Notation;
using Protocolist.Quantities;

namespace Protocolist.Formulas;

/// <summary>What can be wrong, and what to write instead.</summary>
internal sealed partial class FormulaParser
{
    private FormulaNode? Fail(string id, Message message, Message remedy, int offset, int length)
    {
        Fault ??= new(id, message, remedy, offset, Math.Max(1, length));
        return null;
    }

    private FormulaNode? Fail(string id, Message message, Message remedy, FormulaNode at) => Fail(id, message, remedy, at.Offset, at.Length);

    private bool Enter(int at)
    {
        if (++_depth <= Formula.Deepest) return true;
        Fail("formula-too-deep", string.Create(CultureInfo.InvariantCulture, $"the formula is nested more than {Formula.Deepest} deep"), "name its parts under 'values'", at, 1);
        return false;
    }

    private bool Alike(FormulaNode left, FormulaNode right, string verb)
    {
        if (!IsQuantity(left) || !IsQuantity(right)) return false;
        if (left.Type.Dimension == right.Type.Dimension) return true;
        Fail("unlike-quantities", $"cannot {verb} {left.Type} and {right.Type}", "both sides must measure the same kind of thing", right);
        return false;
    }

    private bool IsQuantity(FormulaNode node)
    {
        if (node.Type.Kind == FormulaKind.Quantity) return true;
        Fail("not-a-quantity", $"a quantity is wanted, and this is {node.Type}", "use a quantity or a name of one", node);
        return false;
    }

    private bool NoTemperature(FormulaNode node)
    {
        if (node.Type.Dimension.Temperature == 0) return true;
        Fail("temperature-arithmetic", "temperatures are compared or passed to functions, never computed with", "use a function that takes a temperature", node);
        return false;
    }

    /// <summary>Whether a minus between two plain numbers was meant as "to": 2-5 mL, 10 - 14 d. A small number minus a large one has no other use.</summary>
    private bool IsRangeWithDash(FormulaNode left, FormulaNode right) =>
        left is LiteralNode a && right is LiteralNode b && text[right.Offset] != '('
        && (a.Type.Dimension == b.Type.Dimension ? a.Value.Low < b.Value.Low : a.Literal.Unit is null);

    private FormulaNode? RangeWithDash(FormulaNode left, FormulaNode right, int at) =>
        Fail("range-with-dash", "a range is written with 'to'", $"write '{Of(left)} to {Of(right)}'", at, 1);

    private FormulaNode? Unclosed(string message, int start, int length) =>
        _scan.At < text.Length ? Trailing() : Fail("missing-bracket", message, "add ')'", start, length);

    private FormulaNode? Trailing()
    {
        var at = _scan.At;
        var word = QuantityText.Word(text, at);
        return text[at] switch
        {
            ')' when _depth == 0 => Fail("missing-bracket", "a bracket is closed that was never opened", "remove it", at, 1),
            '–' or '—' => Fail("range-with-dash", "a range is written with 'to'", "write '2 to 5 mL'", at, 1),
            ',' when at + 1 < text.Length && char.IsAsciiDigit(text[at + 1]) => Fail("decimal-comma", "a comma stands in a number", "write the decimal sign as a point", at, 1),
            _ => Fail("unexpected-text", $"'{word}' makes no sense after what stands before it", "an operator such as + - * / 'to' 'and' may be missing", at, word.Length),
        };
    }

    private Message UnknownRemedy(string name)
    {
        if (scope.Functions.TryGetValue(name, out var function)) return $"it is a function: {function.Signature}";
        if (UnitTable.TryFind(name, out var unit)) return $"a unit stands right behind its number, and '/' between units has no spaces: '10 {unit.Symbol}', '10 mL/kg'";
        if (StartsWithNameAndMinus(name)) return "a minus sign between two names has a space on each side";
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
