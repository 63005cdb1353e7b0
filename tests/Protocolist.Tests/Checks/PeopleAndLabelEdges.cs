using Protocolist.Checks;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Plans;
using Protocolist.Protocols;
using UnitsNet;
using static Protocolist.Tests.Checks.Cases;
using static Protocolist.Tests.Checks.Edge;

namespace Protocolist.Tests.Checks;

/// <summary>The limits of the checks that keep people from harm, and of those about labels.</summary>
internal static class PeopleAndLabelEdges
{
    public static Edge[] All =>
    [
        Warns("flammable-quantity", ["the plan makes 37.9 L of flammable alcohol; the most is 37.85 L"], () => Made(37.9), () => Made(37.8)),
        Warns("flammable-quantity", ["29 CFR 1910.106(d)(3)"], () => Made(227.2), () => Made(227)),
        Warns("stored-flammables", ["shelf and order together hold 230 L", "227 L is the most in one storage cabinet"], () => Stored(230, 0, 0), () => Stored(227, 0, 0)),
        Warns("stored-formaldehyde", ["some places ask for notice"], () => Stored(0, 0, 226.8), () => Stored(0, 21, 226.7)),
        Warns("above-flash-point", ["'house' opens 5 L", "at 18 °C; it flashes from 21 °C, give or take 3"], () => Warm(18), () => Warm(17.9)),
        Warns("lone-work", ["one person works here, and 'fix' pours 5 L of formalin, where 5 L is much for one"], () => Alone(1), () => Alone(2)),
        Warns("ventilation-unknown", ["'fix' opens 1 L of neutral buffered formalin 10 %"], () => Unaired(1), () => Unaired(0.999)),
        Warns("label-date-not-iso", ["3.4.2027"], () => Found("found 3.4.2027"), () => Found("found 2027.4")),
        Warns("above-flash-point", ["'strong' opens 6 L of ethanol 75 %vol"], () => Opened(("half", 5.5), ("strong", 6), ("house", 5)), () => Opened(("half", 6.5), ("strong", 6), ("house", 5))),
        Warns("above-flash-point", ["'house' opens 5 L"], () => Opened(("house", 5)), () => Opened(("house", 4.99))),
        Warns("above-flash-point", ["'house' opens 5 L"], () => Opened(("house", 5)), () => Opened(("house", 5)).Fluid("house", "ethanol 4 %vol")),
        Warns("bleach-or-acid-near-formalin", ["'bottle', Sodium Hypochlorite 10 %"], () => Good.Shelf_holds(Bottle("Sodium Hypochlorite 10 %")), () => Good.Shelf_holds(Bottle("sodium chloride 10 %"))),
        Warns("bleach-or-acid-near-formalin", ["hydrochloric acid 10 %"], () => Good.Shelf_holds(Bottle("hydrochloric acid 10 %")), () => Good.Shelf_holds(Bottle("acetic acid 10 %"))),
        Warns("bleach-or-acid-near-formalin", ["muriatic acid"], () => Good.Shelf_holds(Bottle("muriatic acid")), () => Good.Shelf_holds(Bottle("muriatic acid")).Fluid("fix", "ethanol 80 %vol")),
        Warns("bleach-or-acid-near-formalin", ["potassium permanganate"], () => Good.Shelf_holds(Bottle("potassium permanganate")), () => Good.Shelf_holds(Bottle("potassium nitrate"))),
        Warns("flammable-quantity", ["outside a cabinet in one laboratory"], () => Mixed(("ethanol 70 %vol", 37.86)), () => Mixed(("ethanol 70 %vol", 37.85))),
        Warns("flammable-quantity", ["the plan makes 40 L"], () => Mixed(("ethanol 70 %vol", 20), ("ethanol 50 %vol", 20)), () => Mixed(("ethanol 70 %vol", 20), ("neutral buffered formalin 10 %", 20))),
        Warns("flammable-quantity", ["in one storage cabinet"], () => Mixed(("ethanol 70 %vol", 227.13)), () => Mixed(("ethanol 70 %vol", 227.12))),
        Warns("flammable-quantity", ["in containers outside a store room or cabinet"], () => Mixed(("ethanol 70 %vol", 454.3)), () => Mixed(("ethanol 70 %vol", 454.2))),
        Warns("flammable-quantity", ["the plan makes 50 L"], () => Mixed(("ethanol 70 %vol", 50)), () => Mixed(("ethanol 4 %vol", 50)).Fluid("half", "ethanol 4 %vol")),
        Warns("formaldehyde-in-the-air", ["OSHA 29 CFR 1910.1048"], () => Aired(2, 0.2, false), () => Aired(2, 0.2, true)),
        Notes("formaldehyde-in-the-air", ["in the hood"], () => Aired(2, 0.2, true), () => Aired(2, 0.2, false)),
        Warns("formaldehyde-in-the-air", ["ppm of formaldehyde"], () => Aired(2, 0.2, false), () => Aired(2, 0, false)),
        Warns("formaldehyde-in-the-air", ["in 'house'"], () => Aired(2, 0.2, false).Fluid("house", "formaldehyde 8 % w/v"), () => Aired(2, 0.2, false)),
        Warns("formalin-to-the-drain", ["'spent' drains fluid"], () => Drained(Good), () => Drained(Good).Fluid("fix", "ethanol 80 %vol")),
        Warns("formalin-to-the-drain", ["'spent' drains fluid"], () => Drained(Good), () => Drained(Good).Step("spent", s => s with { Kind = StageKind.Sample, Work = Protocolist.Plans.PlainWork.Instance })),
        Warns("formalin-to-the-drain", ["a plan with 3 L of formalin"], () => Drained(Good).Fluid("half", "neutral buffered formalin 10 %").Step("half", s => s with { Volume = Volume.FromLiters(1) }).Step("fix", s => s with { Volume = Volume.FromLiters(2) }), () => Drained(Good).Step("fix", s => s with { Volume = Volume.FromLiters(2) })),
        Warns("formalin-without-hood", ["'fix' injects formalin, which sprays back"], () => Injects(s => s with { Volume = null }), () => Injects(s => s with { Kind = StageKind.Immerse })),
        Warns("formalin-without-hood", ["'fix' injects"], () => Injects(s => s), () => Injects(s => s).Fluid("fix", "ethanol 80 %vol")),
        Warns("formalin-without-hood", ["'fix' injects"], () => Injects(s => s), () => Injects(s => s).On(b => b with { Air = null })),
        Warns("lone-work", ["'house' has a vessel of 23.01 kg, where 23 kg is the most for one"], () => Load(23.01), () => Load(23)),
        Warns("lone-work", ["'fix'"], () => Alone(1), () => Alone(1).Step("fix", s => s with { Volume = Volume.FromLiters(4.99) })),
        Warns("lone-work", ["'fix' injects formalin"], () => Alone(1).Step("fix", s => s with { Kind = StageKind.Inject, Volume = Volume.FromLiters(0.1) }), () => Alone(1).Fluid("fix", "ethanol 80 %vol").Step("fix", s => s with { Kind = StageKind.Inject })),
        Warns("lone-work", ["'strong' has a vessel of 30 kg, where 23 kg is the most for one; 1 more step asks as much"], () => Load(30, "fix", "wash", "half", "strong", "house"), () => Load(30, "fix", "wash")),
        Warns("stored-flammables", ["hold 37.86 L of flammable liquid; 37.85 L is the most outside a cabinet in one laboratory"], () => Stored(37.86, 0, 0), () => Stored(37.85, 0, 0)),
        Warns("stored-flammables", ["hold 227.13 L of flammable liquid; 227.12 L is the most in one storage cabinet"], () => Stored(227.13, 0, 0), () => Stored(227.12, 0, 0)),
        Warns("stored-flammables", ["454 L is the most in containers outside a store room or cabinet"], () => Stored(455, 0, 0), () => Stored(454.2, 0, 0)),
        Warns("stored-flammables", ["shelf and order together"], () => Stored(455, 0, 0), () => Stored(455, 0, 0).Fluid("half", "tap water").Fluid("strong", "tap water").Fluid("house", "tap water")),
        Warns("stored-formaldehyde", ["belongs in a ventilated store"], () => Stored(0, 20.01, 0), () => Stored(0, 20, 0)),
        Warns("stored-formaldehyde", ["belongs in a ventilated store"], () => Stored(0, 21, 8), () => Stored(0, 21, 8).Fluid("fix", "ethanol 80 %vol")),
        Warns("stored-formaldehyde", ["hold 226.8 kg of formaldehyde in all, and from 226.8 kg on"], () => Stored(0, 20, 226.797), () => Stored(0, 21, 226.797)),
        Warns("stored-formaldehyde", ["some places ask for notice"], () => Stored(0, 600, 226.797), () => Stored(0, 600, 226.795)),
        Warns("ventilation-unknown", ["'house' opens 3 L"], () => Unaired(2).Fluid("house", "neutral buffered formalin 5 %").Step("house", s => s with { Volume = Volume.FromLiters(3) }), () => Unaired(2)),
        Fails("waste-without-destination", ["1 L of ethanol 70 %vol from 'strong' (flammable alcohol) has nowhere to go"], () => Thrown(""), () => Thrown("the alcohol drum")),
        Fails("waste-without-destination", ["of neutral buffered formalin 10 % from 'fix' goes nowhere"], () => Unbooked("fix"), () => Good),
        Fails("waste-without-destination", ["of ethanol 75 %vol from 'strong' goes nowhere"], () => Unbooked("strong"), () => Unbooked("strong").Fluid("strong", "tap water")),
        Fails("waste-without-destination", ["from 'strong' goes nowhere"], () => Unbooked("strong"), () => Unbooked("strong").Step("strong", s => s with { Volume = null })),
        Fails("waste-without-destination", ["from 'strong' goes nowhere"], () => Unbooked("strong"), () => Unbooked("strong").Written(p => p with { Fluids = [new FluidMove(Fluid.Ethanol(75), Volume.FromLiters(1), new(FluidPlaceKind.Step, "strong"), new(FluidPlaceKind.Waste, Destination: Message.Text("drum")))] })),
        Fails("waste-without-destination", ["from 'strong' goes nowhere"], () => Unbooked("strong"), () => Unbooked("strong").Step("strong", s => s with { Kind = StageKind.House })),
        Fails("label-incomplete", ["the plan has no label"], () => Good.Written(p => p with { Label = [] }), () => Good),
        Warns("label-incomplete", ["the label lacks the date"], () => Undated(null), () => Undated(new(2027, 3, 1))),
        Warns("label-incomplete", ["the label lacks the date"], () => Undated(null), () => Undated(null).Specimen(s => s with { DiedAt = Fish.DiedAt })),
        Warns("label-incomplete", ["the label lacks the collector"], () => Good.Specimen(s => s with { CollectedBy = " " }), () => Good),
        Warns("label-incomplete", ["the label lacks the place"], () => Good.Specimen(s => s with { Where = null }), () => Good),
        Warns("label-incomplete", ["the label lacks the scientific name"], () => Good.Specimen(s => s with { ScientificName = null }), () => Good),
        Warns("label-incomplete", ["the label lacks the date, the fluid (ethanol 71 %vol)"], () => Undated(null).Fluid("house", "ethanol 71 %vol"), () => Undated(null)),
        Fails("formalin-flag-missing", ["the label has no line FORMALIN"], () => Flagged("formalin inside"), () => Flagged("FORMALIN")),
        Warns("label-date-not-iso", ["holds the date 12/31/27"], () => Found("found 12/31/27"), () => Found("found 2027-12-31")),
        Warns("label-date-not-iso", ["the label's 'A. Nobody 1.2.27' holds"], () => Good.Specimen(s => s with { CollectedBy = "A. Nobody 1.2.27" }), () => Good),
        Warns("label-inside-and-outside", ["no step labels what 'house' puts away"], () => Good.Without("label"), () => Good.Without("label").Without("house")),
        Warns("label-media", ["'label' asks for ball-point pen"], () => Writes("ball-point pen"), () => Writes("soft pencil")),
        Warns("label-media", ["'label' asks for thermal print"], () => Writes("thermal print"), () => Writes("carbon ink")),
        Warns("label-media", ["'label' asks for inkjet print"], () => Writes("inkjet print"), () => Writes("")),
    ];

    private static ReviewCase Made(double litres) => Mixed(("ethanol 70 %vol", litres));

    private static ReviewCase Mixed(params (string Fluid, double Litres)[] all) =>
        Good.Written(p => p with { Recipes = [.. all.Select(m => Booked.Recipe(m.Fluid, m.Litres))] });

    private static ReviewCase Stored(double flammable, double stock, double formaldehydeKg) =>
        Good with { Stored = new(Volume.FromLiters(flammable), Volume.FromLiters(stock), Mass.FromKilograms(formaldehydeKg)) };

    private static ReviewCase Warm(double celsius) => Good.Step("house", s => s with { Volume = Volume.FromLiters(5) })
        .On(b => b with { Temperatures = b.Temperatures with { Room = Temperature.FromDegreesCelsius(celsius) } });

    private static ReviewCase Opened(params (string Step, double Litres)[] all) =>
        all.Aggregate(Good, (p, o) => p.Step(o.Step, s => s with { Volume = Volume.FromLiters(o.Litres) }));

    private static ReviewCase Alone(int people) => Good.On(b => b with { People = people }).Step("fix", s => s with { Volume = Volume.FromLiters(5) });

    /// <summary>One person, and vessels of so many kg.</summary>
    private static ReviewCase Load(double kilograms, params string[] steps) => (steps.Length == 0 ? ["house"] : steps)
        .Aggregate(Good.On(b => b with { People = 1 }), (p, id) => p.Step(id, s => s with { Vessel = Good.House!.Vessel! with { TotalMass = Mass.FromKilograms(kilograms) } }));

    private static ReviewCase Unaired(double litres) => Good.On(b => b with { Air = null }).Step("fix", s => s with { Volume = Volume.FromLiters(litres) });

    private static ReviewCase Aired(double roomM3, double changes, bool hood) =>
        Good.On(b => b with { Air = new(Volume.FromCubicMeters(roomM3), changes, hood) });

    private static ReviewCase Injects(Func<ReviewStep, ReviewStep> change) =>
        Good.On(b => b with { Air = b.Air! with { HasHood = false } }).Step("fix", s => change(s with { Kind = StageKind.Inject }));

    private static ReviewCase Drained(ReviewCase plan) => plan.Step("spent", s => s with { Work = new Protocolist.Plans.DiscardWork("fix", SpentTo.Find("drained where local rules allow")) });

    private static ReviewCase Thrown(string destination) =>
        Good.Written(p => p with { Waste = [.. p.Waste, Booked.Ethanol("strong", destination)] });

    /// <summary>A step whose fluid is in no book.</summary>
    private static ReviewCase Unbooked(string step) =>
        Good.Written(p => p with { Waste = [.. p.Waste.Where(w => w.Step != step)], Fluids = [.. p.Fluids.Where(f => f.From.Step != step)] });

    private static ReviewCase Labelled(string line) => Good.Written(p => p with { Label = [.. p.Label, Said.Of(line)] });

    private static ReviewCase Flagged(string line) => Labelled(line).Fluid("house", "neutral buffered formalin 10 %");

    private static ReviewCase Found(string where) => Good.Specimen(s => s with { Where = where });

    private static ReviewCase Undated(NodaTime.LocalDate? found) => Good.Specimen(s => s with { FoundOn = found, DiedAt = null });

    private static ReviewCase Writes(string medium) => Good.Step("label", s => s with { Work = new LabelWork([], LabelMedium.Find(medium)) });
}
