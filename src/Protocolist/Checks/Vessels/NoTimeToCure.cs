using NodaTime;
using Protocolist.Findings;
using Protocolist.Protocols;

namespace Protocolist.Checks.Vessels;

/// <summary>Silicone cures open before the vessel is closed for good.</summary>
internal static class NoTimeToCure
{
    private static readonly Duration Cure = Duration.FromHours(24);

    public static PlanCheck Check { get; } = new(
        "no-time-to-cure",
        "the specimen: uncured sealant gives off vapour into the fluid, and leaks",
        "common practice: 24 to 48 h open",
        Find)
    {
        Speaks = [new(Severity.Warning, "a lid is sealed with silicone in less than 24 h, and no sentence lets it cure open")],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        foreach (var seal in plan.Steps)
        {
            if (seal.Kind == StageKind.Seal && seal.Closure == "neutral-cure silicone" && seal.Lasts < Cure
                && !seal.Step.Instructions.Select(m => m.ToString()).Any(i => i.Contains("cure open", StringComparison.OrdinalIgnoreCase)))
                yield return Finding.Warning("no-time-to-cure", $"'{seal.Id}' seals with silicone in {seal.Lasts.Past(Cure)} and says nothing of curing; {Cure.Text()} open is the least", "lay the bead, let it cure open for 24 to 48 h with the fluid covered, then close").At(seal, "closure", "last");
        }
    }
}
