using Protocolist.Plans;
using Protocolist.Quantities;
using static System.FormattableString;

namespace Protocolist.Planning.Provisioning;

/// <summary>Figures that the fourth pass made: volumes by vessel, doses by region.</summary>
internal static class ProvisionFigures
{
    public static IEnumerable<Figure> Of(Draft draft) => draft.Steps.Where(s => s.Volume is not null).Select(s => Volume(s));

    public static string IdOf(DraftStep step) => $"{step.Id}.volume";

    private static Figure Volume(DraftStep step)
    {
        var si = step.Volume!.Value.CubicMeters;
        var figure = new Figure(IdOf(step), Measurable.Text(si, Dimension.OfVolume), "", [], "") { Exact = ExactText.Of(QuantityRange.Point(si, Dimension.OfVolume)), Where = step.Span.ToString() };
        if (step.Kind == Protocols.StageKind.Inject)
        {
            // Where the protocol names no dose, the group's own is taken.
            return step.Stage.Expression("dose") is null
                ? figure with { Formula = "the usual dose of the group, shared out over the regions by their mass", Inputs = ["specimen.lot-mass"], Source = step.Injections?.PublishedDose.Source ?? "" }
                : figure with { Formula = "the dose, shared out over the regions by their mass", Inputs = [$"{step.Id}.dose"], Source = step.Stage.Source };
        }

        if (step.Vessel is { } vessel)
        {
            return figure with
            {
                Formula = Invariant($"fluid that covers the body {vessel.Arrangement} in {vessel.Vessel.Name} and is at least the ratio times its volume: {Measurable.Text(vessel.Ratio, Dimension.None)} : 1"),
                Inputs = [.. Ratio(step), "specimen.lot-volume"],
                Source = step.Stage.Source,
            };
        }

        return figure with { Formula = "the ratio's low end times the volume of the specimen", Inputs = [.. Ratio(step), "specimen.lot-volume"], Source = step.Stage.Source };
    }

    private static IEnumerable<string> Ratio(DraftStep step) => step.Ratio is null ? [] : [$"{step.Id}.ratio"];
}
