using NodaTime;
using Protocolist.Benches.Opening;
using Protocolist.Planning.Scheduling;
using static Protocolist.Tests.Planning.Scheduling.Station;

namespace Protocolist.Tests.Planning.Scheduling;

/// <summary>The searches for dates and for clashes beside all possibilities written out.</summary>
public class SearchTests
{
    private static MinuteSet Of(params Stretch[] stretches) => MinuteSet.Of((ReadOnlySpan<Stretch>)stretches);

    /// <summary>All dates of a small problem: one job after another, or two jobs with two links between them.</summary>
    [Fact]
    public void The_earliest_and_the_latest_dates_are_those_of_all_that_hold()
    {
        var some = 0;
        for (var seed = 0; seed < 150; seed++)
        {
            MinuteSet Set(int salt) => Of(new((seed * salt) % 5, (seed * salt % 5) + (seed % 4)), new(8 + (seed * salt % 3), 9 + (seed * salt % 4)), new(14, 15 + (seed % 3)));
            Date[] dates = [new(Set(3), new(seed % 3, 12), WorkAfter: seed % 2), new(Set(7), new(0, 17 - (seed % 4)), WorkBefore: seed % 3), new(Set(11), new(seed % 7, 19)), new(Set(13), new(0, 20), 1, 1)];
            Arc[] path = [new(0, 1, seed % 3, 3 + (seed % 6), seed % 4 == 0 ? Of(new(0, 6), new(7, 20)) : null), new(1, 2, 0, 2 + (seed % 9), null), new(2, 3, 1, 1 + (seed % 7), seed % 5 == 0 ? Of(new(0, 9), new(10, 20)) : null)];
            Arc[] other = [.. path[..1], .. path[2..], new(0, 2, seed % 4, 4 + (seed % 8), null)];
            foreach (var (arcs, isPath) in new[] { (path, true), (path, false), (other, false) })
            {
                var all = All(dates, arcs).ToList();
                var (earliest, latest) = (new Network(dates, arcs, isPath).Earliest(), new Network(dates, arcs, isPath).Latest());
                Assert.Equal(all.Count > 0, earliest is not null);
                Assert.Equal(all.Count > 0, latest is not null);
                if (all.Count == 0) continue;
                some++;
                for (var i = 0; i < dates.Length; i++) Assert.Equal((all.Min(a => a[i]), all.Max(a => a[i])), (earliest![i], latest![i]));
            }
        }

        Assert.InRange(some, 50, 449);

        static IEnumerable<long[]> All(Date[] dates, Arc[] arcs)
        {
            long[][] may = [.. dates.Select(x => Enumerable.Range(0, 21).Select(m => (long)m).Where(m => Holds(x, m) && m >= x.Between.From && m <= x.Between.To).ToArray())];
            foreach (var a in may[0])
            {
                foreach (var b in may[1])
                {
                    foreach (var c in may[2])
                    {
                        foreach (var d in may[3])
                        {
                            long[] at = [a, b, c, d];
                            if (Array.TrueForAll(arcs, x => at[x.To] - at[x.From] >= x.Least && at[x.To] - at[x.From] <= x.Greatest && (x.Within is null || Array.Exists(x.Within.Stretches.ToArray(), s => s.From <= at[x.From] && at[x.From] <= s.To && s.From <= at[x.To] && at[x.To] <= s.To))))
                                yield return at;
                        }
                    }
                }
            }
        }

        static bool Holds(Date date, long minute) => date.Allowed.Stretches.ToArray().Any(s => s.From <= minute - date.WorkBefore && minute + date.WorkAfter <= s.To);
    }

    [Fact]
    public void Differences_that_contradict_each_other_are_found_out_at_once()
    {
        Date any = new(MinuteSet.Everything, new(0, 1000));
        Assert.Null(new Network([any, any], [new(0, 1, 5, 3, null)], false).Earliest());
        Assert.Null(new Network([any, any], [new(0, 1, 5, 3, null)], true).Earliest());
        Assert.Null(new Network([any, any, any], [new(0, 1, 2, 3, null), new(1, 2, 2, 3, null), new(0, 2, 0, 3, null)], false).Earliest());
        Assert.Equal([0L, 2L, 4L], new Network([any, any, any], [new(0, 1, 2, 3, null), new(1, 2, 2, 3, null), new(0, 2, 0, 4, null)], false).Earliest()!);
    }

    /// <summary>Eight demands of which some sets clash: the smallest of all clashing sets, by trying all 256.</summary>
    [Fact]
    public void The_smallest_clash_is_the_smallest_of_all()
    {
        const int Count = 8;
        for (var seed = 1; seed < 80; seed++)
        {
            int[] clashes = [Mask(seed), Mask(seed * 7), Mask(seed * 13), (1 << Count) - 1];
            var asked = 0;
            var found = SmallestConflict.Of(Count, held => { asked++; return !Clashes(Bits(held)); }, 1000);
            var least = Enumerable.Range(1, (1 << Count) - 1).Where(Clashes).Min(m => int.PopCount(m));
            Assert.True(found.IsProven);
            Assert.Equal(least, found.Members.Length);
            Assert.True(Clashes(found.Members.Sum(i => 1 << i)));
            Assert.Equal(found.Members.Order(), found.Members);
            Assert.InRange(asked, 1, 400);

            bool Clashes(int set) => clashes.Any(c => (set & c) == c);
        }

        static int Bits(bool[] held) => held.Index().Where(h => h.Item).Sum(h => 1 << h.Index);

        static int Mask(int n) => ((n * 37) & 0xff) | (1 << (n % Count));
    }

    [Fact]
    public void Without_tries_a_clash_is_given_of_which_none_can_be_left_out_as_unproven()
    {
        // Demands 0 and 1 clash, and so do 2, 3 and 4.
        static bool Fit(bool[] held) => !(held[0] && held[1]) && !(held[2] && held[3] && held[4]);
        var unproven = SmallestConflict.Of(5, Fit, 0);
        Assert.False(unproven.IsProven);
        Assert.Contains(string.Join(',', unproven.Members), new[] { "0,1", "2,3,4" });
        var proven = SmallestConflict.Of(5, Fit, 100);
        Assert.Equal([0, 1], proven.Members);
        Assert.True(proven.IsProven);
    }

    /// <summary>Least choices that have a member in each set, against all subsets.</summary>
    [Fact]
    public void The_least_choice_with_a_member_in_each_set()
    {
        for (var seed = 1; seed < 60; seed++)
        {
            var sets = Enumerable.Range(1, 2 + (seed % 5)).Select(i => Enumerable.Range(0, 7).Where(m => ((seed * i * 29) >> m & 1) == 1).Append(seed * i % 7).Distinct().ToArray()).ToList();
            var hitting = new HittingSet(7, 10_000);
            foreach (var set in sets) hitting.Add(set);
            var least = Enumerable.Range(0, 128).Where(m => sets.TrueForAll(s => s.Any(i => (m >> i & 1) == 1))).Min(m => int.PopCount(m));
            var found = hitting.Least(8)!;
            Assert.Equal(least, found.Count);
            Assert.All(sets, s => Assert.NotEmpty(s.Intersect(found)));
            Assert.Null(new HittingSet(7, 10_000).Least(0));
            Assert.False(hitting.IsSpent);
        }

        var spent = new HittingSet(3, 0);
        spent.Add([0, 1]);
        spent.Add([1, 2]);
        Assert.Null(spent.Least(3));
        Assert.True(spent.IsSpent);
    }

    [Fact]
    public void What_is_free_is_what_the_bookings_leave()
    {
        var bookings = Bookings.Of(("tub", 2), ("hood", 1)) with
        {
            Taken = [new("tub", At(10), At(20), 1), new("tub", At(15), At(30), 1), new("hood", At(5), At(8), 1)],
        };
        Assert.Equal(MinuteSet.Everything, bookings.Free(new("bath")));
        Assert.True(bookings.Free(new("tub", Amount: 3)).IsEmpty);
        Assert.Equal([(15L, 20L)], Gaps(bookings.Free(new("tub"))));
        Assert.Equal([(10L, 30L)], Gaps(bookings.Free(new("tub", Amount: 2))));
        Assert.Equal([(5L, 8L)], Gaps(bookings.Free(new("hood"))));
        Assert.Null(bookings.Overbooked());
        Assert.Equal("tub", (bookings with { Taken = bookings.Taken.Add(new("tub", At(19), At(21), 1)) }).Overbooked());
        Assert.Null((bookings with { Taken = bookings.Taken.Add(new("tub", At(20), At(21), 1)) }).Overbooked());

        static Instant At(int minute) => Instant.FromUnixTimeSeconds(60 * minute);
        static (long, long)[] Gaps(MinuteSet free) => [.. free.Stretches.ToArray().Zip(free.Stretches.ToArray().Skip(1)).Where(p => p.Second.From > p.First.To).Select(p => (p.First.To, p.Second.From))];
    }

    [Fact]
    public void A_job_takes_a_person_for_its_handles_and_a_tub_throughout()
    {
        var job = new Job("fix", Window.Exactly(Hrs(48))) { HandsOnAtStart = Mins(30), HandsOnAtEnd = Mins(15), Needs = [new("tub", true, 2), new("person")] };
        var graph = JobGraph.Chain((Window.Nothing, job), (Window.Nothing, new Job("rest", Window.Exactly(Hrs(1))) { Needs = [new("person")] }));
        var taken = Bookings.Of(("tub", 2), ("person", 1)).With(graph, Scheduler.Earliest(graph, Hours, March(1, 9)).Value!).Taken;

        // From 9:15 on, so that the quarter of an hour before the end lies in open hours.
        Assert.Equal([("tub", March(1, 9, 15), March(3, 9, 15), 2), ("person", March(1, 9, 15), March(1, 9, 45), 1), ("person", March(3, 9), March(3, 9, 15), 1)], taken.Select(b => (b.Resource, b.From, b.To, b.Amount)));
    }

    [Fact]
    public void The_shortest_total_counts_work_that_is_longer_than_its_job_and_the_waits()
    {
        var graph = JobGraph.Chain((Window.AtLeast(Hrs(9)), new Job("a", Window.AtLeast(Hrs(1))) { HandsOnAtStart = Hrs(2), HandsOnAtEnd = Hrs(1) }), (Window.AtLeast(Hrs(4)), new Job("b", Window.AtLeast(Hrs(5))) { HandsOnAtStart = Hrs(1) }));
        Assert.Equal((3 + 4 + 5) * 60, graph.LeastTotal);
        Assert.True(graph.IsChain);
        Assert.True(JobGraph.Of(graph.Jobs, graph.Links).IsChain);
        Assert.False(JobGraph.Of(graph.Jobs, [graph.Links[0] with { From = Anchor.Start }]).IsChain);
        Assert.False(JobGraph.Of(graph.Jobs, [new(1, 0, Window.Nothing)]).IsChain);
        Assert.False(JobGraph.Of(graph.Jobs, []).IsChain);
        Assert.Equal("no such job: 0 or 2 (Parameter 'links')", Assert.Throws<ArgumentException>(() => JobGraph.Of(graph.Jobs, [new(0, 2, Window.Nothing)])).Message);
        Assert.Equal("no such job: -1 or 0 (Parameter 'links')", Assert.Throws<ArgumentException>(() => JobGraph.Of(graph.Jobs, [new(-1, 0, Window.Nothing)])).Message);
    }
}
