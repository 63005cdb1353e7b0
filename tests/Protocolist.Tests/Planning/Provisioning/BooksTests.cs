using System.Globalization;
using System.Text;
using Protocolist.Benches;
using Protocolist.Fluids;
using Protocolist.Plans;
using Protocolist.Quantities;
using Protocolist.Reading;

namespace Protocolist.Tests.Planning.Provisioning;

/// <summary>Everything that is drawn, made, bought, poured off and paid for in small plans of one protocol on benches that differ.</summary>
public class BooksTests
{
    private static readonly Shelf Shelf = PlanFixture.Shelf(("booked-fish", "{group: bony-fish, mass: 20 g to 2 kg}", """
        stages:
          - {stage: sample, id: sample}
          - {stage: thaw, id: rinse-off, fluid: tap water, last: 1 h}
          - {stage: slit, id: cut, places: [abdomen], length: 2 cm}
          - {stage: inject, id: dose, fluid: neutral buffered formalin 10 %, dose: 60 mL/kg * specimen.mass, hands-on: 30 min}
          - {stage: immerse, id: fix, fluid: neutral buffered formalin 10 %, ratio: 10, last: 10 d to 20 d, changes: 1, watch: {every: 5 d, signs: {soft: re-inject}}, source: common practice}
          - {stage: discard, id: spent, of: fix, to: collected as hazardous waste}
          - {stage: wash, id: wash, fluid: tap water, ratio: 8, last: 1 d, changes: 2}
          - {stage: wash, id: wash-again, fluid: tap water, ratio: 8, last: 1 d}
          - {stage: bath, id: bath, fluid: ethanol 50 %vol, ratio: 8, last: 2 d}
          - {stage: mount, id: mount, "on": glass plate}
          - {stage: house, id: house, fluid: ethanol 70 %vol, ratio: 3}
          - {stage: seal, id: seal, closure: neutral-cure silicone}
          - {stage: label, id: label, fields: [name]}
          - {stage: inspect, id: look, every: 180 d}
        """));

    private const string Rooms = """
        zone: UTC
        vessels:
          - {id: tray, name: tray, inside: {length: 40 cm, width: 25 cm, height: 12 cm}, wall: polypropylene, closure: loose-lid, count: 3}
          - {id: jar-4, name: 4 L jar, inside: {diameter: 14 cm, height: 26 cm}, wall: glass, lid: polypropylene, seal: polyethylene, closure: screw-lid, count: COUNT, price: 12 EUR, lead: 4 d}

        """;

    private const string Full = """
        currency: EUR
        labour: 18 EUR/h
        disposal: {formaldehyde: 3.20 EUR/L, alcohol: 1.10 EUR/L}
        waste:
          containers: {formaldehyde: drum F1, flammable-alcohol: can A1, dilute-alcohol: can A2, contaminated-solids: {name: bin G1, holds: 100, price: 20 EUR}, sharps: {name: box S1, holds: 60, price: 9 EUR}}
          drains: {rinse-water: water authority note 12}
          keep-fixative: {in: carboy R1, uses: 3}
        stock:
          - {fluid: formaldehyde stock 37 %mass, id: strong, on-hand: 300 mL, opened: 2027-01-01, packs: [{size: 1 L, price: 9.50 EUR, lead: 3 d}]}
          - {fluid: neutral buffered formalin 8 %, id: kept, on-hand: 2 L, uses: 1, ph: 7.1, clear: yes, uses-allowed: 3}
          - {fluid: ethanol 96 %vol, id: e96, on-hand: 2 L, packs: [{size: 5 L, price: 40 EUR, lead: 2 d}, {size: 1 L, price: 10 EUR, lead: 1 d}]}
          - {fluid: distilled water, id: still, on-hand: 5 L, packs: [{size: 10 L, price: 6 EUR}]}
          - {salt: sodium dihydrogen phosphate, hydrate: monohydrate, id: acid, on-hand: 900 g, worth: 20 EUR/kg}
          - {salt: disodium phosphate, hydrate: anhydrous, id: basic, on-hand: 10 g, packs: [{size: 100 g, price: 5 EUR}]}
          - {salt: disodium phosphate, hydrate: dodecahydrate, id: basic-wet, on-hand: 200 g, packs: [{size: 500 g, price: 15 EUR}]}
          - {consumable: "nitrile gloves, pair", id: gloves, by-the-pair: yes, on-hand: 4, packs: [{size: 50, price: 6.50 EUR, lead: 2 d}]}
          - {consumable: needle 20 G, id: needle-20, on-hand: 40, worth: 0.09 EUR/piece}
          - {consumable: needle 18 G, id: needle-18, on-hand: 40, worth: 0.13 EUR/piece}
          - {consumable: syringe 10 mL, id: syringe-10, on-hand: 1, worth: 0.40 EUR/piece}
          - {consumable: scalpel blade, id: blade, on-hand: 3, worth: 0.30 EUR/piece}
          - {consumable: sample tube, id: tube, on-hand: 0, packs: [{size: 25, price: 5 EUR}]}
          - {tool: forceps, id: forceps, on-hand: 1}
          - {tool: splash goggles, id: goggles, on-hand: 2, worth: 12 EUR/piece, lasts-uses: 10, used-so-far: 9}
          - {tool: lab coat, id: coat, on-hand: 1, worth: 30 EUR/piece, lasts-uses: 200}
          - {consumable: silicone sealant, id: silicone, on-hand: 1, worth: 6 EUR/piece}

        """;

    private const string Half = """
        currency: EUR
        exchange-rates: {USD: 0.9}
        stock:
          - {fluid: ethanol 96 %vol, id: e96, on-hand: 500 mL, packs: [{size: 1 L, price: 9 USD, lead: 2 d}]}
          - {fluid: ethanol 60 %vol, id: e60, on-hand: 700 mL}
          - {fluid: ethanol 96 %vol, id: old, on-hand: 9 L, expires: 2027-02-01}
          - {fluid: formaldehyde stock 37 %mass, id: strong, on-hand: 100 mL}
          - {tool: splash goggles, id: goggles, on-hand: 0, lasts-uses: 5, packs: [{size: 1, price: 7 GBP}]}

        """;

    [Fact]
    public void A_full_bench_was_read_and_kept() => Keep("full", Rooms.Replace("COUNT", "2", StringComparison.Ordinal) + Full);

    [Fact]
    public void A_bench_with_half_of_it_was_read_and_kept() => Keep("half", Rooms.Replace("COUNT", "0", StringComparison.Ordinal) + Half);

    [Fact]
    public void A_bare_bench_was_read_and_kept() => Keep("bare", "zone: UTC\n");

    private static Plan Made(string bench)
    {
        var made = PlanFixture.Plan(PlanFixture.Read("""
            format: 1
            specimen: X-7
            group: bony-fish
            mass: 300 g
            standard-length: 22 cm
            condition: fresh
            found-on: 2027-02-28
            where: an invented shore
            collected-by: A. Nobody
            """), Shelf, bench);
        Assert.True(made.Value is not null, string.Join('\n', made.Findings));
        return made.Value!;
    }

    private static void Keep(string name, string bench)
    {
        var plan = Made(bench);
        var text = new StringBuilder();
        Head("steps");
        foreach (var s in plan.Steps)
            Line($"{s.Id}: {(s.Volume is { } v ? $"{Ml(v)} of {s.Fluid}" : "no fluid")}; {string.Join(", ", s.Materials.Select(m => $"{m.Id} = {m.HowMuch} {m.Name} ({m.FromWords})"))}");
        Head("what a step's volume comes from");
        foreach (var f in plan.Figures.Where(f => f.Id.EndsWith(".volume", StringComparison.Ordinal)))
            Line($"{f.Id} = {f.Value}: {f.Formula}; of {string.Join(", ", f.Inputs)}; source {f.Source}");
        Head("recipes");
        foreach (var r in plan.Recipes)
            Line($"{Ml(r.Volume)} of {r.Name} for {string.Join(", ", r.For)}: {string.Join(", ", r.Parts.Select(p => $"{(p.Volume is { } v ? Ml(v) : string.Create(CultureInfo.InvariantCulture, $"{p.Mass.Grams:0.00} g"))} {p.Name} [{p.Stock}]"))}");
        Head("materials");
        foreach (var m in plan.Materials)
            Line($"{m.Id} ({Lower(m.Kind)}) {m.Name}: on hand {In(m.OnHand)} + bought {In(m.Bought)} = used {In(m.Used)} + left {In(m.Left)} {Units[(int)m.Used.Kind]}; unusable {In(m.Unusable)}, reserve {In(m.Reserve)}, uses {m.Uses}; drawn {string.Join(" + ", m.Draws.Select(d => $"{In(d.Amount)} {(d.Stock.Length > 0 ? d.Stock : EnumWords<MaterialOrigin>.Of(d.From))}"))}; for {string.Join(", ", m.For)}");
        Head("purchases");
        foreach (var p in plan.Purchases) Line($"{p.Count} x {p.Pack} of {p.Item}, {p.Price?.ToString() ?? "no price"}, {p.LeadDays} d; for {string.Join(", ", p.For)}");
        Head("waste");
        foreach (var w in plan.Waste) Line($"{w.From}: {w.What}, {(w.Amount.Kind == AmountKind.Count ? $"{w.Amount.Units} pieces" : Ml(w.Amount.Volume))}, {w.ClassWords}: {EnumWords<WasteWay>.Of(w.Way)}, {w.Destination}; uses {w.Uses}");
        Head("moves");
        foreach (var m in plan.Fluids) Line($"{Ml(m.Volume)} of {m.Fluid}{(m.ForImmersion ? ", for immersion" : "")}: {m.Words(m.From)} -> {m.Words(m.To)}");
        Head("costs");
        var c = plan.Costs;
        Line($"cash {Of(c.Cash)}, used {Of(c.Used)}, labour {Of(c.Labour)}, disposal {Of(c.Disposal)} ({string.Join(", ", c.DisposalByClass.Select(d => $"{EnumWords<WasteClass>.Of(d.Class)} {d.Cost}"))}), wear {Of(c.Wear)}, left {Of(c.LeftOnShelf)}, total {Of(c.Total)}, each {Of(c.BySpecimen)}");
        Line($"care in a year: labour {Of(c.CareLabourByYear)}, fluid {Of(c.CareFluidByYear)} ({(c.TopUpByYear is { } t ? Ml(t) : "-")}), both {Of(c.CareByYear)}; over ten years {Of(c.OverTenYears)}");
        Head("spent");
        Line($"{string.Join(" ", plan.Step("spent")!.Instructions)}");
        Head("findings");
        foreach (var f in plan.Findings.Where(f => Ours.Contains(f.Id))) text.Append(CultureInfo.InvariantCulture, $"  {f.Severity.ToString().ToLowerInvariant()} {f.Id}{(f.Subject.Length > 0 ? $" at {f.Subject}" : "")}\n    {f.Message.ToString()}\n    remedy: {f.Remedy.ToString()}\n");
        KeptText.Holds($"Planning/Provisioning/kept/{name}.txt", text.ToString());

        void Head(string what) => text.Append(CultureInfo.InvariantCulture, $"{what}:\n");
        void Line(FormattableString line) => text.Append("  ").Append(line.ToString(CultureInfo.InvariantCulture)).Append('\n');
        static string Ml(UnitsNet.Volume v) => string.Create(CultureInfo.InvariantCulture, $"{v.Milliliters:0.00} mL");
        static string Of(Money? money) => money?.ToString() ?? "-";
        static decimal In(Amount amount) => amount.Kind == AmountKind.Count ? amount.Units : amount.Units / 1000m;
        static string Lower<T>(T word) => $"{word}".ToLowerInvariant();
    }

    private static readonly string[] Units = ["mL", "g", "pieces"];

    /// <summary>The findings that provisioning makes.</summary>
    private static readonly string[] Ours =
    [
        "lacking-and-not-for-sale", "two-currencies", "packs-in-wider-steps", "ways-not-all-compared", "stock-without-worth", "disposal-without-price", "labour-without-price", "top-up-not-reckoned",
        "unknown-supply", "waste-needs-a-container", "fixative-kept", "not-on-the-bench-list", "vessel-in-use", "absurd-amount", "drained-where-allowed", "stock-expired", "supplies-late", "shortage", "not-enough-stock", "cannot-be-made",
    ];
}
