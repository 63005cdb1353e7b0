using Protocolist.Findings;
using Protocolist.Protocols;

namespace Protocolist.Checks.Law;

/// <summary>An animal that died of nobody knows what is looked at before it is opened.</summary>
internal static class UnknownCauseOfDeath
{
    public static PlanCheck Check { get; } = new(
        "unknown-cause-of-death",
        "people: it may have died of what kills people",
        "common practice; CDC guidance on dead birds (archived)",
        Find)
    {
        Speaks = [new(Severity.Warning, "a mammal or bird, and nothing says what it died of")],
        ProtectsPeople = true,
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (!plan.Group.IsA("mammal") && !plan.Group.IsA("bird") || !plan.DiedOfUnknown()) yield break;
        var opens = plan.Steps.FirstOrDefault(s => s.Kind is StageKind.Slit or StageKind.Inject);
        yield return Finding.Warning("unknown-cause-of-death", $"{plan.Group.One()}, {plan.Specimen.History()}: nothing says what it died of{(opens is null ? "" : $", and '{opens.Id}' opens it")}", "have it looked at by a veterinarian or somebody competent first, and note the cause under 'how-obtained:' or 'notes:'");
    }
}
