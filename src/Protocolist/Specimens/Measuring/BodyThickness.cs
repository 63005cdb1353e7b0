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
    public static Spread Estimated(BodyShape shape, Spread volumeMl, Spread? lengthMm)
    {
        if (lengthMm is not { } l)
        {
            return new Spread(
                shape.HalfThicknessMm(volumeMl.Low), shape.HalfThicknessMm(volumeMl.Nominal), shape.HalfThicknessMm(volumeMl.High),
                false, FromVolume, shape.Source).Widened(shape.Spread);
        }

        // With the length taken, half of the doubt about the proportions is gone: judgement.
        return new Spread(
            shape.HalfThicknessMm(volumeMl.Low, l.High), shape.HalfThicknessMm(volumeMl.Nominal, l.Nominal), shape.HalfThicknessMm(volumeMl.High, l.Low),
            false, FromVolumeAndLength, shape.Source).Widened(Math.Sqrt(shape.Spread));
    }

    /// <summary>The length in mm of a body of that volume and the group's proportions.</summary>
    public static Spread EstimatedLength(BodyShape shape, Spread volumeMl) => new Spread(
        shape.LengthMm(volumeMl.Low), shape.LengthMm(volumeMl.Nominal), shape.LengthMm(volumeMl.High), false, FromVolume, shape.Source).Widened(shape.Spread);

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
        var thinner = across.Millimeters / 2 * shape.ThinnerPerLength / Math.Max(shape.HeightPerLength, shape.WidthPerLength);
        return Spread.Within(thinner, shape.Spread, FromWider, shape.Source);
    }

    private static Spread Half(Length length, Phrase how) => Spread.Measured(length.Millimeters / 2, CalliperError, how);
}
