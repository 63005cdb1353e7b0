using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Quantities;
using Protocolist.Vessels;

namespace Protocolist.Checks.Vessels;

/// <summary>Alcohol and formalin have room to grow on a hot day.</summary>
internal static class HeadspaceTooSmall
{
    private const string Id = "headspace-too-small";
    private static readonly Phrase TooFull = new(
        Id,
        "'{step}' leaves {empty:0.# % vs needed} of the {vessel} empty; from {room:0} to {hottest:0} °C {fluid} needs {needed:0.# % vs empty}");

    private static readonly Phrase FillLess = new("headspace-too-small.remedy", "fill it to {fill:0 %} of its height");

    public static PlanCheck Check { get; } = new(
        Id,
        "the vessel and the specimen: a brim-full jar leaks or bursts in summer",
        "OIML R 22 (growth of ethanol); Museum of Vertebrate Zoology fills to the top: handbooks disagree",
        Find)
    {
        Severities = [new(Severity.Warning, "the final vessel is filled so far that the fluid grows out of it on the hottest day")],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        if (plan.House is not { Vessel: { } vessel, Fluid: { } fluid } house) return [];
        var temperatures = plan.Bench.Temperatures;
        var empty = vessel.HeadspaceVolume / vessel.Vessel.Shape.Inside;
        var needed = 1 - Headspace.FullestFill(fluid.DensityAt, temperatures.Room, temperatures.Hottest);
        if (empty >= needed - 1e-6) return [];
        var message = TooFull.With(
            Argument.Id("step", house.Id),
            Argument.Of("empty", empty, Dimension.None),
            ("vessel", vessel.Vessel.Name),
            ("room", temperatures.Room.DegreesCelsius),
            ("hottest", temperatures.Hottest.DegreesCelsius),
            ("fluid", fluid.Name),
            Argument.Of("needed", needed, Dimension.None));
        var remedy = FillLess.With(Argument.Of("fill", 1 - Headspace.Rule(fluid), Dimension.None));
        return [Finding.Warning(Id, message, remedy).At(house, "fluid", "volume").By("bench.temperature")];
    }
}
