namespace Protocolist.Quantities;

/// <summary>A quantity that is known, wanted or allowed between two bounds: <c>2 to 5 mL</c>, <c>at least 24 h</c>, or just <c>7 kg</c>.</summary>
/// <remarks>Bounds are SI numbers (kg, m, s, K, mol; shares as fractions). A bound may be infinite. <c>default</c> is the bare number 0.</remarks>
public readonly record struct QuantityRange
{
    /// <summary>Makes a range.</summary>
    /// <param name="low">Lower bound, SI.</param>
    /// <param name="high">Upper bound, SI, not below <paramref name="low"/>.</param>
    /// <param name="dimension">What it measures.</param>
    /// <exception cref="ArgumentException">A bound is not a number, or the bounds are the wrong way round.</exception>
    public QuantityRange(double low, double high, Dimension dimension)
    {
        if (!(low <= high)) throw new ArgumentException("A range needs numbers, the lower first.", nameof(high));
        Low = low;
        High = high;
        Dimension = dimension;
    }

    /// <summary>Lower bound in SI units.</summary>
    public double Low { get; }

    /// <summary>Upper bound in SI units.</summary>
    public double High { get; }

    /// <summary>What it measures.</summary>
    public Dimension Dimension { get; }

    /// <summary>Whether both bounds are the same number.</summary>
    public bool IsPoint => Low == High;

    /// <summary>Whether both bounds are finite.</summary>
    public bool IsFinite => double.IsFinite(Low) && double.IsFinite(High);

    /// <summary>The number halfway, or the finite bound where the other is infinite.</summary>
    public double Middle => IsPoint ? Low : IsFinite ? Math.Clamp((Low / 2) + (High / 2), Low, High) : double.IsFinite(Low) ? Low : High;

    /// <summary>One exact value.</summary>
    /// <param name="si">The value in SI units.</param>
    /// <param name="dimension">What it measures.</param>
    /// <returns>A range of no width.</returns>
    public static QuantityRange Point(double si, Dimension dimension) => new(si, si, dimension);

    /// <summary>The range from one quantity to another, whichever is lower first.</summary>
    /// <param name="a">One end.</param>
    /// <param name="b">The other end, of the same dimension.</param>
    /// <returns>The smallest range that holds both.</returns>
    /// <exception cref="ArgumentException">The two do not measure the same.</exception>
    public static QuantityRange Hull(QuantityRange a, QuantityRange b)
    {
        if (a.Dimension != b.Dimension) throw new ArgumentException("Only like quantities span a range.", nameof(b));
        return new(Math.Min(a.Low, b.Low), Math.Max(a.High, b.High), a.Dimension);
    }

    /// <summary>Whether a value lies within the bounds.</summary>
    /// <param name="si">The value in SI units.</param>
    /// <returns>True on the bounds too.</returns>
    public bool Contains(double si) => Low <= si && si <= High;

    /// <summary>Whether another range lies wholly within this one.</summary>
    /// <param name="other">A range of the same dimension.</param>
    /// <returns>False when the dimensions differ.</returns>
    public bool Contains(QuantityRange other) => Dimension == other.Dimension && Low <= other.Low && other.High <= High;

    /// <summary>Exact text that reading reads back as an equal range.</summary>
    /// <returns>Text such as <c>2 to 5 mL</c>.</returns>
    public override string ToString() => ExactText.Of(this);
}
