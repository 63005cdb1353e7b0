using Protocolist.Findings;
using Protocolist.Quantities;

namespace Protocolist.Specimens.Measuring;

/// <summary>Mass and volume of one animal, from the best of what was measured.</summary>
internal static class BodyVolume
{
    private const double ScaleError = 0.02; // kitchen scale, wet animal: common practice
    private const double DisplacementError = 0.03; // a water line read in a bucket: common practice

    private static readonly Phrase MassOverDensity = new("how.mass-over-density", "mass over {density:0 kg/m3}");
    private static readonly Phrase VolumeTimesDensity = new("how.volume-times-density", "volume times {density:0 kg/m3}");
    private static readonly Phrase Displacement = new("how.displacement", "displacement of water");
    private static readonly Phrase MeanOfLot = new("how.mean-of-lot", "lot mass over count");
    private static readonly Phrase LengthAndThickness = new("how.length-and-thickness", "length and thickness");
    private static readonly Phrase AsRange = new("how.given-as-range", "given as a range");
    public static readonly Phrase LengthMass = new("how.length-mass-relation", "length-mass relation");
    private static readonly Phrase LengthAndProportions = new("how.length-and-proportions", "length and the group's proportions");

    /// <summary>Mass in g and volume in mL; null where nothing leads there.</summary>
    public static (Spread MassG, Spread VolumeMl)? Of(
        Specimen specimen, TaxonGroup group, Spread? lengthMm, Spread? halfThicknessMm, (LengthMassRelation Relation, Spread Mm)? by)
    {
        var density = group.DensityKgPerM3;
        var mass = WeighedG(specimen);
        if (specimen.DisplacementVolume is { } displaced)
        {
            var volume = Spread.Measured(displaced.Milliliters, DisplacementError, Displacement);
            return (mass ?? FromVolume(volume, density), volume);
        }

        if (mass is { } m)
        {
            return (m, new(
                m.Low / density.High * 1000, m.Nominal / density.Nominal * 1000, m.High / density.Low * 1000,
                false, Rests(MassOverDensity, density), density.Source));
        }

        if (lengthMm is { } taken && halfThicknessMm is { } half) return With(FromBox(group.Shape, taken, half));
        if (by is var (relation, mm)) return With(FromRelation(relation, mm, density.Nominal));
        return lengthMm is { } length ? With(FromProportions(group.Shape, length)) : null;

        (Spread, Spread) With(Spread volume) => (FromVolume(volume, density), volume);
    }

    /// <summary>The mass of one animal where it was weighed, alone or in its lot.</summary>
    private static Spread? WeighedG(Specimen specimen)
    {
        if (specimen.Mass is { } one)
        {
            return specimen.MassMargin is not { } margin ? Spread.Measured(one.Grams, ScaleError)
                : new(one.Grams - margin.Grams, one.Grams, one.Grams + margin.Grams, false, AsRange, Spread.OwnMeasurement);
        }

        if (specimen.LotMass is not { } lot) return null;

        // The largest of a lot of like animals may weigh half as much again as the average: assumed.
        var isOne = specimen.Count == 1;
        return Spread.MeanOf(lot.Grams / specimen.Count, ScaleError, isOne ? 1 + ScaleError : 1.5, isOne, MeanOfLot);
    }

    private static Message Rests(Phrase how, SourcedBand density) => how.With(Argument.Of("density", density.Nominal, Dimension.OfDensity));

    private static Spread FromVolume(Spread v, SourcedBand density) => new(
        v.Low * density.Low / 1000, v.Nominal * density.Nominal / 1000, v.High * density.High / 1000,
        false, Rests(VolumeTimesDensity, density), density.Source);

    private static Spread FromBox(BodyShape shape, Spread length, Spread half)
    {
        return new Spread(
            shape.VolumeMl(length.Low, half.Low), shape.VolumeMl(length.Nominal, half.Nominal), shape.VolumeMl(length.High, half.High),
            false, LengthAndThickness, shape.Source).Widened(1.15); // fullness is known to some 15 %: judgement
    }

    private static Spread FromRelation(LengthMassRelation relation, Spread length, double density)
    {
        double Volume(double mm) => relation.MassG(mm) / density * 1000;
        return new Spread(Volume(length.Low), Volume(length.Nominal), Volume(length.High), false, LengthMass, relation.Source).Widened(relation.Within90);
    }

    // An error in each of height and width: the volume is off by the square.
    private static Spread FromProportions(BodyShape shape, Spread length) => new Spread(
        shape.VolumeMl(length.Low), shape.VolumeMl(length.Nominal), shape.VolumeMl(length.High), false, LengthAndProportions, shape.Source)
        .Widened(shape.Spread * shape.Spread);
}
