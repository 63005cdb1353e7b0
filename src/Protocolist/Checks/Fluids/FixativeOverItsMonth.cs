using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Rules;

namespace Protocolist.Checks.Fluids;

/// <summary>No body lies in one filling of fixative for more than a month.</summary>
internal static class FixativeOverItsMonth
{
    private static readonly Phrase Stays = new(FixativeMonth.Id, "a filling of '{step}' stays {time:vs most}; {most} is the most");
    private static readonly Phrase Change = new("fixative-over-its-month.remedy", "change the fluid once a month, or read its pH");

    public static PlanCheck Check { get; } = new(
        FixativeMonth.Id,
        "the specimen: the fluid turns acid, and weak by what the body takes up",
        FixativeMonth.Source,
        Find)
    {
        Severities = [new(Severity.Warning, "one filling of a fixing bath stays longer than 31 d")],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        ImmutableArray<Finding> found = [];
        foreach (var step in plan.Formalin)
        {
            if (step.Kind != StageKind.Immerse) continue;
            var filling = FixativeMonth.Filling(step.Lasts, step.Step.Changes);
            if (!FixativeMonth.IsOver(filling)) continue;
            var message = Stays.With(Argument.Id("step", step.Id), ("time", filling), ("most", FixativeMonth.Most));
            found = found.Add(Finding.Warning(FixativeMonth.Id, message, Change).At(step, "last", "changes"));
        }

        return found;
    }
}
