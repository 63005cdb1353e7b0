using UnitsNet;

namespace Protocolist.Checks;

/// <summary>What hazardous fluid stands about once all is bought.</summary>
/// <param name="Flammable">Liquids of GHS category 2 and 3, on the shelf and bought.</param>
/// <param name="FormaldehydeStock">Formaldehyde stock, on the shelf and bought.</param>
/// <param name="Formaldehyde">The formaldehyde in it, and in formalin on the shelf.</param>
internal sealed record StoredTotals(Volume Flammable, Volume FormaldehydeStock, Mass Formaldehyde)
{
    public static StoredTotals None { get; } = new(Volume.Zero, Volume.Zero, Mass.Zero);
}
