namespace Protocolist.Vessels;

/// <summary>The room inside a vessel in metres, square metres and cubic metres: worked out once from its <see cref="VesselShape"/>.</summary>
/// <param name="IsRound">Whether it is round; then <see cref="Length"/> and <see cref="Width"/> are the diameter.</param>
/// <param name="Length">The longer side.</param>
/// <param name="Width">The shorter side.</param>
/// <param name="Height">Inside height.</param>
/// <param name="Area">Seen from above.</param>
/// <param name="Volume">The whole inside.</param>
internal readonly record struct Room(bool IsRound, double Length, double Width, double Height, double Area, double Volume)
{
    /// <summary>What a rounded dimension may be off and still be the same.</summary>
    private const double Rounding = 1 + 1e-12;

    public static Room Of(VesselShape shape)
    {
        var (height, area, inside) = (shape.Height.Meters, shape.Footprint.SquareMeters, shape.Inside.CubicMeters);
        return shape switch
        {
            VesselShape.Cylinder jar => new(true, jar.Diameter.Meters, jar.Diameter.Meters, height, area, inside),
            VesselShape.Box box => new(
                false, Math.Max(box.Length.Meters, box.Width.Meters), Math.Min(box.Length.Meters, box.Width.Meters), height, area, inside),
            _ => throw new InvalidOperationException("the shapes of vessels are closed"),
        };
    }

    /// <summary>Whether a rectangle, seen from above, lies inside with a clearance to the walls.</summary>
    public bool Encloses(double length, double width, double clearance) => IsRound
        ? Math.Sqrt((length * length) + (width * width)) + (2 * clearance) <= Length * Rounding
        : Math.Max(length, width) + (2 * clearance) <= Length * Rounding && Math.Min(length, width) + (2 * clearance) <= Width * Rounding;
}
