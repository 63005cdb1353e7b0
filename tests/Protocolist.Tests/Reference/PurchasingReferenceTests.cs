using Protocolist.Planning.Provisioning.Purchasing;

namespace Protocolist.Tests.Reference;

/// <summary>
/// Small covering problems whose optimum is found by writing out every combination by hand (the method of complete enumeration), each
/// beside what buying by unit price alone would cost.
/// </summary>
public class PurchasingReferenceTests
{
    [Theory]
    [InlineData(new long[] { 2, 5, 10 }, new long[] { 1200, 2500, 4500 }, 13, new long[] { 2, 0, 1 }, 6900, 14)]
    [InlineData(new long[] { 1, 5, 10, 25 }, new long[] { 900, 3000, 5500, 12000 }, 18, new long[] { 0, 0, 2, 0 }, 11000, 20)] // by unit price: 11200
    [InlineData(new long[] { 4, 6 }, new long[] { 1000, 1400 }, 8, new long[] { 2, 0 }, 2000, 8)] // by unit price: 2400
    [InlineData(new long[] { 1, 2, 5 }, new long[] { 500, 1000, 1700 }, 4, new long[] { 0, 0, 1 }, 1700, 5)] // by unit price: 2000
    [InlineData(new long[] { 5, 20 }, new long[] { 4000, 12000 }, 3, new long[] { 1, 0 }, 4000, 5)]
    [InlineData(new long[] { 2, 4 }, new long[] { 300, 600 }, 6, new long[] { 1, 1 }, 900, 6)] // ties with three of 2; fewer packs win
    public void Cover_is_the_cheapest_of_all_combinations(long[] sizes, long[] costs, long demand, long[] counts, long cost, long total)
    {
        var cover = PackCover.Cheapest([.. sizes.Zip(costs, (s, c) => new SizeAndCost(s, c))], demand)!;
        Assert.Equal(counts, cover.Counts);
        Assert.Equal((cost, total, 1), ((long)cover.Cost, (long)cover.Total, cover.Step));
    }

    /// <summary>The same first two cases in microlitres, as the books hold them: the unit does not change the answer.</summary>
    [Theory]
    [InlineData(500_000)]
    [InlineData(1_000_000)]
    [InlineData(7)]
    public void The_unit_does_not_change_the_answer(long unit)
    {
        SizeAndCost[] sizes = [new(2 * unit, 1200), new(5 * unit, 2500), new(10 * unit, 4500)];
        var cover = PackCover.Cheapest(sizes, (13 * unit) - 1)!;
        Assert.Equal([2, 0, 1], cover.Counts);
    }
}
