using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Checks;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Fluids.Buffers;
using Protocolist.Planning.Provisioning.Purchasing;
using UnitsNet;

namespace Protocolist.Planning.Provisioning;

/// <summary>
/// What provisioning has to know of a bench, worked out once: stock by material with packs, prices and dates, which stock serves which thing, rates of
/// exchange, where waste goes. Immutable; safe for any number of threads.
/// </summary>
internal sealed class PreparedStock
{
    private readonly WasteRoute[] routes;
    private readonly LocalDate[] changes;
    private readonly Lazy<StockDay>[] days;

    private PreparedStock(Bench bench, SubstanceCatalogue substances)
    {
        Holds = item => StockMaterial.Held(item, substances);
        Bench = bench;
        Rates = new(bench.Currency ?? AnyCurrency(bench), bench.ExchangeRates);
        Materials = StockMaterial.Of(bench.Stock, Rates, substances);
        FluidsAndSalts = Materials.Count(m => m.Measure != Benches.AmountKind.Count);
        Sundries = new(Materials);
        At = Temperature.FromDegreesCelsius(Math.Clamp(bench.Temperatures.Room.DegreesCelsius, 0, 40));
        routes = [.. Enum.GetValues<WasteClass>().Select(bench.WasteRules.RouteOf)];
        KeptFixative = bench.WasteRules.RouteOfKept;
        Stored = Materials.SelectMany(m => m.Items.Select(i => (m.Hazard, i.OnHand))).Aggregate(StoredTotals.None, (sum, i) => i.Hazard.AddedTo(sum, i.OnHand));
        changes = [.. LastDays(bench).OfType<LocalDate>().Where(d => d < LocalDate.MaxIsoValue).Select(d => d.PlusDays(1)).Distinct().Order()];
        days = [.. changes.Prepend(LocalDate.MinIsoValue).Select(from => new Lazy<StockDay>(() => new(this, from)))];
        WithoutRate = [.. Materials.Take(FluidsAndSalts).SelectMany(m => m.Market.WithoutRate)];
    }

    public Bench Bench { get; }

    /// <summary>The plan's currency, and what others are worth in it.</summary>
    public ExchangeRates Rates { get; }

    /// <summary>Fluids and salts first, then consumables and tools; each in the order of the bench file.</summary>
    public ImmutableArray<StockMaterial> Materials { get; }

    /// <summary>Which fluid or salt an item of stock is, as far as anybody can tell.</summary>
    public Func<StockItem, (Fluid? Fluid, Salt? Salt)> Holds { get; }

    /// <summary>How many of the materials are fluids and salts.</summary>
    public int FluidsAndSalts { get; }

    /// <summary>Which stock serves which thing.</summary>
    public SundryShelf Sundries { get; }

    /// <summary>The temperature at which fluids are measured out: that of the room, as far as the density formulas reach.</summary>
    public Temperature At { get; }

    /// <summary>Where fixative goes that may serve another specimen; null where it is never kept.</summary>
    public WasteRoute? KeptFixative { get; }

    /// <summary>What hazardous fluid stands on the shelf.</summary>
    public StoredTotals Stored { get; }

    /// <summary>Errors for fluids and salts that are priced in money without a rate.</summary>
    public ImmutableArray<Finding> WithoutRate { get; }

    /// <summary>Whether it lists no fluid and no salt.</summary>
    public bool IsEmpty => FluidsAndSalts == 0;

    /// <summary>Prepares a bench.</summary>
    public static PreparedStock Of(Bench bench, SubstanceCatalogue? substances = null) => new(bench, substances ?? SubstanceCatalogue.Bundled);

    /// <summary>The bench on a day, worked out when it is first asked for.</summary>
    /// <param name="day">The day of use.</param>
    public StockDay On(LocalDate day)
    {
        var at = 0;
        while (at < changes.Length && changes[at] <= day) at++;
        return days[at].Value;
    }

    /// <summary>Where waste of a class goes that is not kept.</summary>
    public WasteRoute RouteOf(WasteClass @class) => routes[(int)@class];

    /// <summary>What is usable and free changes on the day after one of these, and on no other.</summary>
    private static IEnumerable<LocalDate?> LastDays(Bench bench) => [.. bench.Stock.Select(i => i.Expires), .. bench.VesselsInUse.Select(u => u.Until)];

    private static string AnyCurrency(Bench bench) => bench.Stock.SelectMany(i => i.Packs).FirstOrDefault(p => p.Price is not null)?.Price!.Currency ?? "EUR";
}
