using System.Collections.Immutable;
using NodaTime;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Quantities;
using Protocolist.Reading;
using Protocolist.Vessels;
using UnitsNet;

namespace Protocolist.Benches;

/// <summary>The workplace: what is on the shelf, when it is open, how warm it is, what things cost. Immutable; safe to share between threads.</summary>
public sealed record Bench
{
    private static readonly BenchValidator Validator = new(SubstanceCatalogue.Bundled);

    /// <summary>What people call it.</summary>
    public required string Name { get; init => field = value ?? throw new ArgumentNullException(nameof(value)); }

    /// <summary>Whether it describes a real workplace; false of <see cref="Empty"/>, which knows no hours and no stock.</summary>
    public bool IsGiven { get; private init; } = true;

    /// <summary>When somebody can work, and on which clocks.</summary>
    public required OpeningHours Opening { get; init => field = value ?? throw new ArgumentNullException(nameof(value)); }

    /// <summary>Temperatures of the rooms.</summary>
    public BenchTemperatures Temperatures { get; init => field = value ?? throw new ArgumentNullException(nameof(value)); } = BenchTemperatures.Usual;

    /// <summary>Fluids, salts, consumables and tools on the shelf, or that can be bought.</summary>
    public ImmutableArray<StockItem> Stock { get; init => field = GivenList.Of(value); } = [];

    /// <summary>Jars, tubs and tanks at hand.</summary>
    public ImmutableArray<Vessel> Vessels { get; init => field = GivenList.Of(value); } = [];

    /// <summary>The vessels that are free on a day, each with how many of it.</summary>
    /// <param name="on">The day.</param>
    /// <returns>Vessels of which at least one is free, with the number of free ones as their count.</returns>
    public IEnumerable<Vessel> FreeVessels(LocalDate on) => Vessels
        .Select(v => v with { Count = v.Count - VesselsInUse.Where(u => u.VesselId == v.Id && !(u.Until < on)).Sum(u => u.Count) })
        .Where(v => v.Count > 0);

    /// <summary>Vessels of which none is free on a day, but which can be bought: one of each.</summary>
    /// <param name="on">The day.</param>
    /// <returns>Vessels with a price, each with a count of 1.</returns>
    public IEnumerable<Vessel> VesselsForSale(LocalDate on)
    {
        var free = FreeVessels(on).Select(v => v.Id).ToHashSet(StringComparer.Ordinal);
        return Vessels.Where(v => v.Price is not null && !free.Contains(v.Id)).Select(v => v with { Count = 1 });
    }

    /// <summary>How many people can lift together; 1 or more.</summary>
    public int People { get; init; } = 1;

    /// <summary>What one place on the store's shelf bears; null where nobody knows.</summary>
    public Mass? ShelfBears { get; init; }

    /// <summary>The room's air; null where nobody measured it.</summary>
    public BenchAir? Air { get; init; }

    /// <summary>The ISO 4217 code in which sums are kept; null where nothing has a price.</summary>
    public string? Currency { get; init; }

    /// <summary>What work costs, by time.</summary>
    public Price? Labour { get; init; }

    /// <summary>What it costs to have waste of a class taken away: fluids by volume, solids by the piece.</summary>
    public ImmutableDictionary<WasteClass, Price> DisposalPrices { get; init => field = value ?? throw new ArgumentNullException(nameof(value)); } =
        ImmutableDictionary<WasteClass, Price>.Empty;

    /// <summary>Where waste goes; everything is collected where the bench says nothing.</summary>
    public WasteRules WasteRules { get; init => field = value ?? throw new ArgumentNullException(nameof(value)); } = WasteRules.CollectAll;

    /// <summary>Of another currency's code: how much of <see cref="Currency"/> one of it buys. No rate is ever assumed.</summary>
    public ImmutableDictionary<string, decimal> ExchangeRates { get; init => field = value ?? throw new ArgumentNullException(nameof(value)); } =
        ImmutableDictionary<string, decimal>.Empty;

    /// <summary>Vessels that other specimens stand in.</summary>
    public ImmutableArray<VesselInUse> VesselsInUse { get; init => field = GivenList.Of(value); } = [];

    /// <summary>What is wrong with it, in the same words as of a bench file.</summary>
    /// <returns>Findings, each with the property's path as its subject, such as <c>stock[2].packs[0].price</c>; empty where nothing is wrong.</returns>
    public ImmutableArray<Finding> Validate(SubstanceCatalogue? substances = null) => ValidatorFindings.Of(ValidatorFor(substances), this);

    internal static BenchValidator ValidatorFor(SubstanceCatalogue? substances) =>
        substances is null || substances == SubstanceCatalogue.Bundled ? Validator : new(substances);

    /// <summary>A bench of which nothing is known: always open, room at 20 °C, empty shelves.</summary>
    /// <param name="zone">The zone of its clocks.</param>
    /// <returns>The bench.</returns>
    public static Bench Empty(DateTimeZone zone) => new() { Name = "no bench", IsGiven = false, Opening = OpeningHours.Always(zone) };
}

/// <summary>Temperatures of the workplace.</summary>
/// <param name="Room">Where specimens are fixed.</param>
/// <param name="Cold">The cold store.</param>
/// <param name="Coldest">The coldest day where jars stand.</param>
/// <param name="Hottest">The hottest day where jars stand.</param>
public sealed record BenchTemperatures(Temperature Room, Temperature Cold, Temperature Coldest, Temperature Hottest)
{
    /// <summary>A room at 20 °C, a cold store at 4 °C, shelves between 15 and 35 °C: common practice, to be replaced by what is measured.</summary>
    public static BenchTemperatures Usual { get; } = new(
        Temperature.FromDegreesCelsius(20),
        Temperature.FromDegreesCelsius(4),
        Temperature.FromDegreesCelsius(15),
        Temperature.FromDegreesCelsius(35));
}

/// <summary>The air of the workplace.</summary>
/// <param name="Room">Volume of the room.</param>
/// <param name="ChangesPerHour">How often the air is replaced in an hour.</param>
/// <param name="HasHood">Whether there is a fume hood.</param>
public sealed record BenchAir(Volume Room, double ChangesPerHour, bool HasHood);
