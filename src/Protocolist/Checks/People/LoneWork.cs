using Protocolist.Findings;
using Protocolist.Protocols;
using Protocolist.Vessels;
using UnitsNet;

namespace Protocolist.Checks.People;

/// <summary>Nobody does the dangerous part alone.</summary>
internal static class LoneWork
{
    private const int MostNamed = 4;
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
        var risky = plan.Steps.Select(s => (Step: s, Why: Why(s))).Where(r => r.Why.Length > 0).ToList();
        if (risky.Count > 0)
            yield return Finding.Warning("lone-work", $"one person works here, and {string.Join("; ", risky.Take(MostNamed).Select(r => $"'{r.Step.Id}' {r.Why}"))}{(risky.Count > MostNamed ? $"; {Telling.Count(risky.Count - MostNamed, "more step asks", "more steps ask")} as much" : "")}", "have somebody within call, and tell them when you begin and when you end")
                .ByEach(risky.Select(r => r.Step), "volume");
    }

    private static string Why(ReviewStep step) => step switch
    {
        { Kind: StageKind.Inject, Fluid.HasFormaldehyde: true } => "injects formalin",
        { Vessel: { } vessel } when vessel.TotalMass > Lifting.OnePerson => $"has a vessel of {Telling.Apart(vessel.TotalMass, Lifting.OnePerson).Value}, where {Lifting.OnePerson.Text()} is the most for one",
        { Fluid.HasFormaldehyde: true, Step.Volume: { } volume } when volume >= Much => $"pours {volume.Text()} of formalin, where {Much.Text()} is much for one",
        _ => "",
    };
}
