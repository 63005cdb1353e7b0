using Protocolist.Quantities;

namespace Protocolist.Formulas;

/// <summary>
/// Interval arithmetic. Points stay points and are computed as ordinary doubles; a range is widened outwards by one step of the
/// last binary place at each operation, so that it is never narrower than the truth.
/// </summary>
internal static class RangeArithmetic
{
    public static QuantityRange Add(QuantityRange a, QuantityRange b) =>
        Outward(a.Low + b.Low, a.High + b.High, a.Dimension, a.IsPoint && b.IsPoint);

    public static QuantityRange Subtract(QuantityRange a, QuantityRange b) =>
        Outward(a.Low - b.High, a.High - b.Low, a.Dimension, a.IsPoint && b.IsPoint);

    /// <summary>The range so far to either side of another.</summary>
    public static QuantityRange Around(QuantityRange middle, QuantityRange tolerance)
    {
        var width = Math.Max(Math.Abs(tolerance.Low), Math.Abs(tolerance.High));
        return Outward(middle.Low - width, middle.High + width, middle.Dimension, middle.IsPoint && tolerance.IsPoint);
    }

    public static QuantityRange Negate(QuantityRange a) => new(-a.High, -a.Low, a.Dimension);

    public static QuantityRange Multiply(QuantityRange a, QuantityRange b)
    {
        var dimension = a.Dimension * b.Dimension;
        double p = Product(a.Low, b.Low), q = Product(a.Low, b.High), r = Product(a.High, b.Low), s = Product(a.High, b.High);
        return Outward(Math.Min(Math.Min(p, q), Math.Min(r, s)), Math.Max(Math.Max(p, q), Math.Max(r, s)), dimension, a.IsPoint && b.IsPoint);
    }

    public static QuantityRange Divide(QuantityRange a, QuantityRange b)
    {
        var dimension = a.Dimension / b.Dimension;

        // Where the divisor can be nothing the quotient can be anything; whoever uses it sees that it is not finite.
        if (b.Contains(0)) return Anything(dimension);
        double low = double.PositiveInfinity, high = double.NegativeInfinity;
        foreach (var x in (ReadOnlySpan<double>)[a.Low, a.High])
        {
            foreach (var y in (ReadOnlySpan<double>)[b.Low, b.High])
            {
                // Without-limit over without-limit can be anything of its sign, from nothing upwards.
                var unbounded = double.IsInfinity(x) && double.IsInfinity(y);
                var quotient = unbounded ? x * Math.Sign(y) : x / y;
                low = Math.Min(low, unbounded ? Math.Min(0, quotient) : quotient);
                high = Math.Max(high, unbounded ? Math.Max(0, quotient) : quotient);
            }
        }

        return Outward(low, high, dimension, a.IsPoint && b.IsPoint);
    }

    /// <summary>Nothing is known of the value but what it measures.</summary>
    public static QuantityRange Anything(Dimension dimension) => new(double.NegativeInfinity, double.PositiveInfinity, dimension);

    public static QuantityRange Least(QuantityRange a, QuantityRange b) =>
        new(Math.Min(a.Low, b.Low), Math.Min(a.High, b.High), a.Dimension);

    public static QuantityRange Greatest(QuantityRange a, QuantityRange b) =>
        new(Math.Max(a.Low, b.Low), Math.Max(a.High, b.High), a.Dimension);

    public static Truth Less(QuantityRange a, QuantityRange b) =>
        a.High < b.Low ? Truth.Yes : a.Low >= b.High ? Truth.No : Truth.Depends;

    /// <summary>
    /// A rising function over a range. Library functions such as a power may err in the last places, so the ends are widened by four steps.
    /// </summary>
    public static QuantityRange Rising(QuantityRange a, Func<double, double> function, Dimension dimension)
    {
        if (a.IsPoint) return Outward(function(a.Low), function(a.High), dimension, true);
        double low = function(a.Low), high = function(a.High);
        for (var i = 0; i < 4; i++)
        {
            low = Down(low);
            high = Math.BitIncrement(high);
        }

        return Outward(low, high, dimension, true);
    }

    /// <summary>Nothing times without-limit is nothing: an amount that is not there does not grow.</summary>
    private static double Product(double x, double y) => x == 0 || y == 0 ? 0 : x * y;

    /// <summary>One step down; nothing stays nothing, because it is exact, and an amount of "less than nothing" would be a false alarm.</summary>
    private static double Down(double low) => low == 0 ? 0 : Math.BitDecrement(low);

    private static QuantityRange Outward(double low, double high, Dimension dimension, bool exact)
    {
        if (double.IsNaN(low) || double.IsNaN(high)) return Anything(dimension);
        return exact ? new(low, high, dimension) : new(Down(low), Math.BitIncrement(high), dimension);
    }
}
