using NodaTime;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Protocols;

namespace Protocolist.Checks.Fluids;

/// <summary>Spicules and ossicles by which an animal is named do not lie in formalin, buffered or not.</summary>
internal static class FormalinOnSpicules
{
    private static readonly Duration Week = Duration.FromDays(7);

    public static PlanCheck Check { get; } = new(
        "formalin-on-spicules",
        "the specimen: even buffered formalin turns acid in time and dissolves the fine parts by which the animal is named",
        "Western Australian Museum, Preservation and Lodgement of Marine Fauna, 2011 (alcohol for octocorals and echinoderms); Michonneau 2017; sea squirts: Lambert 2004 (buffered, a day to a week)",
        Find)
    {
        Speaks =
        [
            new(Severity.Error, "an animal named by its spicules or ossicles is kept for good in buffered formalin; sea squirts are only warned of"),
            new(Severity.Warning, "it passes through buffered formalin; a sea squirt for more than 7 d, or for good"),
        ],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (!plan.Group.IsSpiculate) yield break;
        foreach (var step in plan.Formalin.Where(s => s.Fluid!.Buffering != Buffering.None))
        {
            // Sea squirts are fixed in borate-buffered formalin for up to a week, and never put into ethanol fresh.
            var isSquirt = plan.Group.IsA("ascidian");
            if (isSquirt && step.Kind != StageKind.House && step.Lasts <= Week) continue;
            var message = $"'{step.Id}' has {plan.Group.One()}, which is named by its spicules or ossicles, in {step.Fluid!.Name}{(step.Kind == StageKind.House ? " for good" : $" for {step.Lasts.Past(Week)}")}{(isSquirt ? "; a week is the most" : "")}";
            yield return (step.Kind == StageKind.House && !isSquirt
                ? Finding.Error("formalin-on-spicules", message, "keep it in ethanol of 70 to 80 %vol")
                : Finding.Warning("formalin-on-spicules", message, isSquirt ? "move it to ethanol after a week, or keep a piece in ethanol beside it" : "fix it in ethanol, or take a piece into ethanol first")).At(step, "fluid", "last");
        }
    }
}
