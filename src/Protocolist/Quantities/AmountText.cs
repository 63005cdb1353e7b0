using System.Globalization;

namespace Protocolist.Quantities;

/// <summary>Volumes and masses as a stock book has them: <c>2.5 L</c>, <c>250 mL</c>, <c>6.5 g</c>, to four figures.</summary>
internal static class AmountText
{
    /// <summary>A volume of so many microlitres.</summary>
    public static string OfMicrolitres(long units) => Of(units, "L", "mL", "uL");

    /// <summary>A mass of so many milligrams.</summary>
    public static string OfMilligrams(long units) => Of(units, "kg", "g", "mg");

    /// <summary>A quantity in SI units; one that is neither a volume nor a mass as a person measures it out.</summary>
    public static string Of(double si, Dimension dimension) =>
        dimension == Dimension.OfVolume ? OfMicrolitres((long)Math.Round(si * 1e9, MidpointRounding.AwayFromZero))
        : dimension == Dimension.OfMass ? OfMilligrams((long)Math.Round(si * 1e6, MidpointRounding.AwayFromZero))
        : Measurable.Text(si, dimension);

    private static string Of(long units, string million, string thousand, string one)
    {
        var (scale, unit) = Math.Abs((decimal)units) switch
        {
            >= 1_000_000m => (1_000_000m, million),
            >= 100m or 0m => (1000m, thousand),
            _ => (1m, one),
        };
        var value = units / scale;
        var decimals = Math.Abs(value) switch { >= 1000 => 0, >= 100 => 1, >= 10 => 2, _ => 3 };
        return Math.Round(value, decimals).ToString("0.###", CultureInfo.InvariantCulture) + " " + unit;
    }
}
