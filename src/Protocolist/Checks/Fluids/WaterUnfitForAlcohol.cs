using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids;

namespace Protocolist.Checks.Fluids;

/// <summary>Alcohol is diluted with pure water.</summary>
internal static class WaterUnfitForAlcohol
{
    private const string Id = "water-unfit-for-alcohol";
    private static readonly Phrase Unfit = new(Id, "{fluid} is mixed with {volume} of {water}");
    private static readonly Phrase Some = new("water-unfit-for-alcohol.some", "some");
    private static readonly Phrase Distilled = new("water-unfit-for-alcohol.remedy", "take distilled or deionised water");

    public static PlanCheck Check { get; } = new(
        Id,
        "the specimen: the salts of tap and sea water fall out in alcohol within a day and settle on it",
        "Moore, natural-history collections list, 27 November 2018 (tap water); Western Australian Museum 2011 and Bishop Museum (never sea water)",
        Find)
    {
        Severities = [new(Severity.Warning, "an alcohol of the plan is mixed with tap water or sea water")],
        Absorbs = [Id],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        ImmutableArray<Finding> found = [];
        if (plan.Alcohol.IsEmpty) return found;
        foreach (var recipe in plan.Plan.Recipes)
        {
            if (!IsAlcohol(plan, recipe.Fluid)) continue;
            foreach (var part in recipe.Parts)
            {
                if (part.Fluid is not { Substance.CloudsAlcohol: true }) continue;
                var message = Unfit.With(("fluid", recipe.Fluid.Name), part.Volume is { } volume ? ("volume", volume) : ("volume", Some), ("water", part.Name));
                var finding = Finding.Warning(Id, message, Distilled) with { Subject = recipe.For.FirstOrDefault("") };
                found = found.Add(finding.By([.. recipe.For.Select(s => $"{s}.fluid")]));
            }
        }

        return plan.Plan.Recipes.IsEmpty && plan.Found(Id) is [{ } told, ..] ? [told] : found;
    }

    private static bool IsAlcohol(ReviewCase plan, Fluid fluid)
    {
        foreach (var step in plan.Alcohol)
        {
            if (step.Fluid == fluid) return true;
        }

        return false;
    }
}
