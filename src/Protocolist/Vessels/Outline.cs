namespace Protocolist.Vessels;

/// <summary>How a posed body is laid.</summary>
internal enum OutlineKind
{
    Boxed,
    Coiled,
    Heaped,
}

/// <summary>A posed body in metres and cubic metres: worked out once from its <see cref="PosedSpecimen"/>.</summary>
/// <remarks>A coiled one is as long as it is stretched out, and as wide and high as it is thick.</remarks>
internal readonly record struct Outline(OutlineKind Kind, double Length, double Width, double Height, double Volume, Orientations Allowed)
{
    private const Orientations Any = Orientations.Lying | Orientations.Upright | Orientations.OnEdge;

    public static Outline Of(PosedSpecimen specimen)
    {
        var volume = specimen.Volume.CubicMeters;
        return specimen switch
        {
            PosedSpecimen.Boxed b => new(OutlineKind.Boxed, b.Length.Meters, b.Width.Meters, b.Height.Meters, volume, b.Allowed),
            PosedSpecimen.Coiled c => new(OutlineKind.Coiled, c.BodyLength.Meters, c.BodyDiameter.Meters, c.BodyDiameter.Meters, volume, Any),
            PosedSpecimen.Lot l => new(OutlineKind.Heaped, l.Length.Meters, l.Width.Meters, l.Height.Meters, volume, Any),
            _ => throw new InvalidOperationException("the kinds of posed specimen are closed"),
        };
    }

    /// <summary>The longest side of one body as posed, a coil's counted as its tightest.</summary>
    public double LongestSide => Kind == OutlineKind.Coiled ? (Arrangement.TightestCoil + 1) * Width : Math.Max(Length, Math.Max(Width, Height));
}
