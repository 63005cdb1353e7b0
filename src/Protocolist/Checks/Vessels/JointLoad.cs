using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Vessels.Glass;
using UnitsNet;

namespace Protocolist.Checks.Vessels;

/// <summary>The silicone joints of a glass tank carry no more than structural glazing allows.</summary>
internal static class JointLoad
{
    private const string Id = "joint-load";
    private static readonly Phrase Pulled = new(
        Id,
        "the silicone along the {pane} of the {vessel} is pulled with {pull:0.## MPa vs most} by {level} of {fluid}; "
        + "{most:0.## MPa} is the most, even for short loads");

    private static readonly Phrase Unframed = new(
        "joint-load.unframed",
        "{level:vs most} of {fluid} in the {vessel} hang on the silicone alone, unless a frame carries the edges; {most:0 mm} is the most without");

    private static readonly Phrase Frame = new("joint-load.remedy", "let a frame carry the edges, or fill it less");
    private static readonly Phrase SeeToFrame = new("joint-load.remedy-unframed", "see that a frame carries top and sides before it is filled");

    public static PlanCheck Check { get; } = new(
        Id,
        "people and the specimen: a joint that gives way empties the tank at once",
        "short-term design stress of structural silicone, 0.14 MPa (ASTM C1401 and ETAG 002, from memory); frame past 500 mm: advice of glass makers",
        Find)
    {
        Severities =
        [
            new(Severity.Warning, "the silicone of a tank is pulled with more than 0.14 MPa, or the fluid stands higher than 500 mm without a frame known of"),
        ],
        ProtectsPeople = true,
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        if (plan.House is not { Vessel: { } vessel } house || plan.Tank?.Value is not { } tank) return [];
        var worst = Worst(tank, vessel.Vessel.Pane ?? tank.Spec.Glass.StockThicknesses[0]);

        // The design counts with a joint as wide as its own stock glass; a thinner pane has a narrower joint.
        var pull = worst is not { JointTension: { } tension, Stock: { } stock } ? Pressure.Zero
            : vessel.Vessel.Pane is { } glass ? tension * (stock / glass) : tension;
        Argument level = ("level", vessel.LevelAfter), fluid = ("fluid", house.Fluid!.Name), name = ("vessel", vessel.Vessel.Name);
        if (pull.Megapascals > TankFindings.JointShortTerm)
        {
            var most = Pressure.FromMegapascals(TankFindings.JointShortTerm);
            var message = Pulled.With(("pane", worst!.Name), name, ("pull", pull), level, fluid, ("most", most));
            return [Finding.Warning(Id, message, Frame).At(house, "fluid", "volume")];
        }

        if (tank.Spec.Depth.Meters <= TankFindings.DeepestUnframed) return [];
        var unframed = Unframed.With(level, fluid, name, ("most", Length.FromMeters(TankFindings.DeepestUnframed)));
        return [Finding.Warning(Id, unframed, SeeToFrame).At(house, "fluid", "volume")];
    }

    /// <summary>The wall whose joint is pulled most; null where the narrowest joints hold, and nobody needs to know how thick the glass should be.</summary>
    private static PaneDesign? Worst(TankDesign tank, Length narrowest)
    {
        ReadOnlySpan<PaneDesign?> walls = [tank.LongPane, tank.EndPane];
        var (holds, worst) = (true, default(PaneDesign));
        foreach (var wall in walls) holds &= wall is null || wall.TensionIn(narrowest).Megapascals <= TankFindings.JointShortTerm;
        if (holds) return null;
        foreach (var wall in walls)
        {
            if (wall?.JointTension is not null && (worst is null || wall.JointTension > worst.JointTension)) worst = wall;
        }

        return worst;
    }
}
