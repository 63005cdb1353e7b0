using Protocolist.Quantities;

namespace Protocolist.Tests.Quantities;

public class QuantityRangeTests
{
    [Theory]
    [InlineData(5, 2)]
    [InlineData(double.NaN, 2)]
    [InlineData(2, double.NaN)]
    public void A_range_that_is_none_is_a_callers_bug(double low, double high) =>
        Assert.Throws<ArgumentException>(() => new QuantityRange(low, high, Dimension.OfMass));

    [Theory]
    [InlineData(2, 5, 3.5)]
    [InlineData(-1.7e308, 1.7e308, 0)]
    [InlineData(1.6e308, 1.7e308, 1.65e308)]
    [InlineData(3, double.PositiveInfinity, 3)]
    [InlineData(double.NegativeInfinity, 3, 3)]
    [InlineData(double.Epsilon, double.Epsilon, double.Epsilon)]
    public void The_middle_lies_within(double low, double high, double middle) =>
        Assert.Equal(middle, new QuantityRange(low, high, Dimension.None).Middle, Math.Abs(middle) * 1e-15);

    [Fact]
    public void A_hull_holds_both_and_refuses_unlike_ones()
    {
        var two = QuantityRange.Point(2, Dimension.OfMass);
        var five = QuantityRange.Point(5, Dimension.OfMass);
        Assert.Equal(new QuantityRange(2, 5, Dimension.OfMass), QuantityRange.Hull(five, two));
        Assert.Throws<ArgumentException>(() => QuantityRange.Hull(two, QuantityRange.Point(5, Dimension.OfTime)));
    }

    [Fact]
    public void Containing_counts_the_bounds_and_the_kind()
    {
        var range = new QuantityRange(2, 5, Dimension.OfMass);
        Assert.True(range.Contains(2) && range.Contains(5) && !range.Contains(5.1));
        Assert.True(range.Contains(new QuantityRange(2, 5, Dimension.OfMass)));
        Assert.False(range.Contains(new QuantityRange(3, 4, Dimension.OfTime)));
    }
}
