using Protocolist.Findings;
using Protocolist.Fluids;

namespace Protocolist.Checks.Fluids;

/// <summary>Alcohol is diluted with pure water.</summary>
internal static class WaterUnfitForAlcohol
{
    public static PlanCheck Check { get; } = new(
        "water-unfit-for-alcohol",
        "the specimen: the salts of tap and sea water fall out in alcohol within a day and settle on it",
        "Moore, natural-history collections list, 27 November 2018 (tap water); Western Australian Museum 2011 and Bishop Museum (never sea water)",
        Find)
    {
        Speaks = [new(Severity.Warning, "an alcohol of the plan is mixed with tap water or sea water")],
        Absorbs = ["water-unfit-for-alcohol"],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.Alcohol.IsEmpty) yield break;
        foreach (var recipe in plan.Plan.Recipes)
        {
            if (!plan.Alcohol.Any(s => s.Fluid == recipe.Fluid)) continue;
            foreach (var part in recipe.Parts.Where(p => p.Fluid is { Substance.CloudsAlcohol: true }))
                yield return Finding.Warning("water-unfit-for-alcohol", $"{recipe.Fluid} is mixed with {part.Volume?.Text() ?? "some"} of {part.Name}", "take distilled or deionised water").By([.. recipe.For.Select(s => $"{s}.fluid")]) with { Subject = recipe.For.FirstOrDefault("") };
        }

        if (plan.Plan.Recipes.IsEmpty && plan.Earlier.FirstOrDefault(f => f.Id == "water-unfit-for-alcohol") is { } told) yield return told;
    }
}
