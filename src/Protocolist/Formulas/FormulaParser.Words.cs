using Protocolist.Findings;

namespace Protocolist.Formulas;

/// <summary>Words: the right side of <c>is</c>, and arguments that are one of a list.</summary>
internal sealed partial class FormulaParser
{
    private static readonly Phrase NotAWord = new("not-a-word", "'is' compares words, and this is {type}");
    private static readonly Phrase NotAWordRemedy = new("not-a-word.remedy", "compare quantities with <, >, <=, >= or =");
    private static readonly Phrase WriteAWord = new("missing-word.remedy", "write a word; one with spaces stands in double quotes");
    private static readonly Phrase MissingWord = new("missing-word", "a word for {what} is wanted here");
    private static readonly Phrase UnknownWord = new("unknown-word", "'{word}' is not one of the words for {what}");

    /// <summary>The right side of <c>is</c>: one of the words the left side can be.</summary>
    private FormulaNode? WordTest(FormulaNode left, Operation operation)
    {
        if (left.Type.Kind != FormulaKind.Word)
            return Fail("not-a-word", NotAWord.With(("type", left.Type.ToString())), NotAWordRemedy, left);
        return WordOf(left.Type, text.Substring(left.Offset, left.Length)) is { } right ? Pair(operation, left, right, FormulaType.Truth) : null;
    }

    private FormulaNode? WordOf(FormulaType type, string what)
    {
        var start = _scan.At;
        if (_scan.Peek() == '"')
            return Quoted() is WordNode quoted ? Known(quoted.Word, type, what, start, quoted.Length) : null;

        var word = char.IsLetter(_scan.Peek()) ? _scan.Name() : "";
        if (word.Length == 0)
        {
            Message remedy = type.Words.IsEmpty ? WriteAWord : Suggestion.For("", type.Words);
            return Fail("missing-word", MissingWord.With(("what", what)), remedy, Math.Min(start, text.Length - 1), 1);
        }

        // A name of a word-valued thing may stand where a word may, when no word of that spelling exists.
        if (!type.Words.Contains(word) && scope.Names.TryGetValue(word, out var named) && named.Kind == FormulaKind.Word)
            return scope.NodeOf(word, named, start, word.Length);
        return Known(word, type, what, start, word.Length);
    }

    private FormulaNode? Known(string word, FormulaType type, string what, int start, int length) =>
        type.Words.IsEmpty || type.Words.Contains(word)
            ? new WordNode(word, type, start, length)
            : Fail("unknown-word", UnknownWord.With(("word", Excerpt.Of(word)), ("what", what)), Suggestion.For(word, type.Words), start, length);
}
