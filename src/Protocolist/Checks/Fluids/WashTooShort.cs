using Protocolist.Findings;
using Protocolist.Fluids.Infiltration;
using Protocolist.Protocols;
using Protocolist.Quantities;
using UnitsNet;
using static System.FormattableString;
using Duration = NodaTime.Duration;

namespace Protocolist.Checks.Fluids;

/// <summary>The wash between formalin and alcohol is long enough for so thick a body.</summary>
internal static class WashTooShort
{
    private static readonly Duration Least = Duration.FromHours(24);

    /// <summary>Bodies that are thinner to the middle are rinsed in minutes: embryos twice for 10 min (University of Washington, fixing gametes and embryos).</summary>
    private static readonly Length Tiny = Length.FromMillimeters(1);

    /// <summary>Share of the free formaldehyde that must be out at best: the project's choice, below what every handbook's time reaches.</summary>
    private const double Half = 0.5;

    public static PlanCheck Check { get; } = new(
        "wash-too-short",
        "the specimen and people: formaldehyde left inside comes out in the alcohol, as fumes and as white scum",
        "at least 24 h: Meador, Cuffney and Gurtz 1993, USGS Open-File Report 93-104 (48 h for fishes); half washed out at the least: the project's choice, by diffusion (Crank 1975)",
        Find)
    {
        Speaks = [new(Severity.Warning, "a wash after formalin and before alcohol is shorter than 24 h, small animals aside, or takes out less than half of the free formaldehyde by the faster of two reckonings")],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.Alcohol.IsEmpty) yield break;
        ReviewStep? formalin = null;
        foreach (var step in plan.FluidSteps)
        {
            if (step.Fluid!.HasFormaldehyde) formalin = step;
            if (step.Kind != StageKind.Wash || formalin is null) continue;
            formalin = null;
            var gone = Diffusion.Reached(DiffusionShape.Cylinder, plan.Depth, step.Lasts.TotalSeconds, Solute.Formaldehyde).Fast;
            if (step.Lasts < Least && plan.Depth > Tiny)
                yield return Finding.Warning("wash-too-short", $"'{step.Id}' washes for {step.Lasts.Text()}; {Least.Text()} is the least for a body of this size", $"wash for {Least.Text()} or longer").At(step, "last");
            else if (gone < Half)
                yield return Finding.Warning("wash-too-short", Invariant($"after {step.Lasts.Text()} of '{step.Id}' at most {100 * gone:0} % of the free formaldehyde has left a body with {plan.Depth.Text()} to cross"), $"wash for {Measurable.Text(Diffusion.Time(DiffusionShape.Cylinder, plan.Depth, Half, Solute.Formaldehyde))}").At(step, "last").By("specimen.half-thickness");
        }
    }
}
