using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Checks.Body;

/// <summary>Fixative reaches the middle of every part before it rots.</summary>
internal static class CoreOutOfReach
{
    private static readonly Phrase WorstOfSeveral = new("core-out-of-reach", "{worst} (and {n} more {n|part|parts} of the body)");

    public static PlanCheck Check { get; } = new(
        "core-out-of-reach",
        "the specimen: what is not reached in time rots inside a hard shell",
        "Fick's law with rates measured in tissue (Steicke and others 2018; Start, Layton and Sommer 1992); the 5 and 14 d are judgement",
        Find)
    {
        Severities =
        [
            new(Severity.Error, "fixative comes to the middle of a part so late that it will have rotted"),
            new(Severity.Warning, "it comes so late that the part may have rotted"),
        ],
        Absorbs = ["core-will-rot", "core-may-rot"],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        var (worst, others) = (default(Finding), -1);
        foreach (var finding in plan.Earlier)
        {
            if (finding.Id is not ("core-will-rot" or "core-may-rot")) continue;
            others++;
            if (worst is null || finding.Severity > worst.Severity) worst = finding;
        }

        if (worst is null) return [];
        var message = others == 0 ? worst.Message : WorstOfSeveral.With(("worst", worst.Message), ("n", others));
        return [(worst with { Id = "core-out-of-reach", Message = message }).By("model.fixation", "specimen.half-thickness")];
    }
}
