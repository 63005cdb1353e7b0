using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Rules;

namespace Protocolist.Checks.Fluids;

/// <summary>No acid formalin on shells, tests, spicules and ossicles.</summary>
internal static class AcidOnCalcareous
{
    private static readonly Phrase Dissolves = new(AcidOnLime.Id, "'{step}' puts {fluid}, which turns acid, on {group:a}, which has {lime}");
    private static readonly Phrase Shell = new("acid-on-calcareous.shell", "a shell or skeleton of lime");
    private static readonly Phrase Spicules = new("acid-on-calcareous.spicules", "spicules or ossicles");
    private static readonly Phrase Alcohol = new("acid-on-calcareous.remedy", "keep it in alcohol, or use buffered formalin and only briefly");

    public static PlanCheck Check { get; } = new(
        AcidOnLime.Id,
        "the specimen: formalin without a buffer turns acid and dissolves lime within days",
        AcidOnLime.Source,
        Find)
    {
        Severities =
        [
            new(Severity.Error, "formalin without a buffer meets an animal with a shell or skeleton of lime, or with spicules or ossicles, in any step"),
        ],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        ImmutableArray<Finding> found = [];
        foreach (var step in plan.Formalin)
        {
            var lime = AcidOnLime.Dissolves(plan.Group, step.Fluid!);
            if (lime == Lime.None) continue;
            var message = Dissolves.With(
                Argument.Id("step", step.Id),
                ("fluid", step.Fluid!.Name),
                ("group", plan.Group.Name),
                ("lime", lime == Lime.Shell ? Shell : Spicules));
            found = found.Add(Finding.Error(AcidOnLime.Id, message, Alcohol).At(step, "fluid"));
        }

        return found;
    }
}
