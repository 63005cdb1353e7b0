using Protocolist.Findings;
using Protocolist.Vessels;
using static System.FormattableString;

namespace Protocolist.Checks.Vessels;

/// <summary>The panes of a large final tank are thick enough for so much fluid.</summary>
internal static class TankGlass
{
    /// <summary>Below this depth common jars and tanks of thin glass hold: the project's choice.</summary>
    private const double ShallowMm = 300;

    public static PlanCheck Check { get; } = new(
        "tank-glass-to-measure",
        "people and the specimen: a pane that bends breaks one day, with all its fluid",
        "plate theory (Levy; Timoshenko and Woinowsky-Krieger) with an allowed stress of 5.05 MPa; a glazier has the last word",
        Find)
    {
        ProtectsPeople = true,
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.House is not { Vessel: { } vessel } house || vessel.Vessel.Wall != VesselMaterial.Glass || vessel.Vessel.Shape is not VesselShape.Box box) yield break;
        if (vessel.LevelAfter.Millimeters < ShallowMm) yield break;
        yield return Finding.Note("tank-glass-to-measure", Invariant($"{vessel.Vessel.Name} holds {vessel.LevelAfter.Text()} of {house.Fluid!.Name} behind panes of {box.Length.Text()} and {box.Width.Text()}; thin glass bends and breaks"), Invariant($"measure its panes before you fill it; 'protocolist tank --length {box.Length.Millimeters:0}mm --width {box.Width.Millimeters:0}mm --depth {vessel.LevelAfter.Millimeters:0}mm' says how thick they must be")).At(house, "volume");
    }
}
