using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Protocolist.Findings;
using Protocolist.Specimens.Measuring;
using UnitsNet;

namespace Protocolist.Specimens;

/// <summary>How large and how thick one animal is: what was measured as measured, the rest estimated, each with its range and reason.</summary>
/// <remarks>All of one animal; of a lot, the largest. Nominal volume and half-thickness never fall as the mass given grows.</remarks>
internal sealed record BodyMeasure
{
    private static readonly Phrase NoVolume = new("no-measurement.of-group", "nothing given leads to the volume of {group:a}");
    private static readonly Phrase NoVolumeRemedy = new("no-measurement.remedy-of-group", "weigh it, or give its {kind}");
    private static readonly Phrase SizeEstimated = new("size-reckoned", "the volume, about {volume:two mL} ({low:two} to {high:two}), is reckoned from {how}");
    private static readonly Phrase SizeEstimatedRemedy = new("size-reckoned.remedy", "weigh the specimen: every amount rests on it");

    private static readonly ImmutableArray<string> Unusable = ["not-positive", "count-below-one", "no-measurement", "absurd-size", "mass-margin"];

    /// <summary>The specimen as given.</summary>
    public required Specimen Specimen { get; init; }

    /// <summary>Its taxon group.</summary>
    public required TaxonGroup Group { get; init; }

    /// <summary>How many animals.</summary>
    public int Count => Specimen.Count;

    /// <summary>Mass of one animal.</summary>
    public required Estimate<Mass> Mass { get; init; }

    /// <summary>Volume of one animal.</summary>
    public required Estimate<Volume> Volume { get; init; }

    /// <summary>Volume of the whole lot.</summary>
    public required Estimate<Volume> LotVolume { get; init; }

    /// <summary>The length that the group is measured by.</summary>
    public required Estimate<Length> Length { get; init; }

    /// <summary>Tip to tip: what the vessel must hold of a straight specimen.</summary>
    public required Estimate<Length> TotalLength { get; init; }

    /// <summary>Back to belly at the thickest place.</summary>
    public required Estimate<Length> Height { get; init; }

    /// <summary>Side to side at the thickest place.</summary>
    public required Estimate<Length> Width { get; init; }

    /// <summary>Half of the thickest place, the shorter way: what fixative has to cross in a body left whole.</summary>
    public required Estimate<Length> HalfThickness { get; init; }

    /// <summary>The regions in the order of the group's table.</summary>
    public required ImmutableArray<RegionMeasure> Regions { get; init; }

    /// <summary>Measures a specimen on paper.</summary>
    /// <param name="specimen">What was measured.</param>
    /// <param name="kinds">The groups that there are; null for the bundled ones.</param>
    /// <returns>
    /// The measure, or null where group or size is missing or impossible. Findings: those of <see cref="Specimens.Specimen.Validate"/>, and
    /// <c>mass-against-length</c>, <c>mass-against-displacement</c>, <c>girth-against-mass</c>, <c>thickness-against-mass</c>,
    /// <c>lot-heavier-than-its-animals</c>, <c>two-lengths</c> (contradictions, with the likely slip), <c>size-reckoned</c> and
    /// <c>length-of-another-kind</c> (notes).
    /// </returns>
    public static Checked<BodyMeasure> Of(Specimen specimen, Kinds? kinds = null)
    {
        ArgumentNullException.ThrowIfNull(specimen);
        var findings = new List<Finding>();
        kinds ??= Kinds.Bundled;
        var group = SpecimenRules.Check(specimen, kinds, findings);
        if (group is null || findings.Exists(f => f.Severity == Severity.Error && Unusable.Contains(f.Id))) return new(null, [.. findings]);
        return Estimated(specimen, group, findings, kinds);
    }

    /// <summary>The same for a specimen whose sizes are known to be sound, such as one that stands for a class.</summary>
    internal static Checked<BodyMeasure> Estimated(Specimen specimen, TaxonGroup group, List<Finding> findings, Kinds? kinds = null)
    {
        if (group.LengthIsTotal && specimen is { Length: { } tipToTip, TotalLength: null }) specimen = specimen with { Length = null, TotalLength = tipToTip };
        var length = BodyLength.Of(specimen, group, findings);
        var half = BodyThickness.Measured(specimen, group.Shape);
        var by = BodyLength.Relation(specimen, group, length);
        if (BodyVolume.Of(specimen, group, length, half, by) is not var (mass, volume))
        {
            var remedy = NoVolumeRemedy.With(("kind", MeasureNames.Of(group.Length)));
            findings.Add(Finding.Error("no-measurement", NoVolume.With(("group", group.Name)), remedy));
            return new(null, [.. findings]);
        }

        Contradictions.Find(specimen, group, length, by, kinds, findings);
        if (specimen.Mass is null && specimen.LotMass is null && specimen.DisplacementVolume is null)
        {
            var message = SizeEstimated.With(
                ("volume", UnitsNet.Volume.FromMilliliters(volume.Nominal)), ("low", volume.Low), ("high", volume.High), ("how", volume.How));
            var remedy = by is var (relation, _) ? FinerWords.With(SizeEstimatedRemedy, group, relation, kinds) : SizeEstimatedRemedy;
            findings.Add(Finding.Note("size-reckoned", message, remedy) with { Subject = "mass" });
        }

        var usual = BodyLength.Customary(specimen, group);
        var thickness = half ?? BodyThickness.Estimated(group, usual, volume, length);
        return new(
            Assemble(specimen, group, mass, volume, length ?? BodyThickness.EstimatedLength(group.Shape, usual, mass, volume), thickness), [.. findings]);
    }

    private static BodyMeasure Assemble(Specimen specimen, TaxonGroup group, in Spread massG, in Spread volumeMl, in Spread lengthMm, in Spread halfMm)
    {
        var shape = group.Shape;
        var lot = specimen.LotMass is { } weighed && specimen.DisplacementVolume is null
            ? volumeMl.Times(weighed.Grams / massG.Nominal)
            : volumeMl.Times(specimen.Count);
        var regions = new RegionMeasure[group.Regions.Length];
        var whole = new BodySpreads(massG, volumeMl, halfMm);
        for (var i = 0; i < regions.Length; i++) regions[i] = new(group.Regions[i], whole);
        return new()
        {
            Specimen = specimen,
            Group = group,
            Mass = massG.Grams(),
            Volume = volumeMl.Millilitres(),
            LotVolume = lot.Millilitres(),
            Length = lengthMm.Millimetres(),
            TotalLength = BodyLength.Total(specimen, group, lengthMm).Millimetres(),
            Height = Side(specimen.Height, shape.HeightPerLength, shape, lengthMm, halfMm).Millimetres(),
            Width = Side(specimen.Width, shape.WidthPerLength, shape, lengthMm, halfMm).Millimetres(),
            HalfThickness = halfMm.Millimetres(),
            Regions = ImmutableCollectionsMarshal.AsImmutableArray(regions),
        };
    }

    // Callipers on soft tissue are good to 5 %: judgement.
    private static Spread Side(Length? measured, double perLength, BodyShape shape, in Spread lengthMm, in Spread halfMm) =>
        measured is { } m ? Spread.Measured(m.Millimeters, 0.05)
        : shape.Build == BodyBuild.Fleshy || perLength == shape.ThinnerPerLength ? halfMm.Estimated(2 * perLength / shape.ThinnerPerLength)
        : lengthMm.Estimated(perLength);
}
