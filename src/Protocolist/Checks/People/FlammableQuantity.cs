using Protocolist.Findings;
using Protocolist.Fluids.Safety;
using UnitsNet;

namespace Protocolist.Checks.People;

/// <summary>No more alcohol stands about than fire rules allow.</summary>
internal static class FlammableQuantity
{
    public static PlanCheck Check { get; } = new(
        "flammable-quantity",
        "people: fire",
        "OSHA 29 CFR 1910.106(d)(3) and (e)(2)(ii)(b); the local fire code comes first",
        Find)
    {
        Speaks = [new(Severity.Warning, "the plan makes more flammable alcohol than a rule of storage allows in one place")],
        ProtectsPeople = true,
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.Alcohol.IsEmpty) yield break;
        var (litres, steps) = (0.0, new List<string>());
        foreach (var recipe in plan.Plan.Recipes)
        {
            if (!plan.Alcohol.Any(s => s.Fluid == recipe.Fluid && Hazards.Of(s.Fluid).FlammableCategory is not null)) continue;
            litres += recipe.Volume.Liters;
            steps.AddRange(recipe.For);
        }

        var total = Volume.FromLiters(litres);
        var rules = StorageThreshold.All.Where(t => t.Categories.Contains(2) && total > t.Most).OrderBy(t => t.Most.Liters).ToList();
        if (rules.Count == 0) yield break;
        var (made, most) = Telling.Apart(total, rules[^1].Most);
        var passed = rules.Select(r => $"{(r == rules[^1] ? most : r.Most.Text())} {r.Place} ({r.Rule})");
        yield return Finding.Warning("flammable-quantity", $"the plan makes {made} of flammable alcohol; the most is {string.Join("; ", passed)}", "make it bath by bath, store it in a cabinet for flammables, and ask the fire officer")
            .By([.. steps.Distinct().Order(StringComparer.Ordinal).Select(s => $"{s}.volume")]);
    }
}
