using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Quantities;
using Protocolist.Rules;
using Protocolist.Specimens;

namespace Protocolist.Checks.Fluids;

/// <summary>The final fluid is neither too weak to keep nor too strong to handle.</summary>
internal static class KeepingStrengthOutOfBand
{
    private static readonly Phrase OutOfBand = new(KeepingStrength.Id, "'{step}' keeps it in {fluid}; {band:0 %vol} is right for keeping");
    private static readonly Phrase TooWeak = new(
        "keeping-strength-out-of-band.too-weak",
        "'{step}' keeps it in {fluid}; below {stop:0 %vol} it does not preserve");

    private static readonly Phrase Formalin = new(
        "keeping-strength-out-of-band.formalin",
        "'{step}' keeps it in {fluid}, {strength:0 g/L vs hardens} of formaldehyde; "
        + "up to {moulds:0 g/L} lets mould grow, and more than {hardens:0 g/L} only hardens");

    private static readonly Phrase Water = new("keeping-strength-out-of-band.water", "'{step}' keeps it in {fluid}, which preserves nothing");
    private static readonly Phrase UseBand = new("keeping-strength-out-of-band.remedy", "use {band:0 %vol}");
    private static readonly Phrase UseFormalin = new("keeping-strength-out-of-band.remedy-formalin", "use 5 to 10 % formalin, neutral buffered");
    private static readonly Phrase UseFixative = new("keeping-strength-out-of-band.remedy-water", "use alcohol or buffered formalin");

    public static PlanCheck Check { get; } = new(
        KeepingStrength.Id,
        "the specimen: weak fluid lets it rot and mould, strong alcohol makes it brittle",
        KeepingStrength.Source,
        Find)
    {
        Severities =
        [
            new(Severity.Error, "the final jar holds ethanol below 50 %vol, isopropanol below 30 %vol, or plain water"),
            new(
                Severity.Warning,
                "it holds ethanol outside 65 to 80 %vol (to 100 for tissue for DNA), isopropanol outside 40 to 55 %vol, "
                + "or formalin of 12 g/L of formaldehyde or less, or of more than 45"),
        ],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        if (plan.House is not { Fluid: { } fluid } house) return [];
        var isForDna = plan.Specimen.IntendedUse == IntendedUse.TissueForDnaFirst;
        var fault = KeepingStrength.Of(fluid, isForDna);
        if (fault == KeepingFault.None) return [];
        var (step, name) = (Argument.Id("step", house.Id), (Argument)("fluid", fluid.Name));
        var finding = fault switch
        {
            KeepingFault.DoesNotPreserve => Finding.Error(KeepingStrength.Id, TooWeak.With(step, name, Stop()), UseBand.With(Band())),
            KeepingFault.OutOfBand => Finding.Warning(KeepingStrength.Id, OutOfBand.With(step, name, Band()), UseBand.With(Band())),
            KeepingFault.Water => Finding.Error(KeepingStrength.Id, Water.With(step, name), UseFixative),
            _ => Finding.Warning(
                KeepingStrength.Id,
                Formalin.With(
                    step,
                    name,
                    Grams("strength", fluid.FormaldehydeGramsPerLitre!.Value),
                    Grams("moulds", KeepingStrength.Moulds),
                    Grams("hardens", KeepingStrength.Hardens)),
                UseFormalin),
        };
        return [finding.At(house, "fluid")];

        Argument Stop() => Argument.Of("stop", KeepingStrength.Band(fluid, isForDna).Preserves / 100, Dimension.OfShareByVolume);

        Argument Band()
        {
            var band = KeepingStrength.Band(fluid, isForDna);
            return ("band", new QuantityRange(band.Low / 100, band.High / 100, Dimension.OfShareByVolume));
        }
    }

    private static Argument Grams(string name, double perLitre) => Argument.Of(name, perLitre, Dimension.OfDensity);
}
