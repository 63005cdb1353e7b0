using System.Collections.Concurrent;
using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Fluids.Buffers;
using Protocolist.Planning.Provisioning.Purchasing;
using Protocolist.Vessels;

namespace Protocolist.Planning.Provisioning;

/// <summary>
/// A prepared bench from one day on, until something of it goes out of use or comes free: what may be used of each material, which vessels are free, how each
/// fluid can be made. What it says of a fluid never changes, so that it is safe for any number of threads.
/// </summary>
internal sealed class StockDay
{
    private static readonly Phrase InUse = new("vessel-in-use", "every {vessel} is in use{until}; it is left out");
    private static readonly Phrase Until = new("vessel-in-use.until", " until {day:day}");
    private static readonly Phrase InUseRemedy = new("vessel-in-use.remedy", "start later, or free one");

    private readonly MaterialOnDay[] materials;
    private readonly Product[] products;

    /// <summary>Of each fluid that was asked for; a shelf's protocols name some dozens.</summary>
    private readonly ConcurrentDictionary<Fluid, FluidWays> ways = new();

    internal StockDay(PreparedStock stock, LocalDate day)
    {
        Stock = stock;
        materials = [.. stock.Materials.Select(m => m.On(day))];
        products = [.. materials.Select(m => m.Product)];
        var atHand = materials.Take(stock.FluidsAndSalts).Where(m => m.IsToBeHad).ToList();
        Fluids = [.. atHand.Where(m => m.Material.Fluid is not null)];
        Waters = [.. Fluids.Where(m => m.Material.Fluid!.IsWater)];
        Salts = [.. atHand.Select(m => m.Material.Salt).OfType<Salt>()];
        FreeVessels = PreparedVessel.Of(stock.Bench.FreeVessels(day));
        VesselsForSale = [.. stock.Bench.VesselsForSale(day).Select(v => new PreparedVessel(v, stock.Rates.Convert(v.Price!)?.Minor ?? 0))];
        Vessels = [.. FreeVessels, .. VesselsForSale];
        TakenVessels = [.. stock.Bench.Vessels.Where(v => v.Count > 0 && Find(v.Id) is null).Select(v => Taken(v, stock.Bench))];
    }

    public PreparedStock Stock { get; }

    /// <summary>Every material as it is to be had, in the order of the prepared bench.</summary>
    public ReadOnlySpan<MaterialOnDay> Materials => materials;

    public ReadOnlySpan<Product> Products => products;

    /// <summary>The fluids that are there or can be bought.</summary>
    public ImmutableArray<MaterialOnDay> Fluids { get; }

    /// <summary>The waters among them.</summary>
    public ImmutableArray<MaterialOnDay> Waters { get; }

    /// <summary>The salts that are there or can be bought.</summary>
    public ImmutableArray<Salt> Salts { get; }

    /// <summary>Vessels that are free, each with how many of it, in the order of the bench file.</summary>
    public IReadOnlyList<PreparedVessel> FreeVessels { get; }

    /// <summary>Vessels of which none is free, but which can be bought.</summary>
    public IReadOnlyList<PreparedVessel> VesselsForSale { get; }

    /// <summary>All that are to be had, with what has to be paid for them.</summary>
    public IReadOnlyList<PreparedVessel> Vessels { get; }

    /// <summary>A note for each kind of vessel of which all are in use and none can be bought.</summary>
    public ImmutableArray<Finding> TakenVessels { get; }

    /// <summary>The vessel that is to be had of that id; null where there is none.</summary>
    public Vessel? Find(string id) => Vessels.FirstOrDefault(v => v.Vessel.Id == id)?.Vessel;

    /// <summary>The ways in which a fluid can be made, worked out when it is first asked for.</summary>
    public FluidWays WaysOf(Fluid fluid) => ways.GetOrAdd(fluid, static (wanted, day) => FluidWays.Of(wanted, day), this);

    /// <summary>Whether used fixative of this fluid's buffering stands on the shelf.</summary>
    public bool CanRestore(Fluid fluid)
    {
        foreach (var one in Fluids)
        {
            if (one.Material.Restores(fluid)) return true;
        }

        return false;
    }

    private static Finding Taken(Vessel vessel, Bench bench)
    {
        var until = bench.VesselsInUse.Where(u => u.VesselId == vessel.Id).Max(u => u.Until);
        return Finding.Note(InUse.Id, InUse.With(("vessel", vessel.Name), ("until", until is { } day ? Until.With(("day", day)) : default)), InUseRemedy);
    }
}
