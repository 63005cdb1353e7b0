using System.Globalization;
using System.Text;
using NodaTime;
using Protocolist.Benches.Opening;
using Protocolist.Planning.Scheduling;
using static Protocolist.Tests.Planning.Scheduling.Station;

namespace Protocolist.Tests.Planning.Scheduling;

/// <summary>What is said where dates do not fit, and how times are written.</summary>
public class WordsOfDatesTests
{
    private static readonly Job Hour = new("work", Window.Exactly(Hrs(1))) { HandsOnAtStart = Hrs(1) };

    [Fact]
    public void Every_limit_that_can_clash_and_what_would_free_it_was_read_and_kept()
    {
        var text = new StringBuilder();
        Tell("not before and start by", Hour with { NotBefore = March(3, 10), StartBy = March(2, 10) });
        Tell("not before and end by", Hour with { NotBefore = March(3, 10), EndBy = March(3, 10, 30) });
        Tell("not to end before, and no longer than", new Job("soak", Window.Between(Hrs(10), Hrs(20))) { StartBy = March(1, 12), EndNotBefore = March(5, 12) });
        Tell("longer than its own limit", new Job("soak", Window.Between(Hrs(10), Hrs(5))));
        Tell("at night", Hour with { NotBefore = March(1, 20), StartBy = March(2, 4) });
        Tell("somebody at a moment in the night", new Job("look", Window.AtLeast(Duration.Zero)) { HandsOnAtStart = Duration.Zero, NotBefore = March(1, 20), StartBy = March(2, 4) });
        Tell("work at the end, on a Sunday", new Job("wash", Window.Exactly(Hrs(48))) { HandsOnAtEnd = Mins(15), NotBefore = March(5, 9), StartBy = March(5, 16) });
        Tell("work longer than any opening", Hour with { Lasts = Window.AtLeast(Hrs(9)), HandsOnAtStart = Hrs(9) });
        Tell("at once, over a weekend", new Job("fix", Window.Exactly(Hrs(48))) { HandsOnAtStart = Mins(30), NotBefore = March(5, 9), StartBy = March(5, 12) }, (Window.Nothing, Hour));
        Tell("at most a day after, over a weekend", new Job("fix", Window.Exactly(Hrs(10))) { NotBefore = March(5, 9), StartBy = March(5, 12) }, (Window.Between(Hrs(20), Hrs(24)), Hour));
        Tell("a day that is past", Hour with { EndBy = March(1, 8) });
        Tell("three soaks and a day too near", new Job("a", Window.AtLeast(Hrs(24))), (Window.Nothing, new Job("b", Window.AtLeast(Hrs(24)))), (Window.Nothing, new Job("c", Window.AtLeast(Hrs(24))) { EndBy = March(3) }));
        Tell("four soaks and a day too near", new Job("a", Window.AtLeast(Hrs(24))), (Window.Nothing, new Job("b", Window.AtLeast(Hrs(24)))), (Window.Nothing, new Job("c", Window.AtLeast(Hrs(24)))), (Window.Nothing, new Job("d", Window.AtLeast(Hrs(24))) { EndBy = March(4, 12) }));
        var vent = JobGraph.Of([new Job("fix", Window.Exactly(Hrs(48))) { NotBefore = March(5, 9), StartBy = March(5, 12) }, Hour], [new("fix", "work", Window.Between(Hrs(20), Hrs(30)), Anchor.Start)]);
        Say("during a soak, over a weekend", Scheduler.Earliest(vent, Hours, March(1, 9)));
        Say("a tub that is taken", Scheduler.Earliest(JobGraph.Chain((Window.Nothing, Hour with { Needs = [new("tub", true)], StartBy = March(1, 12) })), Hours, March(1, 9), Bookings.Of(("tub", 1)) with { Taken = [new("tub", March(1), March(9), 1)] }));
        Say("a hood that is taken while somebody works", Scheduler.Earliest(JobGraph.Chain((Window.Nothing, Hour with { Needs = [new("hood")], StartBy = March(1, 12) })), Hours, March(1, 9), Bookings.Of(("hood", 1)) with { Taken = [new("hood", March(1), March(9), 1)] }));
        Say("backwards from a day too near", Scheduler.Latest(JobGraph.Chain((Window.Nothing, new Job("soak", Window.AtLeast(Hrs(48))))), Hours, March(1, 9), March(2, 9)));
        Say("no opening at all", Scheduler.Earliest(JobGraph.Chain((Window.Nothing, Hour)), OpeningHours.Create(Zone, []).Value!, March(1)));
        KeptText.Holds("Planning/Scheduling/kept/clashes.txt", text.ToString());

        void Tell(string of, Job first, params (Window Lag, Job Job)[] more) => Say(of, Scheduler.Earliest(JobGraph.Chain([(Window.Nothing, first), .. more]), Hours, March(1, 9)));
        void Say(string of, Protocolist.Findings.Checked<Schedule> dated)
        {
            text.Append(CultureInfo.InvariantCulture, $"{of}\n");
            if (dated.Value is { } fits) text.Append(CultureInfo.InvariantCulture, $"  fits: {string.Join(", ", fits.Jobs.Select(j => $"{j.Id} {Wording.Of(j.Start, Zone)} to {Wording.Of(j.End, Zone)}"))}\n");
            foreach (var f in dated.Findings) text.Append(CultureInfo.InvariantCulture, $"  {f.Severity.ToString().ToLowerInvariant()} {f.Id}\n    {f.Message.ToString()}\n    remedy: {f.Remedy.ToString()}\n");
            text.Append('\n');
        }
    }

    [Fact]
    public void Times_are_written_in_days_hours_and_minutes_rounded_up()
    {
        Assert.Equal("no time", Wording.Of(Duration.Zero));
        Assert.Equal("1 min", Wording.Of(Duration.FromSeconds(1)));
        Assert.Equal("59 min", Wording.Of(Mins(59)));
        Assert.Equal("1 h", Wording.Of(Mins(60)));
        Assert.Equal("23 h 59 min", Wording.Of(Mins(1439)));
        Assert.Equal("1 d", Wording.Of(Mins(1440)));
        Assert.Equal("2 d 1 min", Wording.Of(Mins(2881)));
        Assert.Equal("1 d 1 h 1 min", Wording.Of(Mins(1501)));
        Assert.Equal("Mon 2027-03-01 09:05", Wording.Of(March(1, 9, 5), Zone));
        Assert.Equal("Mon 2027-03-01", Wording.Of(new LocalDate(2027, 3, 1)));
        Assert.Equal("09:05", Wording.Of(new LocalTime(9, 5)));
        Assert.Equal(["", "a", "a and b", "a, b and c"], new string[][] { [], ["a"], ["a", "b"], ["a", "b", "c"] }.Select(Wording.List));
    }

    [Fact]
    public void The_usual_round_of_care_was_read_and_kept() => KeptText.Holds("Planning/Scheduling/kept/care.txt", string.Join('\n', CareRound.Usual.Append(new("odd", "look", Period.FromDays(1), new PeriodBuilder { Years = 1, Months = 1, Weeks = 1, Days = 3 }.Build(), "nobody"))
        .Select(r => string.Create(CultureInfo.InvariantCulture, $"{r.Id}: {r.Title}; first after {r.First}, {r.Rhythm}; {r.Source}; {string.Join(", ", CareRound.Dates(r, new(2027, 3, 1), new(2031, 3, 1), Hours) is var d ? d.Dates.Select(x => x.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture)).Append(d.ThenFrom is { } then ? $"then from {then:uuuu-MM-dd}" : "and no more") : [])}"))));

    [Fact]
    public void A_turn_is_on_the_horizons_day_and_not_after_it_and_waits_a_month_for_an_open_day()
    {
        var rule = new CareRule("turn", "look", Period.FromDays(7), Period.FromDays(7), "common practice");
        Assert.Equal([new LocalDate(2027, 3, 8)], CareRound.Dates(rule, new(2027, 3, 1), new(2027, 3, 14), Hours).Dates);
        Assert.Equal([new LocalDate(2027, 3, 8), new LocalDate(2027, 3, 15)], CareRound.Dates(rule, new(2027, 3, 1), new(2027, 3, 15), Hours).Dates);

        // Closed from 8 March on: 7 April is the thirtieth day after, and the last that is waited for.
        LocalDate First(int closedDays) => CareRound.Dates(rule, new(2027, 3, 1), new(2028, 3, 1), Weekdays(Zone, new ClosedDays(new(2027, 3, 8), new LocalDate(2027, 3, 8).PlusDays(closedDays - 1), ""))).Dates[0];
        Assert.Equal(new LocalDate(2027, 4, 7), First(30));
        Assert.Equal(new LocalDate(2027, 3, 8), First(31));
        Assert.Equal(new LocalDate(2027, 3, 9), First(1));

        // Turns that a closure throws together are one.
        var closed = Weekdays(Zone, new ClosedDays(new(2027, 3, 8), new(2027, 3, 16), ""));
        Assert.Equal([new LocalDate(2027, 3, 17), new LocalDate(2027, 3, 22)], CareRound.Dates(rule, new(2027, 3, 1), new(2027, 3, 22), closed).Dates);
        Assert.Equal((0, new LocalDate(2027, 3, 8)), CareRound.Dates(rule with { Every = null }, new(2027, 3, 1), new(2027, 3, 7), Hours) is var once ? (once.Dates.Length, once.ThenFrom) : default);
    }

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
        KeptText.Holds("Planning/Scheduling/kept/since-death.txt", text);
    }

    /// <summary>
    /// By hand for a cylinder of 5 cm half-thickness in still water of 10 °C: 1050 x 0.75 x 333600 / 11 = 23 882 727 s K/m; usual 0.05/(2 x 100) + 0.0025/(2 x 2 x 0.5)
    /// = 0.0015, 35 824 s = 597.07 min, so 598; with 200 and 0.55: 0.000125 + 0.00113636 = 0.00126136, 30 124 s = 502.07, so 503; with 60 and 0.45: 0.00041667 + 0.00138889
    /// = 0.00180556, 43 121 s = 718.69, so 719, and a fifth more.
    /// </summary>
    [Fact]
    public void Thawing_by_planks_equation_worked_by_hand()
    {
        var thaw = Thawing.Of(0.05, ThawShape.Cylinder, ThawMedium.StillWater, 10);
        Assert.Equal((503, 598, 719 * 1.2), (thaw.Least.TotalMinutes, thaw.Likely.TotalMinutes, Math.Round(thaw.Most.TotalMinutes, 6)));
        Assert.Empty(Thawing.Of(0.05, ThawShape.Slab, ThawMedium.StillAir, 20).Findings);
        var warm = Assert.Single(Thawing.Of(0.05, ThawShape.Slab, ThawMedium.StillAir, 20.5).Findings);
        Assert.Equal(("at 20.5 °C the outside rots while the inside is still frozen", "thaw cold, never in warm water; a cold shower or running cold water shortens it"), (warm.Message.ToString(), warm.Remedy.ToString()));
        var never = Assert.Single(Thawing.Of(0.05, ThawShape.Slab, ThawMedium.StillAir, -0.5).Findings);
        Assert.Equal(("at -0.5 °C a frozen body does not thaw", "thaw at 2 to 15 °C"), (never.Message.ToString(), never.Remedy.ToString()));
        Assert.Empty(Thawing.Of(0.05, ThawShape.Slab, ThawMedium.StillAir, -0.4).Findings);
        Assert.True(Thawing.Of(0.05, ThawShape.Slab, ThawMedium.RunningWater, 10).Likely < Thawing.Of(0.05, ThawShape.Slab, ThawMedium.StillWater, 10).Likely);
        // A cylinder five times as long as thick of 1050 kg/m3: 1.05 kg are 1 L, of 4 x 0.001 / (5 pi) m3 the cube root is 63.4 mm across.
        Assert.Equal(0.0317, Thawing.HalfThickness(1.05, 5), 4);
    }

    [Fact]
    public void A_plan_that_overbooks_itself_is_told_what_to_do()
    {
        var job = new Job("a", Window.AtLeast(Hrs(2))) { Needs = [new("tub", Throughout: true)] };
        var finding = Assert.Single(SharedBench.Earliest([JobGraph.Of([job, job with { Id = "b" }], [])], Hours, March(1, 9), Bookings.Of(("tub", 1))).Single().Dated.Findings);
        Assert.Equal(("two jobs of this plan want 'tub' at the same time, and there is not enough of it", "put one of them after the other in the protocol"), (finding.Message.ToString(), finding.Remedy.ToString()));
    }

    [Fact]
    public void A_gap_between_looks_says_who_should_come_when()
    {
        var gap = Assert.Single(new Inspections(Hrs(24), Hrs(36), Mins(20)).During(new Interval(March(4, 10), March(9, 10)), Hours).Findings);
        Assert.Equal("have somebody come in by Sun 2027-03-07 04:40, or begin the soak on another day", gap.Remedy.ToString());
    }

    /// <summary>Looks at a rhythm of a day with two days as the limit: each lies in open hours, none twice, and none but where the bench is closed for longer lies further from the next than the limit.</summary>
    [Fact]
    public void Looks_are_never_further_apart_than_the_limit_where_the_bench_allows_it()
    {
        foreach (var (every, limit) in new[] { (24, 48), (24, 72), (48, 96), (72, 80), (20, 90) })
        {
            for (var start = 0; start < 40; start++)
            {
                var soak = new Interval(March(1, 9) + Hrs(start * 5), March(1, 9) + Hrs((start * 5) + 200 + start));
                var (visits, findings) = new Inspections(Hrs(every), Hrs(limit), Mins(20)).During(soak, Hours);
                var all = visits.Prepend(soak.Start).Append(soak.End).ToList();
                var widest = all.Zip(all.Skip(1)).Max(p => p.Second - p.First);
                Assert.Equal(findings.IsEmpty, widest <= Hrs(limit));
                if (limit >= 66) Assert.Empty(findings);
                Assert.All(visits, v => Assert.True(v > soak.Start && v < soak.End && Hours.Between(v, v + Mins(20)).Intervals.Any(i => i.Start <= v && i.End >= v + Mins(20))));
                Assert.Equal(visits.Distinct().Order(), visits);
            }
        }
    }
}
