using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Specimens.Measuring;
using UnitsNet;

namespace Protocolist.Specimens;

/// <summary>How large and how thick one animal is: what was measured as measured, the rest reckoned, each with its range and reason.</summary>
/// <remarks>All of one animal; of a lot, the largest. Nominal volume and half-thickness never fall as the mass given grows.</remarks>
public sealed record BodyMeasure
{
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

    /// <summary>Surface of a smooth body of that shape, and upwards for limbs, fins and folds.</summary>
    public required Estimate<Area> Surface { get; init; }

    /// <summary>The regions in the order of the group's table.</summary>
    public required ImmutableArray<RegionMeasure> Regions { get; init; }

    /// <summary>Measures a specimen on paper.</summary>
    /// <param name="specimen">What was measured.</param>
    /// <returns>
    /// The measure, or null where group or size is missing or impossible. Findings: those of <see cref="Specimens.Specimen.Validate"/>, and
    /// <c>mass-against-length</c>, <c>mass-against-displacement</c>, <c>girth-against-mass</c>, <c>thickness-against-mass</c>,
    /// <c>lot-heavier-than-its-animals</c>, <c>two-lengths</c> (contradictions, with the likely slip), <c>size-reckoned</c> and
    /// <c>length-of-another-kind</c> (notes).
    /// </returns>
    public static Checked<BodyMeasure> Of(Specimen specimen)
    {
        ArgumentNullException.ThrowIfNull(specimen);
        var findings = specimen.Validate().ToBuilder();
        var group = TaxonGroups.Resolve(specimen.Group, specimen.HigherTaxon).Value;
        if (group is null || findings.Any(f => f.Severity == Severity.Error && Unusable.Contains(f.Id))) return new(null, findings.ToImmutable());
        return Reckon(specimen, group, findings);
    }

    /// <summary>The same for a specimen whose sizes are known to be sound, such as one that stands for a class.</summary>
    internal static Checked<BodyMeasure> Reckon(Specimen specimen, TaxonGroup group, ImmutableArray<Finding>.Builder findings)
    {
        var length = BodyLength.Of(specimen, group, findings);
        var half = BodyThickness.Measured(specimen, group.Shape);
        if (BodyVolume.Of(specimen, group, length, half) is not var (mass, volume))
        {
            findings.Add(Finding.Error(
                "no-measurement", $"nothing given leads to the volume of a {group.Name}", $"weigh it, or give its {BodyLength.Words(group.Length)}"));
            return new(null, findings.ToImmutable());
        }

        Contradictions.Find(specimen, group, length, findings);
        if (specimen.Mass is null && specimen.LotMass is null && specimen.DisplacementVolume is null)
        {
            findings.Add(Finding.Note(
                "size-reckoned",
                FormattableString.Invariant($"the volume, about {TwoFigures.Of(volume.Nominal)} mL ({TwoFigures.Of(volume.Low)} to {TwoFigures.Of(volume.High)}), is reckoned from {volume.How}"),
                "weigh the specimen: every amount rests on it") with
            { Subject = "mass" });
        }

        var thickness = half ?? BodyThickness.Reckoned(group.Shape, volume, length);
        var lengthOrReckoned = length ?? volume.Rising(group.Shape.LengthMm, "volume and the group's proportions", group.Shape.Source).Widened(group.Shape.Spread);
        return new(Assemble(specimen, group, mass, volume, lengthOrReckoned, thickness), findings.ToImmutable());
    }

    private static readonly ImmutableArray<string> Unusable = ["not-positive", "count-below-one", "no-measurement", "absurd-size"];

    private static BodyMeasure Assemble(Specimen specimen, TaxonGroup group, Spread massG, Spread volumeMl, Spread lengthMm, Spread halfMm)
    {
        var shape = group.Shape;
        Spread Side(Length? measured, double perLength) => measured is { } m
            ? Spread.Measured(m.Millimeters, 0.05) // callipers on soft tissue: judgement
            : halfMm.Times(2 * perLength / shape.ThinnerPerLength) with { IsMeasured = false };
        var lot = specimen.LotMass is { } weighed && specimen.DisplacementVolume is null
            ? volumeMl.Times(weighed.Grams / massG.Nominal)
            : volumeMl.Times(specimen.Count);
        return new()
        {
            Specimen = specimen,
            Group = group,
            Mass = massG.Grams(),
            Volume = volumeMl.Millilitres(),
            LotVolume = lot.Millilitres(),
            Length = lengthMm.Millimetres(),
            TotalLength = BodyLength.Total(specimen, group, lengthMm).Millimetres(),
            Height = Side(specimen.Height, shape.HeightPerLength).Millimetres(),
            Width = Side(specimen.Width, shape.WidthPerLength).Millimetres(),
            HalfThickness = halfMm.Millimetres(),
            Surface = BodySurface.Of(shape, volumeMl).SquareCentimetres(),
            Regions = [.. group.Regions.Select(r => Part(r, massG, volumeMl, halfMm))],
        };
    }

    private static RegionMeasure Part(BodyRegion region, Spread massG, Spread volumeMl, Spread halfMm)
    {
        Spread Share(Spread whole) => whole.Times(region.Share) with { IsMeasured = false, How = "share of the whole", Source = region.Source };
        var half = region.Thickness == 1 ? halfMm : halfMm.Times(region.Thickness) with { IsMeasured = false, How = "share of the thickest place", Source = region.Source };
        return new(region, Share(massG).Grams(), Share(volumeMl).Millilitres(), half.Millimetres());
    }
}
