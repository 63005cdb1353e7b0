using Protocolist.Planning.Provisioning.Purchasing;

namespace Protocolist.Tests.Planning.Provisioning.Purchasing;

public class PackCoverTests
{
    [Fact]
    public void Nothing_wanted_buys_nothing()
    {
        Assert.Equal([0], PackCover.Cheapest([new(5, 100)], 0)!.Counts);
        Assert.Equal([0], PackCover.Cheapest([new(5, 100)], -3)!.Counts);
    }

    [Fact]
    public void Nothing_to_buy_covers_nothing() => Assert.Null(PackCover.Cheapest([], 1));

    [Fact]
    public void Equal_cost_takes_least_surplus_then_fewest_packs_then_the_largest()
    {
        Assert.Equal([1, 0], PackCover.Cheapest([new(4, 100), new(9, 100)], 3)!.Counts);
        Assert.Equal([0, 1], PackCover.Cheapest([new(2, 50), new(4, 100)], 4)!.Counts);
        // 1 + 5 and 3 + 3 cost, hold and count the same: the one with the 5.
        Assert.Equal([1, 0, 1], PackCover.Cheapest([new(1, 100), new(3, 300), new(5, 500)], 6)!.Counts);
    }

    [Fact]
    public void The_same_size_twice_takes_the_cheaper_and_of_equals_the_first()
    {
        Assert.Equal([0, 2], PackCover.Cheapest([new(5, 200), new(5, 150)], 9)!.Counts);
        Assert.Equal([2, 0], PackCover.Cheapest([new(5, 150), new(5, 150)], 9)!.Counts);
    }

    [Fact]
    public void A_free_pack_is_taken_as_often_as_needed() =>
        Assert.Equal([3, 0], PackCover.Cheapest([new(3, 0), new(10, 5)], 8)!.Counts);

    /// <summary>US gallons and quarts in microlitres share no divisor: 200 L would be a table of two hundred million cells.</summary>
    [Fact]
    public void Awkward_sizes_are_solved_in_wider_steps_and_still_cover()
    {
        SizeAndCost[] sizes = [new(946_353, 700), new(3_785_411, 2100), new(18_927_059, 9000)];
        var cover = PackCover.Cheapest(sizes, 200_000_003)!;
        Assert.True(cover.Total >= 200_000_003);
        Assert.True(cover.Step is > 1 and <= 1000);
        Assert.Equal([0, 3, 10], cover.Counts); // 10 x 18.927 = 189.27; 10.73 L more: 3 gallons at 63.00, or an eleventh drum at 90.00
    }

    [Theory]
    [InlineData(1_000_000_000_000)]
    [InlineData(999_999_999_989)]
    public void A_thousand_cubic_metres_end_quickly_whatever_the_sizes(long demand)
    {
        SizeAndCost[] sizes = [new(1, 1), new(999_983, 999_979), new(24_999_999, 24_000_001), new(199_999_991, 190_000_013), new(1_000_000_007, 949_999_999)];
        var cover = PackCover.Cheapest(sizes, demand)!;
        Assert.True(cover.Total >= demand);
        Assert.True(cover.Total < demand + (Int128)1_100_000_000);
    }

    [Fact]
    public void Costs_beyond_a_long_key_are_solved_in_wider_numbers()
    {
        SizeAndCost[] sizes = [new(999_983, 9_000_000_000_000), new(1_000_003, 9_000_000_000_001), new(7, 70_000_000)];
        // One of 1 000 003 and one of 7, rather than one of 999 983 and four of 7.
        Assert.Equal([0, 1, 1], PackCover.Cheapest(sizes, 1_000_010)!.Counts);
    }
}
