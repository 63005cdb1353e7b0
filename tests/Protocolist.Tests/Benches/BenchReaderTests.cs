using NodaTime;
using Protocolist.Benches;
using Protocolist.Findings;

namespace Protocolist.Tests.Benches;

public class BenchReaderTests
{
    private static Checked<Bench> Read(string rest) => BenchReader.Read(new("b.yaml", "format: 1\nbench: b\nzone: UTC\n" + rest), DateTimeZoneProviders.Tzdb);

    [Fact]
    public void Bench_with_nothing_on_it_is_a_bench()
    {
        var read = Read("");

        Assert.True(read.IsSound, string.Join('\n', read.Findings));
        Assert.Empty(read.Value.Stock);
        Assert.Equal(20, read.Value.Temperatures.Room.DegreesCelsius, 6);
        Assert.True(read.Value.Opening.OpensOn(new LocalDate(2027, 3, 7)));
    }

    [Fact]
    public void Everything_on_a_bench_is_read()
    {
        var read = Read("""
            hours: {mon-fri: "08:30 to 12:00, 13:00 to 18:00", sat: 09:00 to 13:00}
            closed: [2027-03-29 to 2027-04-02, 2027-05-05]
            holidays: [12-25]
            also-open: {2027-03-07: 10:00 to 12:00}
            temperatures: {room: 19 degC, cold: 4 degC, coldest: 9 degC, hottest: 29 degC}
            shelf-bears: 60 kg
            currency: EUR
            labour: 18 EUR/h
            stock:
              - {fluid: ethanol 96 %vol, id: e, on-hand: 8 L, opened: 2027-01-12, packs: [{size: 5 L, price: 42.00 EUR, lead: 36 h}]}
            vessels:
              - {id: jar, inside: {diameter: 9 cm, height: 16 cm}, wall: glass, count: 2}
              - {id: tub, inside: {length: 40 cm, width: 25 cm, height: 12 cm}, wall: polypropylene}
            """);

        Assert.True(read.IsSound, string.Join('\n', read.Findings));
        var bench = read.Value;
        Assert.Equal(2, bench.Opening.On(new LocalDate(2027, 3, 1)).Count());
        Assert.False(bench.Opening.OpensOn(new LocalDate(2027, 4, 2)));
        Assert.False(bench.Opening.OpensOn(new LocalDate(2027, 5, 5)));
        Assert.True(bench.Opening.OpensOn(new LocalDate(2027, 3, 7)));
        Assert.Equal((8.0, 2), (bench.Stock[0].OnHand.Volume.Liters, bench.Stock[0].Packs[0].LeadDays));
        Assert.Equal(1.0179, bench.Vessels[0].Shape.Inside.Liters, 3);
        Assert.Equal(12, bench.Vessels[1].Shape.Inside.Liters, 6);
    }

    [Theory]
    [InlineData("hours: {munday: 08:00 to 12:00}", 4, 9, "unknown-day")]
    [InlineData("hours: {mon: 8 till 12}", 4, 14, "bad-hours")]
    [InlineData("hours: {mon: 12:00 to 08:00}", 4, 9, "opening-ends-before-it-begins")]
    [InlineData("closed: [2027-13-01]", 4, 10, "bad-date")]
    [InlineData("holidays: [25-12]", 4, 12, "bad-date")]
    [InlineData("temperatures: {room: 190 degC}", 4, 16, "absurd-temperature")]
    [InlineData("temperatures: {room: 19 kg}", 4, 22, "wrong-dimension")]
    [InlineData("currency: EURO", 4, 11, "unknown-currency")]
    [InlineData("stock:\n  - {fluid: ethanol 96 %vol, on-hand: 8 kg}", 5, 39, "wrong-dimension")]
    [InlineData("stock:\n  - {on-hand: 8 L}", 5, 5, "missing-key")]
    [InlineData("stock:\n  - {fluid: ethanol 960 %vol, on-hand: 8 L}", 5, null, null)]
    [InlineData("stock:\n  - {fluid: ethanol 96 %vol, id: a}\n  - {fluid: ethanol 96 %vol, id: a}", 6, null, "duplicate-stock")]
    [InlineData("vessels:\n  - {id: jar, inside: {diameter: 9 cm}}", 5, null, "vessel-without-shape")]
    [InlineData("vessels:\n  - {id: jar, inside: {diameter: 9 cm, height: 9 cm}, wall: glas}", 5, 61, "unknown-word")]
    [InlineData("vesels: []", 4, 1, "unknown-key")]
    [InlineData("people: 0", 4, 9, "bad-number")]
    [InlineData("shelf-bears: 0 kg", 4, 14, "impossible-amount")]
    [InlineData("shelf-bears: 60 cm", 4, 14, "wrong-dimension")]
    public void Wrong_line_is_an_error_at_its_place(string rest, int line, int? column, string? id)
    {
        var read = Read(rest + "\n");

        var errors = read.Findings.Where(f => f.Severity == Severity.Error).ToList();
        Assert.Contains(errors, f => (id is null || f.Id == id) && f.Where.Line == line && (column is null || f.Where.Column == column));
        Assert.All(errors, f => Assert.NotEmpty(f.Remedy.ToString()));
    }

    [Fact]
    public void Bench_without_a_zone_is_none()
    {
        var read = BenchReader.Read(new("b.yaml", "format: 1\nbench: b\n"), DateTimeZoneProviders.Tzdb);

        Assert.Null(read.Value);
        Assert.Equal("missing-key", Assert.Single(read.Findings).Id);
    }
}
