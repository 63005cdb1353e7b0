using System.Globalization;
using Protocolist.Quantities;

namespace Protocolist.Fluids.Mixing;

/// <summary>Amounts as a person measures them, for messages.</summary>
internal static class MixText
{
    public static string Volume(UnitsNet.Volume volume) => Measurable.Text(volume.CubicMeters, Dimension.OfVolume);

    public static string Number(double value, int decimals) => Math.Round(value, decimals).ToString("0.###", CultureInfo.InvariantCulture);
}
