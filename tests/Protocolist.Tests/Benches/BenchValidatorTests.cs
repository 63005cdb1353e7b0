using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Fluids;
using Protocolist.Quantities;
using Protocolist.Vessels;
using UnitsNet;

namespace Protocolist.Tests.Benches;

public class BenchValidatorTests
{
    private static readonly StockItem Borax = new() { Id = "borax", Kind = StockKind.Salt, Substance = "borax", OnHand = Amount.Of(Mass.FromKilograms(1)) };

    private static readonly Vessel Jar = new("jar", "jar", new VesselShape.Cylinder(Length.FromMillimeters(95), Length.FromMillimeters(160)), VesselMaterial.Glass, 3);

    private static readonly Bench Sound = new()
    {
        Name = "b",
        Opening = OpeningHours.Always(DateTimeZone.Utc),
        Currency = "EUR",
        Labour = Price.Of(18, "EUR", PriceUnit.Hour),
        Stock = [Borax],
        Vessels = [Jar],
        VesselsInUse = [new("jar", 1, new LocalDate(2027, 4, 1))],
        Air = new(Volume.FromCubicMeters(60), 6, true),
    };

    public static TheoryData<string, string, Bench> Faults() => new()
    {
        { "bad-number", "people", Sound with { People = -2 } },
        { "not-one-line", "name", Sound with { Name = "a\nb" } },
        { "absurd-temperature", "temperatures.hottest", Sound with { Temperatures = BenchTemperatures.Usual with { Hottest = Temperature.FromDegreesCelsius(61) } } },
        { "reversed-range", "temperatures", Sound with { Temperatures = BenchTemperatures.Usual with { Coldest = Temperature.FromDegreesCelsius(36) } } },
        { "impossible-amount", "shelf-bears", Sound with { ShelfBears = Mass.Zero } },
        { "impossible-amount", "air.room", Sound with { Air = new(Volume.Zero, 6, true) } },
        { "impossible-amount", "air.changes-per-hour", Sound with { Air = new(Volume.FromCubicMeters(60), -1, true) } },
        { "unknown-currency", "currency", Sound with { Currency = "QQQ" } },
        { "priced-by-another-measure", "labour", Sound with { Labour = Price.Of(18, "EUR", PriceUnit.Litre) } },
        { "absurd-price", "labour", Sound with { Labour = Price.Of(10_000_001, "EUR", PriceUnit.Hour) } },
        { "bad-rate", "exchange-rates[0]", Sound with { ExchangeRates = ImmutableDictionary<string, decimal>.Empty.Add("USD", -3) } },
        { "unknown-currency", "exchange-rates[0]", Sound with { ExchangeRates = ImmutableDictionary<string, decimal>.Empty.Add("QQQ", 1) } },
        { "priced-by-another-measure", "disposal-prices[0]", Sound with { DisposalPrices = ImmutableDictionary<WasteClass, Price>.Empty.Add(WasteClass.Sharps, Price.Of(1, "EUR", PriceUnit.Litre)) } },
        { "bad-number", "waste-rules.fixative-uses", Sound with { WasteRules = WasteRules.CollectAll with { FixativeUses = 0 } } },
        { "duplicate-stock", "stock[1].id", Sound with { Stock = [Borax, Borax] } },
        { "duplicate-stock", "stock[1].id", Sound with { Stock = [Borax, Borax with { Id = "Borax", Kind = StockKind.Consumable, Substance = "gloves", OnHand = Amount.Of(1) }] } },
        { "negative-stock", "stock[0].on-hand", Sound with { Stock = [Borax with { OnHand = Amount.Of(Mass.FromGrams(-1)) }] } },
        { "unknown-fluid", "stock[0].substance", Sound with { Stock = [Borax with { Kind = StockKind.Fluid, Substance = "banana 7 %", OnHand = Amount.Of(Volume.FromLiters(1)) }] } },
        { "duplicate-vessel", "vessels[1].id", Sound with { Vessels = [Jar, Jar] } },
        { "vessel-count-negative", "vessels[0].count", Sound with { Vessels = [Jar with { Count = -4 }], VesselsInUse = [] } },
        { "unknown-vessel", "vessels-in-use[0]", Sound with { VesselsInUse = [new("jug", 1, null)] } },
        { "more-in-use-than-there-are", "vessels-in-use[0]", Sound with { VesselsInUse = [new("jar", 4, null)] } },
        { "absurd-date", "vessels-in-use[0].until", Sound with { VesselsInUse = [new("jar", 1, LocalDate.MaxIsoValue)] } },
        { "absurd-date", "opening.closed[0].last", Sound with { Opening = OpeningHours.Create(DateTimeZone.Utc, [new(IsoDayOfWeek.Monday, new(9, 0), new(17, 0))], [new(new(2027, 1, 1), new(9999, 1, 1), "")]).Value! } },
        { "absurd-date", "opening.extra[0].date", Sound with { Opening = OpeningHours.Always(DateTimeZone.Utc).With(new(LocalDate.MinIsoValue, new(9, 0), new(10, 0))) } },
    };

    [Fact]
    public void A_sound_bench_has_no_findings()
    {
        Assert.Empty(Sound.Validate());
        Assert.Empty(Bench.Empty(DateTimeZone.Utc).Validate());
    }

    [Theory]
    [MemberData(nameof(Faults), DisableDiscoveryEnumeration = true)]
    public void Each_fault_is_one_finding_with_its_property_and_a_remedy(string id, string subject, Bench bench)
    {
        var finding = Assert.Single(bench.Validate());
        Assert.Equal((id, subject), (finding.Id, finding.Subject));
        Assert.False(finding.Remedy.IsEmpty);
    }

    [Fact]
    public void Lists_that_were_never_made_are_empty_ones_and_what_must_be_there_is_asked_for()
    {
        Assert.Empty((Sound with { Stock = default, Vessels = default, VesselsInUse = default }).Validate());
        Assert.Throws<ArgumentNullException>(() => Sound with { Opening = null! });
        Assert.Throws<ArgumentNullException>(() => Sound with { Temperatures = null! });
        Assert.Throws<ArgumentNullException>(() => Sound with { ExchangeRates = null! });
        Assert.Throws<ArgumentNullException>(() => Sound with { DisposalPrices = null! });
        Assert.Throws<ArgumentNullException>(() => Sound with { WasteRules = null! });
    }

    [Theory]
    [InlineData("people: 3\ncurrency: QQQ\n", "currency")]
    [InlineData("labour: 18 EUR/L\n", "labour")]
    [InlineData("air: {room: 0 m3, changes-per-hour: -1}\n", "air")]
    [InlineData("shelf-bears: 0 kg\n", "shelf-bears")]
    [InlineData("temperatures: {room: 70 degC, coldest: 30 degC, hottest: 20 degC}\n", "temperatures")]
    [InlineData("exchange-rates: {QQQ: 0.9, USD: 0}\n", "exchange-rates")]
    [InlineData("stock: [{salt: [x]}, {salt: borax, on-hand: -1 g, packs: [{size: 0 g, price: 1 EUR}, {size: 1 g, price: -1 EUR}]}, {salt: borax, on-hand: 1 g}]\n", "stock")]
    [InlineData("vessels: [{id: a, name: a, inside: {diameter: 9 cm, height: 9000 cm}, loses-a-year: 1e9 L, in-use: [{count: 3}]}]\n", "vessels")]
    public void A_file_and_an_object_are_told_the_same_in_the_same_words(string yaml, string key)
    {
        var read = BenchReader.Read(new("b.yaml", "format: 1\nbench: b\nzone: UTC\n" + yaml), DateTimeZoneProviders.Tzdb);

        var ofObject = read.Value!.Validate();

        Assert.NotEmpty(ofObject);
        foreach (var finding in ofObject)
        {
            var same = Assert.Single(read.Findings.Where(f => (f.Id, f.Severity, f.Message, f.Remedy) == (finding.Id, finding.Severity, finding.Message, finding.Remedy)).Take(1));
            Assert.True(same.Where.Line >= 4, $"{same} names no place under '{key}'");
        }
    }

    [Fact]
    public void A_finding_of_a_list_stands_at_its_own_item_even_after_one_that_could_not_be_read()
    {
        var read = BenchReader.Read(new("b.yaml", "format: 1\nbench: b\nzone: UTC\nstock:\n  - {}\n  - {salt: borax, on-hand: 1 kg, packs: [{size: 1 kg, price: 3 EUR},\n      {size: 1 kg, price: -3 EUR}]}\n"), DateTimeZoneProviders.Tzdb);

        Assert.Equal("b.yaml:7:20", Assert.Single(read.Findings, f => f.Id == "negative-price").Where.ToString());
    }
}
