using Protocolist.Findings;
using Protocolist.Vessels;
using static System.FormattableString;

namespace Protocolist.Checks.Vessels;

/// <summary>Alcohol and formalin have room to grow on a hot day.</summary>
internal static class HeadspaceTooSmall
{
    public static PlanCheck Check { get; } = new(
        "headspace-too-small",
        "the vessel and the specimen: a brim-full jar leaks or bursts in summer",
        "OIML R 22 (growth of ethanol); Museum of Vertebrate Zoology fills to the top: handbooks disagree",
        Find)
    {
        Speaks = [new(Severity.Warning, "the final vessel is filled so far that the fluid grows out of it on the hottest day")],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.House is not { Vessel: { } vessel, Fluid: { } fluid } house) yield break;
        var temperatures = plan.Bench.Temperatures;
        var share = vessel.HeadspaceVolume / vessel.Vessel.Shape.Inside;
        var needed = 1 - Headspace.FullestFill(fluid.DensityAt, temperatures.Room, temperatures.Hottest);
        var (has, wants) = Telling.Apart(100 * share, 100 * needed, 1);
        if (share < needed - 1e-6)
            yield return Finding.Warning("headspace-too-small", Invariant($"'{house.Id}' leaves {has} % of the {vessel.Vessel.Name} empty; from {temperatures.Room.DegreesCelsius:0} to {temperatures.Hottest.DegreesCelsius:0} °C {fluid.Name} needs {wants} %"), Invariant($"fill it to {100 * (1 - Headspace.Rule(fluid)):0} % of its height")).At(house, "fluid", "volume").By("bench.temperature");
    }
}
