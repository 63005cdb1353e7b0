using Protocolist.Findings;
using UnitsNet;
using static Protocolist.Tests.Checks.Cases;

namespace Protocolist.Tests.Checks;

/// <summary>The other severity of checks that speak louder or softer by the case.</summary>
internal static class SeverityEdges
{
    public static Edge[] All =>
    [
        new("core-out-of-reach", Severity.Warning, ["it may rot"], () => Weighs(0.8), () => Weighs(0.24)),
        new("core-out-of-reach", Severity.Error, ["it will rot"], () => Weighs(11), () => Weighs(0.8)),
        new("measurements-contradict", Severity.Error, ["450 g is given"], () => Of(Fish with { Mass = Mass.FromGrams(450) }), () => Of(Fish with { Mass = Mass.FromGrams(150) })),
        new("out-of-class", Severity.Note, ["is known as"], () => Long("158 mm"), () => Long("50 mm")),
        new("vessel-too-small", Severity.Note, ["lists no vessel"], () => Of(Bench with { Vessels = [] }), () => Good),
        new("label-incomplete", Severity.Error, ["no label"], () => Good.Written(p => p with { Label = [] }), () => Good),
        new("formaldehyde-in-the-air", Severity.Warning, ["Directive (EU) 2019/983"], () => Air(8, 0.2), () => Air(20, 0.5)),
    ];

    private static Protocolist.Checks.ReviewCase Weighs(double kilograms) => Of(Fish with { Mass = Mass.FromKilograms(kilograms), TotalLength = null });

    /// <summary>A fish of which only the mass is known, so that its length is a range, and a protocol for fishes of so much length.</summary>
    private static Protocolist.Checks.ReviewCase Long(string least) =>
        Of(TrialProtocol.Replace("mass: 1 mg to 100 kg", $"length: {least} to 2 m", StringComparison.Ordinal), Fish with { TotalLength = null }, Bench);

    private static Protocolist.Checks.ReviewCase Air(double room, double changesAnHour) => Of(Bench with { Air = new(Volume.FromCubicMeters(room), changesAnHour, false) });
}
