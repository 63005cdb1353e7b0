using System.Globalization;

namespace Protocolist.Quantities;

/// <summary>Quantities as text that loses nothing.</summary>
internal static class ExactText
{
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
        for (var figures = 6; figures <= 17; figures++)
        {
            var text = value.ToString($"G{figures}", CultureInfo.InvariantCulture);
            if (unit.ToSi(double.Parse(text, CultureInfo.InvariantCulture)).Equals(si)) return Join(text, unit.Symbol);
        }

        return Join(si.ToString("R", CultureInfo.InvariantCulture), WrittenUnits.SiOf(unit.Dimension));
    }

    private static string Join(string number, string unit) => unit.Length == 0 ? number : $"{number} {unit}";
}
