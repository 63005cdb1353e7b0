using NodaTime;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Specimens;

namespace Protocolist.Tests.Planning.Revising;

/// <summary>A small invented bench and two animals, with plans of them.</summary>
internal static class SkerryPoint
{
    public static readonly DateTimeZone Zone = DateTimeZoneProviders.Tzdb["Atlantic/Azores"];
    public static readonly Shelf Shelf = Shelf.Bundled();

    public static readonly Bench Bench = Read(BenchReader.Read(new("bench.yaml", """
        format: 1
        bench: skerry-point
        name: Wet laboratory
        zone: Atlantic/Azores
        hours: {mon-fri: "08:30 to 18:00", sat: "09:00 to 13:00"}
        closed: [2027-03-29 to 2027-04-02]
        currency: EUR
        labour: 18 EUR/h
        stock:
          - {fluid: formaldehyde stock 37 %mass, id: formalin, on-hand: 60 L, packs: [{size: 5 L, price: 31.00 EUR, lead: 3 d}]}
          - {fluid: ethanol 96 %vol, id: ethanol, on-hand: 8 L, packs: [{size: 5 L, price: 42.00 EUR, lead: 2 d}]}
          - {fluid: distilled water, id: still, on-hand: 900 L}
          - {salt: sodium dihydrogen phosphate, hydrate: monohydrate, id: acid, on-hand: 9 kg}
          - {salt: disodium phosphate, hydrate: anhydrous, id: basic, on-hand: 9 kg}
        vessels:
          - {id: tub, name: 120 L tub, inside: {length: 130 cm, width: 40 cm, height: 30 cm}, wall: polypropylene, lid: polypropylene, closure: loose-lid, count: 1}
          - {id: tank, name: display tank, inside: {length: 135 cm, width: 40 cm, height: 45 cm}, wall: glass, lid: glass, seal: neutral-silicone, closure: sealed-plate, count: 1}
          - {id: jar-4, name: 4 L jar, inside: {diameter: 14 cm, height: 26 cm}, wall: glass, lid: polypropylene, seal: polyethylene, closure: screw-lid, count: 6}
        """), DateTimeZoneProviders.Tzdb));

    /// <summary>The same bench elsewhere.</summary>
    public static Bench BenchIn(string zone) =>
        Bench with { Opening = Protocolist.Benches.OpeningHours.Create(DateTimeZoneProviders.Tzdb[zone], Bench.Opening.Weekly).Value! };

    public static readonly Specimen Otter = Read(SpecimenReader.Read(new("otter.yaml", """
        format: 1
        specimen: SKP-2027-014
        group: mammal
        mass: 7.2 kg
        head-body-length: 75 cm
        total-length: 118 cm
        condition: chilled
        died-at: 2027-02-28T16:00+00:00
        found-on: 2027-02-28
        where: Skerry Point
        collected-by: I. Varga
        """)));

    public static readonly Specimen Wrasse = Read(SpecimenReader.Read(new("wrasse.yaml", """
        format: 1
        specimen: SKP-2027-021
        group: bony-fish
        mass: 82 g
        standard-length: 15.5 cm
        total-length: 18.4 cm
        condition: fresh
        found-on: 2027-03-02
        where: Skerry Point
        collected-by: M. Okafor
        """)));

    public static Plan Plan(Specimen specimen, string start = "2027-03-01T09:00", Bench? bench = null, LocalDate? by = null) =>
        Read(new Planner(Shelf).Plan(new(specimen, bench ?? Bench, NodaTime.Text.LocalDateTimePattern.GeneralIso.Parse(start + ":00").Value) { By = by }));

    public static Checked<WorkLog> Log(string entries, string specimen = "SKP-2027-014") =>
        LogReader.Read(new("log.yaml", $"format: 1\nlog: {specimen}\nentries:\n{entries}\n"), Zone);

    public static Revision Revise(Plan plan, string entries) => Read(new Planner(Shelf).Revise(plan, Read(Log(entries, plan.Specimen.Id)), new PreparedBench(Bench)));

    public static T Read<T>(Checked<T> read)
        where T : class
    {
        Assert.True(read.Value is not null, string.Join("; ", read.Findings));
        return read.Value;
    }
}
