using Protocolist.Fluids.Infiltration;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace Protocolist.Tests.Fluids;

public class CarriedFormaldehydeTests
{
    private static readonly Duration Long = Duration.FromDays(400);

    /// <summary>
    /// A body of 1 L with 0.78 L of water, fixed at 10 : 1 in 40 g/L, in baths of so many volumes until nothing moves any more: the geometric series
    /// c0 R0/(R0+w) w/(R+w)^n by hand, in mg/L; the first bath takes what clings besides, a twentieth of the body at 40 g/L.
    /// </summary>
    [Theory]
    [InlineData(3, 7660, 1580, 330, 67)]
    [InlineData(5, 5010, 680, 91, 12)]
    [InlineData(10, 2690, 194, 14, 1)]
    public void Baths_to_equilibrium_fall_as_a_geometric_series(double ratio, double first, double second, double third, double fourth)
    {
        var carried = new CarriedFormaldehyde(Length.FromMillimeters(5), Volume.FromLiters(0.78), Volume.FromLiters(1));
        carried.Fixed(40, Volume.FromLiters(10));

        Assert.Equal(first + (40_000 * 0.05 / ratio), 1000 * carried.Into(Volume.FromLiters(ratio), Long), 15.0);

        // The table has three figures at the most.
        foreach (var wanted in (double[])[second, third, fourth]) Assert.Equal(wanted, 1000 * carried.Into(Volume.FromLiters(ratio), Long), Math.Max(1, wanted / 50));
    }

    [Fact]
    public void A_thick_body_gives_less_at_first_and_more_later()
    {
        var (thick, thin) = (Of(15), Of(2));

        Assert.True(thick.Into(Volume.FromLiters(3), Duration.FromHours(12)) < thin.Into(Volume.FromLiters(3), Duration.FromHours(12)));
        Assert.True(thick.Into(Volume.FromLiters(3), Duration.FromHours(12)) > thin.Into(Volume.FromLiters(3), Duration.FromHours(12)));

        static CarriedFormaldehyde Of(double millimetres)
        {
            var carried = new CarriedFormaldehyde(Length.FromMillimeters(millimetres), Volume.FromLiters(0.78), Volume.FromLiters(1));
            carried.Fixed(40, Volume.FromLiters(10));
            return carried;
        }
    }

    [Fact]
    public void Without_fixative_there_is_nothing_to_carry() =>
        Assert.False(new CarriedFormaldehyde(Length.FromMillimeters(5), Volume.FromLiters(1), Volume.FromLiters(1)).IsAny);
}
