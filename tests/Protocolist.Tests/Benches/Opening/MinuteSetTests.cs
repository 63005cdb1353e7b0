using NodaTime;
using Protocolist.Benches.Opening;

namespace Protocolist.Tests.Benches.Opening;

/// <summary>Sets of minutes beside the same sets written out minute by minute.</summary>
public class MinuteSetTests
{
    private static MinuteSet Of(params (long From, long To)[] stretches) => MinuteSet.Of([.. stretches.Select(s => new Stretch(s.From, s.To))]);

    private static (long, long)[] Parts(MinuteSet set) => [.. set.Stretches.ToArray().Select(s => (s.From, s.To))];

    private static IEnumerable<long> MinutesOf(MinuteSet set) => set.Stretches.ToArray().SelectMany(s => Enumerable.Range((int)s.From, (int)(s.To - s.From + 1)).Select(m => (long)m));

    /// <summary>Some sets within -40 to 60 minutes, of none to six stretches.</summary>
    internal static IEnumerable<MinuteSet> Some()
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
    public void Common_minutes_are_those_in_both()
    {
        foreach (var a in Some())
        {
            foreach (var b in Some()) Assert.Equal(MinutesOf(a).Intersect(MinutesOf(b)), MinutesOf(a.Intersect(b)));
            Assert.Same(a, a.Intersect(MinuteSet.Everything));
        }

        Assert.Equal([(-9L, -7L), (-5L, -1L)], Parts(Of((1, 5), (7, 9)).Mirrored()));
    }

    [Fact]
    public void The_stretch_that_holds_a_minute_or_the_next()
    {
        foreach (var a in Some())
        {
            for (long minute = -50; minute < 80; minute++)
                Assert.Equal(a.Stretches.ToArray().Where(s => s.To >= minute).Select(s => (Stretch?)s).FirstOrDefault(), a.At(minute));
        }
    }

    [Fact]
    public void Whole_minutes_of_moments_and_times()
    {
        Assert.Equal((1, 2), (Minutes.Floor(Instant.FromUnixTimeSeconds(119)), Minutes.Ceiling(Instant.FromUnixTimeSeconds(119))));
        Assert.Equal((2, 2), (Minutes.Floor(Instant.FromUnixTimeSeconds(120)), Minutes.Ceiling(Instant.FromUnixTimeSeconds(120))));
        Assert.Equal((2, 3), (Minutes.Floor(Instant.FromUnixTimeTicks(1_200_000_001)), Minutes.Ceiling(Instant.FromUnixTimeTicks(1_200_000_001))));
        Assert.Equal((-2, -1), (Minutes.Floor(Instant.FromUnixTimeSeconds(-61)), Minutes.Ceiling(Instant.FromUnixTimeSeconds(-61))));
        Assert.Equal((-1, -1), (Minutes.Floor(Instant.FromUnixTimeSeconds(-60)), Minutes.Ceiling(Instant.FromUnixTimeSeconds(-60))));
        Assert.Equal((-2, -1), (Minutes.Floor(-Duration.FromSeconds(61)), Minutes.Ceiling(-Duration.FromSeconds(61))));
        Assert.Equal((1441, 1442), (Minutes.Floor(Duration.FromSeconds(86461)), Minutes.Ceiling(Duration.FromSeconds(86461))));
    }
}
