using NodaTime;
using Protocolist.Findings;
using Protocolist.Protocols;

namespace Protocolist.Checks.Time;

/// <summary>Somebody looks at a body that lies in fixative for days.</summary>
internal static class NobodyWatches
{
    private static readonly Duration Unwatched = Duration.FromDays(3);

    public static PlanCheck Check { get; } = new(
        "nobody-watches",
        "the specimen: gas, floating and soft places are put right on the first days or not at all",
        "common practice: daily for 3 days, then weekly",
        Find)
    {
        Speaks = [new(Severity.Warning, "a fixing bath lasts longer than 3 d, and nobody looks at it")],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        foreach (var step in plan.FluidSteps)
        {
            if (step.Kind == StageKind.Immerse && step.Lasts > Unwatched && step.WatchEvery is null)
                yield return Finding.Warning("nobody-watches", $"'{step.Id}' lasts {step.Lasts.Past(Unwatched)}, and nobody looks at it; {Unwatched.Text()} is the most", "look daily for three days, then every few days: level, gas, floating, soft places, colour").At(step, "last");
        }
    }
}
