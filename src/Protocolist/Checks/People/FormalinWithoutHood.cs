using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Checks.People;

/// <summary>Formalin is injected and poured under a hood or outdoors.</summary>
internal static class FormalinWithoutHood
{
    private const string Id = "formalin-without-hood";
    private static readonly Phrase Injects = new(Id, "'{step}' injects {volume}, which sprays back, in a room of {room:0 m³} without a hood");
    private static readonly Phrase Some = new("formalin-without-hood.some", "formalin");
    private static readonly Phrase Outdoors = new(
        "formalin-without-hood.remedy",
        "inject outdoors with the wind at your back, with goggles and a mask for formaldehyde");

    public static PlanCheck Check { get; } = new(
        Id,
        "people: eyes and lungs at the moment of pouring and injecting",
        "29 CFR 1910.1048; Simmons, AIC/FAIC storage book; common practice",
        Find)
    {
        Severities = [new(Severity.Warning, "formalin is injected in a room without a hood")],
        ProtectsPeople = true,
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        if (plan.Bench.Air is not { HasHood: false } air) return [];
        foreach (var step in plan.Formalin)
        {
            if (step.Kind != StageKind.Inject) continue;
            Argument injected = step.Volume is { } volume ? ("volume", volume) : ("volume", Some);
            var message = Injects.With(Argument.Id("step", step.Id), injected, ("room", air.Room));
            return [Finding.Warning(Id, message, Outdoors).At(step, "dose", "volume")];
        }

        return [];
    }
}
