using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Rules;

namespace Protocolist.Checks.Fluids;

/// <summary>Shells and skeletons of lime leave even buffered formalin soon.</summary>
internal static class LimeLongInFormalin
{
    private static readonly Phrase Lime = new(LimeInFormalin.Id, "'{step}' has {group:a} with its lime in {fluid} {time}; {most} is the most");
    private static readonly Phrase Statoliths = new(
        "lime-long-in-formalin.statoliths",
        "the statoliths of {group:a} lie in {fluid} {time}, and are eaten slowly; {most} is the most");

    private static readonly Phrase ForGood = new("lime-long-in-formalin.for-good", "for good");
    private static readonly Phrase For = new("lime-long-in-formalin.for", "for {time:vs most}");
    private static readonly Phrase Ethanol = new("lime-long-in-formalin.remedy", "move it to ethanol within a week");
    private static readonly Phrase TakeOut = new(
        "lime-long-in-formalin.remedy-statoliths",
        "take them out first, dry or into ethanol, where age is to be read");

    public static PlanCheck Check { get; } = new(
        LimeInFormalin.Id,
        "the specimen: lime is eaten slowly even where a buffer holds",
        LimeInFormalin.Source,
        Find)
    {
        Severities =
        [
            new(Severity.Warning, "an animal with lime lies more than 7 d in one step of buffered formalin, or for good"),
            new(Severity.Note, "it is a squid, cuttlefish or octopus, of which only the statoliths are at stake"),
        ],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        ImmutableArray<Finding> found = [];
        foreach (var step in plan.Formalin)
        {
            var isForGood = step.Kind == StageKind.House;
            if (!LimeInFormalin.Suffers(plan.Group, step.Fluid!, isForGood, step.Lasts)) continue;
            var onlyStatoliths = LimeInFormalin.IsInStatolithsOnly(plan.Group);
            var message = (onlyStatoliths ? Statoliths : Lime).With(
                Argument.Id("step", step.Id),
                ("group", plan.Group.Name),
                ("fluid", step.Fluid!.Name),
                ("time", isForGood ? ForGood : For.With(("time", step.Lasts), ("most", LimeInFormalin.Most))),
                ("most", LimeInFormalin.Most));
            var finding = onlyStatoliths ? Finding.Note(LimeInFormalin.Id, message, TakeOut) : Finding.Warning(LimeInFormalin.Id, message, Ethanol);
            found = found.Add(finding.At(step, "fluid", "last"));
        }

        return found;
    }
}
