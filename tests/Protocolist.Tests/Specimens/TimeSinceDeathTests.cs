using Protocolist.Specimens;
using static Protocolist.Tests.Planning.Scheduling.Station;

namespace Protocolist.Tests.Specimens;

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

    [Theory]
    [InlineData(2, "warm-hours-fresh")]
    [InlineData(2.01, "warm-hours-fair")]
    [InlineData(12, "warm-hours-fair")]
    [InlineData(12.1, "warm-hours-doubtful")]
    [InlineData(48, "warm-hours-doubtful")]
    [InlineData(48.1, "warm-hours-decomposed")]
    public void The_hours_since_death_have_their_limits(double hours, string id) => Assert.Equal(id, TimeSinceDeath.Weigh([new(Hrs(hours), 20)]).Meaning.Id);

    /// <summary>Doubling and trebling in ten degrees: an hour at 10 °C is half and a third of one at 20; one at -5 is none, and one at -4.9 is some.</summary>
    [Fact]
    public void Hours_add_up_by_their_temperature()
    {
        var weighed = TimeSinceDeath.Weigh([new(Hrs(1), 10), new(Hrs(1), 30), new(Hrs(-5), 20), new(Hrs(100), -5)]);
        Assert.Equal((1 / 3.0) + 2, weighed.Least, 9);
        Assert.Equal(0.5 + 3, weighed.Most, 9);
        Assert.True(TimeSinceDeath.Weigh([new(Hrs(1), -4.9)]).Most > 0);
        var text = string.Join('\n', new[] { 1, 9.96, 10.4, 30, 80 }.Select(h => TimeSinceDeath.Weigh([new(Hrs(h), 20)]).Meaning).Select(f => $"{f.Severity.ToString().ToLowerInvariant()} {f.Id}: {f.Message.ToString()}\n  remedy: {f.Remedy.ToString()}"));
        KeptText.Holds("Specimens/kept/since-death.txt", text);
    }
}
