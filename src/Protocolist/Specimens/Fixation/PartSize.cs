namespace Protocolist.Specimens.Fixation;

/// <summary>How long a part of a body is and how thick the wall of a cavity, for whoever cuts or injects it.</summary>
internal static class PartSize
{
    /// <summary>No cut is longer than this share of its part: longer ones gape and lose what they should keep. Common practice.</summary>
    public const double LongestCut = 1.0 / 3;

    /// <summary>How far one such part reaches along the body, mm: as its group says, else as a cylinder of its volume and thickness.</summary>
    public static double AlongMm(in RegionMeasure part, BodyMeasure body)
    {
        if (part.Region.Along > 0) return part.Region.Along * body.Length.Nominal.Millimeters;
        var half = part.HalfThickness.Nominal.Millimeters;
        return part.Volume.Nominal.Milliliters * 1000 / part.Region.Count / (Math.PI * half * half);
    }

    /// <summary>Thickness of the wall of the body cavity, mm: by the cube root of the mass, and never more than half-way in. Rises with the mass.</summary>
    public static double WallMm(in RegionMeasure part, BodyMeasure body) =>
        Math.Min(body.Group.WallMm.Nominal * Math.Cbrt(body.Mass.Nominal.Kilograms), part.HalfThickness.Nominal.Millimeters / 2);
}
