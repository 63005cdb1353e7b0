using Protocolist.Checks;
using Protocolist.Findings;
using Protocolist.Protocols;
using Protocolist.Specimens;
using UnitsNet;
using static Protocolist.Tests.Checks.Cases;
using static Protocolist.Tests.Checks.Edge;
using Duration = NodaTime.Duration;

namespace Protocolist.Tests.Checks;

/// <summary>The limits of the checks about the body.</summary>
internal static class BodyEdges
{
    public static Edge[] All =>
    [
        Warns("hold-too-long", ["'cold' holds it for 3.5 d", "at 8 °C; 3 d is the most"], () => Held(84, 8), () => Held(72, 8)),
        Warns("hold-too-long", ["at 8.1 °C; 24 h is the most"], () => Held(25, 8.1), () => Held(24, 8.1)),
        Warns("thawed-is-held", ["'cold' holds it for another 25 h"], () => Thawed(25), () => Thawed(24)),
        Warns("too-late-after-death", ["3 d is the most for a body that came chilled"], () => Dead(Condition.Chilled, 73), () => Dead(Condition.Chilled, 72)),
        Warns("too-late-after-death", ["12 h is the most for a body that came unchilled"], () => Dead(Condition.Fresh, 13), () => Dead(Condition.Fresh, 12)),
        Warns("too-late-after-death", ["3 d is the most"], () => Dead(Condition.Chilled, 73), () => Dead(Condition.Frozen, 900)),
        Warns("too-late-after-death", ["3 d 1 h after death; 3 d is the most"], () => Dead(Condition.Chilled, 73), () => Dead(Condition.Thawed, 900)),
        Warns("hold-too-long", ["at 15 °C; 24 h is the most"], () => Kept("15 degC", 25), () => Kept("15 degC", 24)),
        Warns("hold-too-long", ["25 h"], () => Kept("15 degC", 25), () => Kept("4 degC", 25)),
        Warns("hold-too-long", ["do not freeze it again"], () => Held(84, 4).Specimen(s => s with { Condition = Condition.Thawed }), () => Held(84, 4)),
        Warns("thick-and-uncut", ["goes whole into 'fix'"], () => BodyRows.Whole(1.001), () => BodyRows.Whole(1)),
        Warns("thick-and-uncut", ["goes whole into 'fix'"], () => BodyRows.Whole(2), () => BodyRows.Whole(2).Step("pose", s => s with { Kind = StageKind.Inject })),
        Fails("bloated-not-vented", ["nothing opens it before 'fix'"], () => Bloated(Good.Without("slit")), () => Bloated(Good)),
        Fails("frozen-without-thaw", ["no step thaws it before 'fix'"], () => Frozen(Good), () => Frozen(Good.Step("cold", Thaws))),
        Fails("frozen-without-thaw", ["'cold' comes after 'fix'"], () => Frozen(Good.Step("cold", Thaws).Last("cold")), () => Frozen(Good.Step("cold", Thaws))),
        Warns("posture-not-set", ["'pose' comes after 'fix'"], () => Good.Last("pose"), () => Good),
        Warns("posture-not-set", ["no step sets its posture before 'fix'"], () => For(Good.Without("pose"), IntendedUse.Teaching), () => For(Good.Without("pose"), IntendedUse.Research)),
        Warns("fixation-too-short", ["at the least and perhaps"], () => Good.Lasts("fix", Duration.FromHours(Good.Fixation!.Time.LowHours - 0.01)), () => Good.Lasts("fix", Duration.FromHours(Good.Fixation!.Time.LowHours + 0.01))),
        Warns("thawed-is-held", ["'cold' holds it for another 25 h"], () => Thawed(25), () => Held(25, 4)),
        Warns("too-late-after-death", ["judge by sight and smell"], () => Dead(Condition.Chilled, 289), () => Dead(Condition.Chilled, 288)),
        Warns("too-late-after-death", ["judge by sight and smell"], () => Dead(Condition.Fresh, 49), () => Dead(Condition.Fresh, 48)),
        Warns("too-late-after-death", ["after death"], () => Dead(Condition.Bloated, 13), () => Dead(Condition.Bloated, 13).Specimen(s => s with { DiedAt = null })),
        Fails("core-out-of-reach", ["told (and 1 more part of the body)"], () => Good.Told("core-may-rot").Told("core-will-rot", Severity.Error), () => Good.Told("core-will-rot", Severity.Error)),
        Warns("core-out-of-reach", ["told (and 2 more parts of the body)"], () => Good.Told("core-may-rot").Told("core-may-rot").Told("core-may-rot"), () => Good.Told("core-may-rot").Told("core-may-rot")),
        Warns("measurements-contradict", ["told"], () => Good.Told("mass-against-displacement"), () => Good.Told("size-reckoned")),
        Warns("measurements-contradict", ["told"], () => Good.Told("girth-against-mass"), () => Good.Told("size-reckoned")),
        Warns("measurements-contradict", ["told"], () => Good.Told("thickness-against-mass"), () => Good.Told("size-reckoned")),
        Warns("measurements-contradict", ["told"], () => Good.Told("lot-heavier-than-its-animals"), () => Good.Told("size-reckoned")),
        Warns("measurements-contradict", ["told"], () => Good.Told("two-lengths"), () => Good.Told("size-reckoned")),
        Fails("out-of-class", ["'trial' is for the group 'fish', and this is a snail"], () => With("group: animal", "group: fish").Group("gastropod"), () => With("group: animal", "group: fish")),
        Fails("out-of-class", ["its mass, 39 g"], () => Class("mass: 40 g to 1 kg", b => b with { Mass = Known(b.Mass, UnitsNet.Mass.FromGrams(39)) }), () => Class("mass: 40 g to 1 kg", b => b with { Mass = Known(b.Mass, UnitsNet.Mass.FromGrams(40)) })),
        Fails("out-of-class", ["its length, 160 mm"], () => Class("length: 150 mm to 160 mm", b => b with { Length = Known(b.Length, Length.FromMillimeters(160)) }), () => Class("length: 150 mm to 160 mm", b => b with { Length = Known(b.Length, Length.FromMillimeters(159.9)) })),
        Fails("out-of-class", ["its half-thickness, 20 mm"], () => Class("half-thickness: 1 mm to 20 mm", b => b with { HalfThickness = Known(b.HalfThickness, Length.FromMillimeters(20)) }), () => Class("half-thickness: 1 mm to 20 mm", b => b with { HalfThickness = Known(b.HalfThickness, Length.FromMillimeters(19.9)) })),
        Fails("out-of-class", ["its volume, 50 mL"], () => Class("volume: 10 mL to 50 mL", b => b with { Volume = Known(b.Volume, Volume.FromMilliliters(50)) }), () => Class("volume: 10 mL to 50 mL", b => b with { Volume = Known(b.Volume, Volume.FromMilliliters(49.9)) })),
        Notes("out-of-class", ["measure the mass"], () => Class("mass: 40 g to 1 kg", b => b with { Mass = Guessed(b.Mass, UnitsNet.Mass.FromGrams(39), UnitsNet.Mass.FromGrams(50), UnitsNet.Mass.FromGrams(60)) }), () => Class("mass: 40 g to 1 kg", b => b with { Mass = Guessed(b.Mass, UnitsNet.Mass.FromGrams(40), UnitsNet.Mass.FromGrams(50), UnitsNet.Mass.FromGrams(999)) })),
        Notes("out-of-class", ["measure the mass"], () => Class("mass: 40 g to 1 kg", b => b with { Mass = Guessed(b.Mass, UnitsNet.Mass.FromGrams(41), UnitsNet.Mass.FromGrams(50), UnitsNet.Mass.FromGrams(1000)) }), () => Class("mass: 40 g to 1 kg", b => b with { Mass = Known(b.Mass, UnitsNet.Mass.FromGrams(50)) })),
        Notes("out-of-class", ["measure the thickness"], () => Class("half-thickness: 1 mm to 20 mm", b => b with { HalfThickness = Guessed(b.HalfThickness, Length.FromMillimeters(5), Length.FromMillimeters(6), Length.FromMillimeters(20.1)) }), () => Class("half-thickness: 1 mm to 20 mm", b => b with { HalfThickness = Guessed(b.HalfThickness, Length.FromMillimeters(5), Length.FromMillimeters(6), Length.FromMillimeters(19.9)) })),
        Fails("bloated-not-vented", ["nothing opens it before 'fix'"], () => Bloated(Good.Last("slit")), () => Good.Last("slit")),
        Warns("bloated-not-vented", ["is never opened before 'fix'"], () => Bloated(Good.Without("slit")).Group("jellyfish"), () => Good.Without("slit").Group("jellyfish")),
        Warns("decomposed", ["38 mL of it would be fixed whole"], () => Good.Specimen(s => s with { Condition = Condition.Decomposed }), () => Bloated(Good)),
        Warns("frozen-twice", ["refrozen on board"], () => Good.Specimen(s => s with { HowObtained = "refrozen on board" }), () => Good.Specimen(s => s with { HowObtained = "never refrozen" })),
        Warns("fixation-too-short", ["it lies 11 h in fixative"], () => Film(0.9, 11), () => Film(0.9, 12)),
        Warns("fixation-too-short", ["it lies 12 h in fixative"], () => Film(1, 12), () => Film(0.99, 12)),
        Warns("fixation-too-short", ["it lies 24 h in fixative"], () => Good.Lasts("fix", Duration.FromHours(24)), () => Good.Lasts("fix", Duration.FromHours(24)).Fluid("house", "neutral buffered formalin 10 %")),
        Warns("fixation-too-short", ["it lies 38 h in fixative"], () => Good.Lasts("fix", Duration.FromHours(19)).Lasts("half", Duration.FromHours(19)).Step("half", s => s with { Kind = StageKind.Immerse }), () => Good.Lasts("fix", Duration.FromHours(20)).Lasts("half", Duration.FromHours(20)).Step("half", s => s with { Kind = StageKind.Immerse })),
        Warns("posture-not-set", ["no step sets its posture before 'fix'"], () => For(Good.Without("pose"), IntendedUse.Display), () => For(Good, IntendedUse.Display)),
        Warns("colour-not-recorded", ["nothing before 'fix' records its colours"], () => Recorded(Coverage.Tissue), () => Recorded(Coverage.Tissue | Coverage.Colours)),
        Warns("colour-not-recorded", ["nothing before 'fix' records its colours"], () => Good.Without("record"), () => Recorded(Coverage.Colours)),
        Notes("many-in-one-vessel", ["51 animals share"], () => Lot(51, 4.99), () => Lot(51, 5)),
        Notes("many-in-one-vessel", ["51 animals share"], () => Lot(51, 4.9), () => Lot(50, 4.9)),
        Warns("thick-and-uncut", ["goes whole into 'fix'"], () => BodyRows.Whole(2), () => BodyRows.Whole(2).Step("pose", s => s with { Kind = StageKind.Slit })),
    ];

    private static ReviewCase Held(double hours, double celsius) =>
        Good.Lasts("cold", Duration.FromHours(hours)).On(b => b with { Temperatures = b.Temperatures with { Cold = Temperature.FromDegreesCelsius(celsius) } });

    /// <summary>Held so long where the protocol says at what temperature; the bench's own cold is 4 °C.</summary>
    private static ReviewCase Kept(string temperature, double hours) => With("id: cold, last", $"id: cold, temperature: {temperature}, last").Lasts("cold", Duration.FromHours(hours));

    private static ReviewCase Thawed(double hours) => Good.Specimen(s => s with { Condition = Condition.Thawed }).Lasts("cold", Duration.FromHours(hours));

    private static ReviewCase Dead(Condition condition, double hours) =>
        Good.Specimen(s => s with { Condition = condition, DiedAt = Good.FirstFixing!.Step.Start!.Value.ToInstant() - Duration.FromHours(hours) });

    private static ReviewCase Bloated(ReviewCase plan) => plan.Specimen(s => s with { Condition = Condition.Bloated });

    private static ReviewCase Frozen(ReviewCase plan) => plan.Specimen(s => s with { Condition = Condition.Frozen });

    private static ReviewStep Thaws(ReviewStep step) => step with { Kind = StageKind.Thaw };

    private static ReviewCase For(ReviewCase plan, IntendedUse use) => plan.Specimen(s => s with { IntendedUse = use });

    /// <summary>A protocol for other sizes, and a body of other measures.</summary>
    private static ReviewCase Class(string limits, Func<BodyMeasure, BodyMeasure> change)
    {
        var plan = With("mass: 1 mg to 100 kg", limits);
        return plan with { Body = change(plan.Body) };
    }

    private static Estimate<T> Known<T>(Estimate<T> estimate, T value)
        where T : struct => estimate with { Nominal = value, IsMeasured = true };

    private static Estimate<T> Guessed<T>(Estimate<T> estimate, T low, T nominal, T high)
        where T : struct => estimate with { Low = low, Nominal = nominal, High = high, IsMeasured = false };

    /// <summary>So little to cross, and so long in fixative.</summary>
    private static ReviewCase Film(double depthMm, double hours) =>
        Good.Lasts("fix", Duration.FromHours(hours)) with { Fixation = Good.Fixation! with { Slowest = Good.Fixation.Slowest with { DepthMm = depthMm } } };

    private static ReviewCase Recorded(Coverage covers) => Good.Step("record", s => s with { Covers = covers });

    private static ReviewCase Lot(int count, double ratio) => Good.Specimen(s => s with { Count = count }).Step("house", s => s with { Vessel = s.Vessel! with { Ratio = ratio } });
}
