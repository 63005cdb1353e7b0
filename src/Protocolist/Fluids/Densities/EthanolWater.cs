namespace Protocolist.Fluids.Densities;

/// <summary>Density of ethanol and water by mass fraction and temperature, and every strength that follows from it.</summary>
/// <remarks>
/// Source: OIML International Recommendation 22 (1975), -20 to 40 °C; densities in vacuo, kg/m³.
/// Strengths by volume have the base of 20 °C: %vol = 100 p ρ(p, 20) / ρ(1, 20).
/// The functions take fractions, not percent, and do not check their arguments; out of reach is NaN.
/// </remarks>
internal static partial class EthanolWater
{
    /// <summary>Lowest temperature of the formula, °C; below its freezing point a mixture is ice and the formula says nothing.</summary>
    public const double LowestCelsius = -20;

    /// <summary>Highest temperature of the formula, °C.</summary>
    public const double HighestCelsius = 40;

    /// <summary>The temperature to which strengths by volume refer, °C.</summary>
    public const double ReferenceCelsius = 20;

    /// <summary>Density of pure ethanol at 20 °C, kg/m³ (789.24).</summary>
    public static readonly double PureAt20 = Density(1, ReferenceCelsius);

    // The inverses stop when a step falls below this; the slope of density is 6 kg/m³ or more over the whole field, so that rounding is felt at 1e-11.
    private const double SmallestStep = 1e-13;
    private const int MostSteps = 60;

    /// <summary>Density, kg/m³.</summary>
    /// <param name="massFraction">Ethanol by mass, 0 to 1.</param>
    /// <param name="celsius">Temperature, -20 to 40 °C.</param>
    public static double Density(double massFraction, double celsius)
    {
        var p = massFraction;
        var t = celsius - ReferenceCelsius;
        var at20 = Horner(A, p);
        if (t == 0) return at20;
        var first = p * Horner(C1, p) + B[0];
        var second = p * Horner(C2, p) + B[1];
        var third = p * Horner(C3, p) + B[2];
        var fourth = p * Horner(C4, p) + B[3];
        var fifth = p * Horner(C5, p) + B[4];
        return at20 + t * (first + t * (second + t * (third + t * (fourth + t * (fifth + t * B[5])))));
    }

    /// <summary>The mass fraction whose density is <paramref name="density"/>, or NaN where no mixture has it.</summary>
    /// <param name="density">kg/m³.</param>
    /// <param name="celsius">Temperature, -20 to 40 °C.</param>
    public static double MassFraction(double density, double celsius)
    {
        Span<double> polynomial = stackalloc double[12];
        AtTemperature(celsius, polynomial);
        return Solve(polynomial, density);
    }

    /// <summary>Strength by volume as a fraction (0 to 1, base 20 °C) of a mass fraction.</summary>
    public static double VolumeFraction(double massFraction) => massFraction * Density(massFraction, ReferenceCelsius) / PureAt20;

    /// <summary>Mass fraction of a strength by volume given as a fraction (0 to 1, base 20 °C).</summary>
    public static double MassFractionOfVolume(double volumeFraction)
    {
        // p ρ(p): ρ's polynomial moved up by one power.
        Span<double> polynomial = stackalloc double[13];
        polynomial[0] = 0;
        A.CopyTo(polynomial[1..]);
        return Solve(polynomial, volumeFraction * PureAt20);
    }

    /// <summary>Ethanol in kg per m³ of mixture (g/L) at 20 °C; a tenth of it is g per 100 mL.</summary>
    public static double GramsPerLitre(double massFraction) => massFraction * Density(massFraction, ReferenceCelsius);

    /// <summary>Volume at one temperature over the volume at another, of the same liquid.</summary>
    public static double Expansion(double massFraction, double fromCelsius, double toCelsius) =>
        Density(massFraction, fromCelsius) / Density(massFraction, toCelsius);

    private static void AtTemperature(double celsius, Span<double> polynomial)
    {
        var t = celsius - ReferenceCelsius;
        A.CopyTo(polynomial);
        var power = 1.0;
        for (var k = 0; k < B.Length; k++) polynomial[0] += B[k] * (power *= t);
        Add(C1, t, polynomial);
        Add(C2, t * t, polynomial);
        Add(C3, t * t * t, polynomial);
        Add(C4, t * t * t * t, polynomial);
        Add(C5, t * t * t * t * t, polynomial);
    }

    private static void Add(ReadOnlySpan<double> coefficients, double factor, Span<double> polynomial)
    {
        for (var k = 0; k < coefficients.Length; k++) polynomial[k + 1] += coefficients[k] * factor;
    }

    /// <summary>Newton's steps with the analytic slope, held inside a shrinking bracket; both polynomials are monotonic over 0 to 1.</summary>
    private static double Solve(ReadOnlySpan<double> polynomial, double wanted)
    {
        double low = 0, high = 1;
        var atLow = polynomial[0];
        var atHigh = Horner(polynomial, 1);
        var rising = atHigh > atLow;
        // A value off the end by rounding alone is the end.
        var slack = 1e-9 * Math.Max(Math.Abs(atLow), Math.Abs(atHigh));
        var (least, most) = rising ? (atLow, atHigh) : (atHigh, atLow);
        if (!(wanted >= least - slack && wanted <= most + slack)) return double.NaN;
        if (wanted <= least) return rising ? 0 : 1;
        if (wanted >= most) return rising ? 1 : 0;

        var x = (wanted - atLow) / (atHigh - atLow);
        for (var step = 0; step < MostSteps; step++)
        {
            double value = 0, slope = 0;
            for (var k = polynomial.Length - 1; k >= 0; k--)
            {
                slope = slope * x + value;
                value = value * x + polynomial[k];
            }

            var error = value - wanted;
            if (error > 0 == rising) high = x;
            else low = x;
            var next = x - error / slope;
            if (!(next > low && next < high)) next = (low + high) / 2;
            if (Math.Abs(next - x) < SmallestStep) return next;
            x = next;
        }

        return x;
    }

    private static double Horner(ReadOnlySpan<double> coefficients, double x)
    {
        var sum = 0.0;
        for (var k = coefficients.Length - 1; k >= 0; k--) sum = sum * x + coefficients[k];
        return sum;
    }
}
