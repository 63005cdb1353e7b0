using NodaTime;
using Protocolist.Checks;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Protocols;
using Protocolist.Specimens;
using Protocolist.Vessels;
using UnitsNet;
using static Protocolist.Tests.Checks.Cases;
using static Protocolist.Tests.Checks.Edge;
using Duration = NodaTime.Duration;

namespace Protocolist.Tests.Checks;

/// <summary>The limits of the checks about vessels and time.</summary>
internal static class VesselAndTimeEdges
{
    private static readonly Phrase Full = new("a-test", "'{vessel}' weighs {mass:0 kg} full");

    public static Edge[] All =>
    [
        Fails("ratio-too-low", ["gives 2.9 volumes", "3 is the least"], () => Ratio(2.9), () => Ratio(3)),
        Warns("ratio-too-low", ["gives 3 volumes", "5 to 10 is usual"], () => Ratio(3), () => Ratio(4.99)),
        Warns("ratio-too-low", ["gives 4.8 volumes"], () => Changed(Ratio(2.4)), () => Changed(Ratio(2.5))),
        Notes("tank-glass-to-measure", ["holds 30", "the long ones ask"], () => VesselAndTimeRows.Tank(300, null), () => VesselAndTimeRows.Tank(300, 8)),
        Fails("glass-too-thin", ["the long panes of the 2 L jar are", "safety factor is 3.7 where 3.8 is wanted"], () => Pane(0.99), () => Pane(1)),
        Warns("joint-load", ["500 mm is the most without"], () => VesselAndTimeRows.Tank(501, 20), () => VesselAndTimeRows.Tank(500, 20)),
        Warns("no-time-to-cure", ["'seal' seals with silicone in 23 h", "24 h open is the least"], () => Sealed(23), () => Sealed(24)),
        Warns("nobody-watches", ["'fix' lasts 3", "nobody looks"], () => Unwatched(73), () => Unwatched(72)),
        Warns("care-round-missing", ["every 13 months; 12 is the most"], () => Round(13), () => Round(12)),
        Warns("care-round-missing", ["nothing comes again after 'house'"], () => Round(null), () => Round(12)),
        Notes("first-look-missing", ["nobody measures it before"], () => Looked(63), () => Looked(62)),
        Warns("long-day", ["18 h of hands-on work of 2 people"], () => Works(16.5), () => Works(12)),
        Warns("inspection-gap", ["one of 3 such gaps in 'fix'"], () => Gaps(3), () => Gaps(1)),
        Warns("vessel-too-heavy-to-lift", ["so in 'fix', 'wash'"], () => Heavy("fix", "wash"), () => Heavy("fix")),
        Fails("not-submerged", ["on the coldest day"], () => House(v => v with { LevelColdest = v.CoveredTo * 0.998 }), () => House(v => v with { LevelColdest = v.CoveredTo * 0.9995 })),
        Fails("not-submerged", ["no vessel at hand is deep enough for 'house': it stands out"], () => Lacks("house", "vessel-too-shallow"), () => Lacks("house", "vessel-too-shallow", "vessel-too-narrow")),
        Fails("vessel-too-small", ["no vessel at hand will do for 'house'"], () => Lacks("house", "vessel-too-shallow", "vessel-too-narrow"), () => Lacks("house", "vessel-too-shallow")),
        Fails("vessel-too-small", ["for 'fix', 'house': it stands out; it is 2 cm too wide"], () => Lacks(Lacks("fix", "vessel-too-shallow", "vessel-too-narrow"), "house", "vessel-too-shallow", "vessel-too-narrow"), () => Lacks("house", "vessel-too-shallow", "vessel-too-narrow")),
        Fails("vessel-too-small", ["reason 1; reason 2; reason 3"], () => Reasons(4), () => Reasons(2)),
        Notes("vessel-too-small", ["the bench lists no vessel for 'fix', 'house'"], () => Lacks(Lacks("fix", "no-vessel"), "house", "no-vessel").On(b => b with { Vessels = [] }), () => Lacks("house", "no-vessel")),
        Warns("cramped", ["half is the most"], () => House(v => v with { Ratio = 0.999 }), () => House(v => v with { Ratio = 1 })),
        Fails("ratio-too-low", ["is the least"], () => Ratio(2.989), () => Ratio(2.991)),
        Warns("ratio-too-low", ["5 to 10 is usual"], () => Ratio(4.989), () => Ratio(4.991)),
        Warns("ratio-too-low", ["'fix' gives 4 volumes"], () => Ratio(4), () => Ratio(4).Step("fix", s => s with { Kind = StageKind.Bath })),
        Warns("headspace-too-small", ["'house' leaves"], () => Space(0.999), () => Space(1.001)),
        Notes("closure-contradicts-vessel", ["tape"], () => Closes("tape", Closure.ScrewLid), () => Closes("tape", Closure.LooseLid)),
        Notes("closure-contradicts-vessel", ["neutral-cure silicone"], () => Closes("neutral-cure silicone", Closure.SnapLid), () => Closes("neutral-cure silicone", Closure.SealedPlate)),
        Notes("closure-contradicts-vessel", ["ground stopper"], () => Closes("ground stopper", Closure.SealedPlate), () => Closes("ground stopper", Closure.GroundStopper)),
        Notes("closure-contradicts-vessel", ["snap lid"], () => Closes("snap lid", Closure.Open), () => Closes("snap lid", Closure.SnapLid)),
        Notes("closure-contradicts-vessel", ["tape"], () => Closes("tape", Closure.GroundStopper), () => Closes("tape", Closure.Open)),
        Notes("closure-contradicts-vessel", ["silicone"], () => Closes("neutral-cure silicone", Closure.WireBail), () => Closes("wax", Closure.WireBail)),
        Warns("no-time-to-cure", ["'seal' seals with silicone"], () => Sealed(2), () => Sealed(2).Step("seal", s => s with { Covers = Protocolist.Protocols.Coverage.Curing })),
        Warns("no-time-to-cure", ["'seal' seals with silicone"], () => Sealed(2, curesOpen: 23), () => Sealed(2, curesOpen: 24)),
        Warns("no-time-to-cure", ["'seal' seals with silicone"], () => Sealed(2), () => Sealed(2).Step("seal", s => s with { Work = new Protocolist.Plans.SealWork(Sealing.Find("screw lid"), null) })),
        Notes("vessel-material-unknown", ["what the wall and the lid of the 2 L jar are made of"], () => Made(VesselMaterial.Unknown, VesselMaterial.Unknown, Closure.ScrewLid), () => Made(VesselMaterial.Unknown, VesselMaterial.Unknown, Closure.Open)),
        Notes("vessel-material-unknown", ["what the wall of the 2 L jar is made of"], () => Made(VesselMaterial.Unknown, VesselMaterial.Polypropylene, Closure.ScrewLid), () => Made(VesselMaterial.Glass, VesselMaterial.Polypropylene, Closure.ScrewLid)),
        Notes("tank-glass-to-measure", ["under a frame"], () => VesselAndTimeRows.Tank(350, null, 2000), () => VesselAndTimeRows.Tank(350, null, 600)),
        Warns("joint-load", ["the silicone along the", "0.14 MPa is the most"], () => Thin(0.141), () => Thin(0.14)),
        Warns("vessel-too-heavy-to-lift", ["'tub-90' weighs 60 kg full; so in 'fix', 'house'"], () => Weighed(60, 50), () => Weighed(50, 55)),
        Warns("vessel-too-heavy-to-lift", ["'tub-90' weighs 60 kg full; so in 'fix', 'house'"], () => Weighed(50, 60), () => Weighed(50, 60, "tub-91")),
        Warns("nobody-watches", ["'fix' lasts 4 d"], () => Unwatched(96), () => Unwatched(96).Step("fix", s => s with { Kind = StageKind.Bath })),
        Notes("first-look-missing", ["takes up 29 mL of water"], () => Good.Written(p => p with { Care = [new(Message.Text("look"), null, 6, "")] }), () => Good.Written(p => p with { Care = [new(Message.Text("look"), null, 6, "")], End = null })),
        Notes("first-look-missing", ["takes up 29 mL of water"], () => Looked(80), () => Looked(80).Written(p => p with { Care = [.. p.Care, new(Message.Text("look soon"), p.End!.Value.Date.PlusDays(20), null, "")] })),
        Notes("first-look-missing", ["takes up"], () => Looked(80), () => Looked(80).Fluid("house", "neutral buffered formalin 10 %")),
        Warns("care-round-missing", ["every 13 months"], () => Good.Written(p => p with { Care = [new(Message.Text("look"), null, 13, ""), new(Message.Text("look"), null, 24, "")] }), () => Good.Written(p => p with { Care = [new(Message.Text("look"), null, 6, ""), new(Message.Text("look"), null, 24, "")] })),
        Warns("long-day", ["of 2 people"], () => Busy(16.01, 2), () => Busy(16, 2)),
        Warns("long-day", ["of 1 person; 8 h for each is the most"], () => Busy(8.01, 1), () => Busy(8, 1)),
        Warns("supplies-late", ["salts and alcohol are up to 5 days in coming"], () => Bought(("salts", 3, []), ("alcohol", 5, [])), () => Bought(("salts", 0, []), ("alcohol", 5, []))),
        Warns("supplies-late", ["alcohol is 5 days in coming"], () => Bought(("alcohol", 5, ["fix"])), () => Bought(("alcohol", 5, ["house"]))),
        Warns("supplies-late", ["do not freeze it again"], () => Bought(("alcohol", 5, [])).Specimen(s => s with { Condition = Condition.Thawed }), () => Bought(("alcohol", 5, []))),
        Warns("supplies-late", ["ice tears a body of jelly apart"], () => Bought(("alcohol", 5, [])).Group("jellyfish"), () => Bought(("alcohol", 5, []))),
        Warns("supplies-late", ["begin later: keep it frozen until then"], () => Bought(("alcohol", 5, [])).Specimen(s => s with { Condition = Condition.Frozen }), () => Bought(("alcohol", 5, []))),
        Warns("supplies-late", ["told"], () => Bought().Told("delivery-comes-too-late"), () => Bought()),
        Warns("body-waits", ["12 h is the most"], () => Waits(Condition.Fresh, 13), () => Waits(Condition.Fresh, 10)),
        Warns("body-waits", ["24 h is the most"], () => Waits(Condition.Thawed, 23), () => Waits(Condition.Thawed, 22)),
        Warns("body-waits", ["3 d is the most"], () => Waits(Condition.Chilled, 71), () => Waits(Condition.Chilled, 70)),
        Warns("body-waits", ["in a state that nobody noted", "12 h is the most"], () => Waits(null, 13), () => Waits(null, 10)),
        Warns("body-waits", ["that keeps it until then"], () => Waits(Condition.Fresh, 70), () => Waits(Condition.Fresh, 72)),
        Warns("body-waits", ["which is not enough here"], () => Waits(Condition.Fresh, 72), () => Waits(Condition.Fresh, 70)),
        Warns("body-waits", ["ice tears a body of jelly apart"], () => Waits(Condition.Fresh, 13).Group("jellyfish"), () => Waits(Condition.Fresh, 13)),
        Warns("body-waits", ["bristle worms break up in ice"], () => Waits(Condition.Fresh, 13).Group("polychaete"), () => Waits(Condition.Fresh, 13).Group("earthworm")),
        Warns("body-waits", ["bloated, 20 °C in the room"], () => Waits(Condition.Bloated, 13), () => Waits(Condition.Frozen, 13)),
        Warns("body-waits", ["the body"], () => Waits(Condition.Fresh, 13), () => Waits(Condition.Fresh, 13).Step("cold", s => s with { Step = s.Step with { State = Protocolist.Plans.StepState.Done } })),
        Warns("body-waits", ["the body"], () => Waits(Condition.Fresh, 13), () => Waits(Condition.Fresh, 13).Step("fix", s => s with { Step = s.Step with { State = Protocolist.Plans.StepState.Begun } })),
        Warns("body-waits", ["that keeps it until then"], () => Waits(Condition.Fresh, 70.8), () => Waits(Condition.Fresh, 71)),
        Warns("body-waits", ["the body (thawed"], () => Waits(Condition.Thawed, 23).Specimen(s => s with { DiedAt = Fish.DiedAt }), () => Waits(Condition.Thawed, 22).Specimen(s => s with { DiedAt = Fish.DiedAt })),
        Warns("body-waits", ["the body"], () => Waits(Condition.Fresh, 13), () => Waits(Condition.Fresh, 13).Specimen(s => s with { DiedAt = Fish.DiedAt })),
    ];

    private static ReviewCase House(Func<FittedVessel, FittedVessel> change) => Good.Step("house", s => s with { Vessel = change(s.Vessel!) });

    private static ReviewCase Ratio(double ratio) => Good.Step("fix", s => s with { Vessel = s.Vessel! with { Ratio = ratio }, Step = s.Step with { Changes = 0 } });

    private static ReviewCase Changed(ReviewCase plan) => plan.Step("fix", s => s with { Step = s.Step with { Changes = 1 } });

    private static ReviewCase Lacks(string step, params string[] reasons) => Lacks(Good, step, reasons);

    /// <summary>No vessel for a step, for reasons that read as the vessels' own.</summary>
    private static ReviewCase Lacks(ReviewCase plan, string step, params string[] reasons) => plan.Step(step, s => s with
    {
        Vessel = null,
        VesselAdvice = Said.Of("get one 30 cm deep"),
        VesselReasons = [.. reasons.Select(r => Finding.Error(r, Said.Of(r == "vessel-too-shallow" ? "it stands out" : "it is 2 cm too wide"), Said.Of("")))],
    });

    private static ReviewCase Reasons(int count) => Lacks("house").Step("house", s => s with
    {
        VesselReasons = [.. Enumerable.Range(1, count).SelectMany(i => Enumerable.Repeat(Finding.Error("vessel-too-narrow", Said.Of($"reason {i}"), Said.Of("")), 2))],
    });

    /// <summary>Some share of the headspace that the heat of the bench asks for.</summary>
    private static ReviewCase Space(double share)
    {
        var temperatures = Good.Bench.Temperatures;
        var needed = 1 - Headspace.FullestFill(Good.House!.Fluid!.DensityAt, temperatures.Room, temperatures.Hottest);
        return House(v => v with { HeadspaceVolume = v.Vessel.Shape.Inside * needed * share });
    }

    private static ReviewCase Closes(string with, Closure vessel) =>
        House(v => v with { Vessel = v.Vessel with { Closure = vessel } }).Step("seal", s => s with { Work = new Protocolist.Plans.SealWork(Sealing.Find(with), null) });

    private static ReviewCase Made(VesselMaterial wall, VesselMaterial lid, Closure closure) =>
        House(v => v with { Vessel = v.Vessel with { Wall = wall, Lid = lid, Closure = closure } });

    private static ReviewCase Pane(double share)
    {
        var tank = VesselAndTimeRows.Tank(400, 8);
        return VesselAndTimeRows.Tank(400, tank.Tank!.Value!.LongPane!.Required.Millimeters * share);
    }

    /// <summary>Panes so thin that their joints are pulled with so much, or a rounding less; the narrower the joint, the more.</summary>
    private static ReviewCase Thin(double megapascals)
    {
        var tank = VesselAndTimeRows.Tank(400, 8).Tank!.Value!;
        var worst = new[] { tank.LongPane!, tank.EndPane! }.MaxBy(p => p.JointTension!.Value.Pascals)!;
        return VesselAndTimeRows.Tank(400, worst.Stock!.Value.Millimeters * worst.JointTension!.Value.Megapascals / megapascals * (1 + 1e-12));
    }

    private static ReviewCase Sealed(double hours, double curesOpen = 0)
    {
        var closing = Closing.Choose(Good.House!.Vessel!, Fluid.Ethanol(70), openedAgain: false);
        closing = closing with { Way = closing.Way with { CuresOpen = Duration.FromHours(curesOpen) } };
        return Good.Lasts("seal", Duration.FromHours(hours)).Step("seal", s => s with { Work = new Protocolist.Plans.SealWork(Sealing.Find("neutral-cure silicone"), null) { Chosen = closing } });
    }

    private static ReviewCase Unwatched(double hours) => Good.Lasts("fix", Duration.FromHours(hours)).Step("fix", s => s with { WatchEvery = null });

    private static ReviewCase Round(int? months) => Good.Written(p => p with { Care = [new(Message.Text("look"), null, months, "")] });

    private static ReviewCase Looked(int days) => Good.Written(p => p with { Care = [new(Message.Text("look"), p.End!.Value.Date.PlusDays(days), 6, "")] });

    private static ReviewCase Works(double hours) => Good.Step("slit", s => s with { Step = s.Step with { HandsOn = Duration.FromHours(hours) } });

    /// <summary>All the work of one day in one step, and none elsewhere.</summary>
    private static ReviewCase Busy(double hours, int people) => Good.On(b => b with { People = people }) with
    {
        Steps = [.. Good.Steps.Select(s => s with { Step = s.Step with { HandsOn = s.Id == "slit" ? Duration.FromHours(hours) : Duration.Zero } })],
    };

    private static ReviewCase Gaps(int count) =>
        Good with { Earlier = [.. Enumerable.Range(1, count).Select(i => Finding.Warning("inspection-gap", Message.Text($"nobody can look on day {i}"), Message.Text("come in")) with { Subject = "fix" })] };

    private static ReviewCase Heavy(params string[] steps) => Good with { Earlier = [.. steps.Select(s => Weighs("tub-90", 60, s))] };

    /// <summary>Tubs in two steps, of so many kg.</summary>
    private static ReviewCase Weighed(double fix, double house, string other = "tub-90") =>
        Good with { Earlier = [Weighs("tub-90", fix, "fix"), Weighs(other, house, "house")] };

    private static Finding Weighs(string vessel, double kilograms, string step) =>
        Finding.Warning("vessel-too-heavy-to-lift", Full.With(Argument.Id("vessel", vessel), ("mass", Mass.FromKilograms(kilograms))), Message.Text("fill it where it stands")) with { Subject = step };

    private static ReviewCase Bought(params (string Item, int Days, string[] For)[] all) =>
        Good.Written(p => p with { Purchases = [.. all.Select(a => Booked.Purchase(a.Item, a.Days) with { For = [.. a.For] })] });

    /// <summary>Work was to start so many hours before it does; fluid meets the body 90 minutes after that.</summary>
    private static ReviewCase Waits(Condition? condition, double hours) =>
        Good.Specimen(s => s with { DiedAt = null, Condition = condition }).Written(p => p with { EarliestStart = p.EarliestStart!.Value.PlusTicks(-(long)(hours * NodaConstants.TicksPerHour)) });
}
