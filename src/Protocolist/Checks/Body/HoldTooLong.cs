using Protocolist.Findings;
using Protocolist.Protocols;
using Protocolist.Rules;
using static System.FormattableString;

namespace Protocolist.Checks.Body;

/// <summary>A body waits in the cold for days at most.</summary>
internal static class HoldTooLong
{
    private const double KelvinAtZero = 273.15;

    public static PlanCheck Check { get; } = new(
        "hold-too-long",
        "the specimen: cold slows decay and does not stop it",
        "common practice: 3 d at fridge temperature, 1 d above 8 °C",
        Find)
    {
        Speaks = [new(Severity.Warning, "a hold lasts longer than 3 d at 8 °C or below, or longer than 1 d where it is warmer")],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        foreach (var step in plan.Steps)
        {
            if (step.Kind != StageKind.Hold) continue;
            var (celsius, figure) = Held(plan, step);
            var most = HoursBorne.Held(celsius);
            if (step.Lasts > most)
                yield return Finding.Warning("hold-too-long", Invariant($"'{step.Id}' holds it for {step.Lasts.Past(most)} at {celsius:0.#} °C; {most.Text()} is the most"), $"begin sooner; {Freezing.Advice(plan)}").At(step, "last").By(figure);
        }
    }

    /// <summary>Where the protocol says at what temperature, there; else in the cold of the bench.</summary>
    private static (double Celsius, string Figure) Held(ReviewCase plan, ReviewStep step)
    {
        var own = $"{step.Id}.temperature";
        return plan.ValueOf(own) is { } value ? (value.Quantity.High - KelvinAtZero, own) : (plan.Bench.Temperatures.Cold.DegreesCelsius, "bench.cold");
    }
}
