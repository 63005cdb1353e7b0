using Protocolist.Fluids.Densities;

namespace Protocolist.Tests.Fluids;

/// <summary>Curves through a few points, their slopes worked by hand after Fritsch and Butland, their values from the usual Hermite basis.</summary>
public class MonotoneCurveTests
{
    // Slopes: at the start ((2·1+2)·2 - 1·0.5)/3 = 2.5; in the middle 9/(5/2 + 4/0.5) = 6/7 with weights 5 and 4; at the end below 0, so 0.
    [Theory]
    [InlineData(-1, 0)]
    [InlineData(0, 0)]
    [InlineData(0.5, 1.20535714)]
    [InlineData(1, 2)]
    [InlineData(1.5, 2.39732143)]
    [InlineData(2, 2.71428571)]
    [InlineData(2.5, 2.92410714)]
    [InlineData(3, 3)]
    [InlineData(4, 3)]
    public void A_rising_curve_has_its_worked_values(double x, double y) => Assert.Equal(y, new MonotoneCurve([0, 1, 3], [0, 2, 3]).At(x), 1e-8);

    // Slopes -13/3, -27/19, -15/17, -0.55.
    [Theory]
    [InlineData(-1, 10)]
    [InlineData(0.5, 7.97697368)]
    [InlineData(1, 6.27192982)]
    [InlineData(1.5, 4.93092105)]
    [InlineData(2, 4)]
    [InlineData(2.5, 3.43266254)]
    [InlineData(3.5, 2.56339614)]
    [InlineData(7, 0)]
    [InlineData(8, 0)]
    public void A_falling_curve_has_its_worked_values(double x, double y) => Assert.Equal(y, new MonotoneCurve([0, 2, 3, 7], [10, 4, 3, 0]).At(x), 1e-8);

    // A peak and a trough are flat there: slopes 2, 0, 0, 19/6.
    [Theory]
    [InlineData(0.5, 0.75)]
    [InlineData(1, 1)]
    [InlineData(1.5, 0.5)]
    [InlineData(2, 0)]
    [InlineData(2.5, 0.171875)]
    [InlineData(3, 0.70833333)]
    [InlineData(3.5, 1.640625)]
    public void A_curve_turns_only_at_its_points(double x, double y) => Assert.Equal(y, new MonotoneCurve([0, 1, 2, 4], [0, 1, 0, 3]).At(x), 1e-8);

    // The three-point slope at the start would be (3·1 - 9)/2 = -3, against the rise: 0. Between 1 and 9 the harmonic mean, 1.8.
    [Fact]
    public void An_end_slope_against_the_rise_is_flat() => Assert.Equal(0.275, new MonotoneCurve([0, 1, 2], [0, 1, 10]).At(0.5), 1e-12);

    // The three-point slope would be (3·1 + 11)/2 = 7, more than three times 1: 3. The other end (3·-11 - 1)/2 = -17 is within three times 11.
    [Fact]
    public void An_end_slope_before_a_turn_is_three_times_the_chord_at_most()
    {
        var curve = new MonotoneCurve([0, 1, 2], [0, 1, -10]);
        Assert.Equal(0.875, curve.At(0.5), 1e-12);
        Assert.Equal(-2.375, curve.At(1.5), 1e-12);
        // Twice as steep: (3·2 + 22)/2 = 14 is more than three times 2: 6, and a quarter of half of it is 0.75 above the middle.
        Assert.Equal(1.75, new MonotoneCurve([0, 1, 2], [0, 2, -20]).At(0.5), 1e-12);
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(0.5, 0.19976959)]
    [InlineData(1, 0.40794797)]
    [InlineData(2, 1)]
    [InlineData(2.5, 1.64692933)]
    [InlineData(3, 3)]
    [InlineData(-0.001, double.NaN)]
    [InlineData(3.001, double.NaN)]
    [InlineData(double.NaN, double.NaN)]
    public void A_rising_curve_tells_where_it_has_a_value(double y, double x) => Assert.Equal(x, new MonotoneCurve([0, 1, 3], [0, 2, 3]).Where(y), 2e-7);

    [Theory]
    [InlineData(10, 0)]
    [InlineData(4, 2)]
    [InlineData(3, 3)]
    [InlineData(2.5, 3.57360303)]
    [InlineData(1, 5.44657715)]
    [InlineData(0.5, 6.17027292)]
    [InlineData(0, 7)]
    [InlineData(10.001, double.NaN)]
    [InlineData(-0.001, double.NaN)]
    public void A_falling_curve_tells_where_it_has_a_value(double y, double x) => Assert.Equal(x, new MonotoneCurve([0, 2, 3, 7], [10, 4, 3, 0]).Where(y), 1e-7);

    [Fact]
    public void Not_a_number_has_no_value() => Assert.Equal(double.NaN, new MonotoneCurve([0, 1, 3], [0, 2, 3]).At(double.NaN));

    [Fact]
    public void A_curve_of_two_points_or_of_unequal_lists_is_the_callers_bug()
    {
        foreach (var make in (Action[])[() => _ = new MonotoneCurve([0, 1], [0, 1]), () => _ = new MonotoneCurve([0, 1, 2], [0, 1]), () => _ = new MonotoneCurve([0, 1, 2], [0, 1, 2, 3])])
            Assert.StartsWith("A curve needs as many abscissas as ordinates, and three of them.", Assert.Throws<ArgumentException>(make).Message.ToString(), StringComparison.Ordinal);
        Assert.Equal(1, new MonotoneCurve([0, 1, 2], [0, 1, 2]).At(1));
    }
}
