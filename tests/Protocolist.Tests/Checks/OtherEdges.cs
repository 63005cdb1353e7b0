using Protocolist.Checks;
using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Protocols;
using Protocolist.Specimens;
using UnitsNet;
using static Protocolist.Tests.Checks.Cases;
using Duration = NodaTime.Duration;

namespace Protocolist.Tests.Checks;

/// <summary>The limits of the checks about body, vessel, time, stock, law and people.</summary>
internal static class OtherEdges
{
    public static Edge[] All =>
    [
        Warns("hold-too-long", ["'cold' holds it for 3.5 d", "at 8 degC; 3 d is the most"], () => Held(84, 8), () => Held(72, 8)),
        Warns("hold-too-long", ["at 8.1 degC; 24 h is the most"], () => Held(25, 8.1), () => Held(24, 8.1)),
        Warns("thawed-is-held", ["'cold' holds it for another 25 h"], () => Thawed(25), () => Thawed(24)),
        Warns("too-late-after-death", ["3 d is the most for a body that came chilled"], () => Dead(Condition.Chilled, 73), () => Dead(Condition.Chilled, 72)),
        Warns("too-late-after-death", ["12 h is the most for a body that came unchilled"], () => Dead(Condition.Fresh, 13), () => Dead(Condition.Fresh, 12)),
        Warns("too-late-after-death", ["3 d is the most"], () => Dead(Condition.Thawed, 73), () => Dead(Condition.Frozen, 900)),
        Warns("thick-and-uncut", ["goes whole into 'fix'"], () => BodyRows.Whole(1.001), () => BodyRows.Whole(1)),
        Warns("thick-and-uncut", ["goes whole into 'fix'"], () => BodyRows.Whole(2), () => BodyRows.Whole(2).Step("pose", s => s with { Kind = StageKind.Inject })),
        Fails("bloated-not-vented", ["nothing opens it before 'fix'"], () => Bloated(Good.Without("slit")), () => Bloated(Good)),
        Fails("frozen-without-thaw", ["no step thaws it before 'fix'"], () => Frozen(Good), () => Frozen(Good.Step("cold", Thaws))),
        Fails("frozen-without-thaw", ["'cold' comes after 'fix'"], () => Frozen(Good.Step("cold", Thaws).Last("cold")), () => Frozen(Good.Step("cold", Thaws))),
        Warns("posture-not-set", ["'pose' comes after 'fix'"], () => Good.Last("pose"), () => Good),
        Warns("posture-not-set", ["no step sets its posture before 'fix'"], () => For(Good.Without("pose"), IntendedUse.Teaching), () => For(Good.Without("pose"), IntendedUse.Research)),
        Warns("fixation-shorter-than-penetration", ["at the least and perhaps"], () => Good.Lasts("fix", Duration.FromHours(Good.Fixation!.Time.LowHours - 0.01)), () => Good.Lasts("fix", Duration.FromHours(Good.Fixation!.Time.LowHours + 0.01))),
        Fails("ratio-too-low", ["gives 2.9 volumes", "3 is the least"], () => Ratio(2.9), () => Ratio(3)),
        Warns("ratio-too-low", ["gives 3.0 volumes", "5 to 10 is usual"], () => Ratio(3), () => Ratio(4.99)),
        Warns("ratio-too-low", ["gives 4.8 volumes"], () => Changed(Ratio(2.4)), () => Changed(Ratio(2.5))),
        Notes("tank-glass-to-measure", ["holds 30", "the long ones ask"], () => VesselAndTimeRows.Tank(300, null), () => VesselAndTimeRows.Tank(300, 8)),
        Fails("glass-too-thin", ["the long panes of 2 L jar are", "safety factor is 3.7 where 3.8 is wanted"], () => Pane(0.99), () => Pane(1)),
        Warns("joint-load", ["500 mm is the most without"], () => VesselAndTimeRows.Tank(501, 20), () => VesselAndTimeRows.Tank(500, 20)),
        Warns("no-time-to-cure", ["'seal' seals with silicone in 23 h", "24 h open is the least"], () => Sealed(23), () => Sealed(24)),
        Warns("nobody-watches", ["'fix' lasts 3", "nobody looks"], () => Unwatched(73), () => Unwatched(72)),
        Warns("care-round-missing", ["every 13 months; 12 is the most"], () => Round(13), () => Round(12)),
        Warns("care-round-missing", ["nothing comes again after 'house'"], () => Round(null), () => Round(12)),
        Notes("first-look-missing", ["nobody measures it before"], () => Looked(63), () => Looked(62)),
        Warns("long-day", ["18 h of hands-on work of 2 people"], () => Works(16.5), () => Works(12)),
        Warns("flammable-quantity", ["the plan makes 37.9", "the most is 37.9 L"], () => Made(37.9), () => Made(37.8)),
        Warns("flammable-quantity", ["29 CFR 1910.106(d)(3)"], () => Made(227.2), () => Made(227)),
        Warns("stored-flammables", ["shelf and order together hold 230 L", "227 L is the most in one storage cabinet"], () => Stored(230, 0, 0), () => Stored(227, 0, 0)),
        Warns("stored-formaldehyde", ["some places ask for notice"], () => Stored(0, 0, 226.8), () => Stored(0, 21, 226.7)),
        Warns("above-flash-point", ["'house' opens 5 L", "at 18 degC; it flashes from 21 degC, give or take 3"], () => Warm(18), () => Warm(17.9)),
        Warns("lone-work", ["one person works here, and 'fix' injects, pours or lifts"], () => Alone(1), () => Alone(2)),
        Warns("ventilation-unknown", ["'fix' opens 1 L of neutral buffered formalin 10 %"], () => Unaired(1), () => Unaired(0.999)),
        Warns("parasites-on-body", ["tapeworm"], () => Good.Group("carnivore"), () => Good.Group("rodent")),
        Notes("parasites-on-body", ["ticks, fleas and lice"], () => Good.Group("bird"), () => Good.Group("carnivore")),
        Warns("parasites-on-body", ["tapeworm"], () => Good.Group("carnivore"), () => Good.Group("carnivore").Step("cold", s => s with { Step = s.Step with { Cautions = ["Mind the ticks."] } })),
        Fails("anthrax-signs", ["fits anthrax"], () => Told("bled; blood from the nose"), () => Told("no blood from the nose")),
        Warns("unknown-cause-of-death", ["'slit' opens it"], () => Found("found dead"), () => Found("found dead in a net")),
        Warns("unknown-cause-of-death", ["nothing says what it died of"], () => Found("found dead in a cabinet"), () => Found("found dead, hit by a car")),
        Warns("label-date-not-iso", ["3.4.2027"], () => Labelled("found 3.4.2027"), () => Labelled("found 2027.4")),
        Warns("inspection-gap", ["one of 3 such gaps in 'fix'"], () => Gaps(3), () => Gaps(1)),
        Warns("vessel-too-heavy-to-lift", ["so in 'fix', 'wash'"], () => Heavy("fix", "wash"), () => Heavy("fix")),
    ];

    private static Edge Warns(string id, string[] says, Func<ReviewCase> past, Func<ReviewCase> before) => new(id, Severity.Warning, says, past, before);

    private static Edge Fails(string id, string[] says, Func<ReviewCase> past, Func<ReviewCase> before) => new(id, Severity.Error, says, past, before);

    private static Edge Notes(string id, string[] says, Func<ReviewCase> past, Func<ReviewCase> before) => new(id, Severity.Note, says, past, before);

    private static ReviewCase Held(double hours, double celsius) =>
        Good.Lasts("cold", Duration.FromHours(hours)).On(b => b with { Temperatures = b.Temperatures with { Cold = Temperature.FromDegreesCelsius(celsius) } });

    private static ReviewCase Thawed(double hours) => Good.Specimen(s => s with { Condition = Condition.Thawed }).Lasts("cold", Duration.FromHours(hours));

    private static ReviewCase Dead(Condition condition, double hours) =>
        Good.Specimen(s => s with { Condition = condition, DiedAt = Good.FirstFixing!.Step.Start!.Value.ToInstant() - Duration.FromHours(hours) });

    private static ReviewCase Bloated(ReviewCase plan) => plan.Specimen(s => s with { Condition = Condition.Bloated });

    private static ReviewCase Frozen(ReviewCase plan) => plan.Specimen(s => s with { Condition = Condition.Frozen });

    private static ReviewStep Thaws(ReviewStep step) => step with { Kind = StageKind.Thaw };

    private static ReviewCase For(ReviewCase plan, IntendedUse use) => plan.Specimen(s => s with { IntendedUse = use });

    private static ReviewCase Ratio(double ratio) => Good.Step("fix", s => s with { Vessel = s.Vessel! with { Ratio = ratio }, Step = s.Step with { Changes = 0 } });

    private static ReviewCase Changed(ReviewCase plan) => plan.Step("fix", s => s with { Step = s.Step with { Changes = 1 } });

    private static ReviewCase Pane(double share)
    {
        var tank = VesselAndTimeRows.Tank(400, 8);
        return VesselAndTimeRows.Tank(400, tank.Tank!.Value!.LongPane!.Required.Millimeters * share);
    }

    private static ReviewCase Sealed(double hours) =>
        Good.Lasts("seal", Duration.FromHours(hours)).Step("seal", s => s with { Details = s.Details.SetItem("closure", "neutral-cure silicone") });

    private static ReviewCase Unwatched(double hours) => Good.Lasts("fix", Duration.FromHours(hours)).Step("fix", s => s with { WatchEvery = null });

    private static ReviewCase Round(int? months) => Good.Written(p => p with { Care = [new("look", null, months, "")] });

    private static ReviewCase Looked(int days) => Good.Written(p => p with { Care = [new("look", p.End!.Value.Date.PlusDays(days), 6, "")] });

    private static ReviewCase Works(double hours) => Good.Step("slit", s => s with { Step = s.Step with { HandsOn = Duration.FromHours(hours) } });

    private static ReviewCase Made(double litres) => Good.Written(p => p with { Recipes = [new Recipe("ethanol 70 %vol", Volume.FromLiters(litres), [], [], ["house"])] });

    private static ReviewCase Stored(double flammable, double stock, double formaldehydeKg) =>
        Good with { Stored = new(Volume.FromLiters(flammable), Volume.FromLiters(stock), Mass.FromKilograms(formaldehydeKg)) };

    private static ReviewCase Warm(double celsius) => Good.Step("house", s => s with { Step = s.Step with { Volume = Volume.FromLiters(5) } })
        .On(b => b with { Temperatures = b.Temperatures with { Room = Temperature.FromDegreesCelsius(celsius) } });

    private static ReviewCase Alone(int people) => Good.On(b => b with { People = people }).Step("fix", s => s with { Step = s.Step with { Volume = Volume.FromLiters(5) } });

    private static ReviewCase Unaired(double litres) => Good.On(b => b with { Air = null }).Step("fix", s => s with { Step = s.Step with { Volume = Volume.FromLiters(litres) } });

    private static ReviewCase Told(string notes) => Good.Group("mammal").Specimen(s => s with { Notes = notes });

    private static ReviewCase Found(string how) => Good.Group("mammal").Specimen(s => s with { HowObtained = how });

    private static ReviewCase Labelled(string line) => Good.Written(p => p with { Label = [.. p.Label, line] });

    private static ReviewCase Gaps(int count) =>
        Good with { Earlier = [.. Enumerable.Range(1, count).Select(i => Finding.Warning("inspection-gap", $"nobody can look on day {i}", "come in") with { Subject = "fix" })] };

    private static ReviewCase Heavy(params string[] steps) =>
        Good with { Earlier = [.. steps.Select(s => Finding.Warning("vessel-too-heavy-to-lift", "'tub-90' weighs 60 kg full", "fill it where it stands") with { Subject = s })] };
}
