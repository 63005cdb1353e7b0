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

    public static QuantityRange Negate(QuantityRange a) => new(-a.High, -a.Low, a.Dimension);

    public static QuantityRange Multiply(QuantityRange a, QuantityRange b)
    {
        var dimension = a.Dimension * b.Dimension;
        if (a.IsPoint && b.IsPoint) return Outward(Product(a.Low, b.Low), Product(a.Low, b.Low), dimension, true);
        double p = Product(a.Low, b.Low), q = Product(a.Low, b.High), r = Product(a.High, b.Low), s = Product(a.High, b.High);
        return Outward(Math.Min(Math.Min(p, q), Math.Min(r, s)), Math.Max(Math.Max(p, q), Math.Max(r, s)), dimension, false);
    }

    public static QuantityRange Divide(QuantityRange a, QuantityRange b)
    {
        var dimension = a.Dimension / b.Dimension;

        // Where the divisor can be nothing the quotient can be anything; whoever uses it sees that it is not finite.
        if (b.Contains(0)) return new(double.NegativeInfinity, double.PositiveInfinity, dimension);
        if (a.IsPoint && b.IsPoint) return Outward(Quotient(a.Low, b.Low), Quotient(a.Low, b.Low), dimension, true);
        double p = Quotient(a.Low, b.Low), q = Quotient(a.Low, b.High), r = Quotient(a.High, b.Low), s = Quotient(a.High, b.High);
        return Outward(Math.Min(Math.Min(p, q), Math.Min(r, s)), Math.Max(Math.Max(p, q), Math.Max(r, s)), dimension, false);
    }

    public static QuantityRange Least(QuantityRange a, QuantityRange b) =>
        new(Math.Min(a.Low, b.Low), Math.Min(a.High, b.High), a.Dimension);

    public static QuantityRange Greatest(QuantityRange a, QuantityRange b) =>
        new(Math.Max(a.Low, b.Low), Math.Max(a.High, b.High), a.Dimension);

    public static Truth Less(QuantityRange a, QuantityRange b) =>
        a.High < b.Low ? Truth.Yes : a.Low >= b.High ? Truth.No : Truth.Depends;

    /// <summary>
    /// A rising function over a range. Library functions such as a cube root may err in the last places, which can break
    /// their rise there, so the ends are widened by four steps.
    /// </summary>
    public static QuantityRange Rising(QuantityRange a, Func<double, double> function, Dimension dimension)
    {
        if (a.IsPoint) return Outward(function(a.Low), function(a.High), dimension, true);
        double low = function(a.Low), high = function(a.High);
        for (var i = 0; i < 4; i++)
        {
            low = Math.BitDecrement(low);
            high = Math.BitIncrement(high);
        }

        return Outward(low, high, dimension, true);
    }

    /// <summary>Nothing times without-limit is nothing: an amount that is not there does not grow.</summary>
    private static double Product(double x, double y) => x == 0 || y == 0 ? 0 : x * y;

    private static double Quotient(double x, double y) => double.IsInfinity(x) && double.IsInfinity(y) ? 0 : x / y;

    private static QuantityRange Outward(double low, double high, Dimension dimension, bool exact)
    {
        if (double.IsNaN(low) || double.IsNaN(high)) return new(double.NegativeInfinity, double.PositiveInfinity, dimension);
        return exact ? new(low, high, dimension) : new(Math.BitDecrement(low), Math.BitIncrement(high), dimension);
    }
}
