using Protocolist.Findings;

namespace Protocolist.Checks.Labels;

/// <summary>A jar of formalin says so in large letters.</summary>
internal static class FormalinFlag
{
    public static PlanCheck Check { get; } = new(
        "formalin-flag-missing",
        "people: the next to open it takes it for alcohol",
        "Michonneau 2017 (an extra FORMALIN label in the jar)",
        Find)
    {
        Speaks = [new(Severity.Error, "the final jar holds formalin, and no line of the label says FORMALIN")],
        ProtectsPeople = true,
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.House is { Fluid.HasFormaldehyde: true } house && !plan.Plan.Label.Contains("FORMALIN"))
            yield return Finding.Error("formalin-flag-missing", $"'{house.Id}' keeps it in {house.Fluid.Name}, and the label has no line FORMALIN", "add a line FORMALIN, inside and outside").At(house, "fluid");
    }
}
