using System.Globalization;

namespace Protocolist.Fluids.Names;

/// <summary>Strengths as a fluid's canonical name has them.</summary>
internal static class StrengthText
{
    /// <summary>A number to so many decimals, 3 at most, without trailing zeros.</summary>
    public static string Number(double value, int decimals) => Math.Round(value, decimals).ToString("0.###", CultureInfo.InvariantCulture);

    /// <summary>A strength with its basis, such as <c>70 %vol</c>.</summary>
    public static string Of(Fluid fluid)
    {
        var number = Number(fluid.Strength, 3);
        return fluid.Basis switch
        {
            StrengthBasis.Volume => $"{number} %vol",
            StrengthBasis.Mass => $"{number} %mass",
            StrengthBasis.WeightPerVolume => $"{number} % w/v",
            _ => $"{number} %",
        };
    }
}
