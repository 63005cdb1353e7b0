using Protocolist.Quantities;
using UnitsNet;

namespace Protocolist.Fluids.Infiltration;

/// <summary>The shape through whose surface a fluid enters.</summary>
internal enum DiffusionShape
{
    /// <summary>Flat; the half-thickness counts.</summary>
    Slab,

    /// <summary>Long and round; the radius counts.</summary>
    Cylinder,

    /// <summary>A ball; the radius counts.</summary>
    Sphere,
}

/// <summary>How far a fluid has come through a body after a time, and how long it needs: Fick's diffusion into a shape from a constant bath.</summary>
/// <remarks>Series and short-time forms: Crank, The Mathematics of Diffusion, 1975, chapters 4 to 6.</remarks>
internal static class Diffusion
{
    private const int Terms = 60;
    private const double Negligible = 1e-17;

    // First zeros of J0 and J1 there: Abramowitz and Stegun 1964, table 9.5. Five suffice above the short-time limit.
    private static ReadOnlySpan<double> BesselZeros => [2.4048255577, 5.5200781103, 8.6537279129, 11.7915344391, 14.9309177086];

    private static ReadOnlySpan<double> BesselJ1 => [0.5191474973, -0.3402648065, 0.2714522999, -0.2324598314, 0.2065464331];

    // Below this Fourier number the short-time form of the cylinder is the better one, within 0.001.
    private const double ShortTime = 0.02;

    /// <summary>Diffusion coefficient in tissue near 20 °C, m²/s, as a band; see <see cref="Solute.InTissue"/>.</summary>
    /// <param name="solute">What moves.</param>
    /// <returns>The slowest and the fastest.</returns>
    /// <exception cref="ArgumentException">No coefficient of it is known.</exception>
    public static (double Slow, double Fast) InTissue(Solute solute)
    {
        ArgumentNullException.ThrowIfNull(solute);
        return solute.InTissue ?? throw new ArgumentException($"How fast {solute} moves in tissue is not known.", nameof(solute));
    }

    /// <summary>The time, in seconds, until the body's average has come a share of the way from its old strength to the bath's.</summary>
    /// <param name="shape">The shape.</param>
    /// <param name="halfThickness">Half-thickness of a slab, radius of a cylinder or sphere.</param>
    /// <param name="share">The share of the way, above 0 and below 1; 0.95 is "nearly there".</param>
    /// <param name="solute">What moves.</param>
    /// <returns>From the fastest to the slowest.</returns>
    public static QuantityRange Time(DiffusionShape shape, Length halfThickness, double share, Solute solute)
    {
        if (!(halfThickness.Meters > 0)) throw new ArgumentOutOfRangeException(nameof(halfThickness), halfThickness, "A body has a thickness.");
        var scale = FourierNumber(shape, share) * halfThickness.Meters * halfThickness.Meters;
        var (slow, fast) = InTissue(solute);
        return new(scale / fast, scale / slow, Dimension.OfTime);
    }

    /// <summary>The share of the way that the body's average has come after a time.</summary>
    /// <param name="shape">The shape.</param>
    /// <param name="halfThickness">Half-thickness or radius.</param>
    /// <param name="seconds">The time.</param>
    /// <param name="solute">What moves.</param>
    /// <returns>0 to 1, from the slowest to the fastest.</returns>
    public static (double Slow, double Fast) Reached(DiffusionShape shape, Length halfThickness, double seconds, Solute solute)
    {
        var (slow, fast) = InTissue(solute);
        var scale = seconds / (halfThickness.Meters * halfThickness.Meters);
        return (Average(shape, slow * scale), Average(shape, fast * scale));
    }

    /// <summary>The Fourier number D·t/R² at which the average has come so far.</summary>
    internal static double FourierNumber(DiffusionShape shape, double share) => Invert(fo => Average(shape, fo), share);

    /// <summary>The Fourier number at which the centre has come so far.</summary>
    internal static double FourierNumberOfCentre(DiffusionShape shape, double share) => Invert(fo => Centre(shape, fo), share);

    /// <summary>Share of the way of the average, by Fourier number.</summary>
    internal static double Average(DiffusionShape shape, double fourier)
    {
        if (!(fourier > 0)) return 0;
        var root = Math.Sqrt(fourier / Math.PI);
        var left = 0.0;
        switch (shape)
        {
            case DiffusionShape.Slab:
                if (fourier < ShortTime) return 2 * root;
                for (var n = 0; n < Terms; n++)
                {
                    var odd = (2 * n + 1) * Math.PI;
                    var term = 8 / (odd * odd) * Math.Exp(-odd * odd * fourier / 4);
                    if (term < Negligible) break;
                    left += term;
                }

                return 1 - left;
            case DiffusionShape.Cylinder:
                if (fourier < ShortTime) return 4 * root - fourier - fourier * root / 3;
                foreach (var zero in BesselZeros) left += 4 / (zero * zero) * Math.Exp(-zero * zero * fourier);
                return 1 - left;
            default:
                if (fourier < ShortTime) return 6 * root - 3 * fourier;
                for (var n = 1; n <= Terms; n++) left += 6 / (Math.PI * Math.PI * n * n) * Math.Exp(-n * n * Math.PI * Math.PI * fourier);
                return 1 - left;
        }
    }

    /// <summary>Share of the way of the centre, by Fourier number; below 0.02 nothing has come there.</summary>
    internal static double Centre(DiffusionShape shape, double fourier)
    {
        if (!(fourier > ShortTime)) return 0;
        var left = 0.0;
        switch (shape)
        {
            case DiffusionShape.Slab:
                for (var n = 0; n < Terms; n++)
                {
                    var odd = (2 * n + 1) * Math.PI;
                    left += (n % 2 == 0 ? 4 : -4) / odd * Math.Exp(-odd * odd * fourier / 4);
                }

                return 1 - left;
            case DiffusionShape.Cylinder:
                for (var n = 0; n < BesselZeros.Length; n++) left += 2 / (BesselZeros[n] * BesselJ1[n]) * Math.Exp(-BesselZeros[n] * BesselZeros[n] * fourier);
                return 1 - left;
            default:
                for (var n = 1; n <= Terms; n++) left += (n % 2 == 1 ? 2 : -2) * Math.Exp(-n * n * Math.PI * Math.PI * fourier);
                return 1 - left;
        }
    }

    private static double Invert(Func<double, double> reached, double share)
    {
        if (!(share is > 0 and < 1)) throw new ArgumentOutOfRangeException(nameof(share), share, "A share of the way is between 0 and 1.");
        double low = 0, high = 1;
        while (reached(high) < share && high < 100) high *= 2;
        for (var step = 0; step < 60; step++)
        {
            var middle = (low + high) / 2;
            if (reached(middle) < share) low = middle;
            else high = middle;
        }

        return (low + high) / 2;
    }
}
