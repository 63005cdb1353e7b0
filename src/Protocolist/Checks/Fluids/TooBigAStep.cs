using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Rules;

namespace Protocolist.Checks.Fluids;

/// <summary>Alcohol rises in steps.</summary>
internal static class TooBigAStep
{
    private static readonly Phrase TooBig = new(
        Climb.Id,
        "'{step}' goes from {from:0.#} to {to:0.#} %vol at once, {points:0.# vs usual} points; up to {usual:0.# vs points} is usual here");

    private static readonly Phrase Between = new("too-big-a-step.remedy", "put a bath of a strength between before it");

    public static PlanCheck Check { get; } = new(
        Climb.Id,
        "the specimen: a big jump in alcohol draws water out faster than alcohol comes in, and it shrinks, collapses or bursts",
        Climb.Source,
        Find)
    {
        Severities =
        [
            new(Severity.Warning, "alcohol rises by more than 50 points of %vol from water, or by more than 30 from alcohol; jelly has a check of its own"),
        ],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        ImmutableArray<Finding> found = [];

        // For jelly there is a check of its own.
        if (plan.Alcohol.IsEmpty || plan.Group.IsGelatinous) return found;
        var (body, before) = (default(Ascent), default(ReviewStep));
        foreach (var step in plan.FluidSteps)
        {
            if (!Climb.Counts(step.Kind)) continue;
            var rise = body.To(step.Kind, step.Fluid!.AlcoholVolumePercent);
            if (rise.IsTooBig)
            {
                var message = TooBig.With(Argument.Id("step", step.Id), ("from", rise.From), ("to", rise.To), ("points", rise.Points), ("usual", rise.Usual));
                var finding = Finding.Warning(Climb.Id, message, Between).At(step, "fluid");
                found = found.Add(before is null ? finding : finding.By($"{before.Id}.fluid"));
            }

            (body, before) = (body.In(step.Kind, rise.To), step);
        }

        return found;
    }
}
