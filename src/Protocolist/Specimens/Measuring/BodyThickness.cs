using Protocolist.Findings;
using UnitsNet;

namespace Protocolist.Specimens.Measuring;

/// <summary>Half of the thickest place, the shorter way: what fixative has to cross.</summary>
internal static class BodyThickness
{
    private const double CalliperError = 0.05; // callipers on soft tissue: judgement
    private const double TapeError = 0.10; // hair, feathers, a loose tape: judgement

    private static readonly Phrase HalfOfThickness = new("how.half-of-thickness", "half of the measured thickness");
    private static readonly Phrase HalfOfSmaller = new("how.half-of-smaller", "half of the smaller of width and height");
    private static readonly Phrase HalfOfWidth = new("how.half-of-width", "half of the measured width");
    private static readonly Phrase HalfOfHeight = new("how.half-of-height", "half of the measured height");
    private static readonly Phrase FromGirth = new("how.from-girth", "from the girth");
    private static readonly Phrase FromWider = new("how.from-wider-way", "from the wider way and the group's proportions");
    private static readonly Phrase FromVolume = new("how.volume-and-proportions", "volume and the group's proportions");
    private static readonly Phrase FromVolumeAndLength = new("how.volume-over-length", "volume over length, and the group's proportions");

    /// <summary>From callipers or tape, in mm; null where neither was used.</summary>
    public static Spread? Measured(Specimen s, BodyShape shape)
    {
        if (TheThinnerWay(s, shape) is { } half) return half;
        if (s.Girth is not { } girth) return TheWiderWay(s, shape);
        var around = girth.Millimeters / shape.GirthPerHalfThickness;
        return new(around * (1 - TapeError), around, around * (1 + TapeError), false, FromGirth, shape.Source);
    }

    /// <summary>From callipers alone, in mm; null where they were not used.</summary>
    public static Spread? ByCallipers(Specimen s, BodyShape shape) => TheThinnerWay(s, shape) ?? TheWiderWay(s, shape);

    /// <summary>From volume, and length where one was taken, in mm. Never falls as the volume grows.</summary>
    /// <param name="group">Its proportions and density.</param>
    /// <param name="relation">What tells the length for the mass; null where nothing does.</param>
    /// <param name="volumeMl">The volume.</param>
    /// <param name="lengthMm">The length; null where none was taken.</param>
    public static Spread Estimated(TaxonGroup group, LengthMassRelation? relation, Spread volumeMl, Spread? lengthMm)
    {
        var shape = group.Shape;
        if (lengthMm is not { } l)
            return new Spread(Of(volumeMl.Low), Of(volumeMl.Nominal), Of(volumeMl.High), false, FromVolume, shape.Source).Widened(shape.Spread);

        var (longest, shortest) = shape.Build == BodyBuild.Rigid ? (l.Low, l.High) : (l.High, l.Low);
        var by = new Spread(
            shape.HalfThicknessMm(volumeMl.Low, longest), shape.HalfThicknessMm(volumeMl.Nominal, l.Nominal), shape.HalfThicknessMm(volumeMl.High, shortest),
            false, FromVolumeAndLength, shape.Source).Widened(shape.SpreadWithLength);
        if (l.IsMeasured) return by;

        // A length that only follows from another may say less than the volume by itself.
        var alone = Estimated(group, relation, volumeMl, null);
        return alone.High / alone.Low < by.High / by.Low ? alone : by;

        double Of(double ml) => Alone(group, relation, ml);
    }

    /// <summary>From the volume alone, in mm.</summary>
    public static double Alone(TaxonGroup group, LengthMassRelation? relation, double volumeMl) => relation is null
        ? group.Shape.HalfThicknessMm(volumeMl)
        : group.Shape.HalfThicknessMm(volumeMl, relation.LengthMm(volumeMl * group.DensityKgPerM3.Nominal / 1000));

    /// <summary>The length in mm of a body of that mass by the relation, else of that volume by the group's proportions.</summary>
    public static Spread EstimatedLength(BodyShape shape, LengthMassRelation? relation, Spread massG, Spread volumeMl) => relation is null
        ? new Spread(shape.LengthMm(volumeMl.Low), shape.LengthMm(volumeMl.Nominal), shape.LengthMm(volumeMl.High), false, FromVolume, shape.Source)
            .Widened(shape.Spread)
        : new Spread(
            relation.LengthMm(massG.Low), relation.LengthMm(massG.Nominal), relation.LengthMm(massG.High), false, BodyVolume.LengthMass, relation.Source)
            .Widened(Math.Pow(relation.Within90, 1 / relation.B));

    private static Spread? TheThinnerWay(Specimen s, BodyShape shape)
    {
        if (s.Thickness is { } thickness) return Half(thickness, HalfOfThickness);
        if (s.Width is { } width && s.Height is { } height) return Half(width.Meters <= height.Meters ? width : height, HalfOfSmaller);
        if (s.Width is { } w && shape.WidthPerLength <= shape.HeightPerLength) return Half(w, HalfOfWidth);
        if (s.Height is { } h && shape.HeightPerLength <= shape.WidthPerLength) return Half(h, HalfOfHeight);
        return null;
    }

    private static Spread? TheWiderWay(Specimen s, BodyShape shape)
    {
        if ((s.Width ?? s.Height) is not { } across) return null;
        var thinner = across.Millimeters / 2 * shape.ThinnerPerLength / shape.WiderPerLength;
        return Spread.Within(thinner, shape.Spread, FromWider, shape.Source);
    }

    private static Spread Half(Length length, Phrase how) => Spread.Measured(length.Millimeters / 2, CalliperError, how);
}
