namespace Protocolist.Fluids.Densities;

/// <summary>A curve through tabulated points that rises or falls wherever the points do: cubic Hermite pieces with limited slopes.</summary>
/// <remarks>
/// Source of the method: Fritsch and Butland 1984, SIAM J. Sci. Stat. Comput. 5, 300 (harmonic-mean slopes), with one-sided three-point slopes at the ends.
/// </remarks>
internal sealed class MonotoneCurve
{
    private readonly double[] x;
    private readonly double[] y;
    private readonly double[] slope;

    /// <summary>Makes the curve; <paramref name="x"/> rises strictly and has 3 points or more.</summary>
    public MonotoneCurve(ReadOnlySpan<double> x, ReadOnlySpan<double> y)
    {
        if (x.Length != y.Length || x.Length < 3) throw new ArgumentException("A curve needs as many abscissas as ordinates, and three of them.", nameof(x));
        this.x = x.ToArray();
        this.y = y.ToArray();
        slope = Slopes(x, y);
    }

    /// <summary>The value at <paramref name="at"/>; beyond the ends, the end value.</summary>
    public double At(double at)
    {
        if (!(at > x[0])) return double.IsNaN(at) ? double.NaN : y[0];
        if (at >= x[^1]) return y[^1];
        var i = 0;
        while (at > x[i + 1]) i++;
        return Piece(i, at);
    }

    /// <summary>The abscissa where a falling or rising curve has <paramref name="value"/>, or NaN outside its values.</summary>
    public double Where(double value)
    {
        var rising = y[^1] > y[0];
        var (least, most) = rising ? (y[0], y[^1]) : (y[^1], y[0]);
        if (!(value >= least && value <= most)) return double.NaN;
        var i = 0;
        while (i < x.Length - 2 && (rising ? y[i + 1] < value : y[i + 1] > value)) i++;
        double low = x[i], high = x[i + 1];
        // Bisection: a table good to three digits needs no faster root, and 50 halvings reach the last bit that matters.
        for (var step = 0; step < 50; step++)
        {
            var middle = (low + high) / 2;
            if (Piece(i, middle) > value == rising) high = middle;
            else low = middle;
        }

        return (low + high) / 2;
    }

    private double Piece(int i, double at)
    {
        var width = x[i + 1] - x[i];
        var s = (at - x[i]) / width;
        var r = 1 - s;
        return y[i] * (1 + 2 * s) * r * r + y[i + 1] * s * s * (3 - 2 * s) + width * s * r * (slope[i] * r - slope[i + 1] * s);
    }

    private static double[] Slopes(ReadOnlySpan<double> x, ReadOnlySpan<double> y)
    {
        var last = x.Length - 1;
        var slopes = new double[x.Length];
        for (var i = 1; i < last; i++)
        {
            double before = x[i] - x[i - 1], after = x[i + 1] - x[i];
            double left = (y[i] - y[i - 1]) / before, right = (y[i + 1] - y[i]) / after;
            if (left * right <= 0) continue;
            double a = 2 * after + before, b = after + 2 * before;
            slopes[i] = (a + b) / (a / left + b / right);
        }

        slopes[0] = End(x[1] - x[0], x[2] - x[1], (y[1] - y[0]) / (x[1] - x[0]), (y[2] - y[1]) / (x[2] - x[1]));
        slopes[last] = End(
            x[last] - x[last - 1],
            x[last - 1] - x[last - 2],
            (y[last] - y[last - 1]) / (x[last] - x[last - 1]),
            (y[last - 1] - y[last - 2]) / (x[last - 1] - x[last - 2]));
        return slopes;
    }

    private static double End(double near, double far, double nearSlope, double farSlope)
    {
        var slope = ((2 * near + far) * nearSlope - near * farSlope) / (near + far);
        if (slope * nearSlope <= 0) return 0;
        return nearSlope * farSlope < 0 && Math.Abs(slope) > Math.Abs(3 * nearSlope) ? 3 * nearSlope : slope;
    }
}
