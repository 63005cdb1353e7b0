using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Checks.Body;

/// <summary>The measurements can all be of one animal.</summary>
internal static class MeasurementsContradict
{
    public static PlanCheck Check { get; } = new(
        "measurements-contradict",
        "the plan: every amount and time follows from them",
        "length and mass relations of the group; Larramendi, Paul and Hsu 2021 for density",
        Find)
    {
        Severities =
        [
            new(Severity.Error, "two measurements contradict each other beyond anything an animal can be"),
            new(Severity.Warning, "they contradict each other by more than the spread of the group, or two lengths do not agree"),
        ],
        Absorbs =
        [
            "mass-against-length", "mass-against-displacement", "girth-against-mass", "thickness-against-mass", "lot-heavier-than-its-animals", "two-lengths",
        ],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        ImmutableArray<Finding> found = [];
        foreach (var finding in plan.Earlier)
        {
            if (FiguresOf(finding.Id) is { } figures) found = found.Add((finding with { Id = "measurements-contradict" }).By(figures));
        }

        return found;
    }

    private static string[]? FiguresOf(string id) => id switch
    {
        "mass-against-length" => ["specimen.mass", "specimen.length"],
        "mass-against-displacement" => ["specimen.mass", "specimen.volume"],
        "girth-against-mass" or "thickness-against-mass" => ["specimen.mass", "specimen.half-thickness"],
        "lot-heavier-than-its-animals" => ["specimen.mass", "specimen.lot-mass", "specimen.count"],
        "two-lengths" => ["specimen.length"],
        _ => null,
    };
}
