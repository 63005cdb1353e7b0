using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Fluids.Infiltration;
using Protocolist.Quantities;
using Protocolist.Rules;
using Duration = NodaTime.Duration;

namespace Protocolist.Checks.Fluids;

/// <summary>The wash between formalin and alcohol is long enough for so thick a body.</summary>
internal static class WashTooShort
{
    private static readonly Phrase TooShort = new(
        WashTime.Id,
        "{washes:'and} {washes|washes|wash} for {time:vs least}; {least} is the least for a body of this size");

    private static readonly Phrase HalfStays = new(
        "wash-too-short.half-stays",
        "after {time} of {washes:'and} at most {gone:0 % vs least} of the free formaldehyde has left a body with {depth} to cross; {least:0 %} is the least");

    private static readonly Phrase Longer = new("wash-too-short.remedy", "wash for {least} or longer");
    private static readonly Phrase UntilHalf = new("wash-too-short.remedy-half", "wash for {needed}");

    public static PlanCheck Check { get; } = new(
        WashTime.Id,
        "the specimen and people: formaldehyde left inside comes out in the alcohol, as fumes and as white scum",
        WashTime.Source,
        Find)
    {
        Severities =
        [
            new(
                Severity.Warning,
                "the washes after formalin are together shorter than 24 h, small animals aside, or take out less than half of the free formaldehyde "
                + "by the faster of two reckonings"),
        ],
    };

    /// <summary>Washes that follow each other are one wash.</summary>
    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        ImmutableArray<Finding> found = [];
        if (plan.Alcohol.IsEmpty) return found;
        var (from, time, isFormalinInside) = (-1, Duration.Zero, false);
        for (var i = 0; i <= plan.FluidSteps.Length; i++)
        {
            var step = i < plan.FluidSteps.Length ? plan.FluidSteps[i] : null;
            if (step is { Kind: StageKind.Wash } && isFormalinInside)
            {
                (from, time) = (from < 0 ? i : from, time + step.Lasts);
                continue;
            }

            if (from >= 0)
            {
                var fault = WashTime.Of(plan.Depth, time);
                if (fault != WashFault.None) found = found.Add(Short(plan, plan.FluidSteps.AsSpan()[from..i].ToArray(), time, fault));
                (from, time, isFormalinInside) = (-1, Duration.Zero, false);
            }

            isFormalinInside |= step?.Fluid!.HasFormaldehyde ?? false;
        }

        return found;
    }

    private static Finding Short(ReviewCase plan, ReviewStep[] washes, Duration time, WashFault fault)
    {
        var named = Argument.Ids("washes", washes.Select(s => s.Id));
        var (message, remedy) = fault == WashFault.BelowLeast
            ? (TooShort.With(named, ("time", time), ("least", WashTime.Least)), Longer.With(("least", WashTime.Least)))
            : (HalfStays.With(
                    named,
                    ("time", time),
                    Argument.Of("gone", WashTime.Gone(plan.Depth, time), Dimension.None),
                    ("depth", plan.Depth),
                    Argument.Of("least", WashTime.LeastGone, Dimension.None)),
                UntilHalf.With(("needed", Diffusion.Time(DiffusionShape.Cylinder, plan.Depth, WashTime.LeastGone, Solute.Formaldehyde))));
        return Finding.Warning(WashTime.Id, message, remedy).At(washes[0]).ByEach(washes, "last").By("specimen.half-thickness");
    }
}
