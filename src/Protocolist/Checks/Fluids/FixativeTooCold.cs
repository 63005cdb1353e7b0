using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Rules;
using UnitsNet;

namespace Protocolist.Checks.Fluids;

/// <summary>Formalin does not stand in the cold for days.</summary>
internal static class FixativeTooCold
{
    private static readonly Phrase Stands = new(
        ColdFixative.Id,
        "'{step}' stands {time} at {room:0.# °C vs least}; below {least:0.# °C vs room} formaldehyde falls out white, and it fixes slowly");

    private static readonly Phrase Warm = new("fixative-too-cold.remedy", "start it cold where the body may rot, then bring it to 15 to 20 °C");

    public static PlanCheck Check { get; } = new(
        ColdFixative.Id,
        "the specimen: in the cold formaldehyde falls out as paraformaldehyde and the fluid grows weak",
        ColdFixative.Source,
        Find)
    {
        Severities = [new(Severity.Warning, "the room where a formalin bath stands is below 10 °C")],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        var room = plan.Bench.Temperatures.Room;
        if (!ColdFixative.FallsOut(room.DegreesCelsius)) return [];
        foreach (var step in plan.Formalin)
        {
            if (step.Kind != StageKind.Immerse) continue;
            var least = Temperature.FromDegreesCelsius(ColdFixative.LeastCelsius);
            var message = Stands.With(Argument.Id("step", step.Id), ("time", step.Lasts), ("room", room), ("least", least));
            return [Finding.Warning(ColdFixative.Id, message, Warm).At(step, "last").By("bench.temperature")];
        }

        return [];
    }
}
