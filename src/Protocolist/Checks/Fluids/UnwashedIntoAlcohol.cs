using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Rules;

namespace Protocolist.Checks.Fluids;

/// <summary>Formalin is washed out before alcohol.</summary>
internal static class UnwashedIntoAlcohol
{
    private static readonly Phrase Unwashed = new(
        WashBeforeAlcohol.Id,
        "'{step}' puts the body into {fluid} straight from the formalin of '{formalin}', without a wash");

    private static readonly Phrase Wash = new("unwashed-into-alcohol.remedy", "wash it in water first, at least 24 h and longer the thicker it is");

    public static PlanCheck Check { get; } = new(
        WashBeforeAlcohol.Id,
        "the specimen and people: formaldehyde carried into alcohol falls out white, turns it acid, and fumes for years",
        WashBeforeAlcohol.Source,
        Find)
    {
        Severities = [new(Severity.Error, "the body goes from formalin into alcohol without a wash in water between")],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        var (formalin, holds) = (default(ReviewStep), false);
        foreach (var step in plan.FluidSteps)
        {
            if (WashBeforeAlcohol.IsMissing(holds, step.Fluid!))
            {
                var message = Unwashed.With(Argument.Id("step", step.Id), ("fluid", step.Fluid!.Name), Argument.Id("formalin", formalin!.Id));
                return [Finding.Error(WashBeforeAlcohol.Id, message, Wash).At(step, "fluid").By($"{formalin.Id}.fluid")];
            }

            holds = WashBeforeAlcohol.HoldsFormalin(holds, step.Kind, step.Fluid!);
            if (step.Fluid!.HasFormaldehyde) formalin = step;
        }

        return [];
    }
}
