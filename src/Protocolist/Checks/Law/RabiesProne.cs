using Protocolist.Findings;

namespace Protocolist.Checks.Law;

/// <summary>Bats and carnivores are handled by people who are vaccinated.</summary>
internal static class RabiesProne
{
    public static PlanCheck Check { get; } = new(
        "rabies-prone",
        "people: rabies is deadly once it shows",
        "Fenton and others 2024, FACETS",
        Find)
    {
        Speaks = [new(Severity.Warning, "the group is one that carries rabies")],
        ProtectsPeople = true,
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        foreach (var caution in plan.Group.Cautions)
        {
            if (caution.Id != "rabies") continue;
            var into = plan.Steps.FirstOrDefault(s => s.Step.Sites.Any(i => i.Region == "head") || s.Step.Cuts.Any(c => c.Region == "head"));
            yield return Finding.Warning("rabies-prone", $"{plan.Group.One()}{(into is null ? "" : $", and '{into.Id}' goes into its head")}: {caution.Text}", "ask first whether the health authority wants it tested");
        }
    }
}
