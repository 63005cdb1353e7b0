using Protocolist.Findings;
using Protocolist.Protocols;
using static System.FormattableString;

namespace Protocolist.Checks.People;

/// <summary>Formalin is injected and poured under a hood or outdoors.</summary>
internal static class FormalinWithoutHood
{
    public static PlanCheck Check { get; } = new(
        "formalin-without-hood",
        "people: eyes and lungs at the moment of pouring and injecting",
        "29 CFR 1910.1048; Simmons, AIC/FAIC storage book; common practice",
        Find)
    {
        Speaks = [new(Severity.Warning, "formalin is injected in a room without a hood")],
        ProtectsPeople = true,
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.Bench.Air is not { HasHood: false } air) yield break;
        if (plan.Formalin.FirstOrDefault(s => s.Kind == StageKind.Inject) is { } inject)
            yield return Finding.Warning("formalin-without-hood", Invariant($"'{inject.Id}' injects {inject.Step.Volume?.Text() ?? "formalin"}, which sprays back, in a room of {air.Room.CubicMeters:0} m³ without a hood"), "inject outdoors with the wind at your back, with goggles and a mask for formaldehyde").At(inject, "dose", "volume");
    }
}
