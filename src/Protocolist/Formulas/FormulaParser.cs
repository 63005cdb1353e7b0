using Protocolist.Findings;
using Protocolist.Notation;
using Protocolist.Quantities;

namespace Protocolist.Formulas;

/// <summary>
/// Recursive descent over one formula; types are settled as the tree is built. From loose to tight:
/// or, and, not, comparison, range (to, ±, at least, at most), sum, product, sign.
/// Stops at the first fault: what follows it would be guesswork.
/// </summary>
internal sealed partial class FormulaParser(string text, FormulaScope scope)
{
    private static readonly Phrase EmptyFormula = new("empty-formula", "a formula is wanted here");
    private static readonly Phrase EmptyFormulaRemedy = new("empty-formula.remedy", "write a quantity such as '24 h', or a formula");
    private static readonly Phrase NotACondition = new("not-a-condition", "'not' needs a condition, and this is {type}");
    private static readonly Phrase NotAConditionRemedy = new("not-a-condition.remedy", "compare it with something");
    private static readonly Phrase NotComparable = new("not-comparable", "{type} and {type-2} cannot be compared by size");
    private static readonly Phrase NotComparableRemedy = new("not-comparable.remedy", "words are compared with 'is' and 'is not'");
    private static readonly Phrase ReversedRange = new("reversed-range", "the range runs backwards");
    private static readonly Phrase ReversedRangeRemedy = new("reversed-range.order.remedy", "put the lower end first");
    private static readonly Phrase ToleranceOfTemperature = new(
        "temperature-arithmetic.tolerance", "a tolerance of temperature cannot be told from a temperature");
    private static readonly Phrase ToleranceOfTemperatureRemedy = new("temperature-arithmetic.tolerance.remedy", "write the range as 'a to b'");
    private static readonly Phrase BoundNotAQuantity = new("not-a-quantity.bound", "a bound must be a quantity, and this is {type}");
    private static readonly Phrase BoundNotAQuantityRemedy = new("not-a-quantity.bound.remedy", "give a quantity");
    private static readonly Phrase UnreasonableDimension = new("unreasonable-dimension", "this is {dimension}, which nothing measures");
    private static readonly Phrase UnreasonableDimensionRemedy = new("unreasonable-dimension.remedy", "check what is multiplied by what");
    private static readonly Phrase JoinsConditions = new("not-a-condition.joined", "'{word}' joins conditions, and this is {type}");

    private readonly FormulaScanner _scan = new(text);
    private int _depth;

    public TextFault? Fault { get; private set; }

    public FormulaNode? Parse()
    {
        _scan.Skip();
        if (_scan.At == text.Length) return Fail("empty-formula", EmptyFormula, EmptyFormulaRemedy, 0, 1);
        var root = Either();
        if (root is not null && _scan.At < text.Length) return Trailing();
        return root;
    }

    private FormulaNode? Either()
    {
        var left = Both();
        while (left is not null && _scan.TryWord("or")) left = Logic(Operation.Or, left, Both());
        return left;
    }

    private FormulaNode? Both()
    {
        var left = Negation();
        while (left is not null && _scan.TryWord("and")) left = Logic(Operation.And, left, Negation());
        return left;
    }

    private FormulaNode? Negation()
    {
        var start = _scan.At;
        if (!_scan.TryWord("not")) return Comparison();
        if (!Enter(start)) return null;
        var of = Negation();
        _depth--;
        if (of is null) return null;
        return of.Type.Kind == FormulaKind.Truth
            ? new NotNode(of, FormulaType.Truth, start, EndOf(of) - start)
            : Fail("not-a-condition", NotACondition.With(("type", of.Type.ToString())), NotAConditionRemedy, of);
    }

    private FormulaNode? Comparison()
    {
        if (Range() is not { } left) return null;
        if (_scan.TryWord("is")) return WordTest(left, _scan.TryWord("not") ? Operation.IsNot : Operation.Is);
        if (Comparator() is not { } operation) return left;
        if (Range() is not { } right) return null;
        if (new[] { left, right }.Any(side => side.Type.Kind != FormulaKind.Quantity))
            return Fail(
                "not-comparable",
                NotComparable.With(("type", left.Type.ToString()), ("type-2", right.Type.ToString())),
                NotComparableRemedy,
                left.Offset,
                EndOf(right) - left.Offset);
        return Alike(left, right, "compare") ? Pair(operation, left, right, FormulaType.Truth) : null;
    }

    private FormulaNode? Range()
    {
        var start = _scan.At;
        var atLeast = _scan.TryWords("at", "least");
        if (atLeast || _scan.TryWords("at", "most")) return OpenRange(atLeast, start);
        if (Sum() is not { } left) return null;
        var operation = _scan.TryWord("to")
            ? Operation.Range
            : _scan.TrySymbol("±") || _scan.TrySymbol("+/-") || _scan.TrySymbol("+-") ? Operation.Tolerance : (Operation?)null;
        if (operation is null) return left;
        if (Sum() is not { } right) return null;
        left = ShareUnit(left, right);
        if (!Alike(left, right, "make a range of")) return null;
        if (operation is Operation.Range && left is LiteralNode a && right is LiteralNode b && a.Value.Low > b.Value.Low)
            return Fail("reversed-range", ReversedRange, ReversedRangeRemedy, left.Offset, EndOf(right) - left.Offset);
        if (operation is Operation.Tolerance && left.Type.Dimension == Dimension.OfTemperature)
            return Fail("temperature-arithmetic", ToleranceOfTemperature, ToleranceOfTemperatureRemedy, left.Offset, EndOf(right) - left.Offset);
        return Pair(operation.Value, left, right, left.Type);
    }

    private FormulaNode? OpenRange(bool atLeast, int start)
    {
        if (Sum() is not { } bound) return null;
        return bound.Type.Kind == FormulaKind.Quantity
            ? new OpenRangeNode(atLeast, bound, bound.Type, start, EndOf(bound) - start)
            : Fail("not-a-quantity", BoundNotAQuantity.With(("type", bound.Type.ToString())), BoundNotAQuantityRemedy, bound);
    }

    private FormulaNode? Sum()
    {
        var left = Product();
        while (left is not null)
        {
            var sign = _scan.At;
            if (Sign() is not { } operation) return left;
            if (Product() is not { } right) return null;
            if (operation == Operation.Subtract && IsRangeWithDash(left, right)) return RangeWithDash(left, right, sign);
            if (!Alike(left, right, operation == Operation.Add ? "add" : "subtract") || !NoTemperature(left)) return null;
            left = Pair(operation, left, right, left.Type);
        }

        return left;
    }

    private FormulaNode? Product()
    {
        var left = Signed();
        while (left is not null && Factor() is { } operation)
        {
            if (Signed() is not { } right) return null;
            if (!IsQuantity(left) || !IsQuantity(right) || !NoTemperature(left) || !NoTemperature(right)) return null;
            var dimension = operation == Operation.Divide ? left.Type.Dimension / right.Type.Dimension : left.Type.Dimension * right.Type.Dimension;
            if (!dimension.IsWithinReason)
                return Fail(
                    "unreasonable-dimension",
                    UnreasonableDimension.With(("dimension", dimension.ToString())),
                    UnreasonableDimensionRemedy,
                    left.Offset,
                    EndOf(right) - left.Offset);
            left = Pair(operation, left, right, FormulaType.Of(dimension));
        }

        return left;
    }

    private FormulaNode? Signed()
    {
        var start = _scan.At;
        if (_scan.Peek() is not ('-' or '−')) return Atom();

        // A sign right before a figure belongs to it: -5 degC is a temperature below freezing, not the opposite of a warm one.
        if (start + 1 < text.Length && (char.IsAsciiDigit(text[start + 1]) || text[start + 1] == '.')) return Number();
        _scan.At++;
        _scan.Skip();
        if (!Enter(start)) return null;
        var of = Signed();
        _depth--;
        return of is not null && IsQuantity(of) && NoTemperature(of) ? new NegativeNode(of, of.Type, start, EndOf(of) - start) : null;
    }

    /// <summary>In "2 to 5 mL" the bare number takes the unit of the other.</summary>
    private static FormulaNode ShareUnit(FormulaNode left, FormulaNode right)
    {
        if (left is not LiteralNode { Literal.Unit: null } bare || right is not LiteralNode { Literal.Unit: { } unit }) return left;
        var literal = bare.Literal with { Unit = unit };
        return bare with { Literal = literal, Value = literal.ToRange(), Type = right.Type };
    }

    private FormulaNode? Logic(Operation operation, FormulaNode left, FormulaNode? right)
    {
        if (right is null) return null;
        foreach (var side in (ReadOnlySpan<FormulaNode>)[left, right])
        {
            if (side.Type.Kind != FormulaKind.Truth)
                return Fail(
                    "not-a-condition",
                    JoinsConditions.With(("word", operation.ToString().ToLowerInvariant()), ("type", side.Type.ToString())),
                    NotAConditionRemedy,
                    side);
        }

        return Pair(operation, left, right, FormulaType.Truth);
    }

    private static PairNode Pair(Operation operation, FormulaNode left, FormulaNode right, FormulaType type) =>
        new(operation, left, right, type, left.Offset, EndOf(right) - left.Offset);

    private static int EndOf(FormulaNode node) => node.Offset + node.Length;

    /// <summary>A plus or minus sign; "+-" and "+/-" are tolerances.</summary>
    private Operation? Sign()
    {
        var rest = text.AsSpan(_scan.At);
        if (rest.StartsWith("+-") || rest.StartsWith("+/-")) return null;
        return _scan.TrySymbol("+") ? Operation.Add : _scan.TrySymbol("-") || _scan.TrySymbol("−") ? Operation.Subtract : null;
    }

    private Operation? Factor() =>
        _scan.TrySymbol("*") || _scan.TrySymbol("×") ? Operation.Multiply : _scan.TrySymbol("/") ? Operation.Divide : null;

    private Operation? Comparator() =>
        _scan.TrySymbol("<=") || _scan.TrySymbol("≤") ? Operation.LessOrEqual
        : _scan.TrySymbol(">=") || _scan.TrySymbol("≥") ? Operation.GreaterOrEqual
        : _scan.TrySymbol("<") ? Operation.Less
        : _scan.TrySymbol(">") ? Operation.Greater
        : _scan.TrySymbol("=") ? Operation.Equal
        : null;
}
