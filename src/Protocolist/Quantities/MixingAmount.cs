using System.Globalization;

namespace Protocolist.Quantities;

/// <summary>Volumes and masses as a person measures them when mixing: a cylinder's millilitre, a balance's hundredth of a gram.</summary>
internal static class MixingAmount
{
    // Below so many litres or kilograms, in this unit, to so many decimals; finer than a strength needs, coarser than a cylinder or balance reads.
    private static readonly (double Below, double Factor, int Decimals, string Unit)[] Litres =
        [(0.00995, 1000, 2, "mL"), (0.0995, 1000, 1, "mL"), (0.9995, 1000, 0, "mL"), (9.995, 1, 2, "L"), (double.PositiveInfinity, 1, 1, "L")];

    private static readonly (double Below, double Factor, int Decimals, string Unit)[] Grams =
        [(0.9995, 1, 3, "g"), (99.995, 1, 2, "g"), (999.5, 1, 0, "g"), (9995, 0.001, 2, "kg"), (double.PositiveInfinity, 0.001, 1, "kg")];

    /// <summary>A volume in m³ or a mass in kg; null for what is neither.</summary>
    public static string? Text(double si, Dimension dimension) =>
        dimension == Dimension.OfVolume ? Text(1000 * si, Litres) : dimension == Dimension.OfMass ? Text(1000 * si, Grams) : null;

    private static string Text(double value, (double Below, double Factor, int Decimals, string Unit)[] steps)
    {
        var step = Array.Find(steps, s => Math.Abs(value) < s.Below);
        return string.Create(CultureInfo.InvariantCulture, $"{Math.Round(value * step.Factor, step.Decimals):0.###} {step.Unit}");
    }
}
