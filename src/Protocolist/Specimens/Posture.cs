using Protocolist.Findings;
using UnitsNet;

namespace Protocolist.Specimens;

/// <summary>How a body is laid before it hardens, and what room that takes; which group has which stands in <see cref="Groups.PostureRows"/>.</summary>
/// <remarks>A side that a posture says nothing of is as it was measured or estimated of the straight body.</remarks>
/// <param name="Id">A kebab-case word, by which a person wishes for it.</param>
/// <param name="Told">What is done, as the rest of a sentence.</param>
/// <param name="Source">Where it comes from.</param>
internal sealed record Posture(string Id, Phrase Told, string Source)
{
    /// <summary>The tightest turn, in thicknesses from its centre to the middle of the body: a tighter one kinks. From memory.</summary>
    private const double Tightest = 1.5;

    /// <summary>Taller piles of turns slip: the project's choice.</summary>
    public const int MostLayers = 4;

    /// <summary>Its length over the length that the group is measured by; null for tip to tip.</summary>
    public double? LengthPer { get; init; }

    /// <summary>Its length over that from tip to tip, where <see cref="LengthPer"/> says nothing.</summary>
    public double OfTotal { get; init; } = 1;

    /// <summary>Its width over the length that the group is measured by.</summary>
    public double? WidthPer { get; init; }

    /// <summary>Its height over the length that the group is measured by.</summary>
    public double? HeightPer { get; init; }

    /// <summary>Across the wings, m, of a body of 1 kg, and the power of its mass that it goes with; a share of the whole span.</summary>
    public (double Metres, double Power)? Span { get; init; }

    /// <summary>A tail doubled back lies beside the trunk: by so many of its roots wider.</summary>
    public int TailRoots { get; init; }

    /// <summary>On its side: the wider of height and width lies flat.</summary>
    public bool OnSide { get; init; }

    /// <summary>A flat spiral, in layers one above the other.</summary>
    public bool Coils { get; init; }

    /// <summary>Only bodies more than so many times as long as thick are laid so.</summary>
    public double FromSlenderness { get; init; }

    /// <summary>Nothing is done to it.</summary>
    public bool IsLeft { get; init; }

    /// <summary>Taken only where a person wishes for it.</summary>
    public bool ByWish { get; init; }

    /// <summary>The body in it: one way, or one for each number of layers of a coil.</summary>
    public IEnumerable<PosedBody> Of(BodyMeasure body)
    {
        var (total, width, height) = (body.TotalLength.Nominal.Meters, body.Width.Nominal.Meters, body.Height.Nominal.Meters);
        var thick = Math.Max(width, height);
        if (total <= FromSlenderness * thick) yield break;
        if (Coils)
        {
            for (var layers = 1; layers <= MostLayers; layers++)
            {
                var across = Metres(Across(total / layers, thick));
                yield return new(this, across, across, Metres(layers * thick), layers);
            }

            yield break;
        }

        var usual = body.Length.Nominal.Meters;
        var length = LengthPer is { } per ? per * usual : OfTotal * total;
        if (WidthPer is { } wide) width = Math.Max(width, wide * usual);
        if (Span is var (metres, power)) width = Math.Max(width, metres * Math.Pow(body.Mass.Nominal.Kilograms, power));
        if (TailRoots > 0) width += TailRoots * TailRoot(body);
        if (HeightPer is { } high) height = high * usual;
        if (OnSide && height > width) (width, height) = (height, width);

        // Nothing is laid into less room than it fills.
        height = Math.Max(height, body.Volume.Nominal.CubicMeters / (length * width));
        yield return new(this, Metres(length), Metres(width), Metres(height), 0);
    }

    /// <summary>Across a flat spiral whose turns touch, m: Archimedes' spiral. That a body tapers pays for turns that do not touch everywhere.</summary>
    /// <param name="length">How much of it lies in one layer, m.</param>
    /// <param name="thick">Its thickness, m.</param>
    public static double Across(double length, double thick) =>
        (2 * Math.Sqrt((length * thick / Math.PI) + Math.Pow(Tightest * thick, 2))) + (thick / 2);

    private static double TailRoot(BodyMeasure body)
    {
        foreach (var region in body.Regions)
        {
            if (region.Region.Id == "tail") return 2 * region.HalfThickness.Nominal.Meters;
        }

        return 0.2 * 2 * body.HalfThickness.Nominal.Meters; // mouse, rat, carnivore: common practice, rounded from anatomy
    }

    private static Length Metres(double metres) => Length.FromMeters(metres);
}

/// <summary>One body in its posture: the box around it, or the flat coil.</summary>
/// <param name="Posture">Which.</param>
/// <param name="Length">Along it; across the coil.</param>
/// <param name="Width">Side to side; across the coil.</param>
/// <param name="Height">How high it stands.</param>
/// <param name="Layers">Of a coil; else 0.</param>
internal sealed record PosedBody(Posture Posture, Length Length, Length Width, Length Height, int Layers)
{
    /// <summary>What is saved at the least, or another posture is not worth it: a twentieth. The project's choice.</summary>
    private const double WorthIt = 0.95;

    /// <summary>The longest side.</summary>
    public Length Longest => UnitsNet.Length.FromMeters(Math.Max(Length.Meters, Math.Max(Width.Meters, Height.Meters)));

    /// <summary>Whether a vessel may be smaller for it than for another.</summary>
    public bool IsSmallerThan(PosedBody other) => Longest < WorthIt * other.Longest || Room < WorthIt * other.Room;

    private double Room => Length.Meters * Width.Meters * Height.Meters;
}
