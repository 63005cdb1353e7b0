using System.Collections.Immutable;

namespace Protocolist.Specimens.Fixation;

/// <summary>A hypodermic needle: how thick a part and how much fluid at one site it is taken for, and the lengths that the trade sells.</summary>
/// <param name="Gauge">Gauge; a lower number is a thicker needle.</param>
/// <param name="UpToMm">The thickest part that it is taken for, half its thickness in mm: a thin needle bends and clogs in thick muscle.</param>
/// <param name="UpToMl">The most fluid at one site of muscle that it is taken for, mL.</param>
/// <param name="LengthsMm">Lengths sold, mm, the shortest first.</param>
/// <remarks>
/// Gauges: ISO 9626 and ISO 6009, from memory. Which one is taken for what: common practice (30 G to 5 g, 27 G to 20 g, 25 G to 100 g, 23 G to 500 g,
/// 21 G to 2 kg, 18 G to 10 kg, thicker above), set against half-thickness by that of a mammal of the mass. Lengths: common practice.
/// </remarks>
internal sealed record Needle(int Gauge, double UpToMm, double UpToMl, ImmutableArray<int> LengthsMm)
{
    /// <summary>What stays outside: a needle is never buried to the hub, where it breaks. Common practice.</summary>
    private const double OutsideMm = 5;

    /// <summary>How far inside its wall a cavity is filled, clear of the organs: common practice.</summary>
    private const double InsideWallMm = 5;

    /// <summary>How much more goes through a needle into a cavity, which does not press back: common practice.</summary>
    private const double EaseOfCavity = 4;

    /// <summary>The thinnest first.</summary>
    public static readonly ImmutableArray<Needle> All =
    [
        new(30, 6, 0.1, [4, 8, 13]),
        new(27, 10, 0.2, [13, 20, 25, 38]),
        new(25, 18, 0.5, [16, 25, 38]),
        new(23, 28, 1, [16, 25, 32, 38]),
        new(21, 45, 5, [16, 25, 38, 50, 80]),
        new(18, 80, 20, [25, 38, 50, 90, 150]),
        new(16, 110, 30, [25, 38, 50, 100]),
        new(14, double.PositiveInfinity, double.PositiveInfinity, [38, 50, 80, 120]),
    ];

    /// <summary>The thinnest needle that carries the fluid and is stiff enough for the part, as long as the part wants.</summary>
    /// <param name="part">The part.</param>
    /// <param name="siteMl">Fluid at one site, mL.</param>
    /// <param name="wallMm">Thickness of the wall where the part is a cavity, mm.</param>
    /// <returns>
    /// The needle and its length, mm: into the middle of a muscle, just through the wall of a cavity. Where none is long enough, the longest of the
    /// thickest: the depots then lie less deep.
    /// </returns>
    public static (Needle Needle, int LengthMm) For(in RegionMeasure part, double siteMl, double wallMm)
    {
        var half = part.HalfThickness.Nominal.Millimeters;
        var wanted = OutsideMm + (part.Region.IsCavity ? wallMm + InsideWallMm : half);
        var ease = part.Region.IsCavity ? EaseOfCavity : 1;
        foreach (var needle in All)
        {
            if (half > needle.UpToMm || siteMl > needle.UpToMl * ease) continue;
            foreach (var length in needle.LengthsMm)
            {
                if (length >= wanted) return (needle, length);
            }
        }

        return (All[^1], All[^1].LengthsMm[^1]);
    }

    /// <summary>What serves in place of a gauge that a bench does not have: the next thicker ones first, then the next thinner one.</summary>
    /// <param name="gauge">The gauge that is wanted.</param>
    /// <returns>Gauges of the table, the best first; the wanted one is not among them.</returns>
    public static IEnumerable<int> InPlaceOf(int gauge)
    {
        for (var i = 0; i < All.Length; i++)
        {
            if (All[i].Gauge > gauge) continue;
            var thicker = All[i].Gauge == gauge ? i + 1 : i;
            if (thicker < All.Length) yield return All[thicker].Gauge;
            if (i > 0) yield return All[i - 1].Gauge;
            yield break;
        }
    }
}
