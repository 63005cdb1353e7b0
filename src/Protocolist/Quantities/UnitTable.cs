using System.Collections.Frozen;

namespace Protocolist.Quantities;

/// <summary>
/// The closed list of units. Factors are those of the SI Brochure (9th edition) and, for the inch, pound, ounce and
/// gallons, of NIST Special Publication 811; a test holds each against UnitsNet.
/// </summary>
internal static class UnitTable
{
    private static readonly Dimension Volume = Dimension.OfVolume;
    private static readonly Dimension Length = Dimension.OfLength;
    private static readonly Dimension Mass = Dimension.OfMass;
    private static readonly Dimension Time = Dimension.OfTime;

    /// <summary>Every unit, each spelling once. The first spelling of a size is the one that is written.</summary>
    public static readonly Unit[] All =
    [
        new("µL", Volume, 1, 1e9),
        new("mL", Volume, 1, 1e6),
        new("cL", Volume, 1, 1e5),
        new("dL", Volume, 1, 1e4),
        new("L", Volume, 1, 1e3),
        new("mm3", Volume, 1, 1e9),
        new("cm3", Volume, 1, 1e6),
        new("m3", Volume, 1),
        new("US fl oz", Volume, 2.95735295625e-5),
        new("imp fl oz", Volume, 2.84130625e-5),
        new("US gal", Volume, 3.785411784e-3),
        new("imp gal", Volume, 4.54609e-3),
        new("mm", Length, 1, 1e3),
        new("cm", Length, 1, 1e2),
        new("m", Length, 1),
        new("µm", Length, 1, 1e6),
        new("in", Length, 254, 1e4),
        new("ft", Length, 3048, 1e4),
        new("mm2", Dimension.OfArea, 1, 1e6),
        new("cm2", Dimension.OfArea, 1, 1e4),
        new("m2", Dimension.OfArea, 1),
        new("µg", Mass, 1, 1e9),
        new("mg", Mass, 1, 1e6),
        new("g", Mass, 1, 1e3),
        new("kg", Mass, 1),
        new("t", Mass, 1e3),
        new("lb", Mass, 0.45359237),
        new("oz", Mass, 0.028349523125),
        new("s", Time, 1),
        new("min", Time, 60),
        new("h", Time, 3600),
        new("d", Time, 86400),
        new("wk", Time, 604800),

        // A span of months or years that bounds a stay is counted as 30 and 365 days; calendar dates are never reckoned with these.
        new("mo", Time, 30 * 86400),
        new("y", Time, 365 * 86400),

        // Nobody at a bench writes K; it is there so that every temperature can be written exactly.
        new("K", Dimension.OfTemperature, 1),
        new("degC", Dimension.OfTemperature, 1, 1, 273.15),
        new("°C", Dimension.OfTemperature, 1, 1, 273.15),
        new("degF", Dimension.OfTemperature, 5, 9, 459.67 * 5 / 9),
        new("°F", Dimension.OfTemperature, 5, 9, 459.67 * 5 / 9),
        new("%", Dimension.None, 1, 100),
        new("%vol", Dimension.OfShareByVolume, 1, 100),
        new("%mass", Dimension.OfShareByMass, 1, 100),

        // Grams in 100 mL.
        new("% w/v", Dimension.OfDensity, 10),
        new("mol", new(Amount: 1), 1),
        new("mmol", new(Amount: 1), 1, 1e3),
        new("Pa", new(Mass: 1, Length: -1, Time: -2), 1),
        new("kPa", new(Mass: 1, Length: -1, Time: -2), 1e3),
        new("MPa", new(Mass: 1, Length: -1, Time: -2), 1e6),
        new("N", new(Mass: 1, Length: 1, Time: -2), 1),
    ];

    /// <summary>Other spellings that people use for a unit of the list.</summary>
    private static readonly (string Alias, string Symbol)[] Aliases =
    [
        ("uL", "µL"), ("μL", "µL"), ("ml", "mL"), ("l", "L"), ("cc", "cm3"), ("mm³", "mm3"), ("cm³", "cm3"), ("m³", "m3"),
        ("mm²", "mm2"), ("cm²", "cm2"), ("m²", "m2"), ("um", "µm"), ("μm", "µm"), ("ug", "µg"), ("μg", "µg"),
        ("ºC", "degC"), ("hr", "h"), ("wks", "wk"), ("yr", "y"), ("% vol", "%vol"), ("% mass", "%mass"), ("%w/v", "% w/v"),
        ("% v/v", "%vol"), ("%v/v", "%vol"), ("% m/m", "%mass"), ("%m/m", "%mass"), ("% w/w", "%mass"), ("%w/w", "%mass"),
    ];

    /// <summary>Words in full, which are not read: the list of symbols is closed. The remedy names the symbol.</summary>
    private static readonly FrozenDictionary<string, string> InFull = FrozenDictionary.ToFrozenDictionary<(string Word, string Symbol), string, string>(
        [
            ("millilitre", "mL"), ("milliliter", "mL"), ("litre", "L"), ("liter", "L"), ("inch", "in"), ("inche", "in"), ("foot", "ft"),
            ("feet", "ft"), ("millimetre", "mm"), ("millimeter", "mm"), ("centimetre", "cm"), ("centimeter", "cm"), ("metre", "m"),
            ("meter", "m"), ("gram", "g"), ("gramme", "g"), ("gr", "g"), ("kilo", "kg"), ("kilogram", "kg"), ("tonne", "t"), ("pound", "lb"),
            ("ounce", "oz"), ("sec", "s"), ("second", "s"), ("minute", "min"), ("hour", "h"), ("day", "d"), ("week", "wk"), ("month", "mo"),
            ("year", "y"), ("celsius", "degC"), ("fahrenheit", "degF"), ("percent", "%"), ("min", "min"), ("hr", "h"), ("kg", "kg"),
            ("lb", "lb"),
        ],
        w => w.Word,
        w => w.Symbol,
        StringComparer.OrdinalIgnoreCase);

    private static readonly FrozenDictionary<string, Unit> BySymbol = All
        .Select(u => KeyValuePair.Create(u.Symbol, u))
        .Concat(Aliases.Select(a => KeyValuePair.Create(a.Alias, Array.Find(All, u => u.Symbol == a.Symbol))))
        .ToFrozenDictionary(StringComparer.Ordinal);

    private static readonly int LongestSymbol = BySymbol.Keys.Max(k => k.Length);

    /// <summary>All spellings that are read.</summary>
    public static IReadOnlyCollection<string> Spellings => BySymbol.Keys;

    /// <summary>The unit of that exact spelling.</summary>
    public static bool TryFind(string symbol, out Unit unit) => BySymbol.TryGetValue(symbol, out unit);

    /// <summary>A unit of the list that is known to be there.</summary>
    public static Unit Get(string symbol) => BySymbol[symbol];

    /// <summary>The unit that a word in full, such as "grams", stands for; null where it is none.</summary>
    public static string? SymbolFor(string word) =>
        InFull.TryGetValue(word, out var symbol) || InFull.TryGetValue(word.TrimEnd('s'), out symbol) ? symbol : null;

    /// <summary>The longest unit that starts at <paramref name="at"/> and does not run on into a longer word; its length, or 0.</summary>
    public static int Match(ReadOnlySpan<char> text, int at, out Unit unit)
    {
        var lookup = BySymbol.GetAlternateLookup<ReadOnlySpan<char>>();
        for (var length = Math.Min(LongestSymbol, text.Length - at); length > 0; length--)
        {
            if (EndsInsideWord(text, at + length)) continue;
            if (lookup.TryGetValue(text.Slice(at, length), out unit)) return length;
        }

        unit = default;
        return 0;
    }

    /// <summary>Whether a name would be cut in two at <paramref name="end"/>.</summary>
    private static bool EndsInsideWord(ReadOnlySpan<char> text, int end) =>
        end < text.Length && IsWordPart(text[end]) && IsWordPart(text[end - 1]);

    private static bool IsWordPart(char c) => char.IsLetterOrDigit(c) || c is '_' or '²' or '³';
}
