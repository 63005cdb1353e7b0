using Protocolist.Findings;

namespace Protocolist.Checks.Fluids;

/// <summary>One alcohol from the first bath to the last top-up.</summary>
internal static class MixedAlcohols
{
    public static PlanCheck Check { get; } = new(
        "mixed-alcohols",
        "the specimen: ethanol and isopropanol in one jar can be neither measured nor corrected",
        "Swift, natural-history collections list, May 2021; Simmons, the same, 27 August 2009 (isopropanol lies in layers)",
        Find)
    {
        Speaks = [new(Severity.Error, "ethanol and isopropanol both meet the body, the topping up counted")],
        Absorbs = ["mixed-alcohols"],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.Alcohol.IsEmpty) yield break;
        var first = plan.Alcohol[0];
        foreach (var other in plan.Alcohol.Concat(plan.Care.Where(c => c.Fluid is { IsAlcohol: true })))
        {
            if (other.Fluid!.Substance == first.Fluid!.Substance) continue;
            yield return Finding.Error("mixed-alcohols", $"'{first.Id}' uses {first.Fluid.Name} and '{other.Id}' {other.Fluid.Name} on the same body", "use one alcohol throughout; wash it back to water before the other").At(other, "fluid").By($"{first.Id}.fluid");
            yield break;
        }
    }
}
