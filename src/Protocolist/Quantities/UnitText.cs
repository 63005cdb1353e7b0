using Protocolist.Findings;

namespace Protocolist.Quantities;

/// <summary>Units in text: a unit of the list, or one for each one of another.</summary>
internal static class UnitText
{
    private static readonly Unit Bare = new("", Dimension.None, 1);

    /// <summary>The units that are written, for each dimension from small to large with the least SI size that calls for it.</summary>
    private static readonly Dictionary<Dimension, (double From, Unit Unit)[]> Written = new()
    {
        [Dimension.None] = [(0, Bare)],
        [Dimension.OfVolume] = [(0, UnitTable.Get("mL")), (1e-3, UnitTable.Get("L"))],
        [Dimension.OfLength] = [(0, UnitTable.Get("mm")), (0.1, UnitTable.Get("cm")), (3, UnitTable.Get("m"))],
        [Dimension.OfArea] = [(0, UnitTable.Get("mm2")), (1e-3, UnitTable.Get("cm2")), (1, UnitTable.Get("m2"))],
        [Dimension.OfMass] = [(0, UnitTable.Get("g")), (1, UnitTable.Get("kg"))],
        [Dimension.OfTime] = [(0, UnitTable.Get("s")), (60, UnitTable.Get("min")), (3600, UnitTable.Get("h")), (259200, UnitTable.Get("d"))],
        [Dimension.OfTemperature] = [(0, UnitTable.Get("degC"))],
        [Dimension.OfShareByVolume] = [(0, UnitTable.Get("%vol"))],
        [Dimension.OfShareByMass] = [(0, UnitTable.Get("%mass"))],
        [Dimension.OfDensity] = [(0, UnitTable.Get("g").Per(UnitTable.Get("L"))), (300, UnitTable.Get("kg").Per(UnitTable.Get("m3")))],
        [Dimension.OfSpecificVolume] = [(0, UnitTable.Get("mL").Per(UnitTable.Get("kg")))],
        [new(Amount: 1)] = [(0, UnitTable.Get("mol"))],
        [new(Amount: 1, Length: -3)] = [(0, UnitTable.Get("mol").Per(UnitTable.Get("L")))],
        [new(Mass: 1, Length: -1, Time: -2)] = [(0, UnitTable.Get("Pa")), (1e3, UnitTable.Get("kPa")), (1e6, UnitTable.Get("MPa"))],
        [new(Mass: 1, Length: 1, Time: -2)] = [(0, UnitTable.Get("N"))],
    };

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
        if (unit.Offset != 0 || per.Offset != 0) return new("temperature-in-ratio", "a temperature cannot be part of a ratio", "give the temperature on its own", at, length);
        unit = unit.Per(per);
        end += 1 + perLength;
        return null;
    }

    /// <summary>The unit in which a size of that dimension is written; made of SI base units where none is usual.</summary>
    public static Unit Fitting(double si, Dimension dimension)
    {
        if (!Written.TryGetValue(dimension, out var units)) return new(SiOf(dimension), dimension, 1);
        var fitting = units[0].Unit;
        foreach (var (from, unit) in units)
        {
            // A bound is met a hair early, so that 1 L that was computed as 0.9999999 L is still written in litres.
            if (si >= from * (1 - 1e-9)) fitting = unit;
        }

        return fitting;
    }

    /// <summary>
    /// A unit whose factor is exactly 1, in which any size reads back exactly; where the list holds no such unit and no such ratio
    /// of two, a description that is only for reading.
    /// </summary>
    public static string SiOf(Dimension dimension)
    {
        if (dimension == Dimension.None) return "";
        if (dimension == Dimension.OfDensity) return "kg/m3";
        if (dimension == Dimension.OfSpecificVolume) return "m3/kg";
        if (dimension == new Dimension(Amount: 1, Length: -3)) return "mol/m3";
        var exact = Array.Find(UnitTable.All, u => u.Dimension == dimension && IsSi(u));
        if (exact.Symbol is not null) return exact.Symbol;
        var ratio = UnitTable.All
            .SelectMany(u => UnitTable.All.Where(per => u.Dimension / per.Dimension == dimension && u.Offset == 0 && per.Offset == 0).Select(u.Per))
            .FirstOrDefault(IsSi);
        return ratio.Symbol ?? dimension.Symbols;
    }

    private static bool IsSi(Unit unit) => unit is { Numerator: 1, Denominator: 1, Offset: 0 };

    /// <summary>Whether the unit just read is only the beginning of a kebab-case or dotted name: the m of m-ratio.</summary>
    private static bool RunsOnIntoName(ReadOnlySpan<char> text, int end) =>
        end + 1 < text.Length && text[end] is '-' or '.' && char.IsLetter(text[end + 1]);

    private static TextFault UnknownPer(ReadOnlySpan<char> text, int at)
    {
        var end = at + UnitWord(text, at).Length;
        while (RunsOnIntoName(text, end)) end += 1 + UnitWord(text, end + 1).Length;
        if (end == at + UnitWord(text, at).Length && Unknown(text, at) is { } fault && !fault.Remedy.StartsWith("units are", StringComparison.Ordinal)) return fault;
        return new("unknown-unit", $"'{Excerpt.Of(text[at..end])}' is not a unit", "to divide by a value, put a space on each side of '/'", at, end - at);
    }

    private static TextFault? Unknown(ReadOnlySpan<char> text, int at)
    {
        if (at >= text.Length || !IsUnitStart(text[at])) return null;
        var word = UnitWord(text, at);
        if (word is "to" or "and" or "or" or "is" or "not" or "per") return null;
        foreach (var two in UnitTable.Ambiguous.Keys)
        {
            if (text[at..].StartsWith(two, StringComparison.Ordinal) && word.Length <= two.Length)
            {
                return new("ambiguous-unit", $"the unit '{two}' is not clear", UnitTable.Ambiguous[two], at, two.Length);
            }
        }

        return new("unknown-unit", $"'{Excerpt.Of(word)}' is not a unit", UnitTable.RemedyFor(word), at, word.Length);
    }

    private static string UnitWord(ReadOnlySpan<char> text, int at)
    {
        var end = at + 1;
        while (end < text.Length && (char.IsLetterOrDigit(text[end]) || text[end] is '²' or '³')) end++;
        return text[at..end].ToString();
    }

    private static bool IsUnitStart(char c) => char.IsLetter(c) || c is '%' or '°';
}
