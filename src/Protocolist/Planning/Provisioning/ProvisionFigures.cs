using Protocolist.Findings;
using Protocolist.Planning.Drafting;
using Protocolist.Plans;
using Protocolist.Quantities;

namespace Protocolist.Planning.Provisioning;

/// <summary>Figures that the pass made: volumes by vessel, doses by region.</summary>
internal static class ProvisionFigures
{
    private static readonly Phrase UsualDose = new("volume.usual-dose", "the usual dose of the group, shared out over the regions by their mass");
    private static readonly Phrase Dose = new("volume.dose", "the dose, shared out over the regions by their mass");
    private static readonly Phrase ByRatio = new("volume.ratio", "the ratio's low end times the volume of the specimen");

    private static readonly Phrase Covers = new(
        "volume.covers", "fluid that covers the body {arrangement} in {vessel} and is at least the ratio times its volume: {ratio} : 1");

    public static IEnumerable<Figure> Of(Draft draft) => draft.Steps.Where(s => s.Volume is not null).Select(Volume);

    public static string IdOf(DraftStep step) => $"{step.Id}.volume";

    private static Figure Volume(DraftStep step)
    {
        var origin = new FigureOrigin(IdOf(step), [], "") { Where = step.Span };
        return Explained(step, origin).Of(step.Volume!.Value.CubicMeters, Dimension.OfVolume);
    }

    private static FigureOrigin Explained(DraftStep step, FigureOrigin origin)
    {
        if (step.Work is InjectWork inject)
        {
            // Where the protocol names no dose, the group's own is taken.
            return !step.Stage.Has(Drafting.StageKey.Dose)
                ? origin with { Rule = UsualDose, Inputs = ["specimen.lot-mass"], Source = inject.Plan?.PublishedDose.Source ?? "" }
                : origin with { Rule = Dose, Inputs = [$"{step.Id}.dose"], Source = step.Stage.Source };
        }

        return origin with
        {
            Rule = step.Vessel is { } vessel
                ? Covers.With(("arrangement", vessel.Arrangement), ("vessel", vessel.Vessel.Name), Argument.Of("ratio", vessel.Ratio, Dimension.None))
                : ByRatio,
            Inputs = [.. Ratio(step), "specimen.lot-volume"],
            Source = step.Stage.Source,
        };
    }

    private static string[] Ratio(DraftStep step) => step.Ratio is null ? [] : [$"{step.Id}.ratio"];
}
