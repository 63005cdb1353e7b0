using System.Collections.Frozen;
using Protocolist.Findings;
using Protocolist.Quantities;

namespace Protocolist.Notation;

/// <summary>Units in text: a unit of the list, or one for each one of another.</summary>
internal static class UnitText
{
    private static readonly Phrase TemperatureInRatio = new("temperature-in-ratio", "a temperature cannot be part of a ratio");
    private static readonly Phrase TemperatureInRatioRemedy = new("temperature-in-ratio.remedy", "give the temperature on its own");
    private static readonly Phrase UnknownUnit = new("unknown-unit", "'{end}' is not a unit");
    private static readonly Phrase UnknownUnitRemedy = new("unknown-unit.remedy", "to divide by a value, put a space on each side of '/'");
    private static readonly Phrase AmbiguousUnit = new("ambiguous-unit", "the unit '{two}' is not clear");
    private static readonly Phrase NoUnit = new("unknown-unit.word", "'{word}' is not a unit");

    private static readonly Phrase WhichGallon = new("ambiguous-unit.gallon.remedy", "say 'US gal' (3.785 L) or 'imp gal' (4.546 L)");
    private static readonly Phrase WhichOunce = new("ambiguous-unit.ounce.remedy", "say 'US fl oz' (29.57 mL) or 'imp fl oz' (28.41 mL)");
    private static readonly Phrase Megalitre = new("ambiguous-unit.megalitre.remedy", "that is a million litres; a millilitre is 'mL'");
    private static readonly Phrase Degrees = new("ambiguous-unit.degrees.remedy", "say 'degC' or 'degF'");

    /// <summary>Spellings that are refused with an explanation, because they mean two things.</summary>
    internal static readonly FrozenDictionary<string, Phrase> Ambiguous = new Dictionary<string, Phrase>(StringComparer.Ordinal)
    {
        ["gal"] = WhichGallon,
        ["fl oz"] = WhichOunce,
        ["ML"] = Megalitre,
        ["M"] = new("ambiguous-unit.m.remedy", "say 'mol/L' for a molar strength, 'min' or 'mo' for a time, 'm' for a length"),
        ["Ml"] = Megalitre,
        ["C"] = new("ambiguous-unit.c.remedy", "say 'degC'"),
        ["F"] = new("ambiguous-unit.f.remedy", "say 'degF'"),
        ["deg"] = Degrees,
        ["gallon"] = WhichGallon,
        ["gallons"] = WhichGallon,
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>Reads a unit at a place. No unit at all is no fault: <paramref name="end"/> is 0 then.</summary>
    public static TextFault? Match(ReadOnlySpan<char> text, int at, out Unit unit, out int end)
    {
        end = 0;
        var length = UnitTable.Match(text, at, out unit);
        if (length == 0) return Unknown(text, at);
        end = at + length;
        if (end + 1 >= text.Length || text[end] != '/' || !IsUnitStart(text[end + 1])) return null;
        var perLength = UnitTable.Match(text, end + 1, out var per);
        if (perLength == 0 || RunsOnIntoName(text, end + 1 + perLength)) return UnknownPer(text, end + 1);
        if (unit.Offset != 0 || per.Offset != 0) return new("temperature-in-ratio", TemperatureInRatio, TemperatureInRatioRemedy, at, length);
        unit = unit.Per(per);
        end += 1 + perLength;
        return null;
    }

    /// <summary>Whether the unit just read is only the beginning of a kebab-case or dotted name: the m of m-ratio.</summary>
    private static bool RunsOnIntoName(ReadOnlySpan<char> text, int end) =>
        end + 1 < text.Length && text[end] is '-' or '.' && char.IsLetter(text[end + 1]);

    private static TextFault UnknownPer(ReadOnlySpan<char> text, int at)
    {
        var end = at + UnitWord(text, at).Length;
        while (RunsOnIntoName(text, end)) end += 1 + UnitWord(text, end + 1).Length;
        if (end == at + UnitWord(text, at).Length && Unknown(text, at) is { } fault && fault.Remedy != UnitsAre) return fault;
        return new("unknown-unit", UnknownUnit.With(("end", Excerpt.Of(text[at..end]))), UnknownUnitRemedy, at, end - at);
    }

    private static TextFault? Unknown(ReadOnlySpan<char> text, int at)
    {
        if (at >= text.Length || !IsUnitStart(text[at])) return null;
        var word = UnitWord(text, at);
        if (word is "to" or "and" or "or" or "is" or "not" or "per") return null;
        foreach (var two in Ambiguous.Keys)
        {
            if (text[at..].StartsWith(two, StringComparison.Ordinal) && word.Length <= two.Length)
            {
                return new("ambiguous-unit", AmbiguousUnit.With(("two", two)), Ambiguous[two], at, two.Length);
            }
        }

        return new("unknown-unit", NoUnit.With(("word", Excerpt.Of(word))), RemedyFor(word), at, word.Length);
    }

    private static readonly Phrase Write = new("unknown-unit.write", "write '{unit}'");
    private static readonly Phrase UnitsAre = new(
        "unknown-unit.units", "units are written as mL, L, mm, cm, m, g, kg, min, h, d, wk, degC, %vol, mL/kg, g/L and the like");

    /// <summary>What to write in place of a word that is no unit.</summary>
    private static Message RemedyFor(string word)
    {
        if (UnitTable.SymbolFor(word) is { } symbol) return Write.With(("unit", symbol));
        if (word.Length > 1 && UnitTable.TryFind(word[..^1], out _)) return Suggestion.Of(word[..^1]);
        return Suggestion.Nearest(word, UnitTable.All.Select(u => u.Symbol)) is { } near ? Suggestion.Of(near) : UnitsAre;
    }

    private static string UnitWord(ReadOnlySpan<char> text, int at)
    {
        var end = at + 1;
        while (end < text.Length && (char.IsLetterOrDigit(text[end]) || text[end] is '²' or '³')) end++;
        return text[at..end].ToString();
    }

    private static bool IsUnitStart(char c) => char.IsLetter(c) || c is '%' or '°';
}
