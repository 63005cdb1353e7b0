using Protocolist.Findings;
using Protocolist.Vessels.Glass;
using UnitsNet;
using static System.FormattableString;

namespace Protocolist.Checks.Vessels;

/// <summary>The silicone joints of a glass tank carry no more than structural glazing allows.</summary>
internal static class JointLoad
{
    public static PlanCheck Check { get; } = new(
        "joint-load",
        "people and the specimen: a joint that gives way empties the tank at once",
        "short-term design stress of structural silicone, 0.14 MPa (ASTM C1401 and ETAG 002, from memory); frame past 500 mm: advice of glass makers",
        Find)
    {
        Speaks = [new(Severity.Warning, "the silicone of a tank is pulled with more than 0.14 MPa, or the fluid stands higher than 500 mm without a frame known of")],
        ProtectsPeople = true,
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.House is not { Vessel: { } vessel } house || plan.Tank?.Value is not { } tank) yield break;
        PaneDesign? worst = null;
        foreach (var pane in (ReadOnlySpan<PaneDesign?>)[tank.LongPane, tank.EndPane])
        {
            if (pane?.JointTension is not null && (worst is null || pane.JointTension > worst.JointTension)) worst = pane;
        }

        // The design counts with a joint as wide as its own stock glass; a thinner pane has a narrower joint.
        var pull = worst is { JointTension: { } tension, Stock: { } stock } ? vessel.Vessel.Pane is { } glass ? tension * (stock / glass) : tension : Pressure.Zero;
        if (pull.Megapascals > TankFindings.JointShortTerm)
            yield return Finding.Warning("joint-load", Invariant($"the silicone along the {worst!.Name} of the {vessel.Vessel.Name} is pulled with {Telling.Apart(pull.Megapascals, TankFindings.JointShortTerm, 2).Value} MPa by {vessel.LevelAfter.Text()} of {house.Fluid!.Name}; {TankFindings.JointShortTerm} MPa is the most, even for short loads"), "let a frame carry the edges, or fill it less").At(house, "fluid", "volume");
        else if (tank.Spec.Depth.Meters > TankFindings.DeepestUnframed)
            yield return Finding.Warning("joint-load", Invariant($"{Telling.Apart(vessel.LevelAfter, Length.FromMeters(TankFindings.DeepestUnframed)).Value} of {house.Fluid!.Name} in the {vessel.Vessel.Name} hang on the silicone alone, unless a frame carries the edges; {TankFindings.DeepestUnframed * 1000:0} mm is the most without"), "see that a frame carries top and sides before it is filled").At(house, "fluid", "volume");
    }
}
