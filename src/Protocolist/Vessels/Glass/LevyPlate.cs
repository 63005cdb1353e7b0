using System.Runtime.Intrinsics;

namespace Protocolist.Vessels.Glass;

/// <summary>
/// Bending of a thin plate simply supported at both sides and the bottom, its top supported or free, by Lévy's single series
/// (Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd edition, 1959, chapters 5 and 6).
/// Everything is without dimension: height 1, width <c>aspect</c>, pressure 1 at the bottom, plate stiffness 1.
/// </summary>
/// <remarks>
/// The deflection is split into that of a strip spanning from side to side, known in closed form, and an edge correction whose
/// terms die out exponentially away from bottom and top. That is why few terms are enough.
/// </remarks>
internal sealed class LevyPlate
{
    /// <summary>Odd terms 1, 3, ... 119. Doubling the number moves no coefficient by more than 0.01 %.</summary>
    private const int Terms = 60;

    /// <summary>From here on what a term gives is lost in the last bit of the sum.</summary>
    private const double Nothing = 1e-20;

    /// <summary>How many numbers the waves of a place take, and the terms of a height.</summary>
    public const int WavesLength = 2 * Terms, HeightLength = 3 * Terms;

    private readonly double _aspect;
    private readonly double _slope;
    private readonly double _poisson;
    private readonly double[] _wave = new double[Terms];
    private readonly double[] _edge = new double[4 * Terms];
    private readonly double[] _bottom = new double[Terms];

    public LevyPlate(double aspect, PaneLoad load, TankTop top, double poisson)
    {
        _aspect = aspect;
        _slope = load == PaneLoad.Hydrostatic ? -1 : 0;
        _poisson = poisson;
        double[][] rows = [new double[4], new double[4], new double[4], new double[4]];
        for (var i = 0; i < Terms; i++)
        {
            _wave[i] = (2 * i + 1) * Math.PI / aspect;
            EdgeTerm(_wave[i], top, rows).CopyTo(_edge, 4 * i);
        }

        var above = Math.Exp(-Math.PI / aspect);
        var ratio = above * above;
        for (var i = 0; i < Terms; i++, above *= ratio)
        {
            var edge = Edge(i, 0, 1, above);
            _bottom[i] = edge.Third - (2 - poisson) * _wave[i] * _wave[i] * edge.Slope;
        }
    }

    /// <summary>The waves at a place along the pane, x from 0 to the aspect: their sines, then their cosines.</summary>
    public void WavesAt(double x, Span<double> waves)
    {
        // Each wave is the one before, turned by the same angle.
        var (sin, cos) = Math.SinCos(Math.PI * x / _aspect);
        var (turnSin, turnCos) = Math.SinCos(2 * Math.PI * x / _aspect);
        for (var i = 0; i < Terms; i++)
        {
            (waves[i], waves[Terms + i]) = (sin, cos);
            (sin, cos) = (sin * turnCos + cos * turnSin, cos * turnCos - sin * turnSin);
        }
    }

    /// <summary>What every term gives to the moments at a height, y from 0 at the bottom to 1: along the pane, then up it, then to the twist.</summary>
    /// <returns>How many terms are more than nothing, made up to fours.</returns>
    public int TermsAt(double y, Span<double> terms)
    {
        var (below, above, belowRatio, aboveRatio) = Decay(y);
        var i = 0;
        for (; i < Terms && (i % 4 != 0 || Math.Max(below, above) > Nothing); i++, below *= belowRatio, above *= aboveRatio)
        {
            var a = _wave[i];
            var edge = Edge(i, y, below, above);
            terms[i] = a * a * edge.Value;
            terms[Terms + i] = edge.Curvature;
            terms[(2 * Terms) + i] = a * edge.Slope;
        }

        return i;
    }

    /// <summary>Deflection in the middle of the pane's length.</summary>
    public double DeflectionInTheMiddle(double y)
    {
        var x = _aspect / 2;
        var sum = Pressure(y) * x * (Cube(_aspect) - 2 * _aspect * x * x + Cube(x)) / 24;
        var (below, above, belowRatio, aboveRatio) = Decay(y);
        for (var i = 0; i < Terms && Math.Max(below, above) > Nothing; i++, below *= belowRatio, above *= aboveRatio)
        {
            var value = Edge(i, y, below, above).Value;
            sum += i % 2 == 0 ? value : -value; // the sine of an odd number of right angles
        }

        return sum;
    }

    /// <summary>The largest principal bending moment at a place and height, whatever its direction, from the waves there and so many terms.</summary>
    public double PrincipalMoment(double x, ReadOnlySpan<double> waves, double y, ReadOnlySpan<double> terms, int count)
    {
        ReadOnlySpan<double> sin = waves[..Terms], cos = waves[Terms..];
        var xx = -Pressure(y) * x * (_aspect - x) / 2 - Dot(terms, sin, count);
        var yy = Dot(terms[Terms..], sin, count);
        var xy = _slope * (Cube(_aspect) - 6 * _aspect * x * x + 4 * Cube(x)) / 24 + Dot(terms[(2 * Terms)..], cos, count);
        double mx = -(xx + _poisson * yy), my = -(yy + _poisson * xx), twist = (1 - _poisson) * xy;
        return Math.Abs(mx + my) / 2 + Math.Sqrt((mx - my) * (mx - my) / 4 + twist * twist);
    }

    /// <summary>Load per length that a side edge must carry at a height.</summary>
    public double SideReaction(double y)
    {
        var sum = Pressure(y) * _aspect / 2;
        var (below, above, belowRatio, aboveRatio) = Decay(y);
        for (var i = 0; i < Terms && Math.Max(below, above) > Nothing; i++, below *= belowRatio, above *= aboveRatio)
        {
            var a = _wave[i];
            var edge = Edge(i, y, below, above);
            sum += Cube(a) * edge.Value - (2 - _poisson) * a * edge.Curvature;
        }

        return Math.Abs(sum);
    }

    /// <summary>Load per length that the bottom edge must carry at a place.</summary>
    public double BottomReaction(double x)
    {
        Span<double> waves = stackalloc double[WavesLength];
        WavesAt(x, waves);
        return Math.Abs((2 - _poisson) * _slope * x * (_aspect - x) / 2 - Dot(_bottom, waves, Terms));
    }

    private double Pressure(double y) => 1 + _slope * y;

    /// <summary>exp(-a y) and exp(-a (1 - y)) of the first term, and what each next one has to it.</summary>
    private (double Below, double Above, double BelowRatio, double AboveRatio) Decay(double y)
    {
        double below = Math.Exp(-Math.PI * y / _aspect), above = Math.Exp(-Math.PI * (1 - y) / _aspect);
        return (below, above, below * below, above * above);
    }

    /// <summary>The coefficients of one term of the edge correction, from its two conditions at the bottom and two at the top.</summary>
    private double[] EdgeTerm(double a, TankTop top, double[][] rows)
    {
        var strip = 4 / (a * _aspect * Math.Pow(a, 4));
        var isFramed = top == TankTop.Framed;
        var across = Math.Exp(-a);
        for (var k = 0; k < 4; k++)
        {
            rows[0][k] = Shape(k, a, across, 0, 0);
            rows[1][k] = Shape(k, a, across, 0, 2);
            rows[2][k] = isFramed ? Shape(k, a, across, 1, 0) : Shape(k, a, across, 1, 2) - _poisson * Shape(k, a, across, 1, 0);
            rows[3][k] = isFramed ? Shape(k, a, across, 1, 2) : Shape(k, a, across, 1, 3) - (2 - _poisson) * Shape(k, a, across, 1, 1);
        }

        double[] right = isFramed
            ? [-Pressure(0) * strip, 0, -Pressure(1) * strip, 0]
            : [-Pressure(0) * strip, 0, _poisson * Pressure(1) * strip, (2 - _poisson) * _slope * strip / a];
        return LinearSystem.Solve(rows, right);
    }

    /// <summary>Term i of the edge correction and its derivatives along y, from exp(-a y) and exp(-a (1 - y)).</summary>
    private (double Value, double Slope, double Curvature, double Third) Edge(int i, double y, double below, double above)
    {
        var a = _wave[i];
        double u = a * y, v = a * (1 - y);
        var c = _edge.AsSpan(4 * i, 4);
        double c0 = c[0] * below, c1 = c[1] * below, c2 = c[2] * above, c3 = c[3] * above;
        return (
            c0 + c1 * u + c2 + c3 * v,
            a * (-c0 - c1 * (u - 1) + c2 + c3 * (v - 1)),
            a * a * (c0 + c1 * (u - 2) + c2 + c3 * (v - 2)),
            a * a * a * (-c0 - c1 * (u - 3) + c2 + c3 * (v - 3)));
    }

    /// <summary>
    /// Derivatives, divided by a to their order, of e^-u, u e^-u (u = a y) and e^-v, v e^-v (v = a (1 - y)) at the bottom, y = 0, or the top, y = 1;
    /// <paramref name="across"/> is e^-a.
    /// </summary>
    private static double Shape(int k, double a, double across, int y, int order)
    {
        var fromTop = k >= 2;
        var isFar = fromTop == (y == 0);
        var sign = order % 2 == 1 && !fromTop ? -1 : 1;
        var decayed = sign * (isFar ? across : 1);
        return k % 2 == 0 ? decayed : decayed * ((isFar ? a : 0) - order);
    }

    /// <summary>Four by four, and added up in this order on every machine.</summary>
    private static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b, int count)
    {
        var sum = Vector256<double>.Zero;
        for (var i = 0; i < count; i += 4) sum += Vector256.Create(a.Slice(i, 4)) * Vector256.Create(b.Slice(i, 4));
        return (sum[0] + sum[1]) + (sum[2] + sum[3]);
    }

    private static double Cube(double value) => value * value * value;
}
