namespace Protocolist.Specimens.Fixation;

/// <summary>What the fluid is injected with: common practice.</summary>
/// <param name="SizeMl">Size of the syringe, mL.</param>
/// <param name="Fills">How often it is filled for the whole body.</param>
internal sealed record Syringe(int SizeMl, int Fills)
{
    private static readonly int[] Sizes = [1, 2, 5, 10, 20];
    private static readonly int[] NeedlesMm = [13, 16, 25, 38, 50, 90, 150, 300];

    /// <summary>The smallest of 1, 2, 5, 10, 20 mL that serves two sites at a fill.</summary>
    /// <param name="siteMl">The largest volume at one site, mL.</param>
    /// <param name="totalMl">All the fluid, mL.</param>
    /// <returns>Size and fills.</returns>
    public static Syringe For(double siteMl, double totalMl)
    {
        var size = FirstFrom(2 * siteMl, Sizes);
        return new(size, (int)Math.Ceiling((totalMl / size) - 1e-9));
    }

    /// <summary>Needle gauge for the volume at one site: 27 to 16, thicker for more (common practice, from memory).</summary>
    /// <param name="siteMl">Volume at one site, mL.</param>
    /// <returns>Gauge; a lower number is a thicker needle.</returns>
    public static int Gauge(double siteMl) => siteMl switch { < 0.5 => 27, < 2 => 25, < 5 => 21, < 10 => 20, _ => 18 };

    /// <summary>The shortest needle in trade that reaches the middle of a part.</summary>
    /// <param name="halfThicknessMm">Half-thickness of the part, mm.</param>
    /// <returns>Length in mm; the longest, 300 mm, is a trocar.</returns>
    public static int NeedleLengthMm(double halfThicknessMm) => FirstFrom(halfThicknessMm, NeedlesMm);

    /// <summary>The first size that is enough, else the last.</summary>
    private static int FirstFrom(double least, int[] sizes)
    {
        foreach (var size in sizes)
        {
            if (size >= least) return size;
        }

        return sizes[^1];
    }
}
