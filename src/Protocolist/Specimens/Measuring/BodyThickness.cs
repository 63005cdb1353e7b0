using UnitsNet;

namespace Protocolist.Specimens.Measuring;

/// <summary>Half of the thickest place, the shorter way: what fixative has to cross.</summary>
internal static class BodyThickness
{
    private const double CalliperError = 0.05; // callipers on soft tissue: judgement
    private const double TapeError = 0.10; // hair, feathers, a loose tape: judgement

    /// <summary>From callipers or tape, in mm; null where neither was used.</summary>
    public static Spread? Measured(Specimen s, BodyShape shape)
    {
        if (s.Thickness is { } thickness) return Half(thickness, "half of the measured thickness");
        if (s.Width is { } width && s.Height is { } height)
        {
            return Half(width.Meters <= height.Meters ? width : height, "half of the smaller of width and height");
        }

        if (s.Width is { } w && shape.WidthPerLength <= shape.HeightPerLength) return Half(w, "half of the measured width");
        if (s.Height is { } h && shape.HeightPerLength <= shape.WidthPerLength) return Half(h, "half of the measured height");
        if (s.Girth is { } girth)
        {
            return new(
                girth.Millimeters / shape.GirthPerHalfThickness * (1 - TapeError), girth.Millimeters / shape.GirthPerHalfThickness,
                girth.Millimeters / shape.GirthPerHalfThickness * (1 + TapeError), false, "from the girth", shape.Source);
        }

        // Only the wider way was measured.
        var wider = s.Width ?? s.Height;
        if (wider is not { } across) return null;
        var thinner = across.Millimeters / 2 * shape.ThinnerPerLength / Math.Max(shape.HeightPerLength, shape.WidthPerLength);
        return Spread.Within(thinner, shape.Spread, "from the wider way and the group's proportions", shape.Source);
    }

    /// <summary>From volume, and length where one was taken, in mm. Never falls as the volume grows.</summary>
    public static Spread Reckoned(BodyShape shape, Spread volumeMl, Spread? lengthMm)
    {
        if (lengthMm is not { } l)
        {
            return volumeMl.Rising(shape.HalfThicknessMm, "volume and the group's proportions", shape.Source).Widened(shape.Spread);
        }

        // With the length taken, half of the doubt about the proportions is gone: judgement.
        return new Spread(
            shape.HalfThicknessMm(volumeMl.Low, l.High), shape.HalfThicknessMm(volumeMl.Nominal, l.Nominal), shape.HalfThicknessMm(volumeMl.High, l.Low),
            false, "volume over length, and the group's proportions", shape.Source).Widened(Math.Sqrt(shape.Spread));
    }

    private static Spread Half(Length length, string how) => Spread.Measured(length.Millimeters / 2, CalliperError, how);
}
