using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Quantities;

namespace Protocolist.Formulas;

/// <summary>
/// Recursive descent over one formula; types are settled as the tree is built. From loose to tight:
/// or, and, not, comparison, range (to, ±, at least, at most), sum, product, sign.
/// Stops at the first fault: what follows it would be guesswork.
/// </summary>
internal sealed class FormulaParser(string text, FormulaScope scope)
{
    private readonly FormulaScanner _scan = new(text);
    private int _depth;

    public TextFault? Fault { get; private set; }

    public FormulaNode? Parse()
    {
        _scan.Skip();
        if (_scan.At == text.Length) return Fail("empty-formula", "a formula is wanted here", "write a quantity such as '24 h', or a formula", 0, 1);
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
        if (Enter() is false) return null;
        var of = Negation();
        _depth--;
        if (of is null) return null;
        return of.Type.Kind == FormulaKind.Truth
            ? new NotNode(of, FormulaType.Truth, start, EndOf(of) - start)
            : Fail("not-a-condition", $"'not' needs a condition, and this is {of.Type}", "compare it with something", of.Offset, of.Length);
    }

    private FormulaNode? Comparison()
    {
        var left = Range();
        if (left is null) return null;
        if (_scan.TryWord("is")) return WordTest(left, _scan.TryWord("not") ? Operation.IsNot : Operation.Is);
        if (Comparator() is not { } operation) return left;
        if (Range() is not { } right) return null;
        if (left.Type.Kind != FormulaKind.Quantity || right.Type.Kind != FormulaKind.Quantity)
            return Fail("not-comparable", $"{left.Type} and {right.Type} cannot be compared by size", "words are compared with 'is' and 'is not'", left.Offset, EndOf(right) - left.Offset);
        return Alike(left, right, "compare") ? Pair(operation, left, right, FormulaType.Truth) : null;
    }

    private FormulaNode? Range()
    {
        var start = _scan.At;
        var atLeast = _scan.TryWords("at", "least");
        if (atLeast || _scan.TryWords("at", "most"))
        {
            if (Sum() is not { } bound) return null;
            return bound.Type.Kind == FormulaKind.Quantity
                ? new OpenRangeNode(atLeast, bound, bound.Type, start, EndOf(bound) - start)
                : Fail("not-a-quantity", $"a bound must be a quantity, and this is {bound.Type}", "give a quantity", bound.Offset, bound.Length);
        }

        var left = Sum();
        if (left is null) return null;
        var operation = _scan.TryWord("to") ? Operation.Range : _scan.TrySymbol("±") || _scan.TrySymbol("+-") ? Operation.Tolerance : (Operation?)null;
        if (operation is null) return left;
        if (Sum() is not { } right) return null;
        left = ShareUnit(left, right);
        if (!Alike(left, right, "make a range of")) return null;
        if (operation is Operation.Range && left is LiteralNode a && right is LiteralNode b && a.Value.Low > b.Value.Low)
            return Fail("reversed-range", "the range runs backwards", "put the lower end first", left.Offset, EndOf(right) - left.Offset);
        if (operation is Operation.Tolerance && left.Type.Dimension == Dimension.OfTemperature)
            return Fail("temperature-arithmetic", "a tolerance of temperature cannot be told from a temperature", "write the range as 'a to b'", left.Offset, EndOf(right) - left.Offset);
        return Pair(operation.Value, left, right, left.Type);
    }

    private FormulaNode? Sum()
    {
        var left = Product();
        while (left is not null && Sign() is { } operation)
        {
            if (Product() is not { } right) return null;
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
            left = Pair(operation, left, right, FormulaType.Of(dimension));
        }

        return left;
    }

    private FormulaNode? Signed()
    {
        var start = _scan.At;
        if (!_scan.TrySymbol("-") && !_scan.TrySymbol("−")) return Atom();
        if (Enter() is false) return null;
        var of = Signed();
        _depth--;
        if (of is null || !IsQuantity(of)) return null;

        // "-5 degC" is a temperature below freezing, not the opposite of a warm one.
        if (of is LiteralNode { Literal: { Unit: not null } literal } && of.Type.Dimension == Dimension.OfTemperature)
        {
            var cold = literal with { Number = -literal.Number };
            return new LiteralNode(cold, cold.ToRange(), of.Type, start, EndOf(of) - start);
        }

        return new NegativeNode(of, of.Type, start, EndOf(of) - start);
    }

    private FormulaNode? Atom()
    {
        if (_scan.At == text.Length) return Fail("unfinished-formula", "the formula stops too early", "finish it", Math.Max(0, text.Length - 1), 1);
        if (_scan.TrySymbol("(")) return Group();
        if (char.IsAsciiDigit(_scan.Peek()) || _scan.Peek() == '.') return Number();
        if (_scan.Peek() == '"') return Quoted();
        return char.IsLetter(_scan.Peek()) ? Named() : Fail("unexpected-text", $"'{QuantityText.Word(text, _scan.At)}' cannot stand here", "a quantity, a name or a function is wanted", _scan.At, 1);
    }

    private FormulaNode? Group()
    {
        var start = _scan.LastEnd() - 1;
        if (Enter() is false) return null;
        var inner = Either();
        _depth--;
        if (inner is null) return null;
        return _scan.TrySymbol(")") ? inner with { Offset = start, Length = _scan.LastEnd() - start } : Fail("missing-bracket", "a bracket is never closed", "add ')'", start, 1);
    }

    private LiteralNode? Number()
    {
        if (QuantityText.ReadLiteral(text, _scan.At, out var literal, out var end) is { } fault)
        {
            Fault ??= fault;
            return null;
        }

        var node = new LiteralNode(literal, literal.ToRange(), FormulaType.Of(literal.Dimension), _scan.At, end - _scan.At);
        _scan.At = end;
        _scan.Skip();
        return node;
    }

    private FormulaNode? Quoted()
    {
        var close = text.IndexOf('"', _scan.At + 1);
        if (close < 0) return Fail("missing-quote", "a quoted word is never closed", "add '\"'", _scan.At, 1);
        var node = new WordNode(text[(_scan.At + 1)..close], FormulaType.OneOf(), _scan.At, close + 1 - _scan.At);
        _scan.At = close + 1;
        _scan.Skip();
        return node;
    }

    private FormulaNode? Named()
    {
        var start = _scan.At;
        var name = _scan.Name();
        if (_scan.Peek() == '(') return Call(name, start);
        if (scope.Names.TryGetValue(name, out var type)) return new NameNode(name, type, start, name.Length);
        return Fail("unknown-value", $"'{name}' is not defined here", UnknownRemedy(name), start, name.Length);
    }

    private FormulaNode? Call(string name, int start)
    {
        if (!scope.Functions.TryGetValue(name, out var function))
            return Fail("unknown-function", $"there is no function '{name}'", Suggestion.For(name, [.. scope.Functions.Keys]), start, name.Length);
        if (Enter() is false) return null;
        _scan.TrySymbol("(");
        var arguments = ImmutableArray.CreateBuilder<FormulaNode>();
        if (!_scan.TrySymbol(")"))
        {
            do
            {
                if (Argument(function, arguments.Count) is not { } argument) return null;
                arguments.Add(argument);
            }
            while (_scan.TrySymbol(","));
            if (!_scan.TrySymbol(")")) return Fail("missing-bracket", $"the arguments of '{name}' are never closed", "add ')'", start, name.Length);
        }

        _depth--;
        return Typed(function, arguments.DrainToImmutable(), start);
    }

    private FormulaNode? Argument(FormulaFunction function, int index)
    {
        var parameter = index < function.Parameters.Length ? function.Parameters[index] : function.Repeats ? function.Parameters[^1] : null;
        if (parameter is null)
            return Fail("too-many-arguments", $"'{function.Name}' takes {function.Parameters.Length} arguments", $"it is {function.Signature}", _scan.At, 1);
        if (parameter.Type is { Kind: FormulaKind.Word } words) return WordOf(words, parameter.Name);
        var argument = Either();
        if (argument is null || parameter.Type is not { } wanted) return argument;
        return argument.Type.Kind == wanted.Kind && argument.Type.Dimension == wanted.Dimension
            ? argument
            : Fail("wrong-dimension", $"'{parameter.Name}' of '{function.Name}' must be {wanted}, and this is {argument.Type}", $"it is {function.Signature}", argument.Offset, argument.Length);
    }

    private FormulaNode? Typed(FormulaFunction function, ImmutableArray<FormulaNode> arguments, int start)
    {
        var length = _scan.LastEnd() - start;
        var needed = function.Parameters.Count(p => !p.Optional);
        if (arguments.Length < needed)
            return Fail("too-few-arguments", $"'{function.Name}' needs {needed} arguments", $"it is {function.Signature}", start, length);
        var (type, misfit) = function.ResultType([.. arguments.Select(a => a.Type)]);
        return misfit is null
            ? new CallNode(function, arguments, type, start, length)
            : Fail("wrong-dimension", $"'{function.Name}' {misfit}", $"it is {function.Signature}", start, length);
    }

    /// <summary>The right side of <c>is</c>: one of the words the left side can be.</summary>
    private FormulaNode? WordTest(FormulaNode left, Operation operation)
    {
        if (left.Type.Kind != FormulaKind.Word)
            return Fail("not-a-word", $"'is' compares words, and this is {left.Type}", "compare quantities with <, >, <=, >= or =", left.Offset, left.Length);
        return WordOf(left.Type, text.Substring(left.Offset, left.Length)) is { } right ? Pair(operation, left, right, FormulaType.Truth) : null;
    }

    private FormulaNode? WordOf(FormulaType type, string what)
    {
        var start = _scan.At;
        if (_scan.At < text.Length && _scan.Peek() == '"')
        {
            if (Quoted() is not WordNode quoted) return null;
            return Known(quoted.Word, type, what, start, quoted.Length);
        }

        var word = _scan.At < text.Length && char.IsLetter(_scan.Peek()) ? _scan.Name() : "";
        if (word.Length == 0) return Fail("missing-word", $"a word for {what} is wanted here", Suggestion.For("", type.Words), Math.Min(start, text.Length - 1), 1);

        // A name of a word-valued thing may stand where a word may, when no word of that spelling exists.
        if (!type.Words.Contains(word) && scope.Names.TryGetValue(word, out var named) && named.Kind == FormulaKind.Word) return new NameNode(word, named, start, word.Length);
        return Known(word, type, what, start, word.Length);
    }

    private FormulaNode? Known(string word, FormulaType type, string what, int start, int length) =>
        type.Words.IsEmpty || type.Words.Contains(word)
            ? new WordNode(word, type, start, length)
            : Fail("unknown-word", $"'{word}' is not one of the words for {what}", Suggestion.For(word, type.Words), start, length);

    private FormulaNode? Logic(Operation operation, FormulaNode left, FormulaNode? right)
    {
        if (right is null) return null;
        foreach (var side in (FormulaNode[])[left, right])
        {
            if (side.Type.Kind != FormulaKind.Truth)
                return Fail("not-a-condition", $"'{operation.ToString().ToLowerInvariant()}' joins conditions, and this is {side.Type}", "compare it with something", side.Offset, side.Length);
        }

        return Pair(operation, left, right, FormulaType.Truth);
    }

    /// <summary>In "2 to 5 mL" the bare number takes the unit of the other.</summary>
    private static FormulaNode ShareUnit(FormulaNode left, FormulaNode right)
    {
        if (left is not LiteralNode { Literal.Unit: null } bare || right is not LiteralNode { Literal.Unit: { } unit }) return left;
        var literal = bare.Literal with { Unit = unit };
        return bare with { Literal = literal, Value = literal.ToRange(), Type = right.Type };
    }

    private bool Alike(FormulaNode left, FormulaNode right, string verb)
    {
        if (!IsQuantity(left) || !IsQuantity(right)) return false;
        if (left.Type.Dimension == right.Type.Dimension) return true;
        Fail("unlike-quantities", $"cannot {verb} {left.Type} and {right.Type}", "both sides must measure the same kind of thing", right.Offset, right.Length);
        return false;
    }

    private bool IsQuantity(FormulaNode node)
    {
        if (node.Type.Kind == FormulaKind.Quantity) return true;
        Fail("not-a-quantity", $"a quantity is wanted, and this is {node.Type}", "use a quantity or a name of one", node.Offset, node.Length);
        return false;
    }

    private bool NoTemperature(FormulaNode node)
    {
        if (node.Type.Dimension.Temperature == 0) return true;
        Fail("temperature-arithmetic", "temperatures are compared or passed to functions, never computed with", "use a function that takes a temperature", node.Offset, node.Length);
        return false;
    }

    private static PairNode Pair(Operation operation, FormulaNode left, FormulaNode right, FormulaType type) =>
        new(operation, left, right, type, left.Offset, EndOf(right) - left.Offset);

    private static int EndOf(FormulaNode node) => node.Offset + node.Length;

    private bool Enter()
    {
        if (++_depth <= Formula.Deepest) return true;
        Fail("formula-too-deep", $"the formula is nested more than {Formula.Deepest} deep", "name its parts under 'values'", _scan.At == 0 ? 0 : _scan.At - 1, 1);
        return false;
    }

    private FormulaNode? Fail(string id, string message, string remedy, int offset, int length)
    {
        Fault ??= new(id, message, remedy, offset, Math.Max(1, length));
        return null;
    }

    private FormulaNode? Trailing()
    {
        var word = QuantityText.Word(text, _scan.At);
        if (text[_scan.At] == ')') return Fail("missing-bracket", "a bracket is closed that was never opened", "remove it", _scan.At, 1);
        return Fail("unexpected-text", $"'{word}' makes no sense after what stands before it", "an operator such as + - * / 'to' 'and' may be missing", _scan.At, word.Length);
    }

    private string UnknownRemedy(string name)
    {
        var parts = name.Split('-');
        if (parts.Length > 1 && Array.TrueForAll(parts, p => scope.Names.ContainsKey(p))) return "a minus sign between two names has a space on each side";
        return Suggestion.For(name, [.. scope.Names.Keys]);
    }

    private Operation? Sign() =>
        _scan.TrySymbol("+") ? Operation.Add : _scan.TrySymbol("-") || _scan.TrySymbol("−") ? Operation.Subtract : null;

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
