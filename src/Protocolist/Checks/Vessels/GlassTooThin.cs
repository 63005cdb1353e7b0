using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Checks.Vessels;

/// <summary>The panes of a glass tank are as thick as its fluid asks.</summary>
internal static class GlassTooThin
{
    private const string Id = "glass-too-thin";
    private static readonly Phrase TooThin = new(
        Id,
        "the long panes of the {vessel} are {pane:0.# mm vs asked}; {level} of {fluid} ask {asked:0.# mm vs pane}, "
        + "and as it is the safety factor is {safety:0.# vs wanted} where {wanted:0.# vs safety} is wanted");

    private static readonly Phrase Thicker = new("glass-too-thin.remedy", "fill it less, use a tank of {stock}, and have a glazier confirm it");
    private static readonly Phrase NotGlass = new("glass-too-thin.not-glass", "steel or plastic");

    public static PlanCheck Check { get; } = new(
        Id,
        "people and the specimen: a pane that bends breaks one day, with all its fluid",
        "plate theory (Levy; Timoshenko and Woinowsky-Krieger) with an allowed stress of 5.05 MPa; a glazier has the last word",
        Find)
    {
        Severities = [new(Severity.Error, "the panes of a tank are thinner than its depth of fluid asks")],
        ProtectsPeople = true,
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        if (plan.House is not { Vessel: { } vessel } house || plan.Tank?.Value is not { LongPane: { } pane } tank) return [];
        if (vessel.Vessel.Pane is not { } glass || glass >= pane.Required) return [];
        var wanted = tank.Spec.Glass.SafetyFactor;
        var message = TooThin.With(
            ("vessel", vessel.Vessel.Name),
            ("pane", glass),
            ("level", vessel.LevelAfter),
            ("fluid", house.Fluid!.Name),
            ("asked", pane.Required),
            ("safety", wanted * Math.Pow(glass / pane.Required, 2)),
            ("wanted", wanted));
        return [Finding.Error(Id, message, Thicker.With(pane.Stock is { } stock ? ("stock", stock) : ("stock", NotGlass))).At(house, "fluid", "volume")];
    }
}
