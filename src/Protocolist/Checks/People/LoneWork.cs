using Protocolist.Findings;
using Protocolist.Protocols;
using Protocolist.Vessels;
using UnitsNet;

namespace Protocolist.Checks.People;

/// <summary>Nobody does the dangerous part alone.</summary>
internal static class LoneWork
{
    private static readonly Volume Much = Volume.FromLiters(5);

    public static PlanCheck Check { get; } = new(
        "lone-work",
        "people: a splash in the eye, a faint, a load that slips",
        "common practice; two thirds of the lifting by guidance L23 (from memory)",
        Find)
    {
        Speaks = [new(Severity.Warning, "one person works alone and injects formalin, pours much of it, or lifts more than 23 kg")],
        ProtectsPeople = true,
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.Bench.People > 1) yield break;
        var risky = plan.Steps.Where(s => s.Vessel is { } v && v.TotalMass > Lifting.OnePerson || s is { Kind: StageKind.Inject, Fluid.HasFormaldehyde: true } || s is { Fluid.HasFormaldehyde: true, Step.Volume: { } volume } && volume >= Much).Select(s => $"'{s.Id}'").ToList();
        if (risky.Count > 0)
            yield return Finding.Warning("lone-work", $"one person works here, and {string.Join(", ", risky.Take(4))} {(risky.Count == 1 ? "injects, pours or lifts" : "inject, pour or lift")} what one should not alone", "have somebody within call, and tell them when you begin and when you end");
    }
}
