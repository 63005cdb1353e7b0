using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Fluids.Safety;
using UnitsNet;

namespace Protocolist.Checks.People;

/// <summary>No more alcohol stands about than fire rules allow.</summary>
internal static class FlammableQuantity
{
    private const string Id = "flammable-quantity";
    private static readonly Phrase TooMuch = new(Id, "the plan makes {made:vs most} of flammable alcohol; the most is {rules:; }");
    private static readonly Phrase Allowed = new("flammable-quantity.rule", "{most:vs made} {place} ({rule})");

    private static readonly Phrase BathByBath = new(
        "flammable-quantity.remedy",
        "make it bath by bath, store it in a cabinet for flammables, and ask the fire officer");

    public static PlanCheck Check { get; } = new(
        Id,
        "people: fire",
        "OSHA 29 CFR 1910.106(d)(3) and (e)(2)(ii)(b); the local fire code comes first",
        Find)
    {
        Severities = [new(Severity.Warning, "the plan makes more flammable alcohol than a rule of storage allows in one place")],
        ProtectsPeople = true,
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        if (plan.Alcohol.IsEmpty) return [];
        var made = Volume.Zero;
        foreach (var recipe in plan.Plan.Recipes)
        {
            if (IsFlammable(plan, recipe.Fluid)) made += recipe.Volume;
        }

        var rules = new List<StorageThreshold>();
        foreach (var rule in StorageThreshold.All)
        {
            if (rule.Categories.Contains(2) && made > rule.Most) rules.Add(rule);
        }

        if (rules.Count == 0) return [];
        rules.Sort((a, b) => a.Most.CompareTo(b.Most));
        var message = TooMuch.With(
            ("made", made),
            ("most", rules[^1].Most),
            Argument.Messages("rules", rules.Select(r => Allowed.With(("most", r.Most), ("made", made), ("place", r.Place), ("rule", r.Rule)))));
        var steps = plan.Plan.Recipes.Where(r => IsFlammable(plan, r.Fluid)).SelectMany(r => r.For).Distinct().Order(StringComparer.Ordinal);
        return [Finding.Warning(Id, message, BathByBath).By([.. steps.Select(s => $"{s}.volume")])];
    }

    private static bool IsFlammable(ReviewCase plan, Fluid fluid)
    {
        foreach (var step in plan.Alcohol)
        {
            if (step.Fluid == fluid) return Hazards.Of(step.Fluid).FlammableCategory is not null;
        }

        return false;
    }
}
