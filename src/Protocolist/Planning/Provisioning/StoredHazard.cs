using Protocolist.Benches;
using Protocolist.Checks;
using Protocolist.Fluids;
using UnitsNet;

namespace Protocolist.Planning.Provisioning;

/// <summary>What makes a fluid count where fluids are stored.</summary>
/// <param name="IsFlammable">Whether it is alcohol that burns.</param>
/// <param name="IsFormaldehydeStock">Whether it is the concentrated stock.</param>
/// <param name="FormaldehydeGramsPerLitre">The formaldehyde in it.</param>
internal readonly record struct StoredHazard(bool IsFlammable, bool IsFormaldehydeStock, double FormaldehydeGramsPerLitre)
{
    public static StoredHazard Of(Fluid? fluid) => fluid is null or { IsWater: true } ? default : new(
        fluid is { IsFlammable: true, IsAlcohol: true },
        fluid.Substance == Substance.FormaldehydeStock,
        fluid.FormaldehydeGramsPerLitre ?? 0);

    /// <summary>The totals with so much of it.</summary>
    public StoredTotals AddedTo(StoredTotals totals, Amount amount)
    {
        if (this == default || amount is not { Kind: AmountKind.Volume, Units: > 0 }) return totals;
        var volume = amount.Volume;
        return new(
            IsFlammable ? totals.Flammable + volume : totals.Flammable,
            IsFormaldehydeStock ? totals.FormaldehydeStock + volume : totals.FormaldehydeStock,
            totals.Formaldehyde + Mass.FromGrams(FormaldehydeGramsPerLitre * volume.Liters));
    }
}
