using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Specimens;

namespace Protocolist.Checks.Law;

/// <summary>Bats and carnivores are handled by people who are vaccinated.</summary>
internal static class RabiesProne
{
    private const string Head = "head";

    private static readonly Phrase MayCarryIt = new("rabies-prone", "{group:a}{into}: {caution}");
    private static readonly Phrase IntoItsHead = new("rabies-prone.into-its-head", ", and '{step}' goes into its head");
    private static readonly Phrase AskFirst = new("rabies-prone.remedy", "ask first whether the health authority wants it tested");

    public static PlanCheck Check { get; } = new(
        "rabies-prone",
        "people: rabies is deadly once it shows",
        "Fenton and others 2024, FACETS",
        Find)
    {
        Severities = [new(Severity.Warning, "the group is one that carries rabies")],
        ProtectsPeople = true,
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        ImmutableArray<Finding> found = [];
        foreach (var caution in plan.Group.Cautions)
        {
            if (caution.Id != "rabies") continue;
            var message = MayCarryIt.With(("group", plan.Group.Name), ("into", IntoHead(plan)), ("caution", caution.Text));
            found = found.Add(Finding.Warning("rabies-prone", message, AskFirst));
        }

        return found;
    }

    private static Message IntoHead(ReviewCase plan)
    {
        foreach (var step in plan.Steps)
        {
            if (GoesIntoHead(step.Step)) return IntoItsHead.With(Argument.Id("step", step.Id));
        }

        return default;
    }

    private static bool GoesIntoHead(Step step)
    {
        foreach (var site in step.Sites)
        {
            if (BodyRegion.IsCalled(site.Region, Head)) return true;
        }

        foreach (var cut in step.Cuts)
        {
            if (BodyRegion.IsCalled(cut.Region, Head)) return true;
        }

        return false;
    }
}
