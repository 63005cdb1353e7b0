using Protocolist.Findings;
using Protocolist.Protocols;

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
            if (step.Kind == StageKind.Inject && step.Fluid!.FormaldehydeGramsPerLitre is { } grams && grams > Most && Telling.Apart(grams, Most) is var (said, most))
                yield return Finding.Warning("injection-too-strong", $"'{step.Id}' injects {step.Fluid.Name}, {said} g/L of formaldehyde; {most} g/L is the most", "inject 10 % formalin, and more of it").At(step, "fluid");
        }
    }
}
