using System.Collections.Immutable;
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

    /// <summary>The draft's figures, and those of the volumes after them.</summary>
    public static ImmutableArray<Figure> With(Draft draft)
    {
        var volumes = 0;
        foreach (var step in draft.Steps) volumes += step.Volume is null ? 0 : 1;
        var figures = ImmutableArray.CreateBuilder<Figure>(draft.Figures.Length + volumes);
        figures.AddRange(draft.Figures);
        foreach (var step in draft.Steps)
        {
            if (step.Volume is not null) figures.Add(Volume(step));
        }

        return figures.MoveToImmutable();
    }

    public static string IdOf(DraftStep step) => step.Stage.VolumeId;

    private static Figure Volume(DraftStep step)
    {
        return Explained(step, IdOf(step)).Of(step.Volume!.Value.CubicMeters, Dimension.OfVolume);
    }

    private static FigureOrigin Explained(DraftStep step, string id)
    {
        if (step.Work is InjectWork inject)
        {
            // Where the protocol names no dose, the group's own is taken.
            return !step.Stage.Has(Drafting.StageKey.Dose)
                ? new(id, ["specimen.lot-mass"], inject.Plan?.PublishedDose.Source ?? "") { Rule = UsualDose, Where = step.Span }
                : new(id, [$"{step.Id}.dose"], step.Stage.Source) { Rule = Dose, Where = step.Span };
        }

        return new(id, step.Ratio is null ? ["specimen.lot-volume"] : [step.RatioId, "specimen.lot-volume"], step.Stage.Source)
        {
            Rule = step.Vessel is { } vessel
                ? Covers.With(("arrangement", vessel.Arrangement), ("vessel", vessel.Vessel.Name), Argument.Of("ratio", vessel.Ratio, Dimension.None))
                : ByRatio,
            Where = step.Span,
        };
    }
}
