using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Quantities;
using Protocolist.Rules;

namespace Protocolist.Checks.Fluids;

/// <summary>Injected formalin is not so strong that it closes the way behind it.</summary>
internal static class InjectionTooStrong
{
    private static readonly Phrase TooStrong = new(
        InjectedStrength.Id,
        "'{step}' injects {fluid}, {strength:0 g/L vs most} of formaldehyde; {most:0 g/L vs strength} is the most");

    private static readonly Phrase Weaker = new("injection-too-strong.remedy", "inject 10 % formalin, and more of it");

    public static PlanCheck Check { get; } = new(
        InjectedStrength.Id,
        "the specimen: above 8 % formaldehyde the tissue at the needle hardens and lets nothing further in",
        InjectedStrength.Source,
        Find)
    {
        Severities = [new(Severity.Warning, "formalin of more than 80 g/L of formaldehyde is injected")],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        ImmutableArray<Finding> found = [];
        foreach (var step in plan.Formalin)
        {
            if (step.Kind != StageKind.Inject || !InjectedStrength.IsTooStrong(step.Fluid!)) continue;
            var message = TooStrong.With(
                Argument.Id("step", step.Id),
                ("fluid", step.Fluid!.Name),
                Argument.Of("strength", step.Fluid.FormaldehydeGramsPerLitre!.Value, Dimension.OfDensity),
                Argument.Of("most", InjectedStrength.Most, Dimension.OfDensity));
            found = found.Add(Finding.Warning(InjectedStrength.Id, message, Weaker).At(step, "fluid"));
        }

        return found;
    }
}
