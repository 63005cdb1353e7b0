using NodaTime;
using Protocolist.Planning.Scheduling;

namespace Protocolist.Tests.Planning.Scheduling;

/// <summary>Sets of minutes beside the same sets written out minute by minute.</summary>
public class MinuteSetTests
{
    private static MinuteSet Of(params (long From, long To)[] stretches) => MinuteSet.Of([.. stretches.Select(s => new Stretch(s.From, s.To))]);

    private static (long, long)[] Parts(MinuteSet set) => [.. set.Stretches.ToArray().Select(s => (s.From, s.To))];

    private static IEnumerable<long> Minutes(MinuteSet set) => set.Stretches.ToArray().SelectMany(s => Enumerable.Range((int)s.From, (int)(s.To - s.From + 1)).Select(m => (long)m));

    /// <summary>Some sets within -40 to 60 minutes, of none to six stretches.</summary>
    private static IEnumerable<MinuteSet> Some()
    {
        for (var seed = 0; seed < 24; seed++)
        {
            var stretches = new List<(long, long)>();
            long at = -40 + (seed * 7 % 13);
            for (var i = 0; i < seed % 7; i++)
            {
                var to = at + (((seed * 5) + (i * 3)) % 9);
                stretches.Add((at, to));
                at = to + 1 + (((seed * 11) + (i * 7)) % 8);
            }

            yield return Of([.. stretches]);
        }
    }

    [Fact]
    public void Stretches_that_share_a_minute_are_one_and_those_that_only_follow_stay_two()
    {
        Assert.Equal([(1L, 9L)], Parts(Of((1, 5), (5, 9))));
        Assert.Equal([(1L, 5L), (6L, 9L)], Parts(Of((1, 5), (6, 9))));
        Assert.Equal([(1L, 9L)], Parts(Of((1, 9), (3, 5))));
        Assert.Equal([(4L, 4L)], Parts(Of((4, 4), (7, 6))));
        Assert.Equal([(1L, 5L), (7L, 9L)], Parts(Of((1, 5), (7, 9))));
        Assert.True(Of().IsEmpty);
        Assert.False(Of((1, 1)).IsEmpty);
        Assert.Equal(1, Of((1, 5), (7, 9)).Least);
    }

    [Fact]
    public void Whole_minutes_inside_an_opening()
    {
        static Instant At(int seconds) => Instant.FromUnixTimeSeconds(seconds);
        Assert.Equal([(1L, 2L)], Parts(MinuteSet.Of([new Interval(At(59), At(179))])));
        Assert.Equal([(1L, 3L)], Parts(MinuteSet.Of([new Interval(At(60), At(180))])));
        Assert.Empty(Parts(MinuteSet.Of([new Interval(At(61), At(119))])));
    }

    [Fact]
    public void Moved_stretches_shrink_and_vanish_or_run_together()
    {
        Assert.Equal([(1L, 2L)], Parts(Of((1, 5), (7, 9)).Moved(0, -3)));
        Assert.Equal([(4L, 5L)], Parts(Of((1, 5), (7, 9)).Moved(3, 0)));
        Assert.Equal([(1L, 11L)], Parts(Of((1, 5), (7, 9)).Moved(0, 2)));
        Assert.Equal([(-9L, -7L), (-5L, -1L)], Parts(Of((1, 5), (7, 9)).Mirrored()));
    }

    [Fact]
    public void Common_minutes_are_those_in_both()
    {
        foreach (var a in Some())
        {
            foreach (var b in Some()) Assert.Equal(Minutes(a).Intersect(Minutes(b)), Minutes(a.Intersect(b)));
            Assert.Same(a, a.Intersect(MinuteSet.Everything));
            Assert.Equal(Minutes(a).Where(m => m is >= -20 and <= 15), Minutes(a.Clipped(-20, 15)));
            Assert.Equal(Minutes(a).Where(m => m == 3), Minutes(a.Clipped(3, 3)));
            Assert.True(a.Clipped(4, 3).IsEmpty);
        }
    }

    [Fact]
    public void The_next_minute_and_the_stretch_that_holds_one()
    {
        foreach (var a in Some())
        {
            for (long minute = -50; minute < 80; minute++)
            {
                var next = Minutes(a).Where(m => m >= minute).Select(m => (long?)m).FirstOrDefault();
                Assert.Equal(next, a.Next(minute));
                Assert.Equal(a.Stretches.ToArray().Where(s => s.To >= minute).Select(s => (Stretch?)s).FirstOrDefault(), a.At(minute));
            }
        }
    }

    /// <summary>A minute is reached from another if it lies so many later, in what is allowed, between the bounds, and both in one held stretch.</summary>
    [Fact]
    public void What_is_reached_is_what_some_minute_reaches()
    {
        Stretch[] everywhere = [new(-1000, 1000)];
        var sets = Some().ToArray();
        for (var i = 0; i < sets.Length; i++)
        {
            var (from, allowed) = (sets[i], sets[(i + 5) % sets.Length]);
            foreach (var (least, greatest) in new (long, long)[] { (0, 0), (2, 6), (5, 5), (0, 30), (3, 2) })
            {
                foreach (var within in new[] { null, sets[(i + 11) % sets.Length] })
                {
                    foreach (var (notBefore, notAfter) in new (long, long)[] { (-1000, 1000), (-12, 20) })
                    {
                        var reached = Minutes(from.Reach(least, greatest, within, allowed, notBefore, notAfter, [])).Distinct().Order();
                        var held = within?.Stretches.ToArray() ?? everywhere;
                        Assert.Equal(Minutes(allowed).Where(t => t >= notBefore && t <= notAfter && held.Any(h => h.From <= t && t <= h.To && Minutes(from).Any(f => h.From <= f && f <= h.To && t - f >= least && t - f <= greatest))), reached);
                    }
                }
            }
        }
    }

    [Fact]
    public void Whole_minutes_of_moments_and_times()
    {
        Assert.Equal((1, 2), (Protocolist.Planning.Scheduling.Minutes.Floor(Instant.FromUnixTimeSeconds(119)), Protocolist.Planning.Scheduling.Minutes.Ceiling(Instant.FromUnixTimeSeconds(119))));
        Assert.Equal((2, 2), (Protocolist.Planning.Scheduling.Minutes.Floor(Instant.FromUnixTimeSeconds(120)), Protocolist.Planning.Scheduling.Minutes.Ceiling(Instant.FromUnixTimeSeconds(120))));
        Assert.Equal((-2, -1), (Protocolist.Planning.Scheduling.Minutes.Floor(Instant.FromUnixTimeSeconds(-61)), Protocolist.Planning.Scheduling.Minutes.Ceiling(Instant.FromUnixTimeSeconds(-61))));
        Assert.Equal((2, Protocolist.Planning.Scheduling.Minutes.Far), Protocolist.Planning.Scheduling.Minutes.Of(Window.AtLeast(Duration.FromSeconds(61))));
        Assert.Equal((2, 3), Protocolist.Planning.Scheduling.Minutes.Of(Window.Between(Duration.FromSeconds(61), Duration.FromSeconds(239))));
        Assert.Equal((1, 1), Protocolist.Planning.Scheduling.Minutes.Of(Window.Between(Duration.FromSeconds(30), Duration.FromSeconds(50))));
        Assert.Equal((1440, 1440), Protocolist.Planning.Scheduling.Minutes.Of(Window.Exactly(Duration.FromDays(1))));
        Assert.Equal((2, 1), Protocolist.Planning.Scheduling.Minutes.Of(Window.Between(Duration.FromMinutes(2), Duration.FromMinutes(1))));
    }
}
