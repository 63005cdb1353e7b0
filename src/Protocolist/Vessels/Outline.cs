namespace Protocolist.Vessels;

/// <summary>How a posed body is laid.</summary>
internal enum OutlineKind
{
    Boxed,
    Coiled,
    Heaped,
}

/// <summary>A posed body in metres and cubic metres: worked out once from its <see cref="PosedSpecimen"/>.</summary>
/// <remarks>A coil is as long as it is wide.</remarks>
internal readonly record struct Outline(OutlineKind Kind, double Length, double Width, double Height, double Volume, Orientations Allowed, int Layers = 0)
{
    private const Orientations Any = Orientations.Lying | Orientations.Upright | Orientations.OnEdge;

    public static Outline Of(PosedSpecimen specimen)
    {
        var volume = specimen.Volume.CubicMeters;
        return specimen switch
        {
            PosedSpecimen.Boxed b => new(OutlineKind.Boxed, b.Length.Meters, b.Width.Meters, b.Height.Meters, volume, b.Allowed),
            PosedSpecimen.Coiled c => new(OutlineKind.Coiled, c.Across.Meters, c.Across.Meters, c.Height.Meters, volume, Orientations.Lying, c.Layers),
            PosedSpecimen.Lot l => new(OutlineKind.Heaped, l.Length.Meters, l.Width.Meters, l.Height.Meters, volume, Any),
            _ => throw new InvalidOperationException("the kinds of posed specimen are closed"),
        };
    }

    /// <summary>The longest side of one body as posed.</summary>
    public double LongestSide => Math.Max(Length, Math.Max(Width, Height));
}
