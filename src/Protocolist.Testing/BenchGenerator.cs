using System.Globalization;
using FsCheck;
using FsCheck.Fluent;

namespace Protocolist.Testing;

/// <summary>
/// Generates bench files: zones on both sides of the clock changes, short and long weeks, full and empty shelves, jars and tubs. All of it invented.
/// </summary>
public static class BenchGenerator
{
    private static readonly string[] Zones =
    [
        "UTC", "Atlantic/Azores", "Europe/Berlin", "America/St_Johns", "Asia/Kathmandu", "Australia/Lord_Howe", "Pacific/Apia",
    ];

    private static readonly string[][] Weeks =
    [
        [],
        ["mon-fri: 08:30 to 18:00", "sat: 09:00 to 13:00"],
        ["mon-fri: 08:00 to 12:00, 13:00 to 17:00"],
        ["tue: 10:00 to 18:00", "thu-fri: 07:30 to 16:00"],
        ["mon-sun: 06:00 to 22:00"],
        ["mon-wed: 09:00 to 15:00"],
    ];

    private static readonly (string Name, string Unit, string[] Packs)[] Shelf =
    [
        ("fluid: formaldehyde stock 37 %mass", "L", ["{size: 5 L, price: 31.00 EUR, lead: 3 d}", "{size: 1 L, price: 9.50 EUR}"]),
        ("fluid: ethanol 96 %vol", "L", ["{size: 5 L, price: 42.00 EUR}", "{size: 20 L, price: 140.00 EUR, lead: 4 d}"]),
        ("fluid: isopropanol 99.8 %vol", "L", ["{size: 5 L, price: 27.00 EUR}"]),
        ("fluid: distilled water", "L", ["{size: 10 L, price: 6.00 EUR}"]),
        ("salt: sodium dihydrogen phosphate, hydrate: monohydrate", "kg", ["{size: 500 g, price: 14.00 EUR}"]),
        ("salt: disodium phosphate, hydrate: anhydrous", "kg", ["{size: 500 g, price: 15.50 EUR}"]),
        ("salt: borax", "kg", ["{size: 1 kg, price: 8.00 EUR}"]),
    ];

    private static readonly string[] Vessels =
    [
        "{id: jar-100, inside: {diameter: 45 mm, height: 70 mm}, wall: glass, lid: polypropylene, closure: screw-lid, count: 24}",
        "{id: jar-250, inside: {diameter: 6 cm, height: 9 cm}, wall: glass, lid: polypropylene, seal: polyethylene, closure: screw-lid, count: 24}",
        "{id: jar-1000, inside: {diameter: 9 cm, height: 16 cm}, wall: glass, lid: polypropylene, seal: polyethylene, closure: screw-lid, count: 12}",
        "{id: jar-4000, inside: {diameter: 14 cm, height: 26 cm}, wall: glass, lid: polypropylene, closure: screw-lid, count: 6}",
        "{id: tray-10, inside: {length: 40 cm, width: 25 cm, height: 12 cm}, wall: polypropylene, closure: loose-lid, count: 3}",
        "{id: tub-60, inside: {length: 80 cm, width: 35 cm, height: 25 cm}, wall: polyethylene, closure: loose-lid, count: 2}",
        "{id: tub-150, inside: {length: 130 cm, width: 40 cm, height: 30 cm}, wall: polypropylene, lid: polypropylene, closure: loose-lid, count: 1}",
        "{id: tank-1, inside: {length: 135 cm, width: 40 cm, height: 45 cm}, wall: glass, lid: glass, seal: neutral-silicone, closure: sealed-plate, count: 1}",
        "{id: tank-2, inside: {length: 180 cm, width: 70 cm, height: 70 cm}, wall: glass, lid: glass, closure: sealed-plate, count: 1}",
    ];

    /// <summary>Bench files that read without an error.</summary>
    public static Arbitrary<FileSketch> Valid { get; } = Arb.From(
        from zone in Gen.Elements(Zones)
        from week in Gen.Elements(Weeks)
        from closed in Gen.Choose(0, 700).ArrayOf()
        from stock in Gen.CollectToArray(Shelf, Item)
        from vessels in Gen.SubListOf(Vessels)
        from room in Gen.Choose(12, 28)
        from prices in Gen.Elements(true, true, false)
        select new FileSketch("bench.yaml",
        [
            new("format: 1", IsNeeded: true),
            new("bench: invented", IsNeeded: true),
            new($"zone: {zone}", IsNeeded: true) { Simpler = zone == "UTC" ? [] : ["zone: UTC"] },
            .. List("hours:", week.Select(w => "  " + w)),
            .. List("closed:", closed.Take(6).Select(Fortnight)),
            new("holidays: [12-25, 01-01]"),
            new($"temperatures: {{room: {room.ToString(CultureInfo.InvariantCulture)} degC, cold: 4 degC, coldest: 8 degC, hottest: 30 degC}}"),
            .. prices
                ? [new("currency: EUR", IsNeeded: true), new("labour: 18 EUR/h"), new("disposal: {formaldehyde: 3.20 EUR/L, alcohol: 1.10 EUR/L}")]
                : (SketchEntry[])[],
            .. List("stock:", stock.Where(i => i.Length > 0)),
            .. List("vessels:", vessels.Select(v => $"  - {v}")),
        ]),
        s => s.Shrink());

    /// <summary>Bench files with a few characters wrong.</summary>
    public static Arbitrary<string> NearlyValid { get; } = Arb.From(
        from file in Valid.Generator from damaged in Damage.Of(file.Text) select damaged,
        Damage.Shrink);

    private static SketchEntry[] List(string head, IEnumerable<string> items) => [.. items.Take(1).Select(_ => new SketchEntry(head) { Items = [.. items] })];

    /// <summary>Up to a fortnight closed, somewhere in the two years that starts fall into.</summary>
    private static string Fortnight(int day)
    {
        var first = new DateOnly(2027, 1, 1).AddDays(day);
        return string.Create(CultureInfo.InvariantCulture, $"  - {first:yyyy-MM-dd} to {first.AddDays(day % 14):yyyy-MM-dd}");
    }

    private static Gen<string> Item((string Name, string Unit, string[] Packs) line) =>
        from isThere in Gen.Elements(true, true, true, true, false)
        from tenths in Gen.Choose(0, 300)
        from packs in Gen.Elements<string[]>(line.Packs, line.Packs, [])
        from age in Gen.Elements("", "", "", ", opened: 2026-11-02", ", expires: 2027-09-30")
        let amount = (tenths / 10m).ToString(CultureInfo.InvariantCulture)
        let sale = packs.Length == 0 ? "" : $", packs: [{string.Join(", ", packs)}]"
        select isThere ? $"  - {{{line.Name}, on-hand: {amount} {line.Unit}{age}{sale}}}" : "";
}
