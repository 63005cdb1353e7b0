using NodaTime;
using Protocolist.Planning.Scheduling;
using static Protocolist.Tests.Planning.Scheduling.Station;

namespace Protocolist.Tests.Planning.Scheduling;

public class SpreadWorkTests
{
    /// <summary>Two changes of a soak of nine days, at three and at six of them: Thursday, and Sunday that is closed, so the nearest opening.</summary>
    [Fact]
    public void Pieces_lie_at_even_shares_or_at_the_nearest_opening()
    {
        var moments = new SpreadWork(2, Mins(20)).During(new Interval(March(1, 10), March(10, 10)), Hours);

        Assert.Equal(March(4, 10), moments[0]);
        Assert.InRange(moments[1], March(5, 9), March(8, 9));
    }

    [Fact]
    public void A_piece_that_waits_for_a_delivery_comes_after_it_and_those_before_do_not_wait()
    {
        var spread = new SpreadWork(3, Mins(20)) { FirstWaiting = 1, Delivered = March(11, 9) };

        var moments = spread.During(new Interval(March(1, 10), March(13, 10)), Hours);

        Assert.Equal([March(4, 10), March(11, 9)], moments.Take(2));
        Assert.All(moments, m => Assert.InRange(m, March(1, 10), March(13, 10)));
    }

    [Fact]
    public void What_no_opening_takes_is_left_out_and_what_has_no_time_too()
    {
        // From Friday evening to Monday morning nobody is there.
        Assert.Empty(new SpreadWork(2, Mins(20)).During(new Interval(March(6, 18), March(8, 9)), Hours));
        Assert.Empty(new SpreadWork(1, Mins(20)).During(new Interval(March(1, 10), March(1, 10, 15)), Hours));
        Assert.Empty(new SpreadWork(0, Mins(20)).During(new Interval(March(1, 10), March(9, 10)), Hours));
    }
}
