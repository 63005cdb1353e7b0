using System.Collections.Immutable;
using Protocolist.Findings;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace Protocolist.Plans;

/// <summary>
/// How finely a plan knows its facts: to what no bench can measure, in the units of its JSON. Planning reckons with whole numbers, and the finished plan
/// lies on the grid; so one that was read back equals the one that was written. Words are made of what was reckoned.
/// </summary>
internal static class Grid
{
    /// <summary>Three decimals; small amounts keep six.</summary>
    public static double Round(double value) => Math.Abs(value) >= 1 ? Math.Round(value, 3) : Math.Round(value, 6);

    /// <summary>To the minute, in which plans are dated.</summary>
    public static Duration ToMinute(Duration time) => Duration.FromMinutes(Math.Round(time.TotalMinutes));

    public static Plan On(Plan plan) => plan with
    {
        Steps = Each(plan.Steps, On),
        Recipes = Each(plan.Recipes, On),
        Fluids = Each(plan.Fluids, m => m with { Volume = On(m.Volume) }),
        Findings = Each(plan.Findings, On),
        Costs = plan.Costs.TopUpByYear is { } fluid ? plan.Costs with { TopUpByYear = On(fluid) } : plan.Costs,
    };

    public static Step On(Step step) => step with
    {
        Least = ToMinute(step.Least),
        Most = step.Most is { } most ? ToMinute(most) : null,
        HandsOn = Duration.FromMinutes(Round(step.HandsOn.TotalMinutes)),
        Volume = step.Volume is { } volume ? On(volume) : null,
        Sites = Each(step.Sites, s => s with { PerSiteLow = On(s.PerSiteLow), PerSite = On(s.PerSite), PerSiteHigh = On(s.PerSiteHigh), Total = On(s.Total) }),
        Cuts = Each(step.Cuts, c => c with { Length = On(c.Length), Depth = On(c.Depth), Spacing = On(c.Spacing) }),
    };

    public static Volume On(Volume volume) => Volume.FromMilliliters(Round(volume.Milliliters));

    private static Length? On(Length? length) => length is { } given ? Length.FromMillimeters(Round(given.Millimeters)) : null;

    private static PlannedRecipe On(PlannedRecipe recipe) => recipe with
    {
        Volume = On(recipe.Volume),
        At = Temperature.FromDegreesCelsius(Round(recipe.At.DegreesCelsius)),
        Parts = Each(recipe.Parts, p => p with { Volume = p.Volume is { } volume ? On(volume) : null, Mass = Mass.FromGrams(Round(p.Mass.Grams)) }),
        Telling = new RecipeTelling(recipe),
    };

    /// <summary>A place in a file is where it begins: a plan does not keep how far it reaches.</summary>
    private static Finding On(Finding finding) => finding.Where == finding.Where.Start ? finding : finding with { Where = finding.Where.Start };

    private static ImmutableArray<T> Each<T>(ImmutableArray<T> items, Func<T, T> on) => items.IsEmpty ? items : ImmutableArray.CreateRange(items, on);
}
