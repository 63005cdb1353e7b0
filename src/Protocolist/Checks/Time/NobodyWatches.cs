using System.Collections.Immutable;
using NodaTime;
using Protocolist.Findings;

namespace Protocolist.Checks.Time;

/// <summary>Somebody looks at a body that lies in fixative for days.</summary>
internal static class NobodyWatches
{
    private static readonly Duration Unwatched = Duration.FromDays(3);

    private static readonly Phrase NobodyLooks = new("nobody-watches", "'{step}' lasts {time:vs most}, and nobody looks at it; {most} is the most");
    private static readonly Phrase LookDaily = new(
        "nobody-watches.remedy", "look daily for three days, then every few days: level, gas, floating, soft places, colour");

    public static PlanCheck Check { get; } = new(
        "nobody-watches",
        "the specimen: gas, floating and soft places are put right on the first days or not at all",
        "common practice: daily for 3 days, then weekly",
        Find)
    {
        Severities = [new(Severity.Warning, "a fixing bath lasts longer than 3 d, and nobody looks at it")],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        ImmutableArray<Finding> found = [];
        foreach (var step in plan.FluidSteps)
        {
            if (step.Kind != StageKind.Immerse || step.Lasts <= Unwatched || step.WatchEvery is not null) continue;
            var message = NobodyLooks.With(Argument.Id("step", step.Id), ("time", step.Lasts), ("most", Unwatched));
            found = found.Add(Finding.Warning("nobody-watches", message, LookDaily).At(step, "last"));
        }

        return found;
    }
}
