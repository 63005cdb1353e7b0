using Protocolist.Benches;
using Protocolist.Checks;
using Protocolist.Fluids;
using Protocolist.Specimens;
using Protocolist.Vessels;
using UnitsNet;
using static Protocolist.Tests.Checks.Cases;

namespace Protocolist.Tests.Checks;

/// <summary>Checks that are made while body, vessel, recipe and dates are worked out: each tripped by a plan that the passes themselves make.</summary>
internal static class PlanningRows
{
    public static Row[] All =>
    [
        new("ambiguous-formalin-strength", () => With("formalin 10 %", "formalin 4 %"), () => With("formalin 10 %", "formalin 9 %")),
        new("armour-closed", () => Mussel(""), () => Mussel("  - {stage: slit, id: open, places: [body], length: 5 mm, depth: 5 mm, count: 1}\n")),
        new("closure-not-for-keeping", () => Closed(Closure.LooseLid), () => Closed(Closure.ScrewLid)),
        new("lacking-and-not-for-sale", () => Ethanol("100 mL", ""), () => Ethanol("100 mL", "{size: 5 L, price: 40 EUR}")),
        new("no-dates-fit", () => Of(Read("hours: {wed: 08:00 to 18:00}\n")), () => Of(Read("hours: {mon-sun: 08:00 to 18:00}\n"))),
        new("ratio-too-high", () => Jar(v => v with { Shape = new VesselShape.Cylinder(Length.FromCentimeters(40), Length.FromCentimeters(40)) }), () => Jar(v => v with { Shape = new VesselShape.Cylinder(Length.FromCentimeters(7.5), Length.FromCentimeters(18)) })),
        new("sealed-vessel-builds-pressure", () => Hot(60), () => Hot(35)),
        new("step-runs-over", () => OneDay("2027-03-02"), () => OneDay("2027-12-25")),
        new("stock-missing", () => Ethanol("0 L", ""), () => Ethanol("9 L", "")),
        new("vessel-material-not-for-keeping", () => Made(VesselMaterial.Pet), () => Made(VesselMaterial.Glass)),
        new("vessel-too-heavy-for-shelf", () => On(b => b with { ShelfBears = Mass.FromKilograms(2.5) }), () => On(b => b with { ShelfBears = Mass.FromKilograms(5) })),
        new("change-while-closed", () => Changed("wed"), () => Changed("tue-wed")),
        new("waits-for-delivery", () => Waits(9), () => Waits(0)),
        new("inspection-gap", () => Open("2027-03-06 to 2027-03-09"), () => Open("2027-12-25")),
        new("vessel-too-heavy-to-lift", () => Tub(3), () => Tub(0.04)),
        new("measurements-contradict", () => Of(Fish with { Mass = Mass.FromGrams(150) }), () => Good),
        new("core-out-of-reach", () => Of(Heavy(40)), () => Good),
    ];

    private static ReviewCase On(Func<Bench, Bench> change) => Of(change(Cases.Bench));

    private static ReviewCase Jar(Func<Vessel, Vessel> change) => On(b => b with { Vessels = [.. b.Vessels.Select(change)] });

    private static ReviewCase Closed(Closure closure) => Jar(v => v with { Closure = closure });

    private static ReviewCase Made(VesselMaterial wall) => Jar(v => v with { Wall = wall });

    private static ReviewCase Hot(double celsius) => On(b => b with { Temperatures = b.Temperatures with { Hottest = Temperature.FromDegreesCelsius(celsius) } });

    /// <summary>A mussel in formalin, shut or wedged open.</summary>
    private static ReviewCase Mussel(string opened) => Of($$"""
        format: 1
        protocol: trial
        revision: 1
        title: Trial
        for: {group: animal}
        stages:
        {{opened}}  - {stage: immerse, id: fix, fluid: neutral buffered formalin 10 %, ratio: 10, last: 2 d}
          - {stage: house, id: house, fluid: ethanol 70 %vol, ratio: 5}
        """, new() { Id = "T-2", Group = "bivalve", Mass = Mass.FromGrams(20), Length = Length.FromMillimeters(55) }, Cases.Bench);

    /// <summary>So much ethanol on the shelf, and what packs it comes in; the case asks for about two litres of it.</summary>
    private static ReviewCase Ethanol(string onHand, string packs) => Of(Read($$"""
        currency: EUR
        stock:
          - {fluid: ethanol 96 %vol, on-hand: {{onHand}}, packs: [{{packs}}]}
          - {fluid: neutral buffered formalin 10 %, on-hand: 20 L}
          - {fluid: distilled water, on-hand: 50 L}
        """));

    /// <summary>A soak of a day and no more, on a bench that is closed on one.</summary>
    private static ReviewCase OneDay(string closed) => Of("""
        format: 1
        protocol: trial
        revision: 1
        title: Trial
        for: {group: animal}
        stages:
          - {stage: immerse, id: fix, fluid: neutral buffered formalin 10 %, ratio: 10, last: 24 h}
          - {stage: house, id: house, fluid: neutral buffered formalin 10 %, ratio: 5}
        """, Fish with { Condition = Condition.Fresh }, Read($"hours: {{mon-sun: 08:00 to 18:00}}\nclosed: [{closed}]\n"));

    /// <summary>Two days of soaking from Monday on, with one change, on a bench that is open on Monday and on these days.</summary>
    private static ReviewCase Changed(string days) => Of("""
        format: 1
        protocol: trial
        revision: 1
        title: Trial
        for: {group: animal}
        stages:
          - {stage: immerse, id: fix, fluid: neutral buffered formalin 10 %, ratio: 10, last: 2 d, changes: 1}
          - {stage: house, id: house, fluid: neutral buffered formalin 10 %, ratio: 5}
        """, Fish with { Condition = Condition.Fresh }, Read($"hours: {{mon: 08:00 to 10:00, {days}: 08:00 to 10:00}}\n"));

    /// <summary>A jar that is filled with what comes after so many days.</summary>
    private static ReviewCase Waits(int days) => Of("""
        format: 1
        protocol: trial
        revision: 1
        title: Trial
        for: {group: animal}
        stages:
          - {stage: immerse, id: fix, fluid: neutral buffered formalin 10 %, ratio: 10, last: 24 h to 90 d}
          - {stage: house, id: house, fluid: ethanol 70 %vol, ratio: 5}
        """, Fish with { Condition = Condition.Fresh }, Read($$"""
        currency: EUR
        stock:
          - {fluid: ethanol 96 %vol, on-hand: 0 L, packs: [{size: 5 L, price: 40 EUR, lead: {{days}} d}]}
          - {fluid: neutral buffered formalin 10 %, on-hand: 20 L}
          - {fluid: distilled water, on-hand: 50 L}
        """));

    /// <summary>Open every day but these.</summary>
    private static ReviewCase Open(string closed) => Of(Read($"hours: {{mon-sun: 08:00 to 18:00}}\nclosed: [{closed}]\n"));

    private static Bench Read(string yaml) => Planning.PlanFixture.Bench("zone: UTC\npeople: 2\n" + yaml);

    /// <summary>A large fish, in a tub that takes it.</summary>
    private static ReviewCase Tub(double kilograms) => Of(TrialProtocol, Heavy(kilograms), Cases.Bench with
    {
        Vessels = [new("tub", "tub", new VesselShape.Box(Length.FromCentimeters(110), Length.FromCentimeters(60), Length.FromCentimeters(50)), VesselMaterial.Polypropylene, 9) { EmptyMass = Mass.FromKilograms(5) }, .. Cases.Bench.Vessels],
    });

    private static Specimen Heavy(double kilograms) => Fish with { Mass = Mass.FromKilograms(kilograms), TotalLength = null };
}
