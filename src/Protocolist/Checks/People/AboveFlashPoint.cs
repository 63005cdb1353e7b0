using Protocolist.Findings;
using Protocolist.Fluids.Safety;
using UnitsNet;
using static System.FormattableString;

namespace Protocolist.Checks.People;

/// <summary>Much alcohol does not stand open in a room warmer than its flash point.</summary>
internal static class AboveFlashPoint
{
    private static readonly Volume Much = Volume.FromLiters(5);

    public static PlanCheck Check { get; } = new(
        "above-flash-point",
        "people: vapour creeps along the floor to the nearest spark",
        "closed-cup flash points (a table in wide use, good to 3 K; NIOSH Pocket Guide for isopropanol); the 5 L are the project's choice",
        Find)
    {
        Speaks = [new(Severity.Warning, "5 L or more of an alcohol are opened in a room at or above its flash point, the doubt of that counted")],
        ProtectsPeople = true,
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        var room = plan.Bench.Temperatures.Room.DegreesCelsius;
        ReviewStep? most = null;
        foreach (var step in plan.Alcohol)
        {
            if (step.Step.Volume is { } volume && volume >= Much && (most is null || volume > most.Step.Volume)) most = step;
        }

        if (most is not null && Hazards.Of(most.Fluid!) is { FlashPoint: { } flash } hazards && room >= flash.DegreesCelsius - hazards.FlashPointDoubt)
            yield return Finding.Warning("above-flash-point", Invariant($"'{most.Id}' opens {most.Step.Volume!.Value.Text()} of {most.Fluid!.Name} at {room:0.#} °C; it flashes from {flash.DegreesCelsius:0} °C, give or take {hazards.FlashPointDoubt:0}"), "no flame, motor or switch near, air drawn off at the floor, metal drums earthed; a cooler room is better").At(most, "fluid", "volume").By("bench.temperature");
    }
}
