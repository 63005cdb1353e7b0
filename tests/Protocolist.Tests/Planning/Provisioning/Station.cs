using NodaTime;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Specimens;
using UnitsNet;

namespace Protocolist.Tests.Planning.Provisioning;

/// <summary>A bench of an invented station, by the stock it holds; and specimens that the bundled protocols serve.</summary>
internal static class Station
{
    public static readonly LocalDateTime Start = new(2027, 3, 1, 9, 0);

    public static readonly Shelf Bundled = Shelf.Bundled();

    public const string Vessels = """
        vessels:
          - {id: tray, inside: {length: 40 cm, width: 25 cm, height: 12 cm}, wall: polypropylene, closure: loose-lid, count: 3}
          - {id: jar-4, inside: {diameter: 14 cm, height: 26 cm}, wall: glass, lid: polypropylene, seal: polyethylene, closure: screw-lid, count: 6}
          - {id: jar-1, inside: {diameter: 9 cm, height: 16 cm}, wall: glass, lid: polypropylene, seal: polyethylene, closure: screw-lid, count: 6}
        """;

    public static Checked<Bench> Read(string body, string currency = "EUR") => BenchReader.Read(
        new SourceText("bench.yaml", $"format: 1\nbench: test\nzone: Atlantic/Azores\ncurrency: {currency}\nlabour: 18 EUR/h\ndisposal: {{formaldehyde: 3.20 EUR/L, alcohol: 1.10 EUR/L}}\n{Vessels}\n{body}\n"),
        DateTimeZoneProviders.Tzdb);

    public static Bench With(string body)
    {
        var read = Read(body);
        Assert.False(read.HasErrors, string.Join('\n', read.Findings));
        return read.Value!;
    }

    public static Specimen Wrasse { get; } = new()
    {
        Id = "SKP-2027-021",
        Group = "bony-fish",
        ScientificName = "Symphodus melops",
        Mass = Mass.FromGrams(82),
        StandardLength = Length.FromMillimeters(155),
        TotalLength = Length.FromMillimeters(184),
        Condition = Condition.Fresh,
        FoundOn = new(2027, 2, 28),
        Where = "tide pool 4",
        CollectedBy = "M. Okafor",
    };

    public static Specimen Whelk { get; } = new()
    {
        Id = "SKP-2027-030",
        Group = "gastropod",
        ScientificName = "Nucella lapillus",
        Mass = Mass.FromGrams(14),
        Length = Length.FromMillimeters(38),
        Condition = Condition.Fresh,
        FoundOn = new(2027, 2, 28),
        Where = "mole",
        CollectedBy = "M. Okafor",
    };

    public static Plan Plan(Specimen specimen, Bench bench, params (string Choice, string Option)[] choices)
    {
        var made = new Planner(Bundled).Plan(new(specimen, bench, Start) { Choices = System.Collections.Immutable.ImmutableSortedDictionary.CreateRange(choices.Select(c => KeyValuePair.Create(c.Choice, c.Option))) });
        Assert.True(made.Value is not null, string.Join('\n', made.Findings));
        return made.Value!;
    }

    public static PlannedMaterial Material(this Plan plan, string name) => Assert.Single(plan.Materials, m => m.Name.ToString() == name);
}
