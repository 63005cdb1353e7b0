using Protocolist.Benches;
using UnitsNet;

namespace Protocolist.Tests.Benches.Stock;

public class AmountTests
{
    [Theory]
    [InlineData(2_500_000, "2.5 L")]
    [InlineData(250_000, "250 mL")]
    [InlineData(249_999, "250 mL")]
    [InlineData(1_234_567, "1.235 L")]
    [InlineData(500, "0.5 mL")]
    [InlineData(20, "20 uL")]
    [InlineData(0, "0 mL")]
    [InlineData(-5_000, "-5 mL")]
    public void Text_is_what_a_bench_can_measure(long microlitres, string text) =>
        Assert.Equal(text, new Amount(AmountKind.Volume, microlitres).ToString());

    [Fact]
    public void The_noise_of_a_sum_is_not_an_amount()
    {
        var sum = Enumerable.Repeat(0.1, 25).Aggregate(0.0, (a, b) => a + b);
        Assert.NotEqual(2.5, sum);
        Assert.Equal(Amount.Of(Volume.FromLiters(2.5)), Amount.Of(Volume.FromLiters(sum)));
    }

    [Fact]
    public void Two_kinds_do_not_add_up()
    {
        Assert.Throws<InvalidOperationException>(() => Amount.Of(Volume.FromLiters(1)) + Amount.Of(Mass.FromKilograms(1)));
        Assert.Throws<InvalidOperationException>(() => Amount.Of(3).Volume);
        Assert.Throws<ArgumentOutOfRangeException>(() => Amount.Of(Mass.FromKilograms(1e12)));
    }
}
