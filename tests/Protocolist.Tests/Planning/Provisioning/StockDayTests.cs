using NodaTime;
using Protocolist.Fluids;
using Protocolist.Planning.Provisioning;
using static Protocolist.Tests.Planning.PlanFixture;

namespace Protocolist.Tests.Planning.Provisioning;

/// <summary>A prepared bench is worked out once for all days on which it is the same.</summary>
public class StockDayTests
{
    private static readonly Fluid Seventy = Fluid.Read("ethanol 70 %vol").Value!;

    private static PreparedStock Stock { get; } = PreparedStock.Of(Bench("""
        zone: UTC
        stock:
          - {fluid: ethanol 96 %vol, id: e96, on-hand: 2 L, expires: 2027-03-10}
          - {fluid: ethanol 80 %vol, id: e80, on-hand: 2 L}
        vessels:
          - {id: jar, inside: {diameter: 10 cm, height: 20 cm}, wall: glass, count: 2, in-use: [{count: 2, until: 2027-03-20}]}

        """));

    private static StockDay On(int month, int day) => Stock.On(new(2027, month, day));

    [Fact]
    public void Days_between_two_changes_are_one()
    {
        Assert.Same(On(1, 1), On(3, 10));
        Assert.Same(On(3, 11), On(3, 20));
        Assert.Same(On(3, 21), Stock.On(LocalDate.MaxIsoValue));
        Assert.Same(Stock.On(LocalDate.MinIsoValue), On(3, 1));
        Assert.Equal(3, new HashSet<StockDay> { On(3, 10), On(3, 11), On(3, 21) }.Count);
    }

    [Fact]
    public void A_bottle_serves_on_its_last_day_and_a_vessel_is_free_on_the_day_after()
    {
        Assert.Equal((2, 1, 1), (On(3, 10).Fluids.Length, On(3, 11).Fluids.Length, On(3, 21).Fluids.Length));
        Assert.Equal((0, 0, 1), (On(3, 10).FreeVessels.Count, On(3, 20).FreeVessels.Count, On(3, 21).FreeVessels.Count));
        Assert.Equal((1, 0), (On(3, 20).TakenVessels.Length, On(3, 21).TakenVessels.Length));
    }

    [Fact]
    public void Ways_of_a_fluid_are_worked_out_once_and_alike_on_any_number_of_threads()
    {
        var day = On(3, 1);
        var all = new FluidWays[64];
        Parallel.For(0, all.Length, i => all[i] = day.WaysOf(Fluid.Read("ethanol 70 %vol").Value!));
        Assert.All(all, ways => Assert.Same(day.WaysOf(Seventy), ways));
        Assert.NotSame(day.WaysOf(Seventy), On(3, 11).WaysOf(Seventy));
    }
}
