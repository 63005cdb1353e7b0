using System.Collections.Immutable;
using Protocolist.Plans;
using Protocolist.Sheets;
using static Protocolist.Tests.Planning.PlanFixture;

namespace Protocolist.Tests.Planning;

/// <summary>
/// Whole plans of invented animals, read once as a preparator reads them and kept as they are printed: every instruction, amount, date and cost.
/// Each is made anew in its test.
/// </summary>
public class KeptPlansTests
{
    /// <summary>A bench of which nothing is known but its clocks.</summary>
    private const string Bare = "zone: UTC\n";

    /// <summary>Two mornings and an afternoon a week, one pair of hands, little on the shelf, and some of it dear and slow to come.</summary>
    private const string Shore = """
        name: Shore hut
        zone: America/St_Johns
        hours: {tue: 08:00 to 12:00, wed: 13:00 to 17:00, fri: 08:00 to 12:00}
        closed: [2027-03-12]
        temperatures: {room: 24 degC, cold: 6 degC, coldest: 4 degC, hottest: 34 degC}
        currency: CAD
        labour: 24 CAD/h
        disposal: {formaldehyde: 5.40 CAD/L, alcohol: 2.10 CAD/L}
        stock:
          - {fluid: ethanol 95 %vol, id: e95, on-hand: 3 L, packs: [{size: 4 L, price: 48.00 CAD, lead: 2 d}, {size: 1 L, price: 15.50 CAD, lead: 1 d}]}
          - {fluid: formaldehyde stock 37 %mass, id: stock-37, on-hand: 150 mL, packs: [{size: 500 mL, price: 11.25 CAD, lead: 4 d}]}
          - {salt: borax, id: borax, on-hand: 20 g, packs: [{size: 250 g, price: 4.20 CAD, lead: 1 d}]}
          - {consumable: "nitrile gloves, pair", id: gloves, by-the-pair: yes, on-hand: 3, packs: [{size: 20, price: 5.75 CAD, lead: 1 d}]}
          - {consumable: scalpel blade, id: blades, on-hand: 0, packs: [{size: 10, price: 3.60 CAD, lead: 1 d}]}
          - {tool: "forceps, pointed", id: forceps, on-hand: 1, lasts-uses: 100, used-so-far: 99, packs: [{size: 1, price: 7.00 CAD, lead: 2 d}]}
        vessels:
          - {id: box-2, name: 2 L box, inside: {length: 20 cm, width: 12 cm, height: 9 cm}, wall: polypropylene, closure: snap-lid, count: 1}
          - {id: pail, name: 15 L pail, inside: {diameter: 28 cm, height: 25 cm}, wall: polypropylene, lid: polypropylene, closure: loose-lid, count: 1}
          - {id: jar-3, name: 3 L jar, inside: {diameter: 13 cm, height: 24 cm}, wall: glass, lid: polypropylene, seal: polyethylene, closure: screw-lid, count: 1, price: 12.80 CAD, lead: 3 d}
          - {id: tank-60, name: 60 cm tank, inside: {length: 60 cm, width: 25 cm, height: 35 cm}, wall: glass, lid: glass, seal: neutral-silicone, closure: sealed-plate, count: 0, price: 96.00 CAD, lead: 8 d}

        """;

    private static readonly ImmutableDictionary<string, (string Bench, string Animal, string Choices)> Cases = new Dictionary<string, (string, string, string)>
    {
        ["vole-frozen"] = (Bare, "group: mammal\nmass: 28 g\nhead-body-length: 98 mm\ncondition: frozen\nlife-stage: adult", ""),
        ["polecat-in-ethanol"] = ("sample", "group: mammal\nscientific-name: Mustela putorius\nmass: 900 g\nhead-body-length: 36 cm\ngirth: 18 cm\ncondition: chilled\ndied-at: 2027-02-27T20:00+00:00\nlife-stage: adult", "keeping: ethanol, opening: injected"),
        ["badger-in-isopropanol"] = (Bare, "group: mammal\nmass: 9.4 kg\nhead-body-length: 72 cm\nlife-stage: adult\ncondition: fresh\ndied-at: 2027-02-27T20:00+00:00\nintended-use: display", "keeping: isopropanol, opening: left whole"),
        ["bat-fresh"] = ("sample", "group: bat\nmass: 7.5 g\nhead-body-length: 46 mm\ncondition: fresh\ndied-at: 2027-03-01T05:00+00:00", ""),
        ["goby-lot"] = (Shore, "group: bony-fish\nmass: 3.1 g\ntotal-length: 62 mm\nstandard-length: 51 mm\ncount: 14\ncondition: chilled", "fixative: borax-buffered formalin 10 %"),
        ["cod-in-formalin"] = ("sample", "group: bony-fish\nmass: 2.3 kg\ntotal-length: 62 cm\ncondition: frozen", "keeping: formalin"),
        ["ray-small"] = (Shore, "group: ray\nmass: 300 g\ndisc-width: 22 cm\ntotal-length: 39 cm\ncondition: fresh\ndied-at: 2027-03-01T11:30+00:00", ""),
        ["eel-in-isopropanol"] = ("sample", "group: eel\nmass: 310 g\ntotal-length: 58 cm\ncondition: chilled", "keeping: isopropanol"),
        ["wren-slit"] = (Bare, "group: bird\nmass: 9 g\ncondition: fresh\nlife-stage: adult", "opening: slit, keeping: formalin"),
        ["gull"] = ("sample", "group: bird\nmass: 920 g\ntotal-length: 58 cm\ncondition: frozen\nlife-stage: adult\nintended-use: display", ""),
        ["adder-long"] = ("sample", "group: snake\nmass: 410 g\nsnout-vent-length: 82 cm\ntotal-length: 95 cm\ncondition: chilled\nlife-stage: adult", ""),
        ["frog"] = (Shore, "group: frog\nmass: 24 g\nsnout-vent-length: 63 mm\ncondition: fresh\nlife-stage: adult", "keeping: formalin"),
        ["terrapin"] = (Bare, "group: turtle\nmass: 640 g\ncarapace-length: 16 cm\ncondition: chilled\nlife-stage: adult", "opening: injected"),
        ["whelk"] = (Shore, "group: gastropod\nmass: 55 g\nlength: 7 cm\ncondition: fresh", ""),
        ["squid-large"] = (Shore, "group: squid\nmass: 480 g\nmantle-length: 24 cm\ncondition: frozen", "keeping: formalin"),
        ["sponge-strong"] = ("sample", "group: sponge\nmass: 120 g\nlength: 11 cm\nwidth: 8 cm\nheight: 6 cm\ncondition: fresh", "fixative: ethanol 95 %vol"),
        ["jellyfish"] = ("sample", "group: jellyfish\nmass: 200 g\ndisc-width: 12 cm\ncondition: fresh", ""),
        ["spider-lot"] = ("sample", "group: arachnid\nmass: 0.4 g\nlength: 11 mm\ncount: 12\ncondition: fresh", ""),
        ["crab"] = (Shore, "group: crab\nmass: 400 g\ncarapace-length: 9 cm\ncondition: chilled", "route: formalin first"),
        ["sea-star"] = (Bare, "group: sea-star\nmass: 90 g\ndisc-width: 16 cm\ncondition: fresh", "fixative: ethanol 70 %vol"),
        ["earthworm"] = (Bare, "group: earthworm\nmass: 4.2 g\nlength: 14 cm\ncount: 3\ncondition: fresh", "fixative: formalin 5 %"),
    }.ToImmutableDictionary(StringComparer.Ordinal);

    public static TheoryData<string> Names => [.. Cases.Keys.Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Plan_reads_as_it_was_kept(string name) => KeptText.Holds($"Planning/kept/{name}.txt", TextSheet.Write(PlanOf(name)));

    private static Plan PlanOf(string name)
    {
        var (bench, animal, choices) = Cases[name];
        var specimen = Read($"""
            format: 1
            specimen: KEPT-{name}
            found-on: 2027-02-28
            where: Skerry Point, an invented shore
            how-obtained: found dead
            collected-by: A. Nobody
            {animal}
            """);
        var chosen = choices.Split(", ", StringSplitOptions.RemoveEmptyEntries).Select(c => c.Split(": ")).ToImmutableSortedDictionary(c => c[0], c => c[1], StringComparer.Ordinal);
        var made = new Planner(Shelf.Bundled()).Plan(new(specimen, bench == "sample" ? SampleBench() : Bench(bench), Monday) { Choices = chosen });
        Assert.True(made.Value is not null, string.Join('\n', made.Findings));
        return made.Value!;
    }
}
