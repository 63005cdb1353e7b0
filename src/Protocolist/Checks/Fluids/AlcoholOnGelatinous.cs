using Protocolist.Findings;
using static System.FormattableString;

namespace Protocolist.Checks.Fluids;

/// <summary>Jelly goes to alcohol by small steps, or better not at all.</summary>
internal static class AlcoholOnGelatinous
{
    /// <summary>Boltovskoy 1999: steps of 10 points.</summary>
    private const double Step = 10;

    public static PlanCheck Check { get; } = new(
        "alcohol-on-gelatinous",
        "the specimen: alcohol draws the water out of jelly, which shrinks to a shred",
        "Moore, natural-history collections list, 28 August 2009 (formalin for cnidarians); Boltovskoy 1999, South Atlantic Zooplankton (10 % steps where alcohol must be)",
        Find)
    {
        Speaks =
        [
            new(Severity.Error, "a jelly goes into alcohol, and one step raises it by more than 10 points of %vol"),
            new(Severity.Warning, "a jelly goes into alcohol, by steps of 10 points at the most"),
        ],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (!plan.Group.IsGelatinous || plan.Alcohol.IsEmpty) yield break;
        var (before, largest, at) = (0.0, 0.0, plan.Alcohol[0]);
        foreach (var step in plan.Alcohol)
        {
            if (step.Fluid!.AlcoholVolumePercent - before > largest) (largest, at) = (step.Fluid.AlcoholVolumePercent - before, step);
            before = step.Fluid.AlcoholVolumePercent;
        }

        var isTooBig = largest > Step + 1e-9;
        var (points, most) = Telling.Apart(largest, Step, 1);
        var message = Invariant($"{plan.Group.One()} of {100 * plan.Group.WaterFraction.Nominal:0} % water goes into alcohol, and '{at.Id}' raises it by {points} points at once; ")
            + (isTooBig ? $"{most} is the most" : $"no step is over {most}, and it shrinks even so");
        yield return (isTooBig
            ? Finding.Error("alcohol-on-gelatinous", message, "keep it in buffered formalin, or climb by steps of 10 points")
            : Finding.Warning("alcohol-on-gelatinous", message, "keep it in buffered formalin where nothing forbids it")).ByEach(plan.Alcohol, "fluid").By("specimen.water-share") with
        { Subject = at.Id };
    }
}
