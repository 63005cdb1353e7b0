using FsCheck.Fluent;
using NodaTime;
using Protocolist.Benches.Opening;
using Protocolist.Findings;
using Protocolist.Planning.Scheduling;

namespace Protocolist.Properties.Scheduling;

public class ScheduleProperties
{
    [Property(MaxTest = 2000, Arbitrary = [typeof(SmallChains)])]
    public void The_earliest_schedule_of_a_chain_is_the_one_that_trying_everything_finds(SmallProblem problem) => IsBest(problem);

    [Property(MaxTest = 2000, Arbitrary = [typeof(SmallGraphs)])]
    public void The_earliest_schedule_of_a_graph_is_the_one_that_trying_everything_finds(SmallProblem problem) => IsBest(problem);

    [Property(MaxTest = 1000, Arbitrary = [typeof(SmallChains)])]
    public void The_clashing_limits_cannot_hold_together_and_none_is_idle(SmallProblem problem)
    {
        var horizon = problem.Horizon;
        if (horizon.Earliest(problem.Graph) is not null) return;
        var all = Limit.AllOf(problem.Graph, DateTimeZone.Utc).ToList();
        var clashing = Clash.Smallest(problem.Graph, horizon).Limits.ConvertAll(l => l.Text);

        Assert.False(CanHold(clashing));
        foreach (var limit in clashing) Assert.True(CanHold([.. clashing.Where(c => c != limit)]), limit.ToString());

        bool CanHold(List<Message> texts) =>
            problem.WithGraph(problem.Graph.With(all.Where(l => !texts.Contains(l.Text)).Select(l => l.Without))).AllSchedules().Any();
    }

    [Property(MaxTest = 500, Arbitrary = [typeof(SmallChains)])]
    public void More_open_hours_never_make_any_date_later(SmallProblem problem)
    {
        var more = problem.WithOpenings([(0, SmallProblem.Length)]);
        if (SmallProblem.Flat(problem.Horizon.Earliest(problem.Graph)) is not { } before) return;
        var after = SmallProblem.Flat(more.Horizon.Earliest(problem.Graph));

        Assert.NotNull(after);
        Assert.All(before.Zip(after), pair => Assert.True(pair.Second <= pair.First));
    }

    [Property(MaxTest = 100, Arbitrary = [typeof(SmallChains)])]
    public void Plans_on_a_shared_bench_never_take_more_than_there_is(SmallProblem[] problems)
    {
        if (problems.Length == 0) return;
        var hours = OpenMinutes.Of(problems[0].WithOpenings([(0, SmallProblem.Length)]).Hours);
        var bench = SharedBench.Earliest(problems.Select(p => p.Graph), hours, SmallProblem.At(0), Bookings.Of(("tub", 2), ("person", 1))).ToList();

        Assert.Equal(problems.Length, bench.Count);
        for (var minute = 0; minute < 10_000; minute++)
        {
            var now = bench[^1].Taken.Taken.Where(b => b.From <= SmallProblem.At(minute) && SmallProblem.At(minute) < b.To).ToList();
            Assert.True(now.Where(b => b.Resource == "tub").Sum(b => b.Amount) <= 2);
            Assert.True(now.Where(b => b.Resource == "person").Sum(b => b.Amount) <= 1);
            if (minute > 500 && now.Count == 0) break;
        }
    }

    [Property(MaxTest = 500, Arbitrary = [typeof(SmallChains)])]
    public void The_same_problem_has_the_same_dates(SmallProblem problem) =>
        Assert.Equal(SmallProblem.Flat(problem.Horizon.Earliest(problem.Graph)), SmallProblem.Flat(problem.Horizon.Earliest(problem.Graph)));

    [Fact]
    public void The_random_problems_are_of_both_kinds()
    {
        var chains = SmallProblems.Some(chain: true).Some(500).Count(p => p.Horizon.Earliest(p.Graph) is not null);
        var graphs = SmallProblems.Some(chain: false).Some(500).Count(p => p.Horizon.Earliest(p.Graph) is not null);

        Assert.InRange(chains, 100, 450);
        Assert.InRange(graphs, 100, 450);
    }

    private static void IsBest(SmallProblem problem)
    {
        int[]? least = null;
        int[]? greatest = null;
        foreach (var schedule in problem.AllSchedules())
        {
            least = least is null ? schedule : [.. least.Zip(schedule, Math.Min)];
            greatest = greatest is null ? schedule : [.. greatest.Zip(schedule, Math.Max)];
        }

        Assert.Equal(least, SmallProblem.Flat(problem.Horizon.Earliest(problem.Graph)));
        Assert.Equal(greatest, SmallProblem.Flat(problem.Horizon.Latest(problem.Graph)));
    }
}
