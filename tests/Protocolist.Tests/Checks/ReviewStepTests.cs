using NodaTime;
using Protocolist.Checks;
using Protocolist.Protocols;
using UnitsNet;
using static Protocolist.Tests.Checks.Cases;
using Duration = NodaTime.Duration;

namespace Protocolist.Tests.Checks;

public class ReviewStepTests
{
    private static ReviewStep Fix => Good.Steps.First(s => s.Id == "fix");

    [Fact]
    public void Step_lasts_as_dated_and_undated_as_long_as_its_protocol_asks()
    {
        var dated = Fix with { Step = Fix.Step with { Start = At(9), End = At(12), Least = Duration.FromHours(1) } };
        Assert.Equal(Duration.FromHours(3), dated.Lasts);
        Assert.Equal(Duration.FromHours(1), (dated with { Step = dated.Step with { End = null } }).Lasts);

        static OffsetDateTime At(int hour) => new LocalDateTime(2027, 3, 1, hour, 0).WithOffset(Offset.Zero);
    }

    [Fact]
    public void Ratio_is_the_vessel_s_else_volume_over_body_else_unknown()
    {
        var litre = Fix with { Vessel = null, Volume = Volume.FromLiters(1) };
        Assert.Equal(7, (Fix with { Vessel = Fix.Vessel! with { Ratio = 7 } }).RatioTo(Volume.FromLiters(0.1)));
        Assert.Equal(10, litre.RatioTo(Volume.FromLiters(0.1))!.Value, 9);
        Assert.Null(litre.RatioTo(Volume.Zero));
        Assert.Null((litre with { Volume = null }).RatioTo(Volume.FromLiters(0.1)));
    }

    [Fact]
    public void Detail_that_nobody_gave_is_empty_and_so_is_the_advice_for_a_vessel()
    {
        Assert.Equal(Sealing.ScrewLid, Good.Steps.First(s => s.Id == "seal").Sealing);
        Assert.Null(Fix.Sealing);
        Assert.True(new ReviewStep(Fix.Step, StageKind.Immerse, null).VesselAdvice.IsEmpty);
    }

    [Fact]
    public void What_follows_from_the_steps_follows_every_change_of_them()
    {
        var changed = Good.Fluid("half", "formalin 5 %").Step("record", s => s with { Fluid = Fix.Fluid }).Without("house");
        Assert.Equal(["fix", "half"], changed.Formalin.Select(s => s.Id));
        Assert.Equal(["strong"], changed.Alcohol.Select(s => s.Id));
        Assert.Null(changed.House);
        Assert.Equal("fix", changed.FirstFixing!.Id);
        Assert.Null(Good.Without("fix").FirstFixing);
    }

    [Fact]
    public void Fluid_of_a_sample_or_of_what_is_thrown_away_does_not_meet_the_body()
    {
        var plan = Good.Step("record", s => s with { Fluid = Fix.Fluid }).Step("spent", s => s with { Fluid = Fix.Fluid });
        Assert.Equal(["fix", "wash", "half", "strong", "house"], plan.FluidSteps.Select(s => s.Id));
    }

    /// <summary>A fish of 40 g at 1050 kg/m3 and three quarters of water: 40 g / 1.05 = 38 mL, and 29 or 30 mL of water in it.</summary>
    [Fact]
    public void Water_in_the_body_is_its_mass_times_the_group_s_share_of_water() => Assert.InRange(Good.Water.Milliliters, 28, 32);

    [Fact]
    public void Depth_is_what_cuts_and_injections_leave_else_half_the_thickness()
    {
        Assert.Equal(Good.Fixation!.Slowest.DepthMm, Good.Depth.Millimeters, 9);
        Assert.Equal(Good.Body.HalfThickness.Nominal, (Good with { Fixation = null }).Depth);
    }

    [Fact]
    public void Plan_covers_what_any_of_its_stages_declares_and_no_more()
    {
        var plan = With("covers: colours", "covers: [parasites, tissue]");
        Assert.Equal(Coverage.Parasites | Coverage.Tissue, plan.Steps.First(s => s.Id == "record").Covers);
        Assert.True(plan.Covers(Coverage.Parasites));
        Assert.False(plan.Covers(Coverage.Colours));
        Assert.True(Good.Covers(Coverage.Colours));
    }

    [Fact]
    public void First_of_a_kind_is_the_one_that_comes_before_the_others()
    {
        Assert.Equal("half", Good.First(StageKind.Bath)!.Id);
        Assert.Null(Good.First(StageKind.Mount));
    }

    [Fact]
    public void Place_of_no_step_is_before_the_first()
    {
        Assert.Equal(0, Good.IndexOf(Good.Steps[0]));
        Assert.Equal(-1, Good.IndexOf(null));
    }

    [Fact]
    public void Knife_or_needle_opens_a_body()
    {
        Assert.True(Good.Opens);
        Assert.True(Good.Without("slit").Step("pose", s => s with { Kind = StageKind.Inject }).Opens);
        Assert.False(Good.Without("slit").Opens);
    }
}
