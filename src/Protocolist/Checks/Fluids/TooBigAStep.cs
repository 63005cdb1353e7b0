using System.Globalization;
using Protocolist.Findings;
using Protocolist.Protocols;

namespace Protocolist.Checks.Fluids;

/// <summary>Alcohol rises in steps.</summary>
internal static class TooBigAStep
{
    /// <summary>
    /// Published series climb by at most 50 points at once at the lower end (20, 50, 80: Ahlander 2021; 35, 50, 70: Grant and Archdeacon 2021);
    /// in the trade's first step from water 50 is usual, later ones are 20 to 30. Small fishes go straight from water to 70
    /// (USGS 93-104), so beyond 50 from water is a warning and not an error.
    /// </summary>
    internal const double FirstStep = 50;
    internal const double LaterStep = 30;

    public static PlanCheck Check { get; } = new(
        "too-big-a-step",
        "the specimen: a big jump in alcohol draws water out faster than alcohol comes in, and it shrinks, collapses or bursts",
        "Simmons, Storage in Fluid Preservatives (AIC/FAIC); Ahlander 2021; Grant and Archdeacon 2021; USGS Open-File Report 93-104",
        Find)
    {
        Speaks = [new(Severity.Warning, "alcohol rises by more than 50 points of %vol from water, or by more than 30 from alcohol; jelly has a check of its own")],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        // For jelly there is a check of its own.
        if (plan.Alcohol.IsEmpty || plan.Group.IsGelatinous) yield break;
        var strength = 0.0;
        var from = "";
        var wasFixed = false;
        foreach (var step in plan.FluidSteps.Where(s => s.Kind is StageKind.Bath or StageKind.House or StageKind.Immerse or StageKind.Wash))
        {
            var next = step.Fluid!.AlcoholVolumePercent;

            // A body that alcohol itself fixes starts in it: there is nothing to climb from.
            if (!wasFixed && step.Kind == StageKind.Immerse) strength = next;
            wasFixed |= step.Kind == StageKind.Immerse;
            var most = strength == 0 ? FirstStep : LaterStep;
            if (next - strength > most + 1e-9)
            {
                var (points, usual) = Telling.Apart(next - strength, most, 1);
                var finding = Finding.Warning("too-big-a-step", string.Create(CultureInfo.InvariantCulture, $"'{step.Id}' goes from {strength:0.#} to {next:0.#} %vol at once, {points} points; up to {usual} is usual here"), "put a bath of a strength between before it").At(step, "fluid");
                yield return from.Length > 0 ? finding.By($"{from}.fluid") : finding;
            }

            strength = next;
            from = step.Id;
        }
    }
}
