using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Plans;
using UnitsNet;

namespace Protocolist.Checks.People;

/// <summary>Formalin goes down no drain.</summary>
internal static class FormalinToTheDrain
{
    private const string Id = "formalin-to-the-drain";
    private static readonly Phrase Drains = new(Id, "'{step}' drains fluid of a plan with {volume} of formalin");
    private static readonly Phrase Collect = new("formalin-to-the-drain.remedy", "collect it, unless you hold a written permission for just this");

    public static PlanCheck Check { get; } = new(
        Id,
        "people and water",
        "Meador, Cuffney and Gurtz 1993, USGS 93-104 (never without written permission); one museum may in small quantity: handbooks disagree",
        Find)
    {
        Severities = [new(Severity.Warning, "a step drains fluid in a plan with formalin")],
        ProtectsPeople = true,
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        ImmutableArray<Finding> found = [];
        if (plan.Formalin.IsEmpty) return found;
        foreach (var step in plan.Steps)
        {
            if (step.Work is not DiscardWork { IsDrained: true }) continue;
            var volume = Volume.FromLiters(plan.Formalin.Sum(s => s.Volume?.Liters ?? 0));
            var message = Drains.With(Argument.Id("step", step.Id), ("volume", volume));
            found = found.Add(Finding.Warning(Id, message, Collect).At(step, "to").ByEach(plan.Formalin, "volume"));
        }

        return found;
    }
}
