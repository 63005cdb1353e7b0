using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Rules;

namespace Protocolist.Checks.Fluids;

/// <summary>One alcohol from the first bath to the last top-up.</summary>
internal static class MixedAlcohols
{
    private static readonly Phrase Two = new(OneAlcohol.Id, "'{first}' uses {fluid} and '{other}' {other-fluid} on the same body");
    private static readonly Phrase One = new("mixed-alcohols.remedy", "use one alcohol throughout; wash it back to water before the other");

    public static PlanCheck Check { get; } = new(
        OneAlcohol.Id,
        "the specimen: ethanol and isopropanol in one jar can be neither measured nor corrected",
        OneAlcohol.Source,
        Find)
    {
        Severities = [new(Severity.Error, "ethanol and isopropanol both meet the body, the topping up counted")],
        Absorbs = [OneAlcohol.Id],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        if (plan.Alcohol.IsEmpty) return [];
        var first = plan.Alcohol[0];
        if (Other(plan.Alcohol, first) is not { } other && (other = Other(plan.Care, first)) is null) return [];
        var message = Two.With(
            Argument.Id("first", first.Id),
            ("fluid", first.Fluid!.Name),
            Argument.Id("other", other.Id),
            ("other-fluid", other.Fluid!.Name));
        return [Finding.Error(OneAlcohol.Id, message, One).At(other, "fluid").By($"{first.Id}.fluid")];
    }

    private static ReviewStep? Other(ImmutableArray<ReviewStep> steps, ReviewStep first)
    {
        foreach (var step in steps)
        {
            if (step.Fluid is { } fluid && OneAlcohol.Clash(first.Fluid!, fluid)) return step;
        }

        return null;
    }
}
