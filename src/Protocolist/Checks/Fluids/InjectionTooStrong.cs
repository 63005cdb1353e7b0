using Protocolist.Findings;
using Protocolist.Protocols;
using static System.FormattableString;

namespace Protocolist.Checks.Fluids;

/// <summary>Injected formalin is not so strong that it closes the way behind it.</summary>
internal static class InjectionTooStrong
{
    /// <summary>8 % formaldehyde, in g/L.</summary>
    private const double Most = 80;

    public static PlanCheck Check { get; } = new(
        "injection-too-strong",
        "the specimen: above 8 % formaldehyde the tissue at the needle hardens and lets nothing further in",
        "van Dam, natural-history collections list, 2011",
        Find)
    {
        Speaks = [new(Severity.Warning, "formalin of more than 80 g/L of formaldehyde is injected")],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        foreach (var step in plan.Formalin)
        {
            if (step.Kind == StageKind.Inject && step.Fluid!.FormaldehydeGramsPerLitre is { } grams && grams > Most)
                yield return Finding.Warning("injection-too-strong", Invariant($"'{step.Id}' injects {step.Fluid.Name}, {grams:0} g/L of formaldehyde; {Most:0} g/L is the most"), "inject 10 % formalin, and more of it").At(step, "fluid");
        }
    }
}
