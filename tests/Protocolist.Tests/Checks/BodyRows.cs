using NodaTime;
using Protocolist.Specimens;
using static Protocolist.Tests.Checks.Cases;

namespace Protocolist.Tests.Checks;

internal static class BodyRows
{
    public static Row[] All =>
    [
        new("out-of-class", () => Good with { Body = Good.Body with { Mass = Good.Body.Mass with { Nominal = UnitsNet.Mass.FromKilograms(101), IsMeasured = true } } }, () => Good),
        new("too-late-after-death", () => Good.Specimen(s => s with { DiedAt = Instant.FromUtc(2027, 2, 26, 6, 0) }), () => Good.Specimen(s => s with { DiedAt = Instant.FromUtc(2027, 2, 27, 6, 0) })),
        new("hold-too-long", () => Good.Lasts("cold", Duration.FromHours(73)), () => Good.Lasts("cold", Duration.FromHours(72))),
        new("frozen-without-thaw", () => Good.Specimen(s => s with { Condition = Condition.Frozen }), () => Good.Specimen(s => s with { Condition = Condition.Frozen }).Step("cold", s => s with { Kind = StageKind.Thaw })),
        new("thawed-is-held", () => Good.Specimen(s => s with { Condition = Condition.Thawed }).Lasts("cold", Duration.FromHours(25)), () => Good.Specimen(s => s with { Condition = Condition.Thawed }).Lasts("cold", Duration.FromHours(24))),
        new("bloated-not-vented", () => Good.Specimen(s => s with { Condition = Condition.Bloated }).Last("slit"), () => Good.Specimen(s => s with { Condition = Condition.Bloated })),
        new("decomposed", () => Good.Specimen(s => s with { Condition = Condition.Decomposed }), () => Good.Specimen(s => s with { Condition = Condition.Thawed })),
        new("thick-and-uncut", () => Whole(1.01), () => Whole(1)),
        new("frozen-twice", () => Good.Specimen(s => s with { Notes = "was frozen again at the port" }), () => Good.Specimen(s => s with { Notes = "not refrozen, kept on ice" })),
        new("fixation-too-short", () => Good.Lasts("fix", Duration.FromHours(Good.Fixation!.Time.LowHours - 1)), () => Good.Lasts("fix", Duration.FromHours(Good.Fixation!.Time.LowHours + 1))),
        new("posture-not-set", () => Good.Without("pose").Specimen(s => s with { IntendedUse = IntendedUse.Display }), () => Good.Without("pose")),
        new("colour-not-recorded", () => Good.Last("record"), () => Good),
        new("many-in-one-vessel", () => Good.Specimen(s => s with { Count = 51 }).Step("house", s => s with { Vessel = s.Vessel! with { Ratio = 4.9 } }), () => Good.Specimen(s => s with { Count = 50 }).Step("house", s => s with { Vessel = s.Vessel! with { Ratio = 4.9 } })),
    ];

    /// <summary>Neither cut nor injected, at some share of the half-thickness up to which the group goes whole.</summary>
    internal static Protocolist.Checks.ReviewCase Whole(double share) => Good.Without("slit") with
    {
        Body = Good.Body with { HalfThickness = Good.Body.HalfThickness with { Nominal = UnitsNet.Length.FromMillimeters(Good.Group.WholeUpToMm.High * share) } },
    };
}
