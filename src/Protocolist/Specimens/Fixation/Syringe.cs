using System.Collections.Immutable;

namespace Protocolist.Specimens.Fixation;

/// <summary>What the fluid is pressed with: common practice. A smaller syringe presses harder and reads finer.</summary>
internal static class Syringe
{
    /// <summary>Sizes in trade, mL.</summary>
    public static readonly ImmutableArray<int> SizesMl = [1, 2, 5, 10, 20, 50];

    /// <summary>The least that a syringe doses: two marks of the smallest, mL. Judgement.</summary>
    public const double LeastMl = 0.02;

    /// <summary>The smallest that serves two sites at a fill, else the largest.</summary>
    /// <param name="siteMl">The volume at one site, mL.</param>
    /// <returns>Size, mL.</returns>
    public static int For(double siteMl)
    {
        foreach (var size in SizesMl)
        {
            if (size >= 2 * siteMl) return size;
        }

        return SizesMl[^1];
    }
}
