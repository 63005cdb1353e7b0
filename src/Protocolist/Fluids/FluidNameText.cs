using System.Globalization;

namespace Protocolist.Fluids;

/// <summary>Writes fluids in their canonical form, which reads back to an equal fluid.</summary>
internal static class FluidNameText
{
    // "4 % formalin" is used for 4 parts of stock (1.6 % formaldehyde) and for 4 % formaldehyde (10 parts of stock); 3.7 % likewise.
    private const double AmbiguousFrom = 3.5;
    private const double AmbiguousTo = 4.2;

    /// <summary>The canonical name.</summary>
    public static string Of(Fluid fluid) => fluid.Kind switch
    {
        FluidKind.Water => "water",
        FluidKind.DistilledWater => "distilled water",
        FluidKind.TapWater => "tap water",
        FluidKind.SeaWater => $"sea water{SalinityOf(fluid)}",
        FluidKind.Ethanol => $"ethanol {Strength(fluid)}",
        FluidKind.Isopropanol => $"isopropanol {Strength(fluid)}",
        FluidKind.FormaldehydeStock => $"formaldehyde stock {Strength(fluid)}{MethanolOf(fluid)}",
        _ when fluid.Basis is StrengthBasis.PartsOfStock => $"{FluidWords.Prefix(fluid.Buffering)}formalin {Strength(fluid)}{SalinityOf(fluid)}",
        _ => $"{FluidWords.Prefix(fluid.Buffering)}formaldehyde {Strength(fluid)}{SalinityOf(fluid)}",
    };

    /// <summary>Whether a bare "formalin n %" could as well mean n % formaldehyde.</summary>
    public static bool IsAmbiguous(double percent) => percent is >= AmbiguousFrom and <= AmbiguousTo;

    /// <summary>A number to so many decimals, 3 at most, without trailing zeros.</summary>
    public static string Number(double value, int decimals) => Math.Round(value, decimals).ToString("0.###", CultureInfo.InvariantCulture);

    private static string Strength(Fluid fluid)
    {
        var number = Number(fluid.Strength, 3);
        return fluid.Basis switch
        {
            StrengthBasis.Volume => $"{number} %vol",
            StrengthBasis.Mass => $"{number} %mass",
            StrengthBasis.WeightPerVolume => $"{number} % w/v",
            _ when IsAmbiguous(fluid.Strength) => $"{number} % of stock",
            _ => $"{number} %",
        };
    }

    private static string SalinityOf(Fluid fluid) => fluid.Salinity > 0 && !fluid.Salinity.Equals(Fluids.SeaWater.OceanSalinity) ? $", salinity {Number(fluid.Salinity, 3)}" : "";

    private static string MethanolOf(Fluid fluid) => fluid.Detail switch
    {
        0 => ", methanol-free",
        100 * Formaldehyde.ReferenceMethanol => "",
        var percent => $", methanol {Number(percent, 3)} %mass",
    };
}
