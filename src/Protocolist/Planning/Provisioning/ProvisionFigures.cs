using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Protocols;
using Protocolist.Quantities;

namespace Protocolist.Planning.Provisioning;

/// <summary>Figures that the pass made: volumes by vessel, doses by region.</summary>
internal static class ProvisionFigures
{
    private static readonly Phrase GroupDose = new("volume-formula.group-dose", "the usual dose of the group, shared out over the regions by their mass");
    private static readonly Phrase Dose = new("volume-formula.dose", "the dose, shared out over the regions by their mass");
    private static readonly Phrase ByRatio = new("volume-formula.ratio", "the ratio's low end times the volume of the specimen");

    private static readonly Phrase ByVessel = new(
        "volume-formula.vessel", "fluid that covers the body {arrangement} in {vessel} and is at least the ratio times its volume: {ratio} : 1");

    public static IEnumerable<Figure> Of(Draft draft) => draft.Steps.Where(s => s.Volume is not null).Select(Volume);

    public static string IdOf(DraftStep step) => $"{step.Id}.volume";

    private static Figure Volume(DraftStep step)
    {
        var si = step.Volume!.Value.CubicMeters;
        var (formula, source) = Reason(step);
        return new(IdOf(step), Measurable.Text(si, Dimension.OfVolume), formula.ToString(), [.. Inputs(step)], source)
        {
            Exact = ExactText.Of(QuantityRange.Point(si, Dimension.OfVolume)),
            Where = step.Span.ToString(),
        };
    }

    /// <summary>Where the protocol names no dose, the group's own is taken.</summary>
    private static (Message Formula, string Source) Reason(DraftStep step) => step switch
    {
        { Kind: StageKind.Inject } when step.Stage.Expression("dose") is null => (GroupDose, step.Injections?.PublishedDose.Source ?? ""),
        { Kind: StageKind.Inject } => (Dose, step.Stage.Source),
        { Vessel: { } vessel } =>
            (ByVessel.With(("arrangement", vessel.Arrangement), ("vessel", vessel.Vessel.Name), Argument.Of("ratio", vessel.Ratio, Dimension.None)), step.Stage.Source),
        _ => (ByRatio, step.Stage.Source),
    };

    private static IEnumerable<string> Inputs(DraftStep step) => step switch
    {
        { Kind: StageKind.Inject } => [step.Stage.Expression("dose") is null ? "specimen.lot-mass" : $"{step.Id}.dose"],
        { Ratio: not null } => [$"{step.Id}.ratio", "specimen.lot-volume"],
        _ => ["specimen.lot-volume"],
    };
}
