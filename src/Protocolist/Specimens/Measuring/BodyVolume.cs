using static System.FormattableString;

namespace Protocolist.Specimens.Measuring;

/// <summary>Mass and volume of one animal, from the best of what was measured.</summary>
internal static class BodyVolume
{
    private const double ScaleError = 0.02; // kitchen scale, wet animal: common practice
    private const double DisplacementError = 0.03; // a water line read in a bucket: common practice

    /// <summary>Mass in g and volume in mL; null where nothing leads there.</summary>
    public static (Spread MassG, Spread VolumeMl)? Of(Specimen specimen, TaxonGroup group, Spread? lengthMm, Spread? halfThicknessMm)
    {
        var density = group.DensityKgPerM3;
        var how = Invariant($"mass over {density.Nominal:0} kg/m3");
        var mass = WeighedG(specimen);
        if (specimen.DisplacementVolume is { } displaced)
        {
            var volume = Spread.Measured(displaced.Milliliters, DisplacementError, "displacement of water");
            return (mass ?? FromVolume(volume, density), volume);
        }

        if (mass is { } m)
        {
            return (m, new(m.Low / density.High * 1000, m.Nominal / density.Nominal * 1000, m.High / density.Low * 1000, false, how, density.Source));
        }

        if (lengthMm is not { } length) return null;
        var reckoned = halfThicknessMm is { } half ? FromBox(group.Shape, length, half) : FromLength(specimen, group, length);
        return (FromVolume(reckoned, density), reckoned);
    }

    /// <summary>The mass of one animal where it was weighed, alone or in its lot.</summary>
    private static Spread? WeighedG(Specimen specimen)
    {
        if (specimen.Mass is { } one) return Spread.Measured(one.Grams, ScaleError);
        if (specimen.LotMass is not { } lot) return null;
        // The largest of a lot of alike animals may weigh half as much again as the average: assumed.
        var average = lot.Grams / specimen.Count;
        return new(average * (1 - ScaleError), average, average * (specimen.Count == 1 ? 1 + ScaleError : 1.5), specimen.Count == 1, "lot mass over count", "the specimen's own measurement");
    }

    /// <summary>The relation to judge the mass of this animal by: its species', else its group's.</summary>
    public static LengthMassRelation? RelationOf(Specimen specimen, TaxonGroup group) =>
        SpeciesLengthMass.Find(specimen.ScientificName) is { } own && own.Length == group.Length ? own : group.LengthMass;

    private static Spread FromVolume(Spread v, SourcedBand density) =>
        new(v.Low * density.Low / 1000, v.Nominal * density.Nominal / 1000, v.High * density.High / 1000, false,
            Invariant($"volume times {density.Nominal:0} kg/m3"), density.Source);

    private static Spread FromBox(BodyShape shape, Spread length, Spread half)
    {
        var aspect = Math.Max(shape.HeightPerLength, shape.WidthPerLength) / shape.ThinnerPerLength;
        double Volume(double l, double h) => shape.Fullness * l * 4 * h * h * aspect / 1000;
        return new Spread(Volume(length.Low, half.Low), Volume(length.Nominal, half.Nominal), Volume(length.High, half.High), false,
            "length and thickness", shape.Source).Widened(1.15); // fullness is known to some 15 %: judgement
    }

    private static Spread FromLength(Specimen specimen, TaxonGroup group, Spread length)
    {
        if (RelationOf(specimen, group) is { } relation)
        {
            return length.Rising(l => relation.MassG(l) / group.DensityKgPerM3.Nominal * 1000, "length-mass relation", relation.Source).Widened(relation.Spread);
        }

        // An error in each of height and width: the volume is off by the square.
        return length.Rising(group.Shape.VolumeMl, "length and the group's proportions", group.Shape.Source).Widened(group.Shape.Spread * group.Shape.Spread);
    }
}
