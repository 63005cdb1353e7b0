namespace Protocolist.Specimens;

/// <summary>What the sides of a body follow.</summary>
internal enum BodyBuild
{
    /// <summary>Flesh: of two bodies of one length the heavier is thicker and wider.</summary>
    Fleshy,

    /// <summary>A disc, bell or star: as wide as its length says; the heavier is thicker.</summary>
    Disc,

    /// <summary>A test, carapace or egg of known proportions: all sides go with the length.</summary>
    Rigid,
}

/// <summary>The proportions of a body: V = fullness · length · height · width, in the length that the group is measured by.</summary>
/// <param name="HeightPerLength">Back to belly over length, at the thickest place; above 0.</param>
/// <param name="WidthPerLength">Side to side over length, at the thickest place; above 0.</param>
/// <param name="Fullness">
/// Share of the box length × height × width that is body: π/4 for a cylinder, π/6 for an ellipsoid, less where it tapers; above 1 where the length
/// leaves out much of the body, as an octopus's mantle does.
/// </param>
/// <param name="Spread">The factor either way that holds nine tenths of the half-thicknesses, where mass or volume alone is known; above 1.</param>
/// <param name="Source">Where the proportions come from.</param>
public sealed record BodyShape(double HeightPerLength, double WidthPerLength, double Fullness, double Spread, string Source)
{
    /// <summary>The same with the length taken too, from measured animals; null where the proportions are assumed, and then judge nobody.</summary>
    public double? Measured { get; init; }

    /// <summary>What the sides follow; of a shape made from another by <c>with</c>, what they followed there, else the thickness.</summary>
    internal BodyBuild Build { get; init; }

    /// <summary>Whether a body can have these proportions: no number is missing, and none is a hundred times off a sphere's.</summary>
    internal bool IsSound =>
        HeightPerLength is > 0.001 and < 100 && WidthPerLength is > 0.001 and < 100 && Fullness is > 0.001 and < 100 && Spread is >= 1 and < 100;

    /// <summary>The thinner of height and width, over length.</summary>
    public double ThinnerPerLength => Math.Min(HeightPerLength, WidthPerLength);

    /// <summary>The wider of the two, over length.</summary>
    public double WiderPerLength => Math.Max(HeightPerLength, WidthPerLength);

    /// <summary>With the length taken, half of the doubt about assumed proportions is gone: judgement.</summary>
    internal double SpreadWithLength => Measured ?? Math.Sqrt(Spread);

    /// <summary>A cylinder <paramref name="slenderness"/> times as long as thick.</summary>
    /// <param name="slenderness">Length over diameter, above 0.</param>
    /// <param name="spread">Factor either way on the half-thickness.</param>
    /// <param name="source">Where the slenderness comes from.</param>
    /// <returns>The shape.</returns>
    public static BodyShape Cylinder(double slenderness, double spread, string source) =>
        new(1 / slenderness, 1 / slenderness, Math.PI / 4, spread, source);

    /// <summary>An ellipsoid of length 1.</summary>
    /// <param name="height">Height over length.</param>
    /// <param name="width">Width over length.</param>
    /// <param name="spread">Factor either way on the half-thickness.</param>
    /// <param name="source">Where the proportions come from.</param>
    /// <returns>The shape.</returns>
    public static BodyShape Ellipsoid(double height, double width, double spread, string source) =>
        new(height, width, Math.PI / 6, spread, source);

    /// <summary>The length in mm of a body of <paramref name="volumeMl"/> with these proportions. Grows with the volume.</summary>
    /// <param name="volumeMl">Volume in mL, above 0.</param>
    /// <returns>Length in mm.</returns>
    public double LengthMm(double volumeMl) =>
        Math.Cbrt(volumeMl * 1000 / (Fullness * HeightPerLength * WidthPerLength));

    /// <summary>The volume in mL of a body of <paramref name="lengthMm"/> with these proportions. Grows with the length.</summary>
    /// <param name="lengthMm">Length in mm, above 0.</param>
    /// <returns>Volume in mL.</returns>
    public double VolumeMl(double lengthMm) =>
        Fullness * HeightPerLength * WidthPerLength * lengthMm * lengthMm * lengthMm / 1000;

    /// <summary>Half of the thinner of height and width, in mm, from the volume alone. Grows with the volume.</summary>
    /// <param name="volumeMl">Volume in mL, above 0.</param>
    /// <returns>Half-thickness in mm.</returns>
    public double HalfThicknessMm(double volumeMl) => LengthMm(volumeMl) * ThinnerPerLength / 2;

    /// <summary>The same from volume and length. Never falls with the volume; a longer body of the same volume is thinner, unless it is rigid.</summary>
    /// <param name="volumeMl">Volume in mL, above 0.</param>
    /// <param name="lengthMm">Length in mm, above 0.</param>
    /// <returns>Half-thickness in mm.</returns>
    public double HalfThicknessMm(double volumeMl, double lengthMm) => Build switch
    {
        BodyBuild.Rigid => lengthMm * ThinnerPerLength / 2,
        BodyBuild.Disc => Math.Min(volumeMl * 1000 / (Fullness * lengthMm * lengthMm * WiderPerLength), lengthMm * WiderPerLength) / 2,
        _ => Math.Sqrt(volumeMl * 1000 / (Fullness * lengthMm * HeightPerLength * WidthPerLength)) * ThinnerPerLength / 2,
    };

    /// <summary>The volume in mL from length and half-thickness. Grows with both.</summary>
    /// <param name="lengthMm">Length in mm, above 0.</param>
    /// <param name="halfMm">Half-thickness in mm, above 0.</param>
    /// <returns>Volume in mL.</returns>
    public double VolumeMl(double lengthMm, double halfMm) => Fullness * lengthMm * 2 * halfMm * WiderMm(lengthMm, halfMm) / 1000;

    /// <summary>The girth at the thickest place over the half-thickness there (2π for a round body).</summary>
    /// <remarks>Ramanujan's first approximation of the perimeter of an ellipse.</remarks>
    public double GirthPerHalfThickness
    {
        get
        {
            var thin = 1.0;
            var thick = WiderPerLength / ThinnerPerLength;
            return Math.PI * (3 * (thin + thick) - Math.Sqrt((3 * thin + thick) * (thin + 3 * thick)));
        }
    }

    /// <summary>The wider side in mm: a disc's or shell's by its length, flesh's by its thickness.</summary>
    private double WiderMm(double lengthMm, double halfMm) =>
        Build == BodyBuild.Fleshy ? 2 * halfMm * WiderPerLength / ThinnerPerLength : lengthMm * WiderPerLength;
}
