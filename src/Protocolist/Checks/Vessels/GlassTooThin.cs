using Protocolist.Findings;
using static System.FormattableString;

namespace Protocolist.Checks.Vessels;

/// <summary>The panes of a glass tank are as thick as its fluid asks.</summary>
internal static class GlassTooThin
{
    public static PlanCheck Check { get; } = new(
        "glass-too-thin",
        "people and the specimen: a pane that bends breaks one day, with all its fluid",
        "plate theory (Levy; Timoshenko and Woinowsky-Krieger) with an allowed stress of 5.05 MPa; a glazier has the last word",
        Find)
    {
        Speaks = [new(Severity.Error, "the panes of a tank are thinner than its depth of fluid asks")],
        ProtectsPeople = true,
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.House is not { Vessel: { } vessel } house || plan.Tank?.Value is not { LongPane: { } pane } || vessel.Vessel.Pane is not { } glass || glass >= pane.Required) yield break;
        var (is_, asked) = Telling.Apart(glass.Millimeters, pane.Required.Millimeters, 1);
        var safety = plan.Tank.Value.Spec.Glass.SafetyFactor * Math.Pow(glass / pane.Required, 2);
        var (had, wanted) = Telling.Apart(safety, plan.Tank.Value.Spec.Glass.SafetyFactor, 1);
        yield return Finding.Error("glass-too-thin", Invariant($"the long panes of the {vessel.Vessel.Name} are {is_} mm; {vessel.LevelAfter.Text()} of {house.Fluid!.Name} ask {asked} mm, and as it is the safety factor is {had} where {wanted} is wanted"), $"fill it less, use a tank of {pane.Stock?.Text() ?? "steel or plastic"}, and have a glazier confirm it").At(house, "fluid", "volume");
    }
}
