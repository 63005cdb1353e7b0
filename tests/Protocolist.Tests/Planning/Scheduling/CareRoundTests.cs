using NodaTime;
using Protocolist.Findings;
using Protocolist.Planning.Scheduling;

namespace Protocolist.Tests.Planning.Scheduling;

public class CareRoundTests
{
    [Fact]
    public void Turns_fall_on_open_days_and_never_drift()
    {
        var rule = CareRound.Usual.Single(r => r.Id == "half-yearly-check");
        var care = CareRound.Dates(rule, new LocalDate(2027, 8, 31), new LocalDate(2029, 12, 31), Station.Hours.Hours);

        // 29 February 2028 is a Tuesday; 31 August 2028 a Thursday; 28 February 2029 a Wednesday; 31 August 2029 a Friday.
        Assert.Equal([new(2028, 2, 29), new(2028, 8, 31), new(2029, 2, 28), new LocalDate(2029, 8, 31)], care.Dates);
        Assert.Equal(new LocalDate(2030, 2, 28), care.ThenFrom);
    }

    [Fact]
    public void A_turn_on_a_saturday_moves_to_monday_and_the_next_is_unmoved()
    {
        var care = CareRound.Dates(new CareRule("turn", Message.Text("look"), Period.FromDays(5), Period.FromDays(7), "common practice"), new LocalDate(2027, 3, 1), new LocalDate(2027, 3, 20), Station.Hours.Hours);

        Assert.Equal([new LocalDate(2027, 3, 8), new LocalDate(2027, 3, 15)], care.Dates);
    }

    [Fact]
    public void What_comes_once_has_no_rule_after_it()
    {
        var care = CareRound.Dates(CareRound.Usual[0], new LocalDate(2027, 3, 1), new LocalDate(2030, 1, 1), Station.Hours.Hours);

        Assert.Equal(new LocalDate(2027, 3, 15), Assert.Single(care.Dates));
        Assert.Null(care.ThenFrom);
    }

    [Fact]
    public void The_usual_round_reaches_decades_ahead() => Assert.Equal(
        [1, 60, 30, 15, 3],
        CareRound.Usual.Select(rule => CareRound.Dates(rule, new LocalDate(2027, 3, 1), new LocalDate(2057, 3, 31), Station.Hours.Hours).Dates.Length));
}
