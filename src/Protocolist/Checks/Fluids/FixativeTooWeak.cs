using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Quantities;
using Protocolist.Rules;

namespace Protocolist.Checks.Fluids;

/// <summary>The fixative is strong enough to fix.</summary>
internal static class FixativeTooWeak
{
    private static readonly Phrase WeakFormalin = new(
        FixingStrength.Id,
        "'{step}' fixes in {fluid}, {strength:0 g/L vs least} of formaldehyde; {least:0 g/L vs strength} is the least in use");

    private static readonly Phrase WeakAlcohol = new(
        "fixative-too-weak.alcohol",
        "'{step}' fixes in {fluid}, and alcohol below {least:0 %vol} does not stop decay in a fresh body");

    private static readonly Phrase StrongerFormalin = new("fixative-too-weak.remedy", "use 10 % formalin, or 4 % for jellyfish");
    private static readonly Phrase StrongerAlcohol = new("fixative-too-weak.remedy-alcohol", "use 75 to 80 %vol, with two changes");

    public static PlanCheck Check { get; } = new(
        FixingStrength.Id,
        "the specimen: too weak a fluid lets it rot while it lies in it",
        FixingStrength.Source,
        Find)
    {
        Severities =
        [
            new(
                Severity.Warning,
                "a bath fixes in formalin of less than 14 g/L of formaldehyde, or first in alcohol below 70 %vol, "
                + "unless 60 %vol or more goes on to 70 within 30 h"),
        ],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        ImmutableArray<Finding> found = [];
        foreach (var step in plan.FluidSteps)
        {
            if (step.Kind != StageKind.Immerse) continue;
            if (FixingStrength.IsTooWeakFormalin(step.Fluid!))
            {
                var message = WeakFormalin.With(
                    Argument.Id("step", step.Id),
                    ("fluid", step.Fluid!.Name),
                    Argument.Of("strength", step.Fluid.FormaldehydeGramsPerLitre!.Value, Dimension.OfDensity),
                    Argument.Of("least", FixingStrength.LeastGrams, Dimension.OfDensity));
                found = found.Add(Finding.Warning(FixingStrength.Id, message, StrongerFormalin).At(step, "fluid"));
            }
            else if (ReferenceEquals(step, plan.FirstFixing) && FixingStrength.IsTooWeakAlcohol(step.Fluid!) && !GoesOnSoon(plan, step))
            {
                var least = Argument.Of("least", FixingStrength.LeastAlcohol / 100, Dimension.OfShareByVolume);
                var message = WeakAlcohol.With(Argument.Id("step", step.Id), ("fluid", step.Fluid!.Name), least);
                found = found.Add(Finding.Warning(FixingStrength.Id, message, StrongerAlcohol).At(step, "fluid", "last"));
            }
        }

        return found;
    }

    private static bool GoesOnSoon(ReviewCase plan, ReviewStep first)
    {
        if (!FixingStrength.MayGoBefore(first.Fluid!, first.Lasts)) return false;
        var isAfter = false;
        foreach (var step in plan.FluidSteps)
        {
            if (isAfter && step.Fluid!.IsAlcohol && !FixingStrength.IsTooWeakAlcohol(step.Fluid)) return true;
            isAfter |= ReferenceEquals(step, first);
        }

        return false;
    }
}
