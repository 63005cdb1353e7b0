using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids.Safety;
using UnitsNet;

namespace Protocolist.Checks.People;

/// <summary>Much alcohol does not stand open in a room warmer than its flash point.</summary>
internal static class AboveFlashPoint
{
    private const string Id = "above-flash-point";
    private static readonly Volume Much = Volume.FromLiters(5);
    private static readonly Phrase Opens = new(
        Id,
        "'{step}' opens {volume} of {fluid} at {room:0.# °C}; it flashes from {flash:0 °C}, give or take {doubt:0}");

    private static readonly Phrase KeepCool = new(
        "above-flash-point.remedy",
        "no flame, motor or switch near, air drawn off at the floor, metal drums earthed; a cooler room is better");

    public static PlanCheck Check { get; } = new(
        Id,
        "people: vapour creeps along the floor to the nearest spark",
        "closed-cup flash points (a table in wide use, good to 3 K; NIOSH Pocket Guide for isopropanol); the 5 L are the project's choice",
        Find)
    {
        Severities = [new(Severity.Warning, "5 L or more of an alcohol are opened in a room at or above its flash point, the doubt of that counted")],
        ProtectsPeople = true,
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        var room = plan.Bench.Temperatures.Room;
        var (most, volume) = (default(ReviewStep), Volume.Zero);
        foreach (var step in plan.Alcohol)
        {
            if (step.Volume is { } opened && opened >= Much && opened > volume) (most, volume) = (step, opened);
        }

        if (most is null || Hazards.Of(most.Fluid!) is not { FlashPoint: { } flash } hazards) return [];
        if (room.DegreesCelsius < flash.DegreesCelsius - hazards.FlashPointDoubt) return [];
        var message = Opens.With(
            Argument.Id("step", most.Id),
            ("volume", volume),
            ("fluid", most.Fluid!.Name),
            ("room", room),
            ("flash", flash),
            ("doubt", hazards.FlashPointDoubt));
        return [Finding.Warning(Id, message, KeepCool).At(most, "fluid", "volume").By("bench.temperature")];
    }
}
