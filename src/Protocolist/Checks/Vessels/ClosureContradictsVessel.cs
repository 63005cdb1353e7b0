using Protocolist.Findings;
using Protocolist.Protocols;
using Protocolist.Reading;
using Protocolist.Specimens;
using Protocolist.Vessels;

namespace Protocolist.Checks.Vessels;

/// <summary>The final vessel can be closed as the plan closes it.</summary>
internal static class ClosureContradictsVessel
{
    /// <summary>What a plan closes with, and the vessels that are made to be closed so.</summary>
    private static readonly (string Closing, Closure[] Fits)[] Pairs =
    [
        ("screw lid", [Closure.ScrewLid]),
        ("snap lid", [Closure.SnapLid]),
        ("ground stopper", [Closure.GroundStopper]),
        ("tape", [Closure.SealedPlate, Closure.Open, Closure.LooseLid]),
        ("neutral-cure silicone", [Closure.SealedPlate, Closure.Open, Closure.LooseLid]),
    ];

    public static PlanCheck Check { get; } = new(
        "closure-contradicts-vessel",
        "the specimen: a vessel that cannot be closed dries out",
        "common practice",
        Find)
    {
        Speaks = [new(Severity.Note, "the vessel closes in another way than the plan seals it")],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.House?.Vessel is not { } vessel || plan.Steps.LastOrDefault(s => s.Kind == StageKind.Seal) is not { } seal) yield break;
        var pair = Array.Find(Pairs, p => p.Closing == seal.Closure);
        if (pair.Fits is not null && !pair.Fits.Contains(vessel.Vessel.Closure))
            yield return Finding.Note("closure-contradicts-vessel", $"'{seal.Id}' closes it with {(pair.Closing is "tape" or "neutral-cure silicone" ? pair.Closing : Phrases.One(pair.Closing))}, and the {vessel.Vessel.Name} has a closure of another kind: {EnumWords<Closure>.Of(vessel.Vessel.Closure).Replace('-', ' ')}", "close it as it is made to be closed").At(seal, "closure");
    }
}
