using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Vessels;
using Protocolist.Vessels.Glass;

namespace Protocolist.Checks.Vessels;

/// <summary>The panes of a large final tank are thick enough for so much fluid.</summary>
internal static class TankGlass
{
    private const string Id = "tank-glass-to-measure";
    private static readonly Phrase Unmeasured = new(
        Id,
        "the {vessel} holds {level} of {fluid} behind panes of {length} and {width}, whose thickness nobody gives: the long ones ask {needed}");

    private static readonly Phrase Glass = new("tank-glass-to-measure.glass", "{pane:0.0 mm} of annealed glass{frame}");
    private static readonly Phrase UnderFrame = new("tank-glass-to-measure.frame", " under a frame");
    private static readonly Phrase NoGlass = new("tank-glass-to-measure.no-glass", "more than glass can give");
    private static readonly Phrase Measure = new(
        "tank-glass-to-measure.remedy",
        "measure them before you fill it and note them under 'pane:'; "
        + "'protocolist tank --length {length:0}mm --width {width:0}mm --depth {depth:0}mm' reckons them all");

    public static PlanCheck Check { get; } = new(
        Id,
        "people and the specimen: a pane that bends breaks one day, with all its fluid",
        "plate theory (Levy; Timoshenko and Woinowsky-Krieger) with an allowed stress of 5.05 MPa; a glazier has the last word",
        Find)
    {
        Severities = [new(Severity.Note, "a tank deep enough to need a reckoning gives no thickness of its panes")],
        ProtectsPeople = true,
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        if (plan.Tank is not { } tank || plan.House is not { Vessel: { Vessel: { Pane: null, Shape: VesselShape.Box box } } vessel } house) return [];
        Message needed = tank.Value is { LongPane: { } pane, Spec.Top: var top }
            ? Glass.With(("pane", pane.Required), ("frame", top == TankTop.Framed ? UnderFrame : default(Message)))
            : NoGlass;
        var message = Unmeasured.With(
            ("vessel", vessel.Vessel.Name),
            ("level", vessel.LevelAfter),
            ("fluid", house.Fluid!.Name),
            ("length", box.Length),
            ("width", box.Width),
            ("needed", needed));
        var remedy = Measure.With(("length", box.Length.Millimeters), ("width", box.Width.Millimeters), ("depth", vessel.LevelAfter.Millimeters));
        return [Finding.Note(Id, message, remedy).At(house, "fluid", "volume")];
    }
}
