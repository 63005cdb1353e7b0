using Protocolist.Notation;

namespace Protocolist.Formulas;

/// <summary>The place in a formula's text. Every Try… moves past what it takes and past the space behind it.</summary>
internal sealed class FormulaScanner(string text)
{
    public int At { get; set; }

    public char Peek() => At < text.Length ? text[At] : '\0';

    public void Skip() => At = QuantityText.SkipSpace(text, At);

    /// <summary>The place after the last thing taken, without the space behind it.</summary>
    public int LastEnd()
    {
        var end = At;
        while (end > 0 && QuantityText.SkipSpace(text, end - 1) >= end) end--;
        return end;
    }

    public bool TrySymbol(string symbol)
    {
        if (!text.AsSpan(At).StartsWith(symbol)) return false;
        At += symbol.Length;
        Skip();
        return true;
    }

    public bool TryWord(string word)
    {
        var end = At + word.Length;
        if (!text.AsSpan(At).StartsWith(word) || (end < text.Length && IsNamePart(end))) return false;
        At = end;
        Skip();
        return true;
    }

    public bool TryWords(string first, string second)
    {
        var start = At;
        if (TryWord(first) && TryWord(second)) return true;
        At = start;
        return false;
    }

    public string Name()
    {
        var start = At;
        while (At < text.Length && IsNamePart(At)) At++;
        var name = text[start..At];
        Skip();
        return name;
    }

    /// <summary>Letters, digits and dots; a minus only between two of them, so that "a - b" subtracts and "a-b" is one name.</summary>
    private bool IsNamePart(int at) =>
        char.IsLetterOrDigit(text[at]) || text[at] == '.'
        || (text[at] == '-' && at > 0 && char.IsLetterOrDigit(text[at - 1]) && at + 1 < text.Length && char.IsLetterOrDigit(text[at + 1]));
}
