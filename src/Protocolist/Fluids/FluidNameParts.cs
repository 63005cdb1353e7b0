using System.Globalization;
using System.Text.RegularExpressions;

namespace Protocolist.Fluids;

/// <summary>A fluid's text taken apart: words, number, basis, and what follows a comma.</summary>
/// <param name="Words">The words without the strength.</param>
/// <param name="Percent">The strength in percent, or null where none is given.</param>
/// <param name="Basis">The basis that is written, or none.</param>
/// <param name="Extra">What stands after the first comma.</param>
internal readonly partial record struct FluidNameParts(string Words, double? Percent, StrengthBasis Basis, string Extra)
{
    // One strength: a number, %, and its basis in any of the usual spellings; or g/L. Bounded quantifiers keep it linear.
    private const string StrengthPattern =
        @"(?<![\w.])(?<number>[0-9]{1,9}(?:\.[0-9]{1,12})?)\s{0,4}(?:(?<gl>g/l\b)|(?:parts in 100|(?<pre>vol|wt)?\s?[%]\s{0,4}(?<basis>vol\b\.?|v/v of stock|v/v|abv\b|by volume|mass\b|m/m|w/w|by mass|by weight|wt\b|w/v|m/v|of stock)?))";

    private static readonly (string Written, StrengthBasis Basis)[] Bases =
    [
        ("vol", StrengthBasis.Volume), ("vol.", StrengthBasis.Volume), ("v/v", StrengthBasis.Volume), ("abv", StrengthBasis.Volume), ("by volume", StrengthBasis.Volume),
        ("mass", StrengthBasis.Mass), ("m/m", StrengthBasis.Mass), ("w/w", StrengthBasis.Mass), ("by mass", StrengthBasis.Mass), ("by weight", StrengthBasis.Mass), ("wt", StrengthBasis.Mass),
        ("w/v", StrengthBasis.WeightPerVolume), ("m/v", StrengthBasis.WeightPerVolume), ("of stock", StrengthBasis.PartsOfStock), ("v/v of stock", StrengthBasis.PartsOfStock),
    ];

    /// <summary>Takes a text apart; words and strength may come in either order.</summary>
    public static FluidNameParts Of(string text)
    {
        var comma = text.IndexOf(',', StringComparison.Ordinal);
        var extra = comma < 0 ? "" : text[(comma + 1)..].Trim();
        var main = comma < 0 ? text : text[..comma];
        var match = Strength().Match(main);
        if (!match.Success) return new(main.Trim(), null, StrengthBasis.None, extra);

        var words = string.Join(' ', (main[..match.Index] + " " + main[(match.Index + match.Length)..]).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        var number = double.Parse(match.Groups["number"].ValueSpan, CultureInfo.InvariantCulture);
        if (match.Groups["gl"].Success) return new(words, number / 10, StrengthBasis.WeightPerVolume, extra);
        return new(words, number, BasisOf(match), extra);
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

    private double? ExtraNumber(string word, out string unit)
    {
        unit = "";
        if (!Extra.StartsWith(word, StringComparison.OrdinalIgnoreCase)) return null;
        var rest = Extra.AsSpan(word.Length).Trim();
        var end = 0;
        while (end < rest.Length && (char.IsAsciiDigit(rest[end]) || rest[end] == '.')) end++;
        unit = rest[end..].Trim().ToString().ToLowerInvariant();
        return end is > 0 and < 20 && double.TryParse(rest[..end], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) ? number : null;
    }

    private static StrengthBasis BasisOf(Match match)
    {
        if (match.Value.Contains("parts", StringComparison.OrdinalIgnoreCase)) return StrengthBasis.PartsOfStock;
        var written = match.Groups["basis"].Value.ToLowerInvariant();
        if (written.Length == 0) written = match.Groups["pre"].Value.ToLowerInvariant();
        return Array.Find(Bases, b => b.Written == written).Basis;
    }

    [GeneratedRegex(StrengthPattern, RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Strength();
}
