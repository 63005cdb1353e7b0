using NodaTime;
using Protocolist.Findings;
using Protocolist.Protocols;

namespace Protocolist.Checks.Fluids;

/// <summary>No body lies in one filling of fixative for more than a month.</summary>
internal static class FixativeOverItsMonth
{
    private static readonly Duration Month = Duration.FromDays(31);

    public static PlanCheck Check { get; } = new(
        "fixative-over-its-month",
        "the specimen: the fluid turns acid, and weak by what the body takes up",
        "Bishop Museum, Hawaii Biological Survey, Invertebrate Specimen Handling (one month)",
        Find)
    {
        Speaks = [new(Severity.Warning, "one filling of a fixing bath stays longer than 31 d")],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        foreach (var step in plan.Formalin)
        {
            if (step.Kind != StageKind.Immerse) continue;
            var filling = Duration.FromSeconds(step.Lasts.TotalSeconds / (1 + step.Step.Changes));
            if (filling > Month)
                yield return Finding.Warning("fixative-over-its-month", $"a filling of '{step.Id}' stays {filling.Past(Month)}; {Month.Text()} is the most", "change the fluid once a month, or read its pH").At(step, "last", "changes");
        }
    }
}
