using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids.Safety;

namespace Protocolist.Checks.People;

/// <summary>Shelf and order together hold no more alcohol than fire rules allow.</summary>
internal static class StoredFlammables
{
    private const string Id = "stored-flammables";
    private static readonly Phrase TooMuch = new(
        Id,
        "shelf and order together hold {held:vs most} of flammable liquid; {most:vs held} is the most {place} ({rule})");

    private static readonly Phrase InRounds = new(
        "stored-flammables.remedy",
        "order in rounds, keep it in a cabinet or store for flammables, and tell the fire officer the total");

    public static PlanCheck Check { get; } = new(
        Id,
        "people: fire; each bottle is small, and nobody adds them up",
        "OSHA 29 CFR 1910.106(d)(3) and (e)(2)(ii)(b); the local fire code comes first",
        Find)
    {
        Severities = [new(Severity.Warning, "shelf and order together hold more flammable liquid than a rule of storage allows")],
        ProtectsPeople = true,
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        if (plan.Alcohol.IsEmpty) return [];
        StorageThreshold? passed = null;
        foreach (var rule in StorageThreshold.All)
        {
            if (rule.Categories.Contains(2) && plan.Stored.Flammable > rule.Most && (passed is null || rule.Most > passed.Most)) passed = rule;
        }

        if (passed is null) return [];
        var message = TooMuch.With(("held", plan.Stored.Flammable), ("most", passed.Most), ("place", passed.Place), ("rule", passed.Rule));
        return [Finding.Warning(Id, message, InRounds)];
    }
}
