using Protocolist.Findings;
using UnitsNet;

namespace Protocolist.Checks.People;

/// <summary>How the air of the room is replaced is known.</summary>
internal static class VentilationUnknown
{
    /// <summary>Common practice: a pan of fixative and not a vial.</summary>
    private static readonly Volume Much = Volume.FromLiters(1);

    public static PlanCheck Check { get; } = new(
        "ventilation-unknown",
        "people: nobody smells formaldehyde before it harms",
        "29 CFR 1910.1048; common practice",
        Find)
    {
        Speaks = [new(Severity.Warning, "1 L of formalin or more is opened, and the bench says nothing of its air")],
        ProtectsPeople = true,
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.Bench.Air is not null) yield break;
        var open = plan.Formalin.Where(s => s.Step.Volume is not null).MaxBy(s => s.Step.Volume!.Value.CubicMeters);
        if (open is { Step.Volume: { } volume } && volume >= Much)
            yield return Finding.Warning("ventilation-unknown", $"'{open.Id}' opens {volume.Text()} of {open.Fluid!.Name}, and the bench says nothing of hood, room and change of air; from {Much.Text()} on that has to be known", "work in a hood or outdoors; give 'air:' in the bench file").At(open, "fluid", "volume");
    }
}
