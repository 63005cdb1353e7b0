using NodaTime;
using NodaTime.Text;
using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Specimens;
using static System.FormattableString;

namespace Protocolist.Checks.Time;

/// <summary>What has to be bought is there when it is needed.</summary>
internal static class SuppliesLate
{
    public static PlanCheck Check { get; } = new(
        "supplies-late",
        "the specimen: it rots while the order is on its way",
        "the bench's own lead times",
        Find)
    {
        Speaks = [new(Severity.Warning, "something that must be bought comes after the step that needs it")],
        Absorbs = ["delivery-comes-too-late"],
    };

    /// <summary>Late for the first fixing; else late for a step after it, as the calendar found.</summary>
    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        var first = AtFixing(plan).ToList();
        return first.Count > 0 ? first : plan.Earlier.Where(f => f.Id == "delivery-comes-too-late").Select(f => f with { Id = "supplies-late" });
    }

    /// <summary>Whether the first fixing needs it; what nobody says the use of counts as needed.</summary>
    private static bool ForFixing(ReviewCase plan, PlannedPurchase purchase) => purchase.For.IsEmpty || plan.FirstFixing is not { } first || purchase.For.Contains(first.Id);

    private static IEnumerable<Finding> AtFixing(ReviewCase plan)
    {
        if (plan.Plan.Start is not { } start) yield break;
        foreach (var purchase in plan.Plan.Purchases.Where(p => p.LeadDays > 0 && ForFixing(plan, p)).GroupBy(p => p.LeadDays).OrderByDescending(g => g.Key).Take(1))
        {
            var needing = plan.FirstFixing?.Step.Start ?? start;
            var days = Period.DaysBetween(start.Date, needing.Date);
            if (purchase.Key <= days) continue;
            var late = plan.Plan.Purchases.Where(p => p.LeadDays > days && ForFixing(plan, p)).Select(p => p.Item.ToString()).Distinct().Order(StringComparer.Ordinal).ToList();
            yield return Finding.Warning(
                "supplies-late",
                Invariant($"{Telling.And(late)} {(late.Count == 1 ? "is" : "are up to")} {Telling.Count(purchase.Key, "day", "days")} in coming, and '{plan.FirstFixing?.Id ?? "the first step"}' needs {(late.Count == 1 ? "it" : "them")} on {LocalDatePattern.Iso.Format(needing.Date)}"),
                $"order by {LocalDatePattern.Iso.Format(needing.Date.PlusDays(-purchase.Key))}, borrow it, or begin later: {Meanwhile(plan)}") with
            { Subject = plan.FirstFixing?.Id ?? "" };
        }
    }

    private static string Meanwhile(ReviewCase plan) => plan.Specimen.Condition == Condition.Frozen
        ? "keep it frozen until then"
        : $"do not cut the body before, keep it on ice for a day or two at most; {Freezing.Advice(plan)}";
}
