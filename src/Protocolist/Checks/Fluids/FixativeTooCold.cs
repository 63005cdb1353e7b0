using Protocolist.Findings;
using Protocolist.Protocols;

namespace Protocolist.Checks.Fluids;

/// <summary>Formalin does not stand in the cold for days.</summary>
internal static class FixativeTooCold
{
    private const double LeastCelsius = 10;

    public static PlanCheck Check { get; } = new(
        "fixative-too-cold",
        "the specimen: in the cold formaldehyde falls out as paraformaldehyde and the fluid grows weak",
        "SPNHC best-practices wiki, Fluid Collections (cooler temperatures promote it); the 10 degrees are common practice",
        Find)
    {
        Speaks = [new(Severity.Warning, "the room where a formalin bath stands is below 10 °C")],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        var room = plan.Bench.Temperatures.Room.DegreesCelsius;
        var (said, least) = Telling.Apart(room, LeastCelsius, 1);
        if (room < LeastCelsius && plan.Formalin.FirstOrDefault(s => s.Kind == StageKind.Immerse) is { } step)
            yield return Finding.Warning("fixative-too-cold", $"'{step.Id}' stands {step.Lasts.Text()} at {said} °C; below {least} °C formaldehyde falls out white, and it fixes slowly", "start it cold where the body may rot, then bring it to 15 to 20 °C").At(step, "last").By("bench.temperature");
    }
}
