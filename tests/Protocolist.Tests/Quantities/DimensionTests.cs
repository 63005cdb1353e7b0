using Protocolist.Quantities;

namespace Protocolist.Tests.Quantities;

public class DimensionTests
{
    [Fact]
    public void A_root_is_there_only_where_every_power_divides()
    {
        Assert.Equal(Dimension.OfLength, Dimension.OfVolume.Root(3));
        Assert.Equal(Dimension.OfLength, Dimension.OfArea.Root(2));
        Assert.Null(Dimension.OfVolume.Root(2));
        Assert.Null(Dimension.OfDensity.Root(3));
        Assert.Equal(Dimension.None, Dimension.None.Root(2));
    }

    [Theory]
    [InlineData(0, 0, 0, "a bare number")]
    [InlineData(3, 0, 0, "a volume")]
    [InlineData(3, -1, 0, "a volume per mass")]
    [InlineData(0, 0, -1, "a rate")]
    [InlineData(-2, 1, 0, "a quantity in kg m^-2")]
    public void It_is_called_what_people_call_it(int length, int mass, int time, string name) =>
        Assert.Equal(name, new Dimension((sbyte)length, (sbyte)mass, (sbyte)time).ToString());

    [Fact]
    public void Reason_ends_at_a_power_of_24()
    {
        Assert.True(new Dimension(Length: 24, Time: -24).IsWithinReason);
        Assert.False(new Dimension(Length: 25).IsWithinReason);
        Assert.False(new Dimension(ShareOfMass: -25).IsWithinReason);
        Assert.False(new Dimension(Mass: sbyte.MinValue).IsWithinReason);
    }
}
