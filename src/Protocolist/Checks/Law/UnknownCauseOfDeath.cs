using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Checks.Law;

/// <summary>An animal that died of nobody knows what is looked at before it is opened.</summary>
internal static class UnknownCauseOfDeath
{
    private static readonly Phrase NobodyKnows = new("unknown-cause-of-death", "{group:a}, '{history:; }': nothing says what it died of{opened}");
    private static readonly Phrase Opened = new("unknown-cause-of-death.opened", ", and '{step}' opens it");
    private static readonly Phrase LookFirst = new(
        "unknown-cause-of-death.remedy",
        "have it looked at by a veterinarian or somebody competent first, and note the cause under 'how-obtained:' or 'notes:'");

    public static PlanCheck Check { get; } = new(
        "unknown-cause-of-death",
        "people: it may have died of what kills people",
        "common practice; CDC guidance on dead birds (archived)",
        Find)
    {
        Severities = [new(Severity.Warning, "a mammal or bird, and nothing says what it died of")],
        ProtectsPeople = true,
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        if ((!plan.Group.IsA("mammal") && !plan.Group.IsA("bird")) || !plan.DiedOfUnknown()) return [];
        var message = NobodyKnows.With(("group", plan.Group.Name), plan.Specimen.History(), ("opened", OpenedBy(plan)));
        return [Finding.Warning("unknown-cause-of-death", message, LookFirst)];
    }

    private static Message OpenedBy(ReviewCase plan)
    {
        foreach (var step in plan.Steps)
        {
            if (step.Kind is StageKind.Slit or StageKind.Inject) return Opened.With(Argument.Id("step", step.Id));
        }

        return default;
    }
}
