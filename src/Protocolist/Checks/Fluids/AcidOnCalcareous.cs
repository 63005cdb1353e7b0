using Protocolist.Findings;
using Protocolist.Fluids;

namespace Protocolist.Checks.Fluids;

/// <summary>No acid formalin on shells, tests, spicules and ossicles.</summary>
internal static class AcidOnCalcareous
{
    public static PlanCheck Check { get; } = new(
        "acid-on-calcareous",
        "the specimen: formalin without a buffer turns acid and dissolves lime within days",
        "Western Australian Museum, Preservation and Lodgement of Marine Fauna, 2011; stock at pH 2.8 to 4.6 (Atkins 1922; Nagorsen and Peterson 1980)",
        Find)
    {
        Speaks = [new(Severity.Error, "formalin without a buffer meets an animal with a shell or skeleton of lime, or with spicules or ossicles, in any step")],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (!plan.Group.IsCalcareous && !plan.Group.IsSpiculate) yield break;
        var part = plan.Group.IsCalcareous ? "a shell or skeleton of lime" : "spicules or ossicles";
        foreach (var step in plan.Formalin.Where(s => s.Fluid!.Buffering == Buffering.None))
            yield return Finding.Error("acid-on-calcareous", $"'{step.Id}' puts {step.Fluid!.Name}, which turns acid, on {plan.Group.One()}, which has {part}", "keep it in alcohol, or use buffered formalin and only briefly").At(step, "fluid");
    }
}
