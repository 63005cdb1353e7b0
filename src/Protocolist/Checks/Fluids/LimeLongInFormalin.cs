using NodaTime;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Protocols;

namespace Protocolist.Checks.Fluids;

/// <summary>Shells and skeletons of lime leave even buffered formalin soon.</summary>
internal static class LimeLongInFormalin
{
    /// <summary>Common practice: days, not weeks.</summary>
    private static readonly Duration Brief = Duration.FromDays(7);

    public static PlanCheck Check { get; } = new(
        "lime-long-in-formalin",
        "the specimen: lime is eaten slowly even where a buffer holds",
        "Western Australian Museum 2011; Michonneau 2017 (buffered formalin for a short time, then alcohol); large squid for a month and more: O'Shea 2003, Te Papa 2008; the week is common practice",
        Find)
    {
        Speaks =
        [
            new(Severity.Warning, "an animal with lime lies more than 7 d in one step of buffered formalin, or for good"),
            new(Severity.Note, "it is a squid, cuttlefish or octopus, of which only the statoliths are at stake"),
        ],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (!plan.Group.IsCalcareous || plan.Group.IsSpiculate) yield break;
        foreach (var step in plan.Formalin.Where(s => s.Fluid!.Buffering != Buffering.None))
        {
            if (step.Kind != StageKind.House && step.Lasts <= Brief) continue;
            var time = step.Kind == StageKind.House ? "for good" : $"for {step.Lasts.Past(Brief)}";
            if (plan.Group.IsA("cephalopod"))
                yield return Finding.Note("lime-long-in-formalin", $"the statoliths of {plan.Group.One()} lie in {step.Fluid!.Name} {time}, and are eaten slowly; {Brief.Text()} is the most", "take them out first, dry or into ethanol, where age is to be read").At(step, "fluid", "last");
            else
                yield return Finding.Warning("lime-long-in-formalin", $"'{step.Id}' has {plan.Group.One()} with its lime in {step.Fluid!.Name} {time}; {Brief.Text()} is the most", "move it to ethanol within a week").At(step, "fluid", "last");
        }
    }
}
