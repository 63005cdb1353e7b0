using System.Globalization;
using Protocolist.Findings;

namespace Protocolist.Fluids.Names;

/// <summary>A fluid's text taken apart: words, number, basis, and what follows a comma.</summary>
/// <remarks>
/// One strength: a number, a percent sign and its basis in any of the usual spellings, or g/L, or "parts in 100"; words and strength may come in either order.
/// Read by hand and not by a pattern, because the names of fluids are read wherever one is spoken of.
/// </remarks>
internal readonly struct WrittenFluid
{
    /// <summary>More characters than this no fluid's name has.</summary>
    public const int LongestText = 120;

    // In the order of trial: what begins alike stands longest first.
    private static readonly (string Written, StrengthBasis Basis, bool EndsWord)[] Bases =
    [
        ("vol", StrengthBasis.Volume, true), ("v/v of stock", StrengthBasis.PartsOfStock, false), ("v/v", StrengthBasis.Volume, false),
        ("abv", StrengthBasis.Volume, true), ("by volume", StrengthBasis.Volume, false), ("mass", StrengthBasis.Mass, true), ("m/m", StrengthBasis.Mass, false),
        ("w/w", StrengthBasis.Mass, false), ("by mass", StrengthBasis.Mass, false), ("by weight", StrengthBasis.Mass, false), ("wt", StrengthBasis.Mass, true),
        ("w/v", StrengthBasis.WeightPerVolume, false), ("m/v", StrengthBasis.WeightPerVolume, false), ("of stock", StrengthBasis.PartsOfStock, false),
    ];

    private readonly int _strengthAt;
    private readonly int _strengthEnd;
    private readonly int _comma;

    /// <summary>Takes a text apart.</summary>
    public WrittenFluid(string text, SourceSpan where)
    {
        (Text, Where) = (text, where);
        _comma = text.IndexOf(',', StringComparison.Ordinal);
        var main = text.AsSpan(0, _comma < 0 ? text.Length : _comma);
        for (var at = 0; at < main.Length; at++)
        {
            if (!char.IsAsciiDigit(main[at]) || (at > 0 && (IsWord(main[at - 1]) || main[at - 1] == '.'))) continue;
            var digits = NumberLength(main[at..]);
            if (digits == 0 || UnitLength(main[(at + digits)..], out var basis, out var scale) is not (> 0 and var unit)) continue;
            Percent = double.Parse(main.Slice(at, digits), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture) * scale;
            (Basis, _strengthAt, _strengthEnd) = (basis, at, at + digits + unit);
            return;
        }

        _strengthAt = _strengthEnd = main.Length;
    }

    /// <summary>The whole text.</summary>
    public string Text { get; }

    /// <summary>Where it stands.</summary>
    public SourceSpan Where { get; }

    /// <summary>The strength in percent, or null where none is given.</summary>
    public double? Percent { get; }

    /// <summary>The basis that is written, or none.</summary>
    public StrengthBasis Basis { get; }

    /// <summary>What stands after the first comma.</summary>
    public string Extra => _comma < 0 ? "" : Text[(_comma + 1)..].Trim();

    /// <summary>The words without the strength.</summary>
    public string Words
    {
        get
        {
            if (Percent is null) return Text[.._strengthEnd].Trim();
            var main = _comma < 0 ? Text : Text[.._comma];
            return string.Join(' ', (main[.._strengthAt] + " " + main[_strengthEnd..]).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        }
    }

    /// <summary>Percent by mass of an extra such as <c>methanol 10 %mass</c> or <c>methanol 100 g/kg</c>, or null.</summary>
    public double? Methanol => ExtraNumber("methanol", out var unit) is not { } number ? null : unit switch
    {
        "" or "%mass" or "% mass" or "%" or "% w/w" or "% m/m" => number,
        "g/kg" => number / 10,
        _ => null,
    };

    /// <summary>Practical salinity of an extra such as <c>salinity 32</c>, or null.</summary>
    public double? Salinity => ExtraNumber("salinity", out var unit) is { } number && unit is "" or "g/kg" or "psu" ? number : null;

    /// <summary>A name as the catalogue has it: lower case, one space for each run of spaces and hyphens.</summary>
    public static string Plain(string name)
    {
        Span<char> plain = stackalloc char[name.Length];
        return plain[..Plain(name, plain)].ToString();
    }

    /// <summary>The words in that form; the length of what was written.</summary>
    public int PlainWords(Span<char> plain)
    {
        var end = _comma < 0 ? Text.Length : _comma;
        var length = Plain(Text.AsSpan(0, _strengthAt), plain);

        // A hyphen parts words, but one that stands like a sign before the strength belongs to no name: no strength is below nothing.
        if (_strengthAt > 0 && Text[_strengthAt - 1] == '-' && (_strengthAt == 1 || Text[_strengthAt - 2] == '-' || char.IsWhiteSpace(Text[_strengthAt - 2])))
            plain[length++] = '-';
        if (_strengthEnd >= end) return length;
        if (length > 0) plain[length++] = ' ';
        var more = Plain(Text.AsSpan(_strengthEnd, end - _strengthEnd), plain[length..]);
        return more > 0 ? length + more : Math.Max(0, length - 1);
    }

    private static int Plain(ReadOnlySpan<char> name, Span<char> plain)
    {
        var length = 0;
        foreach (var c in name)
        {
            if (c != '-' && !char.IsWhiteSpace(c)) plain[length++] = char.ToLowerInvariant(c);
            else if (length > 0 && plain[length - 1] != ' ') plain[length++] = ' ';
        }

        return length > 0 && plain[length - 1] == ' ' ? length - 1 : length;
    }

    /// <summary>Up to nine digits, with up to twelve behind a point; 0 where there are more.</summary>
    private static int NumberLength(ReadOnlySpan<char> text)
    {
        var whole = Digits(text);
        if (whole > 9) return 0;
        if (whole + 1 >= text.Length || text[whole] != '.') return whole;
        var decimals = Digits(text[(whole + 1)..]);
        return decimals is > 0 and <= 12 ? whole + 1 + decimals : whole;
    }

    /// <summary>The length of a unit with the spaces before it, the basis that it says, and what makes the number percent; 0 where there is none.</summary>
    private static int UnitLength(ReadOnlySpan<char> text, out StrengthBasis basis, out double scale)
    {
        (basis, scale) = (StrengthBasis.None, 1);
        var at = Spaces(text, 4);
        if (Starts(text, at, "g/l") && EndsWord(text, at + 3))
        {
            (basis, scale) = (StrengthBasis.WeightPerVolume, 0.1);
            return at + 3;
        }

        if (Starts(text, at, "parts in 100"))
        {
            basis = StrengthBasis.PartsOfStock;
            return at + 12;
        }

        var before = Starts(text, at, "vol") ? StrengthBasis.Volume : Starts(text, at, "wt") ? StrengthBasis.Mass : StrengthBasis.None;
        at += before switch { StrengthBasis.Volume => 3, StrengthBasis.Mass => 2, _ => 0 };
        if (at < text.Length && char.IsWhiteSpace(text[at])) at++;
        if (at >= text.Length || text[at] != '%') return 0;
        at++;
        at += Spaces(text[at..], 4);
        foreach (var (written, says, endsWord) in Bases)
        {
            if (!Starts(text, at, written) || (endsWord && !EndsWord(text, at + written.Length))) continue;
            basis = says;
            at += written.Length;
            return written == "vol" && at < text.Length && text[at] == '.' ? at + 1 : at;
        }

        basis = before;
        return at;
    }

    private static int Digits(ReadOnlySpan<char> text)
    {
        var length = 0;
        while (length < text.Length && char.IsAsciiDigit(text[length])) length++;
        return length;
    }

    private static int Spaces(ReadOnlySpan<char> text, int most)
    {
        var length = 0;
        while (length < most && length < text.Length && char.IsWhiteSpace(text[length])) length++;
        return length;
    }

    private static bool Starts(ReadOnlySpan<char> text, int at, string with) => text[at..].StartsWith(with, StringComparison.OrdinalIgnoreCase);

    private static bool EndsWord(ReadOnlySpan<char> text, int at) => at >= text.Length || !IsWord(text[at]);

    private static bool IsWord(char c) => char.IsLetterOrDigit(c) || c == '_';

    private double? ExtraNumber(string word, out string unit)
    {
        unit = "";
        var extra = Extra;
        if (!extra.StartsWith(word, StringComparison.OrdinalIgnoreCase)) return null;
        var rest = extra.AsSpan(word.Length).Trim();
        var end = 0;
        while (end < rest.Length && (char.IsAsciiDigit(rest[end]) || rest[end] == '.')) end++;
        unit = rest[end..].Trim().ToString().ToLowerInvariant();
        return end is > 0 and < 20 && double.TryParse(rest[..end], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)
            ? number
            : null;
    }
}
