using Protocolist.Planning.Scheduling;
using static Protocolist.Tests.Planning.Scheduling.Station;

namespace Protocolist.Tests.Planning.Scheduling;

public class TimeSinceDeathTests
{
    [Fact]
    public void Ten_degrees_more_count_at_least_double()
    {
        // SPNHC best practices, Fluid Collections: ten degrees more double the rate.
        var warm = TimeSinceDeath.Weigh([new(Hrs(3), 30)]);

        Assert.Equal(6, warm.Least, 9);
        Assert.Equal(9, warm.Most, 9);
    }

    [Fact]
    public void A_night_in_the_refrigerator_counts_little()
    {
        var cold = TimeSinceDeath.Weigh([new(Hrs(12), 4)]);

        Assert.InRange(cold.Least, 1, 3);
        Assert.InRange(cold.Most, 3, 5);
    }

    [Fact]
    public void Frozen_time_counts_nothing() => Assert.Equal(0, TimeSinceDeath.Weigh([new(Hrs(10_000), -20)]).Most);

    [Theory]
    [InlineData(1, "warm-hours-fresh")]
    [InlineData(6, "warm-hours-fair")]
    [InlineData(30, "warm-hours-doubtful")]
    [InlineData(80, "warm-hours-decomposed")]
    public void The_meaning_follows_the_hours(double hours, string id) => Assert.Equal(id, TimeSinceDeath.Weigh([new(Hrs(hours), 20)]).Meaning.Id);

    [Fact]
    public void The_message_is_rounded_for_people() => Assert.StartsWith(
        "the body has been warm for as long as 2.1 to 4 h at 20 °C", TimeSinceDeath.Weigh([new(Hrs(12), 4), new(Mins(3), 20)]).Meaning.Message.ToString(), StringComparison.Ordinal);
}
