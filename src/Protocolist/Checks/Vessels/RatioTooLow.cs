using Protocolist.Findings;
using Protocolist.Protocols;

namespace Protocolist.Checks.Vessels;

/// <summary>There is fixative enough for so much body, changes counted.</summary>
internal static class RatioTooLow
{
    private const double Least = 3;
    private const double Usual = 5;

    public static PlanCheck Check { get; } = new(
        "ratio-too-low",
        "the specimen: the body uses the fixative up before it is fixed",
        "pathology guideline PMC9292019 (ten times); Michonneau 2017 (3 to 5 times); changes counted: common practice",
        Find)
    {
        Speaks =
        [
            new(Severity.Error, "a fixing bath has less than 3 volumes of fluid to one of body, changes counted"),
            new(Severity.Warning, "it has less than 5"),
        ],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        foreach (var step in plan.FluidSteps)
        {
            if (step.Kind != StageKind.Immerse || step.RatioTo(plan.Body.LotVolume.Nominal) is not { } ratio) continue;
            var all = ratio * (1 + step.Step.Changes);
            if (all >= Usual - 0.01) continue;
            var isError = all < Least - 0.01;
            var (given, limit) = Telling.Apart(all, isError ? Least : Usual, 1);
            var message = $"'{step.Id}' gives {given} volumes of {step.Fluid!.Name} to one of body, changes counted; {limit}{(isError ? " is the least" : " to 10 is usual")}";
            yield return (isError ? Finding.Error("ratio-too-low", message, "use more fluid, or change it") : Finding.Warning("ratio-too-low", message, "change the fluid once more")).At(step, "ratio", "changes", "volume").By("specimen.lot-volume");
        }
    }
}
