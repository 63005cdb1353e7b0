using NodaTime;
using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Specimens;
using static Protocolist.Tests.Planning.PlanFixture;

namespace Protocolist.Tests.Planning.Dating;

/// <summary>From death to the first work, and thawing by size.</summary>
public class TimesBeforeWorkTests
{
    private static Plan Of(Condition? condition, Instant? died, string mass = "1 kg", string bench = "zone: UTC\n", string stages = "stages:\n  - {stage: immerse, id: fix, fluid: formalin 10 %, ratio: 10, last: 24 h}\n") =>
        Plan(Mammal(mass) with { Condition = condition, DiedAt = died, HeadBodyLength = null }, Shelf(("one", "{group: mammal}", stages)), bench).Value!;

    private static readonly Instant Sunday = Instant.FromUtc(2027, 2, 28, 23, 0);

    /// <summary>Ten hours at 20 °C are ten warm hours; at 4 °C they are 10·2^-1.6 = 3.3 and 10·3^-1.6 = 1.7.</summary>
    [Theory]
    [InlineData(Condition.Fresh, "10 h lie between death and the first step, taken at 20 °C throughout: the body has been warm for as long as 10 h at 20 °C: fit for fixing")]
    [InlineData(Condition.Chilled, "10 h lie between death and the first step, taken at 4 °C throughout: the body has been warm for as long as 1.7 to 3.3 h at 20 °C: fit for fixing")]
    [InlineData(Condition.Frozen, "10 h lie between death and the first step, taken at -18 °C throughout: the body has been warm for as long as 0 h at 20 °C: fresh")]
    public void Warm_hours_follow_how_it_was_kept(Condition condition, string says) =>
        Assert.Equal(says, Assert.Single(Of(condition, Sunday).Findings, f => f.Id.StartsWith("warm-hours", StringComparison.Ordinal)).Message.ToString());

    [Fact]
    public void Nothing_is_weighed_where_death_or_condition_is_not_known()
    {
        Assert.DoesNotContain(Of(Condition.Fresh, null).Findings, f => f.Id.StartsWith("warm-hours", StringComparison.Ordinal));
        Assert.DoesNotContain(Of(null, Sunday).Findings, f => f.Id.StartsWith("warm-hours", StringComparison.Ordinal));
    }

    [Fact]
    public void Work_before_death_is_an_error()
    {
        var plan = Of(Condition.Fresh, Instant.FromUtc(2027, 3, 1, 9, 1));
        var finding = Assert.Single(plan.Findings, f => f.Id == "work-before-death");

        Assert.Equal("error work-before-death: the animal died Mon 2027-03-01 09:01, and the first step begins Mon 2027-03-01 09:00; correct 'died-at' or the start; plans are for animals that are already dead", finding.ToString());
        Assert.False(plan.Startable);
        Assert.DoesNotContain(Of(Condition.Fresh, Instant.FromUtc(2027, 3, 1, 9, 0)).Findings, f => f.Id == "work-before-death");
    }

    private const string Thaw = "stages:\n  - {stage: thaw, id: thaw, fluid: tap water, last: 1 h to 2 h}\n  - {stage: immerse, id: fix, fluid: formalin 10 %, ratio: 10, last: 24 h}\n";

    [Fact]
    public void Body_thicker_than_the_protocol_reckons_with_thaws_longer_and_says_so()
    {
        var plan = Of(Condition.Frozen, null, "20 kg", stages: Thaw);
        var note = Assert.Single(plan.Findings, f => f.Id == "thaws-longer");

        Assert.Equal((Severity.Note, "thaw"), (note.Severity, note.Subject));
        Assert.Equal($"a body this thick takes {plan.Figure("model.thawing")!.Value} to thaw through at 4 °C, and 'thaw' lasts so long", note.Message.ToString().Replace("degC", "°C", StringComparison.Ordinal));
        Assert.Equal("feel whether it bends before going on; a cold running shower shortens it, warm water spoils it", note.Remedy.ToString());
        var step = plan.Step("thaw")!;
        Assert.True(step.Least.TotalHours > 1 && step.Most > step.Least);
        Assert.Contains("model.thawing", step.Figures);
    }

    [Fact]
    public void Thin_body_thaws_sooner_than_the_protocol_says()
    {
        var plan = Of(Condition.Frozen, null, "5 g", stages: Thaw);

        Assert.DoesNotContain(plan.Findings, f => f.Id == "thaws-longer");
        Assert.Equal(40, plan.Step("thaw")!.Least.TotalMinutes);
        Assert.True(plan.Step("thaw")!.Most!.Value.TotalHours >= 2);
        Assert.NotNull(plan.Figure("model.thawing"));
    }

    [Fact]
    public void Body_that_is_not_frozen_is_not_thawed_by_size()
    {
        var plan = Of(Condition.Chilled, null, "20 kg", stages: Thaw);

        Assert.Null(plan.Figure("model.thawing"));
        Assert.Equal(1, plan.Step("thaw")!.Least.TotalHours);
    }

    [Fact]
    public void In_a_cold_room_below_freezing_it_never_thaws()
    {
        var plan = Of(Condition.Frozen, null, "20 kg", "zone: UTC\ntemperatures: {room: 15 degC, cold: -2 degC, coldest: -5 degC, hottest: 20 degC}\n", Thaw);

        Assert.Equal("thaw", Assert.Single(plan.Findings, f => f.Id == "never-thaws").Subject);
        Assert.Null(plan.Figure("model.thawing"));
        Assert.Equal(1, plan.Step("thaw")!.Least.TotalHours);
    }

    /// <summary>Air carries heat worse than water, still water worse than a shower: the same body takes longest in air.</summary>
    [Fact]
    public void Air_thaws_slower_than_water()
    {
        double Hours(string stage) => Of(Condition.Frozen, null, "20 kg", stages: $"stages:\n  - {{{stage}}}\n  - {{stage: immerse, id: fix, fluid: formalin 10 %, ratio: 10, last: 24 h}}\n").Step("thaw")!.Least.TotalHours;

        Assert.True(Hours("stage: thaw, id: thaw, last: 1 h") > Hours("stage: thaw, id: thaw, fluid: tap water, last: 1 h"));
    }

    /// <summary>Flat bodies melt from two faces, long ones from all round, round ones soonest: of the same half-thickness, a slab takes longest.</summary>
    [Fact]
    public void Shape_decides_how_long_it_takes()
    {
        double Hours(double width, double height, double length)
        {
            var body = Mammal("20 kg") with { Condition = Condition.Frozen, Thickness = UnitsNet.Length.FromCentimeters(Math.Min(width, height)), Width = UnitsNet.Length.FromCentimeters(width), Height = UnitsNet.Length.FromCentimeters(height), HeadBodyLength = UnitsNet.Length.FromCentimeters(length) };
            return Plan(body, Shelf(("one", "{group: mammal}", Thaw))).Value!.Step("thaw")!.Least.TotalHours;
        }

        var (slab, cylinder, ball) = (Hours(45, 20, 90), Hours(22, 20, 90), Hours(22, 20, 30));
        Assert.True(slab > cylinder && cylinder > ball, $"{slab}, {cylinder}, {ball}");
        Assert.Equal(slab, Hours(20, 45, 90), 6);
        Assert.Equal(cylinder, Hours(40, 20, 90), 6); // just half as high as wide is no slab yet
        Assert.Equal(cylinder, Hours(22, 20, 33), 6); // one and a half times as long as thick is no ball any more
    }
}
