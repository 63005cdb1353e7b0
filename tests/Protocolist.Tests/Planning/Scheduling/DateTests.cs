using NodaTime;
using Protocolist.Benches.Opening;
using Protocolist.Planning.Scheduling;
using Protocolist.Tests.Benches.Opening;

namespace Protocolist.Tests.Planning.Scheduling;

/// <summary>The minutes at which a date can fall beside all minutes tried one by one, and the times between dates.</summary>
public class DateTests
{
    /// <summary>Work of none to three minutes on either side of a date, forwards and backwards, beside all minutes tried one by one.</summary>
    [Fact]
    public void A_date_leaves_room_for_its_work_inside_its_stretch_and_between_the_bounds()
    {
        foreach (var set in MinuteSetTests.Some())
        {
            for (var work = 0; work < 16; work++)
            {
                foreach (var bounds in new Stretch[] { Stretch.Everything, new(-12, 20), new(3, 3), new(5, 4) })
                {
                    var date = new Date(set, bounds, work / 4, work % 4);
                    var may = Enumerable.Range(-60, 160).Select(m => (long)m)
                        .Where(m => bounds.From <= m && m <= bounds.To && set.Stretches.ToArray().Any(s => s.From <= m - date.WorkBefore && m + date.WorkAfter <= s.To)).ToArray();
                    for (long minute = -50; minute < 80; minute++)
                    {
                        Assert.Equal(may.Where(m => m >= minute).Select(m => (long?)m).FirstOrDefault(), date.Next(minute));
                        Assert.Equal(may.Where(m => m <= minute).Select(m => (long?)-m).LastOrDefault(), (date with { IsMirrored = true }).Next(-minute));
                        Assert.Equal(may.Where(m => m <= minute).Select(m => (long?)m).LastOrDefault(), date.Until(minute) is { } found ? Math.Min(found.To, minute) : null);
                    }
                }
            }
        }
    }

    [Fact]
    public void A_least_time_is_rounded_up_and_a_greatest_one_down_but_not_below_it()
    {
        Assert.Equal(new(2, Minutes.Far), Window.AtLeast(Duration.FromSeconds(61)));
        Assert.Equal(new(2, 3), Window.Between(Duration.FromSeconds(61), Duration.FromSeconds(239)));
        Assert.Equal(new(1, 1), Window.Between(Duration.FromSeconds(30), Duration.FromSeconds(50)));
        Assert.Equal(new(1440, 1440), Window.Exactly(Duration.FromDays(1)));
        Assert.Equal(new(2, 1), Window.Between(Duration.FromMinutes(2), Duration.FromMinutes(1)));
        Assert.Equal(default, Window.Nothing);
    }
}
