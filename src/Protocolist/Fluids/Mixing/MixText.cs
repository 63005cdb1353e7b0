using System.Globalization;

namespace Protocolist.Fluids.Mixing;

/// <summary>Amounts as a person measures them when mixing: a cylinder's millilitre, a balance's hundredth of a gram.</summary>
internal static class MixText
{
    // Below so many litres or grams, in this unit, to so many decimals; finer than a strength needs, coarser than a cylinder or balance reads.
    private static readonly (double Below, double Factor, int Decimals, string Unit)[] Volumes =
        [(0.00995, 1000, 2, "mL"), (0.0995, 1000, 1, "mL"), (0.9995, 1000, 0, "mL"), (9.995, 1, 2, "L"), (double.PositiveInfinity, 1, 1, "L")];

    private static readonly (double Below, double Factor, int Decimals, string Unit)[] Masses =
        [(0.9995, 1, 3, "g"), (99.995, 1, 2, "g"), (999.5, 1, 0, "g"), (9995, 0.001, 2, "kg"), (double.PositiveInfinity, 0.001, 1, "kg")];

    public static string Volume(UnitsNet.Volume volume) => Text(volume.Liters, Volumes);

    public static string Mass(UnitsNet.Mass mass) => Text(mass.Grams, Masses);

    public static string Number(double value, int decimals) => Math.Round(value, decimals).ToString("0.###", CultureInfo.InvariantCulture);

    private static string Text(double value, (double Below, double Factor, int Decimals, string Unit)[] steps)
    {
        var step = Array.Find(steps, s => Math.Abs(value) < s.Below);
        return $"{Number(value * step.Factor, step.Decimals)} {step.Unit}";
    }
}
