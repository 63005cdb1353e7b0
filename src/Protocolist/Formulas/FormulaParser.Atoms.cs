using System.Collections.Immutable;
using System.Globalization;
using Protocolist.Findings;
using Protocolist.Notation;

namespace Protocolist.Formulas;

/// <summary>The smallest parts: numbers, names, calls, brackets.</summary>
internal sealed partial class FormulaParser
{
    private static readonly Phrase UnfinishedFormula = new("unfinished-formula", "the formula stops too early");
    private static readonly Phrase UnfinishedFormulaRemedy = new("unfinished-formula.remedy", "finish it");
    private static readonly Phrase PutTimes = new("unknown-unit.name.remedy", "put '*' between the number and '{name}'");
    private static readonly Phrase ItIsAValue = new("unknown-function.value.remedy", "it is a value; to multiply, put '*' before the bracket");
    private static readonly Phrase ArgumentsNeverClosed = new("missing-bracket.arguments", "the arguments of '{function}' are never closed");
    private static readonly Phrase NeverClosed = new("missing-bracket.open", "a bracket is never closed");
    private static readonly Phrase UnexpectedText = new("unexpected-text", "'{text}' cannot stand here");
    private static readonly Phrase UnexpectedTextRemedy = new("unexpected-text.remedy", "a quantity, a name or a function is wanted");
    private static readonly Phrase MissingQuote = new("missing-quote", "a quoted word is never closed");
    private static readonly Phrase MissingQuoteRemedy = new("missing-quote.remedy", "add '\"'");
    private static readonly Phrase UnknownValue = new("unknown-value", "'{name}' is not defined here");
    private static readonly Phrase UnknownFunction = new("unknown-function", "there is no function '{name}'");
    private static readonly Phrase TooManyArguments = new("too-many-arguments", "'{function}' takes {length}");
    private static readonly Phrase TooManyArgumentsRemedy = new("too-many-arguments.remedy", "it is {signature}");
    private static readonly Phrase WrongParameter = new("wrong-dimension.parameter", "'{parameter}' of '{function}' must be {wanted}, and this is {type}");
    private static readonly Phrase TooFewArguments = new("too-few-arguments", "'{function}' needs {needed}");
    private static readonly Phrase Misfit = new("wrong-dimension.misfit", "'{function}' {misfit}");

    private FormulaNode? Atom()
    {
        var start = _scan.At;
        if (start == text.Length) return Fail("unfinished-formula", UnfinishedFormula, UnfinishedFormulaRemedy, Math.Max(0, _scan.LastEnd() - 1), 1);
        if (_scan.TrySymbol("(")) return Group(start);
        var first = text[start];
        if (char.IsAsciiDigit(first) || first == '.') return Number();
        if (first == '"') return Quoted();
        return char.IsLetter(first)
            ? Named()
            : Fail("unexpected-text", UnexpectedText.With(("text", QuantityText.Word(text, start))), UnexpectedTextRemedy, start, 1);
    }

    private FormulaNode? Group(int start)
    {
        if (!Enter(start)) return null;
        var inner = Either();
        _depth--;
        if (inner is null) return null;
        return _scan.TrySymbol(")") ? inner with { Offset = start, Length = _scan.LastEnd() - start } : Unclosed(NeverClosed, start, 1);
    }

    private LiteralNode? Number()
    {
        if (QuantityText.ReadLiteral(text, _scan.At, out var literal, out var end) is { } fault)
        {
            Fault ??= fault.Id == "unknown-unit" && text[fault.Offset - 1] != '/' && NameAt(fault.Offset) is { } name && scope.Names.ContainsKey(name)
                ? fault with { Remedy = PutTimes.With(("name", name)), Length = name.Length }
                : fault;
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
        if (close < 0) return Fail("missing-quote", MissingQuote, MissingQuoteRemedy, _scan.At, 1);
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
        if (scope.Names.TryGetValue(name, out var type)) return scope.NodeOf(name, type, start, name.Length);
        return Fail("unknown-value", UnknownValue.With(("name", Excerpt.Of(name))), UnknownRemedy(name), start, name.Length);
    }

    private FormulaNode? Call(string name, int start)
    {
        if (!scope.Functions.TryGetValue(name, out var function))
        {
            Message remedy = scope.Names.ContainsKey(name) ? ItIsAValue : Suggestion.For(name, [.. scope.Functions.Keys]);
            return Fail("unknown-function", UnknownFunction.With(("name", Excerpt.Of(name))), remedy, start, name.Length);
        }

        if (!Enter(start)) return null;
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
            if (!_scan.TrySymbol(")")) return Unclosed(ArgumentsNeverClosed.With(("function", name)), start, name.Length);
        }

        _depth--;
        return Typed(function, arguments.DrainToImmutable(), start);
    }

    private FormulaNode? Argument(FormulaFunction function, int index)
    {
        var parameter = index < function.Parameters.Length ? function.Parameters[index] : function.Repeats ? function.Parameters[^1] : null;
        if (parameter is null)
            return Fail(
                "too-many-arguments",
                TooManyArguments.With(("function", function.Name), ("length", Count(function.Parameters.Length))),
                TooManyArgumentsRemedy.With(("signature", function.Signature)),
                Math.Min(_scan.At, text.Length - 1),
                1);
        if (parameter.Type is { Kind: FormulaKind.Word } words) return WordOf(words, parameter.Name);
        var argument = Either();
        if (argument is null || parameter.Type is not { } wanted) return argument;
        return argument.Type.Kind == wanted.Kind && argument.Type.Dimension == wanted.Dimension
            ? argument
            : Fail(
                "wrong-dimension",
                WrongParameter.With(
                    ("parameter", parameter.Name),
                    ("function", function.Name),
                    ("wanted", wanted.ToString()),
                    ("type", argument.Type.ToString())),
                TooManyArgumentsRemedy.With(("signature", function.Signature)),
                argument);
    }

    private FormulaNode? Typed(FormulaFunction function, ImmutableArray<FormulaNode> arguments, int start)
    {
        var length = _scan.LastEnd() - start;
        var needed = function.Parameters.Count(p => !p.Optional);
        if (arguments.Length < needed)
            return Fail(
                "too-few-arguments",
                TooFewArguments.With(("function", function.Name), ("needed", Count(needed))),
                TooManyArgumentsRemedy.With(("signature", function.Signature)),
                start,
                length);
        var (type, misfit) = function.ResultType([.. arguments.Select(a => a.Type)]);
        return misfit is null
            ? new CallNode(function, arguments, type, start, length)
            : Fail(
                "wrong-dimension",
                Misfit.With(("function", function.Name), ("misfit", misfit)),
                TooManyArgumentsRemedy.With(("signature", function.Signature)),
                start,
                length);
    }

    private static string Count(int arguments) =>
        arguments switch { 0 => "no arguments", 1 => "one argument", _ => string.Create(CultureInfo.InvariantCulture, $"{arguments} arguments") };

    private string? NameAt(int at)
    {
        var scan = new FormulaScanner(text) { At = at };
        return scan.Name() is { Length: > 0 } name ? name : null;
    }
}
