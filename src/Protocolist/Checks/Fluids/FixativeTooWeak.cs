using NodaTime;
using Protocolist.Findings;
using Protocolist.Protocols;
using static System.FormattableString;

namespace Protocolist.Checks.Fluids;

/// <summary>The fixative is strong enough to fix.</summary>
internal static class FixativeTooWeak
{
    private const double LeastGramsPerLitre = 14;
    private const double LeastAlcohol = 70;
    private const double BriefAlcohol = 60;

    /// <summary>A day, and the hours until somebody is there.</summary>
    private static readonly Duration Brief = Duration.FromHours(30);

    public static PlanCheck Check { get; } = new(
        "fixative-too-weak",
        "the specimen: too weak a fluid lets it rot while it lies in it",
        "weakest formalin in use: Dawson, The Scyphozoan (4 parts of stock for jellyfish, about 15 g/L); ethanol 70 to 80 %vol: Michonneau 2017; 60 % for a day at first: Banks 1909, USNM Bulletin 67",
        Find)
    {
        Speaks = [new(Severity.Warning, "a bath fixes in formalin of less than 14 g/L of formaldehyde, or first in alcohol below 70 %vol, unless 60 %vol or more goes on to 70 within 30 h")],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        foreach (var step in plan.FluidSteps)
        {
            if (step.Kind != StageKind.Immerse) continue;
            if (step.Fluid!.FormaldehydeGramsPerLitre is { } grams && grams < LeastGramsPerLitre)
            {
                var (said, least) = Telling.Apart(grams, LeastGramsPerLitre);
                yield return Finding.Warning("fixative-too-weak", $"'{step.Id}' fixes in {step.Fluid.Name}, {said} g/L of formaldehyde; {least} g/L is the least in use", "use 10 % formalin, or 4 % for jellyfish").At(step, "fluid");
            }
            else if (step.Fluid.IsAlcohol && step == plan.FirstFixing && step.Fluid.AlcoholVolumePercent < LeastAlcohol - 1e-9 && !GoesOnSoon(plan, step))
            {
                yield return Finding.Warning("fixative-too-weak", Invariant($"'{step.Id}' fixes in {step.Fluid.Name}, and alcohol below {LeastAlcohol:0} %vol does not stop decay in a fresh body"), "use 75 to 80 %vol, with two changes").At(step, "fluid", "last");
            }
        }
    }

    /// <summary>A weak first alcohol for a day at most, with a strong one after it, is a published way for myriapods (Banks 1909, from about 60 %).</summary>
    private static bool GoesOnSoon(ReviewCase plan, ReviewStep first) =>
        first.Fluid!.AlcoholVolumePercent >= BriefAlcohol - 1e-9 && first.Lasts <= Brief && plan.Alcohol.Any(s => plan.IndexOf(s) > plan.IndexOf(first) && s.Fluid!.AlcoholVolumePercent >= LeastAlcohol - 1e-9);
}
