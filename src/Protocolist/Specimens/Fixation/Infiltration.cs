namespace Protocolist.Specimens.Fixation;

/// <summary>How far alcohol has gone into a body, or a solute out of it, in a bath that stays the same: Fick's second law in closed form.</summary>
/// <remarks>Progress 0 is as at the start, 1 is equilibrium with the bath. Monotone in each argument.</remarks>
public static class Infiltration
{
    /// <summary>Diffusion of ethanol in tissue, m²/s at 20 °C: a third to a half of what it is in water, 3e-10 to 5e-10 (judgement; no measured value is known).</summary>
    public static SourcedBand EthanolInTissue { get; } = new(3e-10, 4e-10, 6e-10, "judgement: 0.3 to 0.5 of the value in water (Tyn & Calus, from memory)");

    /// <summary>Diffusion of dissolved formaldehyde in tissue, m²/s at 20 °C.</summary>
    public static SourcedBand FormaldehydeInTissue { get; } = new(5e-10, 6.5e-10, 8e-10, "judgement: 0.3 to 0.5 of the value in water by Wilke and Chang");

    /// <summary>Dimensionless time Fo = D·t/R².</summary>
    /// <param name="hours">Time in the bath, h.</param>
    /// <param name="halfThicknessMm">R, mm, above 0.</param>
    /// <param name="diffusionM2PerS">D, m²/s, above 0.</param>
    /// <returns>Fo, 0 or more.</returns>
    public static double Fourier(double hours, double halfThicknessMm, double diffusionM2PerS) =>
        diffusionM2PerS * 1e6 * 3600 * hours / (halfThicknessMm * halfThicknessMm);

    /// <summary>Hours until the body as a whole has come a share of the way. Rises with share and half-thickness, falls with D.</summary>
    /// <param name="progress">Share of the way, 0 to below 1.</param>
    /// <param name="halfThicknessMm">R, mm, above 0.</param>
    /// <param name="diffusionM2PerS">D, m²/s, above 0.</param>
    /// <returns>Hours, for a slab, which is the safe shape.</returns>
    public static double HoursFor(double progress, double halfThicknessMm, double diffusionM2PerS) =>
        progress <= 0 ? 0 : FourierFor(progress) * halfThicknessMm * halfThicknessMm / (diffusionM2PerS * 1e6 * 3600);

    /// <summary>How far a slab has come on the average. Rises with Fo.</summary>
    /// <param name="fourier">Fo, 0 or more.</param>
    /// <returns>0 to 1.</returns>
    public static double SlabAverage(double fourier)
    {
        // The series for short times converges where the one for long times does not.
        if (fourier < 0.05) return 2 * Math.Sqrt(Math.Max(0, fourier) / Math.PI);
        var left = 0.0;
        for (var n = 0; n < 30; n++)
        {
            var l = ((2 * n) + 1) * Math.PI / 2;
            left += 2 / (l * l) * Math.Exp(-l * l * fourier);
        }

        return 1 - left;
    }

    /// <summary>How far the middle of a slab has come. Rises with Fo.</summary>
    /// <param name="fourier">Fo, 0 or more.</param>
    /// <returns>0 to 1.</returns>
    public static double SlabMiddle(double fourier)
    {
        if (fourier < 0.02) return 0; // below 1e-6
        var left = 0.0;
        for (var n = 0; n < 30; n++)
        {
            var l = ((2 * n) + 1) * Math.PI / 2;
            left += (n % 2 == 0 ? 2 : -2) / l * Math.Exp(-l * l * fourier);
        }

        return Math.Clamp(1 - left, 0, 1);
    }

    /// <summary>How far a long cylinder has come on the average. Rises with Fo.</summary>
    /// <param name="fourier">Fo, 0 or more.</param>
    /// <returns>0 to 1.</returns>
    public static double CylinderAverage(double fourier)
    {
        if (fourier < 0.02) return (4 * Math.Sqrt(Math.Max(0, fourier) / Math.PI)) - Math.Max(0, fourier);
        var left = 0.0;
        foreach (var zero in BesselZeros) left += 4 / (zero * zero) * Math.Exp(-zero * zero * fourier);
        return 1 - left;
    }

    // First zeros of the Bessel function J0: Abramowitz & Stegun, table 9.5.
    private static readonly double[] BesselZeros =
        [2.4048255577, 5.5200781103, 8.6537279129, 11.7915344391, 14.9309177086, 18.0710639679, 21.2116366299, 24.3524715308];

    private static double FourierFor(double progress)
    {
        var (low, high) = (0.0, 1.0);
        while (SlabAverage(high) < progress && high < 1e3) high *= 2;
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            if (SlabAverage(middle) < progress) low = middle;
            else high = middle;
        }

        return high;
    }
}
