namespace Protocolist.Fluids.Safety;

/// <summary>Closed-cup flash points, °C.</summary>
/// <remarks>
/// Ethanol: a table in wide use, printed in one place against mass percent and in another against %vol; read here against %vol, which gives the
/// lower and safer value, good to 3 K. Isopropanol: 12 pure (NIOSH Pocket Guide 0359), 14 at 91 % and 18 at 70 %vol (safety data sheets); below
/// 70 % from memory, good to 5 K. Formaldehyde stock: 85 without methanol, 56 with 10 to 15 %, 50 with 15 % (safety data sheets).
/// </remarks>
internal static class FlashPoint
{
    private static readonly MonotoneCurve Ethanol = new(
        [5, 10, 20, 30, 40, 50, 60, 70, 80, 90, 96, 100],
        [62, 49, 36, 29, 26, 24, 22, 21, 20, 17, 17, 13]);

    private static readonly MonotoneCurve Isopropanol = new([10, 20, 30, 50, 70, 91, 100], [44, 34, 28, 21, 18, 14, 12]);

    private static readonly MonotoneCurve Stock = new([0, 12, 15], [85, 56, 50]);

    // Weaker than this, no flash below the boiling point is reported.
    private const double WeakestFlammable = 5;

    /// <summary>Flash point in °C, or null where the fluid does not flash in practice.</summary>
    public static double? Of(Fluid fluid) => fluid.Kind switch
    {
        FluidKind.Ethanol when fluid.AlcoholVolumePercent >= WeakestFlammable => Ethanol.At(fluid.AlcoholVolumePercent),
        FluidKind.Isopropanol when fluid.AlcoholVolumePercent >= WeakestFlammable => Isopropanol.At(fluid.AlcoholVolumePercent),
        FluidKind.FormaldehydeStock => Stock.At(fluid.MethanolMassPercent),
        _ => null,
    };

    /// <summary>Half the width of the band, K.</summary>
    public static double Doubt(Fluid fluid) => fluid.Kind is FluidKind.Ethanol ? 3 : 5;
}
