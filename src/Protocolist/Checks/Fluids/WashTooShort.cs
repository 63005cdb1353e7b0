using Protocolist.Findings;
using Protocolist.Fluids;
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
        Speaks = [new(Severity.Warning, "the washes after formalin are together shorter than 24 h, small animals aside, or take out less than half of the free formaldehyde by the faster of two reckonings")],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.Alcohol.IsEmpty) yield break;
        var (washes, isFormalinInside) = (new List<ReviewStep>(), false);
        foreach (var step in plan.FluidSteps.Append(null))
        {
            if (step is { Kind: StageKind.Wash } && isFormalinInside)
            {
                washes.Add(step);
                continue;
            }

            if (washes.Count > 0)
            {
                if (Judge(plan, washes) is { } finding) yield return finding;
                (washes, isFormalinInside) = ([], false);
            }

            isFormalinInside |= step?.Fluid!.HasFormaldehyde ?? false;
        }
    }

    /// <summary>Washes that follow each other are one wash.</summary>
    private static Finding? Judge(ReviewCase plan, List<ReviewStep> washes)
    {
        var time = washes.Aggregate(Duration.Zero, (sum, s) => sum + s.Lasts);
        var gone = Diffusion.Reached(DiffusionShape.Cylinder, plan.Depth, time.TotalSeconds, Solute.Formaldehyde).Fast;
        var named = Telling.And([.. washes.Select(s => $"'{s.Id}'")]);
        if (time < Least && plan.Depth > Tiny)
            return Finding.Warning("wash-too-short", $"{named} {(washes.Count == 1 ? "washes" : "wash")} for {time.Past(Least)}; {Least.Text()} is the least for a body of this size", $"wash for {Least.Text()} or longer").At(washes[0]).ByEach(washes, "last").By("specimen.half-thickness");
        return gone < Half
            ? Finding.Warning("wash-too-short", Invariant($"after {time.Text()} of {named} at most {Telling.Apart(100 * gone, 100 * Half).Value} % of the free formaldehyde has left a body with {plan.Depth.Text()} to cross; {100 * Half:0} % is the least"), $"wash for {Measurable.Text(Diffusion.Time(DiffusionShape.Cylinder, plan.Depth, Half, Solute.Formaldehyde))}").At(washes[0]).ByEach(washes, "last").By("specimen.half-thickness")
            : null;
    }
}
