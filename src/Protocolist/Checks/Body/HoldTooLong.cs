using NodaTime;
using Protocolist.Findings;
using Protocolist.Protocols;
using static System.FormattableString;

namespace Protocolist.Checks.Body;

/// <summary>A body waits in the cold for days at most.</summary>
internal static class HoldTooLong
{
    private static readonly Duration Fridge = Duration.FromDays(3);
    private static readonly Duration Cool = Duration.FromDays(1);
    private const double FridgeCelsius = 8;

    public static PlanCheck Check { get; } = new(
        "hold-too-long",
        "the specimen: cold slows decay and does not stop it",
        "common practice: 3 d at fridge temperature, 1 d above 8 degC",
        Find)
    {
        Speaks = [new(Severity.Warning, "a hold lasts longer than 3 d where the cold is 8 degC or below, or longer than 1 d where it is warmer")],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        var cold = plan.Bench.Temperatures.Cold.DegreesCelsius;
        var most = cold <= FridgeCelsius ? Fridge : Cool;
        foreach (var step in plan.Steps)
        {
            if (step.Kind == StageKind.Hold && step.Lasts > most)
                yield return Finding.Warning("hold-too-long", Invariant($"'{step.Id}' holds it for {step.Lasts.Text()} at {cold:0.#} degC; {most.Text()} is the most"), "begin sooner, or freeze it once and thaw it for fixing").At(step, "last", "temperature");
        }
    }
}
