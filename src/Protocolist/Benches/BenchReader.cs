using NodaTime;
using Protocolist.Benches.Disposal;
using Protocolist.Findings;
using Protocolist.Quantities;
using Protocolist.Reading;
using UnitsNet;

namespace Protocolist.Benches;

/// <summary>Reads bench files.</summary>
public static class BenchReader
{
    private static readonly Phrase UnknownCurrency = new("unknown-currency.bench", "'{currency}' is not the code of a currency");
    private static readonly Phrase UnknownCurrencyRemedy = new("unknown-currency.bench.remedy", "give its ISO 4217 code, such as EUR");
    private static readonly Phrase UnknownZoneRemedy = new("unknown-zone.remedy", "give the id of an IANA time zone, such as Atlantic/Azores");
    private static readonly Phrase UnknownZone = new("unknown-zone", "there is no time zone '{zone}'");
    private static readonly Phrase ColdestIsHotter = new("reversed-range.temperatures", "the coldest day is hotter than the hottest");
    private static readonly Phrase ColdestIsHotterRemedy = new("reversed-range.temperatures.remedy", "swap 'coldest' and 'hottest'");
    private static readonly Phrase AbsurdTemperature = new("absurd-temperature", "'{key}' is {temperature}");
    private static readonly Phrase AbsurdTemperatureRemedy = new("absurd-temperature.remedy", "check the unit and the sign");
    private static readonly Phrase BearsNothing = new("impossible-amount.shelf", "a shelf that bears nothing is no shelf");
    private static readonly Phrase BearsNothingRemedy = new(
        "impossible-amount.shelf.remedy",
        "give what one place of it bears, such as 60 kg, or leave it out");
    private static readonly Phrase NoRoom = new("impossible-amount.room", "a room of {space} is no room");
    private static readonly Phrase NoRoomRemedy = new("impossible-amount.room.remedy", "give its volume, such as 60 m3");
    private static readonly Phrase NegativeChanges = new("impossible-amount.air", "air cannot be changed {times} times an hour");
    private static readonly Phrase NegativeChangesRemedy = new("impossible-amount.air.remedy", "give 0 or more");

    private const int Format = 1;

    /// <summary>Reads a bench from YAML.</summary>
    /// <param name="source">The text and its name.</param>
    /// <param name="zones">The time zones by id.</param>
    /// <returns>The bench, with a finding at line and column for everything that is wrong; null where nothing usable could be read.</returns>
    public static Checked<Bench> Read(SourceText source, IDateTimeZoneProvider zones)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(zones);
        var findings = new List<Finding>();
        var document = DocumentReader.Read(source);
        findings.AddRange(document.Findings);
        if (document.Value is null || Fields.Of(document.Value, Named.Bench, findings) is not { } fields || !FormatVersion.Check(fields, Format, findings)) return new(null, [.. findings]);
        var name = fields.Required("bench");
        var zone = Zone(fields, zones, findings);
        var opening = HoursReader.Read(fields, zone ?? DateTimeZone.Utc, findings);
        var currency = fields.Scalar("currency");
        if (currency is not null && Money.MinorUnits(currency.Value) is null)
            findings.Add(Finding.Error("unknown-currency", UnknownCurrency.With(("currency", currency.Value)), UnknownCurrencyRemedy, currency.Span));
        var inUse = new List<VesselInUse>();
        var bench = new Bench
        {
            Name = fields.Scalar("name")?.Value ?? name?.Value ?? source.Name,
            Opening = opening,
            Temperatures = Temperatures(fields, findings),
            Stock = StockReader.Read(fields, findings),
            Vessels = VesselReader.Read(fields, inUse, findings),
            People = fields.Whole("people", 1, 100) ?? 1,
            ShelfBears = ShelfBears(fields, findings),
            Air = Air(fields, findings),
            Currency = currency?.Value,
            Labour = StockReader.Price(fields, "labour", findings),
            DisposalPrices = DisposalReader.Read(fields, findings),
            WasteRules = WasteReader.Read(fields, findings),
            ExchangeRates = StockReader.ExchangeRates(fields, findings),
        };
        bench = bench with { VesselsInUse = [.. inUse] };
        fields.Finish();
        return new(name is null || zone is null ? null : bench, [.. findings.OrderBy(f => f.Where.Line).ThenBy(f => f.Where.Column)]);
    }

    private static DateTimeZone? Zone(Fields fields, IDateTimeZoneProvider zones, List<Finding> findings)
    {
        if (fields.Required("zone") is not { } id) return null;
        if (zones.GetZoneOrNull(id.Value) is { } zone) return zone;
        findings.Add(Finding.Error("unknown-zone", UnknownZone.With(("zone", id.Value)), Suggestion.Nearest(id.Value, zones.Ids) is { } near ? Suggestion.Of(near) : UnknownZoneRemedy, id.Span));
        return null;
    }

    private static BenchTemperatures Temperatures(Fields fields, List<Finding> findings)
    {
        var usual = BenchTemperatures.Usual;
        if (fields.Nested("temperatures") is not { } table) return usual;
        Temperature Of(string key, Temperature otherwise) =>
            table.Quantity(key, Dimension.OfTemperature) is { } range ? Temperature.FromKelvins(range.Middle) : otherwise;
        var temperatures = new BenchTemperatures(Of("room", usual.Room), Of("cold", usual.Cold), Of("coldest", usual.Coldest), Of("hottest", usual.Hottest));
        if (temperatures.Coldest > temperatures.Hottest)
            findings.Add(Finding.Error("reversed-range", ColdestIsHotter, ColdestIsHotterRemedy, table.Span));
        foreach (var (key, temperature) in (ReadOnlySpan<(string, Temperature)>)[("room", temperatures.Room), ("cold", temperatures.Cold), ("coldest", temperatures.Coldest), ("hottest", temperatures.Hottest)])
        {
            // People work and jars stand between these; outside them the fluids' tables end too.
            if (temperature.DegreesCelsius is < -30 or > 60 && table.Entry(key) is { } entry)
                findings.Add(Finding.Error("absurd-temperature", AbsurdTemperature.With(("key", key), Argument.Of("temperature", temperature.Kelvins, Dimension.OfTemperature)), AbsurdTemperatureRemedy, entry.Key.Span));
        }

        table.Finish();
        return temperatures;
    }

    private static Mass? ShelfBears(Fields fields, List<Finding> findings)
    {
        if (fields.Scalar("shelf-bears") is not { } scalar || fields.Quantity("shelf-bears", Dimension.OfMass) is not { } range) return null;
        if (range.Low > 0) return Mass.FromKilograms(range.Low);
        findings.Add(Finding.Error("impossible-amount", BearsNothing, BearsNothingRemedy, scalar.Span));
        return null;
    }

    private static BenchAir? Air(Fields fields, List<Finding> findings)
    {
        if (fields.Nested("air") is not { } table) return null;
        var room = table.Quantity("room", Dimension.OfVolume);
        var changes = table.Quantity("changes-per-hour", Dimension.None);
        var hood = table.YesNo("hood") ?? false;
        table.Finish();
        if (room is { } space && !(space.Low > 0 && space.IsFinite))
            findings.Add(Finding.Error("impossible-amount", NoRoom.With(("space", space)), NoRoomRemedy, table.Entry("room")!.Key.Span));
        if (changes is { } times && !(times.Low >= 0 && times.IsFinite))
            findings.Add(Finding.Error("impossible-amount", NegativeChanges.With(("times", times)), NegativeChangesRemedy, table.Entry("changes-per-hour")!.Key.Span));
        return room is { Low: > 0, IsFinite: true } r && changes is { Low: >= 0, IsFinite: true } c ? new(Volume.FromCubicMeters(r.Middle), c.Middle, hood) : null;
    }
}
