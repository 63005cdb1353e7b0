using System.Collections.Immutable;
using NodaTime;
using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Specimens;

namespace Protocolist.Checks.Time;

/// <summary>What has to be bought is there when it is needed.</summary>
internal static class SuppliesLate
{
    private static readonly Phrase Late = new(
        "supplies-late", "{items:and} {n|is|are up to} {lead} {lead|day|days} in coming, and '{step}' needs {n|it|them} on {on:day}");

    private static readonly Phrase FirstStep = new("supplies-late.first-step", "the first step");
    private static readonly Phrase OrderBy = new("supplies-late.remedy", "order by {by:day}, borrow it, or begin later: {meanwhile}");
    private static readonly Phrase KeepFrozen = new("supplies-late.keep-frozen", "keep it frozen until then");
    private static readonly Phrase OnIce = new("supplies-late.on-ice", "do not cut the body before, keep it on ice for a day or two at most; {freezing}");

    public static PlanCheck Check { get; } = new(
        "supplies-late",
        "the specimen: it rots while the order is on its way",
        "the bench's own lead times",
        Find)
    {
        Severities = [new(Severity.Warning, "something that must be bought comes after the step that needs it")],
        Absorbs = ["delivery-comes-too-late"],
    };

    /// <summary>Late for the first fixing, or for any step, as the calendar found.</summary>
    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        ImmutableArray<Finding> found = AtFixing(plan) is { } first ? [first] : [];
        foreach (var finding in plan.Found("delivery-comes-too-late")) found = found.Add(finding with { Id = "supplies-late" });
        return found;
    }

    /// <summary>
    /// Whether the first fixing needs it; what nobody says the use of counts as needed. For fluids, salts and vessels the calendar waits, or says that it
    /// cannot: it knows how far the shelf goes.
    /// </summary>
    private static bool IsForFixing(ReviewCase plan, PlannedPurchase purchase) =>
        !IsDated(plan, purchase) && (purchase.For.IsEmpty || plan.FirstFixing is not { } first || purchase.For.Contains(first.Id));

    private static bool IsDated(ReviewCase plan, PlannedPurchase purchase)
    {
        foreach (var material in plan.Plan.Materials)
        {
            if (material.Id == purchase.Id) return material.Kind is not (MaterialKind.Consumable or MaterialKind.Tool);
        }

        return false;
    }

    private static Finding? AtFixing(ReviewCase plan)
    {
        if (plan.Plan.Start is not { } start) return null;
        var needed = (plan.FirstFixing?.Step.Start ?? start).Date;
        var (days, lead) = (Period.DaysBetween(start.Date, needed), 0);
        foreach (var purchase in plan.Plan.Purchases)
        {
            if (IsForFixing(plan, purchase)) lead = Math.Max(lead, purchase.LeadDays);
        }

        return lead > days ? Finds(plan, needed, days, lead) : null;
    }

    private static Finding Finds(ReviewCase plan, LocalDate needed, int days, int lead)
    {
        var all = plan.Plan.Purchases.Where(p => p.LeadDays > days && IsForFixing(plan, p)).OrderBy(p => p.Id, StringComparer.Ordinal).Select(p => p.Item);
        Message[] late = [.. all.Distinct()];
        var message = Late.With(
            Argument.Messages("items", late),
            ("n", late.Length),
            ("lead", lead),
            plan.FirstFixing is { } fixing ? Argument.Id("step", fixing.Id) : ("step", FirstStep),
            ("on", needed));
        var remedy = OrderBy.With(("by", needed.PlusDays(-lead)), ("meanwhile", Meanwhile(plan)));
        return Finding.Warning("supplies-late", message, remedy) with { Subject = plan.FirstFixing?.Id ?? "" };
    }

    private static Message Meanwhile(ReviewCase plan) =>
        plan.Specimen.Condition == Condition.Frozen ? KeepFrozen : OnIce.With(("freezing", Freezing.Advice(plan)));
}
