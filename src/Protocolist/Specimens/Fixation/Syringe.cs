using System.Collections.Immutable;

namespace Protocolist.Specimens.Fixation;

/// <summary>What the fluid is pressed with: common practice. A smaller syringe presses harder and reads finer.</summary>
internal static class Syringe
{
    /// <summary>Sizes in trade with what lies between two of their marks, mL: common practice.</summary>
    private static readonly ImmutableArray<(int SizeMl, double MarkMl)> All = [(1, 0.01), (2, 0.1), (5, 0.2), (10, 0.5), (20, 1), (50, 1)];

    /// <summary>What is read within a sixth either way: three marks. Judgement.</summary>
    private const int MarksRead = 3;

    /// <summary>Sizes in trade, mL.</summary>
    public static readonly ImmutableArray<int> SizesMl = [.. All.Select(s => s.SizeMl)];

    /// <summary>The least that a syringe doses at all: two marks of the smallest, mL. Judgement.</summary>
    public const double LeastMl = 0.02;

    /// <summary>The smallest that holds what goes into one site, or two where there are several; else the largest.</summary>
    /// <param name="siteMl">The volume at one site, mL.</param>
    /// <param name="sites">How many sites.</param>
    /// <returns>Size, mL.</returns>
    public static int For(double siteMl, int sites)
    {
        foreach (var size in SizesMl)
        {
            if (size >= siteMl * Math.Min(sites, 2)) return size;
        }

        return SizesMl[^1];
    }

    /// <summary>How often it is filled for one site.</summary>
    public static int Fills(double siteMl, int sizeMl) => (int)Math.Ceiling((siteMl / sizeMl) - 1e-9);

    /// <summary>Whether a volume can be read on a syringe of that size.</summary>
    public static bool Reads(double siteMl, int sizeMl)
    {
        foreach (var (size, mark) in All)
        {
            if (size == sizeMl) return siteMl >= MarksRead * mark * 0.999;
        }

        return false;
    }
}
