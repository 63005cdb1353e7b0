using Protocolist.Benches;
using Protocolist.Benches.Stock;
using Protocolist.Checks;
using Protocolist.Fluids;
using Protocolist.Plans;
using UnitsNet;

namespace Protocolist.Planning;

/// <summary>How much flammable fluid and formaldehyde stands about once all is bought.</summary>
internal static class Storing
{
    public static StoredTotals Of(Bench bench, IEnumerable<PlannedMaterial> materials)
    {
        var totals = StoredTotals.None;
        foreach (var item in bench.Stock)
        {
            if (item is { Kind: StockKind.Fluid, OnHand: { Kind: AmountKind.Volume, Units: > 0 } }) totals = With(totals, $"{item.Substance} {item.Strength}".Trim(), item.OnHand.Volume);
        }

        foreach (var material in materials)
        {
            if (material is { Unit: "mL", Bought: > 0 }) totals = With(totals, material.Name, Volume.FromMilliliters((double)material.Bought));
        }

        return totals;
    }

    private static StoredTotals With(StoredTotals totals, string name, Volume volume)
    {
        if (Fluid.Read(name).Value is not { IsWater: false } fluid) return totals;
        return new(
            fluid is { IsFlammable: true, IsAlcohol: true } ? totals.Flammable + volume : totals.Flammable,
            fluid.Substance == Substance.FormaldehydeStock ? totals.FormaldehydeStock + volume : totals.FormaldehydeStock,
            totals.Formaldehyde + Mass.FromGrams((fluid.FormaldehydeGramsPerLitre ?? 0) * volume.Liters));
    }
}
