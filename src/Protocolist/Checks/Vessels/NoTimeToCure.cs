using System.Collections.Immutable;
using NodaTime;
using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Protocols;

namespace Protocolist.Checks.Vessels;

/// <summary>Silicone cures open before the vessel is closed for good.</summary>
internal static class NoTimeToCure
{
    private const string Id = "no-time-to-cure";
    private static readonly Duration Cure = Duration.FromHours(24);
    private static readonly Phrase TooSoon = new(Id, "'{step}' seals with silicone in {time:vs cure} and says nothing of curing; {cure} open is the least");
    private static readonly Phrase LetItCure = new(
        "no-time-to-cure.remedy",
        "lay the bead, let it cure open for 24 to 48 h with the fluid covered, then close");

    public static PlanCheck Check { get; } = new(
        Id,
        "the specimen: uncured sealant gives off vapour into the fluid, and leaks",
        "common practice: 24 to 48 h open",
        Find)
    {
        Severities = [new(Severity.Warning, "a lid is sealed with silicone in less than 24 h, and nothing lets it cure open")],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        ImmutableArray<Finding> found = [];
        foreach (var seal in plan.Steps)
        {
            if (seal.Work is not SealWork work || work.With != Sealing.Silicone || seal.Lasts >= Cure) continue;
            if (work.Chosen?.Way.CuresOpen >= Cure || (seal.Covers & Coverage.Curing) != 0) continue;
            var message = TooSoon.With(Argument.Id("step", seal.Id), ("time", seal.Lasts), ("cure", Cure));
            found = found.Add(Finding.Warning(Id, message, LetItCure).At(seal, "closure", "last"));
        }

        return found;
    }
}
