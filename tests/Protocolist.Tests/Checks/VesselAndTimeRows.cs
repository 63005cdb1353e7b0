using NodaTime;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Protocols;
using Protocolist.Specimens;
using Protocolist.Vessels;
using static Protocolist.Tests.Checks.Cases;
using Length = UnitsNet.Length;

namespace Protocolist.Tests.Checks;

internal static class VesselAndTimeRows
{
    public static Row[] All =>
    [
        new("not-submerged", () => House(v => v with { LevelColdest = v.CoveredTo * 0.99 }), () => House(v => v with { LevelColdest = v.CoveredTo })),
        new("vessel-too-small", () => Good.Step("house", s => s with { Vessel = null, VesselAdvice = Said.Of("buy one"), VesselReasons = [Protocolist.Findings.Finding.Error("vessel-too-narrow", Said.Of("too narrow"), Said.Of(""))] }), () => Good),
        new("cramped", () => House(v => v with { Ratio = 0.99 }), () => House(v => v with { Ratio = 1 })),
        new("ratio-too-low", () => Good.Step("fix", s => s with { Vessel = s.Vessel! with { Ratio = 4.8 } }), () => Good.Step("fix", s => s with { Vessel = s.Vessel! with { Ratio = 5 } })),
        new("headspace-too-small", () => House(v => v with { HeadspaceVolume = v.Vessel.Shape.Inside * 0.01 }), () => House(v => v with { HeadspaceVolume = v.Vessel.Shape.Inside * 0.03 })),
        new("closure-contradicts-vessel", () => ForGood(Closure.WireBail), () => ForGood(Closure.SealedPlate)),
        new("no-time-to-cure", () => Sealed(Duration.FromHours(23)), () => Sealed(Duration.FromHours(24))),
        new("vessel-material-unknown", () => House(v => v with { Vessel = v.Vessel with { Lid = VesselMaterial.Unknown } }), () => Good),
        new("tank-glass-to-measure", () => Tank(300, null), () => Tank(299, null)),
        new("glass-too-thin", () => Tank(400, 5), () => Tank(400, 12)),
        new("joint-load", () => Tank(501, 12), () => Tank(500, 12)),
        new("supplies-late", () => Bought(1), () => Bought(0)),
        new("body-waits", () => Waits(13, Condition.Fresh), () => Waits(10, Condition.Fresh)),
        new("nobody-watches", () => Good.Step("fix", s => s with { WatchEvery = null }).Lasts("fix", Duration.FromDays(4)), () => Good.Step("fix", s => s with { WatchEvery = null }).Lasts("fix", Duration.FromDays(3))),
        new("care-round-missing", () => Good.Written(p => p with { Care = [new(Message.Text("look"), null, 13, "")] }), () => Good.Written(p => p with { Care = [new(Message.Text("look"), null, 12, "")] })),
        new("first-look-missing", () => Good.Written(p => p with { Care = [new(Message.Text("look"), p.End!.Value.Date.PlusDays(63), 6, "")] }), () => Good.Written(p => p with { Care = [new(Message.Text("look"), p.End!.Value.Date.PlusDays(62), 6, "")] })),
        new("long-day", () => Works(Duration.FromHours(17)), () => Works(Duration.FromHours(12))),
    ];

    private static Protocolist.Checks.ReviewCase House(Func<FittedVessel, FittedVessel> change) => Good.Step("house", s => s with { Vessel = change(s.Vessel!) });

    private static Protocolist.Checks.ReviewCase ForGood(Closure closure) => House(v => v with { Vessel = v.Vessel with { Closure = closure } })
        .Step("seal", s => s with { Work = new Protocolist.Plans.SealWork(Sealing.Silicone, null) });

    private static Protocolist.Checks.ReviewCase Sealed(Duration time) =>
        Good.Lasts("seal", time).Step("seal", s => s with { Work = new Protocolist.Plans.SealWork(Sealing.Find("neutral-cure silicone"), null) });

    /// <summary>A glass tank of 60 by 30 cm, or longer, filled so deep, with panes so thick.</summary>
    internal static Protocolist.Checks.ReviewCase Tank(double levelMm, double? paneMm, double lengthMm = 600)
    {
        var plan = House(v => v with
        {
            Vessel = v.Vessel with { Shape = new VesselShape.Box(Length.FromMillimeters(lengthMm), Length.FromCentimeters(30), Length.FromCentimeters(60)), Pane = paneMm is { } mm ? Length.FromMillimeters(mm) : null },
            LevelAfter = Length.FromMillimeters(levelMm),
        });
        return plan with { Tank = Protocolist.Planning.Provisioning.FinalTank.Of(plan.House!.Vessel, plan.House.Fluid) };
    }

    private static Protocolist.Checks.ReviewCase Bought(int days) => Good.Written(p => p with { Purchases = [Booked.Purchase("ethanol", days)] });

    private static Protocolist.Checks.ReviewCase Waits(int hours, Condition condition) =>
        Good.Specimen(s => s with { DiedAt = null, Condition = condition }).Written(p => p with { EarliestStart = p.EarliestStart!.Value.PlusHours(-hours) });

    private static Protocolist.Checks.ReviewCase Works(Duration time) => Good.Step("slit", s => s with { Step = s.Step with { HandsOn = time } });
}
