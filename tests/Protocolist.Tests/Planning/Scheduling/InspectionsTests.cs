using NodaTime;
using Protocolist.Planning.Scheduling;
using static Protocolist.Tests.Planning.Scheduling.Station;

namespace Protocolist.Tests.Planning.Scheduling;

public class InspectionsTests
{
    [Fact]
    public void Visits_keep_the_rhythm_on_open_days()
    {
        var (visits, findings) = new Inspections(Hrs(72), Hrs(96), Mins(20)).During(new Interval(March(1, 9), March(15, 9)), Hours);

        Assert.Empty(findings);
        // Thursday; then Sunday is closed, so Monday; Thursday; and the end on Monday is itself a visit.
        Assert.Equal([March(4, 9), March(8, 9), March(11, 9)], visits);
    }

    [Fact]
    public void Where_the_limit_forbids_waiting_for_monday_somebody_looks_on_friday()
    {
        var (visits, findings) = new Inspections(Hrs(48), Hrs(72), Mins(20)).During(new Interval(March(4, 10), March(9, 10)), Hours);

        Assert.Empty(findings);
        // From Thursday 10:00 Saturday is due. Friday it is, and so that Monday 9:00 is within 72 hours, not before 9:00.
        Assert.Equal([March(5, 9), March(8, 9)], visits);
    }

    [Fact]
    public void A_closure_longer_than_the_limit_is_an_error()
    {
        var (visits, findings) = new Inspections(Hrs(24), Hrs(36), Mins(20)).During(new Interval(March(4, 10), March(9, 10)), Hours);

        var gap = Assert.Single(findings);
        Assert.Equal("inspection-gap", gap.Id);
        Assert.Equal("nobody can look between Fri 2027-03-05 16:40 and Mon 2027-03-08 09:00 (Europe/Berlin), 2 d 16 h 20 min; the limit is 1 d 12 h", gap.Message.ToString());
        Assert.Equal([March(5, 16, 40), March(8, 9)], visits);
    }

    [Fact]
    public void A_short_soak_needs_no_visit() =>
        Assert.Empty(new Inspections(Hrs(72), Hrs(96), Mins(20)).During(new Interval(March(1, 10), March(4, 10)), Hours).Visits);
}
