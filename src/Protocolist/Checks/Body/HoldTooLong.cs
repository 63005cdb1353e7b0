using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Rules;
using UnitsNet;

namespace Protocolist.Checks.Body;

/// <summary>A body waits in the cold for days at most.</summary>
internal static class HoldTooLong
{
    private static readonly Phrase TooLong = new("hold-too-long", "'{step}' holds it for {time:vs most} at {temperature:0.# °C}; {most} is the most");
    private static readonly Phrase BeginSooner = new("hold-too-long.remedy", "begin sooner; {freezing}");

    public static PlanCheck Check { get; } = new(
        "hold-too-long",
        "the specimen: cold slows decay and does not stop it",
        "common practice: 3 d at fridge temperature, 1 d above 8 °C",
        Find)
    {
        Severities = [new(Severity.Warning, "a hold lasts longer than 3 d at 8 °C or below, or longer than 1 d where it is warmer")],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        ImmutableArray<Finding> found = [];
        foreach (var step in plan.Steps)
        {
            if (step.Kind != StageKind.Hold || step.Lasts <= HoursBorne.HeldCool) continue;
            var (temperature, figure) = Held(plan, step);
            var most = HoursBorne.Held(temperature.DegreesCelsius);
            if (step.Lasts <= most) continue;
            var message = TooLong.With(Argument.Id("step", step.Id), ("time", step.Lasts), ("temperature", temperature), ("most", most));
            found = found.Add(Finding.Warning("hold-too-long", message, BeginSooner.With(("freezing", Freezing.Advice(plan)))).At(step, "last").By(figure));
        }

        return found;
    }

    /// <summary>Where the protocol says at what temperature, there; else in the cold of the bench.</summary>
    private static (Temperature At, string Figure) Held(ReviewCase plan, ReviewStep step) => step.Work is HoldWork { Temperature.High: var kelvins }
        ? (Temperature.FromKelvins(kelvins), $"{step.Id}.temperature")
        : (plan.Bench.Temperatures.Cold, "bench.cold");
}
