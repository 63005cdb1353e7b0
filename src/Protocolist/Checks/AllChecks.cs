using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Checks;

/// <summary>Every check, each in a file of its own.</summary>
public static class AllChecks
{
    internal static ImmutableArray<PlanCheck> All { get; } =
    [
        AcidOnCalcareous.Check,
        MissingProvenance.Check,
        MixedBuffering.Check,
        NotSubmerged.Check,
        OutOfClass.Check,
        TooBigAStep.Check,
        UnwashedIntoAlcohol.Check,
        VesselTooSmall.Check,
    ];

    /// <summary>What each check looks at, by id in alphabetical order.</summary>
    public static ImmutableArray<CheckDescription> Descriptions { get; } =
        [.. All.Select(c => new CheckDescription(c.Id, c.Protects, c.Source)).OrderBy(c => c.Id, StringComparer.Ordinal)];

    /// <summary>All findings of all checks.</summary>
    internal static IEnumerable<Finding> Review(ReviewCase plan) => All.SelectMany(c => c.Find(plan));
}
