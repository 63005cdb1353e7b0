using Protocolist.Benches.Disposal;
using Protocolist.Findings;
using Protocolist.Plans;
using UnitsNet;

namespace Protocolist.Checks.People;

/// <summary>Formalin goes down no drain.</summary>
internal static class FormalinToTheDrain
{
    public static PlanCheck Check { get; } = new(
        "formalin-to-the-drain",
        "people and water",
        "Meador, Cuffney and Gurtz 1993, USGS 93-104 (never without written permission); one museum may in small quantity: handbooks disagree",
        Find)
    {
        Speaks = [new(Severity.Warning, "a step drains fluid in a plan with formalin")],
        ProtectsPeople = true,
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        foreach (var step in plan.Steps)
        {
            if (step.Work is DiscardWork discard && discard.IsDrained && !plan.Formalin.IsEmpty)
                yield return Finding.Warning("formalin-to-the-drain", $"'{step.Id}' drains fluid of a plan with {Volume.FromLiters(plan.Formalin.Sum(s => s.Step.Volume?.Liters ?? 0)).Text()} of formalin", "collect it, unless you hold a written permission for just this").At(step, "to").ByEach(plan.Formalin, "volume");
        }
    }
}
