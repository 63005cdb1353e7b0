using System.Globalization;

namespace Protocolist.Quantities;

/// <summary>Quantities as text that loses nothing.</summary>
internal static class ExactText
{
    /// <summary>Fewer figures than anybody types, all that a double may need, and those that it holds whatever its last bits.</summary>
    private const int Fewest = 6, Most = 17, Sure = 15;

    private static readonly string[] Formats = [.. Enumerable.Range(Fewest, Most - Fewest + 1).Select(f => $"G{f}")];

    /// <summary>Text that reads back as exactly the same range, in a unit that fits its size.</summary>
    /// <remarks>
    /// Holds for every dimension that a unit of the list or a ratio of two can give. A range without a finite end is
    /// <c>anything</c>, one with an upper end alone is written as <c>at most</c>; only a range that reaches below zero without limit is lost so.
    /// </remarks>
    public static string Of(QuantityRange range)
    {
        if (double.IsPositiveInfinity(range.High) && double.IsFinite(range.Low)) return $"at least {ExactPoint(range.Low, range.Dimension)}";
        if (range.Low == 0 && double.IsFinite(range.High) && !range.IsPoint) return $"at most {ExactPoint(range.High, range.Dimension)}";
        if (!range.IsFinite) return double.IsFinite(range.High) ? $"at most {ExactPoint(range.High, range.Dimension)}" : "anything";
        if (range.IsPoint) return ExactPoint(range.Low, range.Dimension);
        var unit = WrittenUnits.Fitting(Math.Max(Math.Abs(range.Low), Math.Abs(range.High)), range.Dimension);
        var (low, high) = (ExactIn(range.Low, unit), ExactIn(range.High, unit));
        var shared = unit.Symbol.Length == 0 ? "" : $" {unit.Symbol}";
        return low.EndsWith(shared, StringComparison.Ordinal) && high.EndsWith(shared, StringComparison.Ordinal)
            ? $"{low[..^shared.Length]} to {high}"
            : $"{low} to {high}";
    }

    private static string ExactPoint(double si, Dimension dimension) => ExactIn(si, WrittenUnits.Fitting(Math.Abs(si), dimension));

    /// <summary>The fewest figures in that unit which read back as the same double; the SI unit where none do.</summary>
    private static string ExactIn(double si, Unit unit)
    {
        var value = unit.FromSi(si);
        Span<char> text = stackalloc char[32];
        Span<char> whole = stackalloc char[32];
        value.TryFormat(whole, out _, "E16", CultureInfo.InvariantCulture);

        // Neither near the least that a double holds nor where a difference is taken are the last bits few beside the rest.
        var isSure = unit.Offset == 0 && Math.Abs(si) > 1e-280;
        var decimals = whole[(whole.IndexOf('.') + 1)..];
        for (var figures = Fewest; figures <= Most; figures++)
        {
            if (isSure && figures < Sure && IsFarOff(decimals[(figures - 1)..(Sure - 1)])) continue;
            value.TryFormat(text, out var length, Formats[figures - Fewest], CultureInfo.InvariantCulture);
            if (unit.ToSi(double.Parse(text[..length], CultureInfo.InvariantCulture)).Equals(si)) return Join(text[..length].ToString(), unit.Symbol);
        }

        return Join(si.ToString("R", CultureInfo.InvariantCulture), WrittenUnits.SiOf(unit.Dimension));
    }

    /// <summary>
    /// Whether a number that is rounded before these figures is another one, whatever its last bits: they are neither noughts nor nines alone.
    /// </summary>
    private static bool IsFarOff(ReadOnlySpan<char> figures) => figures.ContainsAnyExcept('0') && figures.ContainsAnyExcept('9');

    private static string Join(string number, string unit) => unit.Length == 0 ? number : $"{number} {unit}";
}
