using Protocolist.Planning.Scheduling;
using static Protocolist.Tests.Planning.Scheduling.Station;

namespace Protocolist.Tests.Planning.Scheduling;

public class SharedBenchTests
{
    private static readonly JobGraph Fish = JobGraph.Chain(
        (Window.Nothing, new Job("inject", Window.Exactly(Hrs(3))) { HandsOnAtStart = Hrs(3), Needs = [new("person"), new("hood")] }),
        (Window.AtMost(Hrs(1)), new Job("fix", Window.AtLeast(Hrs(48))) { HandsOnAtStart = Mins(15), HandsOnAtEnd = Mins(15), Needs = [new("tub", Throughout: true), new("person")] }));

    [Fact]
    public void One_person_serves_one_specimen_at_a_time()
    {
        var dated = SharedBench.Earliest([Fish, Fish, Fish], Hours, March(1, 9), Bookings.Of(("person", 1), ("hood", 1), ("tub", 9))).ToList();

        Assert.Equal([March(1, 9), March(1, 12, 15), March(2, 9)], dated.Select(d => d.Dated.Value![0].Start));
        Assert.Null(dated[^1].Taken.Overbooked());
    }

    [Fact]
    public void One_tub_is_held_until_its_soak_ends()
    {
        var dated = SharedBench.Earliest([Fish, Fish], Hours, March(1, 9), Bookings.Of(("person", 2), ("tub", 1))).ToList();

        var first = dated[0].Dated.Value![1];
        var second = dated[1].Dated.Value![1];
        Assert.Equal(March(3, 12), first.End);
        Assert.Equal(first.End, second.Start);
        // At most an hour may pass between injecting and fixing, so the injecting waits for the tub too.
        Assert.Equal(March(3, 9), dated[1].Dated.Value![0].Start);
    }

    [Fact]
    public void A_later_plan_uses_the_gap_an_earlier_one_left()
    {
        var lateStart = Fish.With(0, job => job with { NotBefore = March(1, 13) });
        var dated = SharedBench.Earliest([lateStart, Fish], Hours, March(1, 9), Bookings.Of(("person", 1), ("tub", 2))).ToList();

        Assert.Equal(March(1, 9), dated[1].Dated.Value![0].Start);
    }

    [Fact]
    public void What_needs_more_than_there_is_says_so()
    {
        var greedy = Fish.With(1, job => job with { Needs = [new("tub", true, 2)] });
        var finding = Assert.Single(SharedBench.Earliest([greedy], Hours, March(1, 9), Bookings.Of(("tub", 1))).Single().Dated.Findings);

        Assert.Contains("'fix' needs 'tub'", finding.Message.ToString(), StringComparison.Ordinal);
        Assert.Contains("another 'tub'", finding.Remedy.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Branches_of_one_graph_that_want_the_same_tub_are_warned_of()
    {
        var a = new Job("a", Window.AtLeast(Hrs(2))) { Needs = [new("tub", Throughout: true)] };
        var both = JobGraph.Of([a, a with { Id = "b" }], []);

        Assert.Equal("plan-overbooks-itself", Assert.Single(SharedBench.Earliest([both], Hours, March(1, 9), Bookings.Of(("tub", 1))).Single().Dated.Findings).Id);
    }
}
