using System.Globalization;
using System.Text;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Benches.Opening;
using Protocolist.Findings;
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
        var vent = JobGraph.Of([new Job("fix", Window.Exactly(Hrs(48))) { NotBefore = March(5, 9), StartBy = March(5, 12) }, Hour], [new(0, 1, Window.Between(Hrs(20), Hrs(30)), Anchor.Start)]);
        Say("during a soak, over a weekend", Scheduler.Earliest(vent, Hours, March(1, 9)));
        Say("a tub that is taken", Scheduler.Earliest(JobGraph.Chain((Window.Nothing, Hour with { Needs = [new("tub", true)], StartBy = March(1, 12) })), Hours, March(1, 9), Bookings.Of(("tub", 1)) with { Taken = [new("tub", March(1), March(9), 1)] }));
        Say("a hood that is taken while somebody works", Scheduler.Earliest(JobGraph.Chain((Window.Nothing, Hour with { Needs = [new("hood")], StartBy = March(1, 12) })), Hours, March(1, 9), Bookings.Of(("hood", 1)) with { Taken = [new("hood", March(1), March(9), 1)] }));
        Say("backwards from a day too near", Scheduler.Latest(JobGraph.Chain((Window.Nothing, new Job("soak", Window.AtLeast(Hrs(48))))), Hours, March(1, 9), March(2, 9)));
        Say("no opening at all", Scheduler.Earliest(JobGraph.Chain((Window.Nothing, Hour)), OpenMinutes.Of(OpeningHours.Create(Zone, []).Value!), March(1)));
        KeptText.Holds("Planning/Scheduling/kept/clashes.txt", text.ToString());

        void Tell(string of, Job first, params (Window Lag, Job Job)[] more) => Say(of, Scheduler.Earliest(JobGraph.Chain([(Window.Nothing, first), .. more]), Hours, March(1, 9)));
        void Say(string of, Checked<Schedule> dated)
        {
            text.Append(CultureInfo.InvariantCulture, $"{of}\n");
            if (dated.Value is { } fits) text.Append(CultureInfo.InvariantCulture, $"  fits: {string.Join(", ", fits.Select(j => $"{j.Id} {Argument.At("", j.Start, Zone)} to {Argument.At("", j.End, Zone)}"))}\n");
            foreach (var f in dated.Findings) text.Append(CultureInfo.InvariantCulture, $"  {f.Severity.ToString().ToLowerInvariant()} {f.Id}\n    {f.Message.ToString()}\n    remedy: {f.Remedy.ToString()}\n");
            text.Append('\n');
        }
    }

    [Fact]
    public void The_usual_round_of_care_was_read_and_kept() => KeptText.Holds("Planning/Scheduling/kept/care.txt", string.Join('\n', CareRound.Usual.Append(new("odd", Message.Text("look"), Period.FromDays(1), new PeriodBuilder { Years = 1, Months = 1, Weeks = 1, Days = 3 }.Build(), "nobody"))
        .Select(r => string.Create(CultureInfo.InvariantCulture, $"{r.Id}: {r.Title}; first after {r.First}, {(r.Every is { } every ? $"then every {every}" : "once")}; {r.Source}; {string.Join(", ", CareRound.Dates(r, new(2027, 3, 1), new(2031, 3, 1), Hours.Hours) is var d ? d.Dates.Select(x => x.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture)).Append(d.ThenFrom is { } then ? $"then from {then:uuuu-MM-dd}" : "and no more") : [])}"))));

    [Fact]
    public void A_turn_is_on_the_horizons_day_and_not_after_it_and_waits_a_month_for_an_open_day()
    {
        var rule = new CareRule("turn", Message.Text("look"), Period.FromDays(7), Period.FromDays(7), "common practice");
        Assert.Equal([new LocalDate(2027, 3, 8)], CareRound.Dates(rule, new(2027, 3, 1), new(2027, 3, 14), Hours.Hours).Dates);
        Assert.Equal([new LocalDate(2027, 3, 8), new LocalDate(2027, 3, 15)], CareRound.Dates(rule, new(2027, 3, 1), new(2027, 3, 15), Hours.Hours).Dates);

        // Closed from 8 March on: 7 April is the thirtieth day after, and the last that is waited for.
        LocalDate First(int closedDays) => CareRound.Dates(rule, new(2027, 3, 1), new(2028, 3, 1), Weekdays(Zone, new ClosedDays(new(2027, 3, 8), new LocalDate(2027, 3, 8).PlusDays(closedDays - 1), ""))).Dates[0];
        Assert.Equal(new LocalDate(2027, 4, 7), First(30));
        Assert.Equal(new LocalDate(2027, 3, 8), First(31));
        Assert.Equal(new LocalDate(2027, 3, 9), First(1));

        // Turns that a closure throws together are one.
        var closed = Weekdays(Zone, new ClosedDays(new(2027, 3, 8), new(2027, 3, 16), ""));
        Assert.Equal([new LocalDate(2027, 3, 17), new LocalDate(2027, 3, 22)], CareRound.Dates(rule, new(2027, 3, 1), new(2027, 3, 22), closed).Dates);
        Assert.Equal((0, new LocalDate(2027, 3, 8)), CareRound.Dates(rule with { Every = null }, new(2027, 3, 1), new(2027, 3, 7), Hours.Hours) is var once ? (once.Dates.Length, once.ThenFrom) : default);
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
                Assert.All(visits, v => Assert.True(v > soak.Start && v < soak.End && Hours.Hours.Between(v, v + Mins(20)).Intervals.Any(i => i.Start <= v && i.End >= v + Mins(20))));
                Assert.Equal(visits.Distinct().Order(), visits);
            }
        }
    }
}
