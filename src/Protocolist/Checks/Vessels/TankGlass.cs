using Protocolist.Findings;
using Protocolist.Vessels;
using Protocolist.Vessels.Glass;
using static System.FormattableString;

namespace Protocolist.Checks.Vessels;

/// <summary>The panes of a large final tank are thick enough for so much fluid.</summary>
internal static class TankGlass
{
    public static PlanCheck Check { get; } = new(
        "tank-glass-to-measure",
        "people and the specimen: a pane that bends breaks one day, with all its fluid",
        "plate theory (Levy; Timoshenko and Woinowsky-Krieger) with an allowed stress of 5.05 MPa; a glazier has the last word",
        Find)
    {
        Speaks = [new(Severity.Note, "a tank deep enough to need a reckoning gives no thickness of its panes")],
        ProtectsPeople = true,
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.Tank is not { } reckoned || plan.House is not { Vessel: { Vessel: { Pane: null, Shape: VesselShape.Box box } } vessel } house) yield break;
        var needed = reckoned.Value is { LongPane: { } pane, Spec.Top: var top } ? Invariant($"{pane.Required.Millimeters:0.0} mm of annealed glass{(top == TankTop.Framed ? " under a frame" : "")}") : "more than glass can give";
        yield return Finding.Note("tank-glass-to-measure", Invariant($"the {vessel.Vessel.Name} holds {vessel.LevelAfter.Text()} of {house.Fluid!.Name} behind panes of {box.Length.Text()} and {box.Width.Text()}, whose thickness nobody gives: the long ones ask {needed}"), Invariant($"measure them before you fill it and note them under 'pane:'; 'protocolist tank --length {box.Length.Millimeters:0}mm --width {box.Width.Millimeters:0}mm --depth {vessel.LevelAfter.Millimeters:0}mm' reckons them all")).At(house, "fluid", "volume");
    }
}
