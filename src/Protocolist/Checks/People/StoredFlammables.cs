using Protocolist.Findings;
using Protocolist.Fluids.Safety;

namespace Protocolist.Checks.People;

/// <summary>Shelf and order together hold no more alcohol than fire rules allow.</summary>
internal static class StoredFlammables
{
    public static PlanCheck Check { get; } = new(
        "stored-flammables",
        "people: fire; each bottle is small, and nobody adds them up",
        "OSHA 29 CFR 1910.106(d)(3) and (e)(2)(ii)(b); the local fire code comes first",
        Find)
    {
        Speaks = [new(Severity.Warning, "shelf and order together hold more flammable liquid than a rule of storage allows")],
        ProtectsPeople = true,
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.Alcohol.IsEmpty) yield break;
        StorageThreshold? passed = null;
        foreach (var rule in StorageThreshold.All)
        {
            if (rule.Categories.Contains(2) && plan.Stored.Flammable > rule.Most && (passed is null || rule.Most > passed.Most)) passed = rule;
        }

        if (passed is not null)
        {
            var (held, most) = Telling.Apart(plan.Stored.Flammable, passed.Most);
            yield return Finding.Warning("stored-flammables", $"shelf and order together hold {held} of flammable liquid; {most} is the most {passed.Place} ({passed.Rule})", "order in rounds, keep it in a cabinet or store for flammables, and tell the fire officer the total");
        }
    }
}
