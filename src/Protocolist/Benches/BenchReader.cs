using NodaTime;
using Protocolist.Benches.Disposal;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Quantities;
using Protocolist.Reading;
using UnitsNet;

namespace Protocolist.Benches;

/// <summary>Reads bench files.</summary>
public static class BenchReader
{
    private static readonly Phrase UnknownZoneRemedy = new("unknown-zone.remedy", "give the id of an IANA time zone, such as Atlantic/Azores");
    private static readonly Phrase UnknownZone = new("unknown-zone", "there is no time zone '{zone}'");

    private const int Format = 1;

    /// <summary>Reads a bench from YAML.</summary>
    /// <param name="source">The text and its name.</param>
    /// <param name="zones">The time zones by id.</param>
    /// <param name="substances">The substances that there are; null for the bundled ones.</param>
    /// <returns>The bench, with a finding at line and column for everything that is wrong; null where nothing usable could be read.</returns>
    public static Checked<Bench> Read(SourceText source, IDateTimeZoneProvider zones, SubstanceCatalogue? substances = null)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(zones);
        var findings = new List<Finding>();
        var document = DocumentReader.Read(source);
        findings.AddRange(document.Findings);
        if (document.Value is null || Fields.Of(document.Value, Named.Bench, findings) is not { } fields || !FormatVersion.Check(fields, Format, findings))
            return new(null, [.. findings]);
        var name = fields.Required("bench");
        var zone = Zone(fields, zones, findings);
        var opening = HoursReader.Read(fields, zone ?? DateTimeZone.Utc, findings);
        var currency = fields.Scalar("currency");
        var inUse = new List<(VesselInUse Use, MappingNode Node)>();
        var stock = StockReader.Read(fields, findings);
        var vessels = VesselReader.Read(fields, inUse, findings);
        var bench = new Bench
        {
            Name = fields.Scalar("name")?.Value ?? name?.Value ?? source.Name,
            Opening = opening,
            Temperatures = Temperatures(fields, findings),
            Stock = [.. stock.Select(s => s.Item)],
            Vessels = [.. vessels.Select(v => v.Vessel)],
            VesselsInUse = [.. inUse.Select(u => u.Use)],
            People = fields.Whole("people", 1, 100) ?? 1,
            ShelfBears = fields.Quantity("shelf-bears", Dimension.OfMass) is { } bears ? Mass.FromKilograms(bears.Low) : null,
            Air = Air(fields),
            Currency = currency?.Value,
            Labour = StockReader.Price(fields, "labour", findings),
            DisposalPrices = DisposalReader.Read(fields, findings),
            WasteRules = WasteReader.Read(fields, findings),
            ExchangeRates = StockReader.ExchangeRates(fields, findings),
        };
        fields.Finish();
        findings.AddRange(Bench.ValidatorFor(substances).Validate(bench).Errors.Select(f => ValidatorFindings.Of(f) with { Where = Place(f.PropertyName) }));
        return new(name is null || zone is null ? null : bench, [.. findings.OrderBy(f => f.Where.Line).ThenBy(f => f.Where.Column)]);

        // What could not be read of a list is left out, so that the numbers of items and of lines are not the same.
        SourceSpan Place(string path)
        {
            var (list, index, below) = ValidatorFindings.Numbered(path);
            return list switch
            {
                nameof(Bench.Stock) when below == nameof(StockItem.Substance) => stock[index].Item.Where,
                nameof(Bench.Stock) => ValidatorFindings.Place(below, stock[index].Node),
                nameof(Bench.Vessels) => ValidatorFindings.Place(below, vessels[index].Node),
                nameof(Bench.VesselsInUse) => ValidatorFindings.Place(below, inUse[index].Node),
                _ when fields.Entry(ValidatorFindings.KeyOf(path))?.Value is ScalarNode value => value.Span,
                _ => ValidatorFindings.Place(path, (MappingNode)document.Value),
            };
        }
    }

    private static DateTimeZone? Zone(Fields fields, IDateTimeZoneProvider zones, List<Finding> findings)
    {
        if (fields.Required("zone") is not { } id) return null;
        if (zones.GetZoneOrNull(id.Value) is { } zone) return zone;
        findings.Add(Finding.Error(
            "unknown-zone",
            UnknownZone.With(("zone", id.Value)),
            Suggestion.Nearest(id.Value, zones.Ids) is { } near ? Suggestion.Of(near) : UnknownZoneRemedy,
            id.Span));
        return null;
    }

    private static BenchTemperatures Temperatures(Fields fields, List<Finding> findings)
    {
        var usual = BenchTemperatures.Usual;
        if (fields.Nested("temperatures") is not { } table) return usual;
        Temperature Of(string key, Temperature otherwise) =>
            table.Quantity(key, Dimension.OfTemperature) is { } range ? Temperature.FromKelvins(range.Middle) : otherwise;
        var temperatures = new BenchTemperatures(Of("room", usual.Room), Of("cold", usual.Cold), Of("coldest", usual.Coldest), Of("hottest", usual.Hottest));
        table.Finish();
        return temperatures;
    }

    private static BenchAir? Air(Fields fields)
    {
        if (fields.Nested("air") is not { } table) return null;
        var room = table.Quantity("room", Dimension.OfVolume);
        var changes = table.Quantity("changes-per-hour", Dimension.None);
        var hood = table.YesNo("hood") ?? false;
        table.Finish();
        return room is { } space && changes is { } times ? new(Volume.FromCubicMeters(space.Middle), times.Middle, hood) : null;
    }
}
