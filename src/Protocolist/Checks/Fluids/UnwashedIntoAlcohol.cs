using Protocolist.Findings;
using Protocolist.Protocols;

namespace Protocolist.Checks.Fluids;

/// <summary>Formalin is washed out before alcohol.</summary>
internal static class UnwashedIntoAlcohol
{
    public static PlanCheck Check { get; } = new(
        "unwashed-into-alcohol",
        "the specimen and people: formaldehyde carried into alcohol falls out white, turns it acid, and fumes for years",
        "Meador, Cuffney and Gurtz 1993, USGS Open-File Report 93-104; common practice",
        Find)
    {
        Speaks = [new(Severity.Error, "the body goes from formalin into alcohol without a wash in water between")],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        ReviewStep? formalin = null;
        foreach (var step in plan.FluidSteps)
        {
            if (step.Fluid!.HasFormaldehyde) formalin = step;
            else if (step.Fluid.IsWater && step.Kind is StageKind.Wash) formalin = null;
            else if (step.Fluid.IsAlcohol && formalin is not null)
            {
                yield return Finding.Error("unwashed-into-alcohol", $"'{step.Id}' puts the body into {step.Fluid.Name} straight from the formalin of '{formalin.Id}', without a wash", "wash it in water first, at least 24 h and longer the thicker it is").At(step, "fluid").By($"{formalin.Id}.fluid");
                yield break;
            }
        }
    }
}
