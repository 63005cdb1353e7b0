using Protocolist.Fluids;
using Protocolist.Vessels;
using Protocolist.Vessels.Air;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace Protocolist.Tests.Vessels;

public class AirEstimateTests
{
    // Directive (EU) 2019/983: 0.3 ppm over 8 h, 0.6 ppm over 15 min.
    private static readonly AirLimits s_limits = AirLimits.Of("Directive (EU) 2019/983")!;
    private static readonly WorkRoom s_room = new(Volume.FromCubicMeters(60), 6);

    [Fact]
    public void Limits_come_from_their_authority()
    {
        Assert.Equal(0.3, s_limits.ShiftMean.Ppm, 1e-9);
        Assert.Equal(0.6, s_limits.ShortTerm.Ppm, 1e-9);
        Assert.Equal(0.1, AirLimits.Of("NIOSH Pocket Guide (USA, recommended)")!.ShortTerm.Ppm, 1e-9);
        Assert.Null(AirLimits.Of("nobody"));
    }

    [Fact]
    public void A_tub_of_formalin_emits_by_its_surface_and_strength()
    {
        var tub = new VesselShape.Box(Length.FromMeters(1), Length.FromMeters(0.5), Length.FromMeters(0.3));
        var formalin = Fluid.Read("formalin 10 %").Value!;
        Assert.Equal(30 * formalin.FormaldehydeGramsPerLitre!.Value / 40, FormaldehydeSource.Over(tub, formalin, 1).EmissionMgPerMin, 1e-9);
        Assert.Equal(0, FormaldehydeSource.Over(tub, Fluid.Water, 1).EmissionMgPerMin);
    }

    [Fact]
    public void An_open_pan_asks_for_a_control_and_never_claims_compliance()
    {
        var estimate = Of(0.1, s_room);
        Assert.NotEqual(AirControl.RoomAir, estimate.Control);
        Assert.Equal(9, estimate.High.MgPerM3 / estimate.Low.MgPerM3, 1e-9);
        Assert.Contains(estimate.Findings, f => f.Id == "formaldehyde-in-the-air");
        Assert.Contains("only a measurement", Assert.Single(estimate.Findings, f => f.Id == "air-estimate-is-rough").Remedy.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_larger_surface_never_needs_a_weaker_control()
    {
        var controls = new[] { 0.0005, 0.005, 0.05, 0.5, 5, 50 }.Select(area => Of(area, s_room).Control).ToList();
        Assert.Equal(controls.Order(), controls);
        Assert.Equal(AirControl.RoomAir, controls[0]);
        Assert.Equal(AirControl.HoodAndRespirator, controls[^1]);
    }

    [Theory]
    [InlineData(0, 6, 0.1, 2)]
    [InlineData(60, 0, 0.1, 2)]
    [InlineData(60, 6, -0.1, 2)]
    [InlineData(60, 6, 0.1, 30)]
    public void A_room_that_cannot_be_is_a_finding(double size, double changes, double area, double hours)
    {
        var result = AirEstimate.Of(
            new(Area.FromSquareMeters(area), 40, 1), new(Volume.FromCubicMeters(size), changes), Duration.FromHours(hours), s_limits);
        Assert.Null(result.Value);
        Assert.Equal("air-input-absurd", Assert.Single(result.Findings).Id);
    }

    private static AirEstimate Of(double area, WorkRoom room) =>
        AirEstimate.Of(new(Area.FromSquareMeters(area), 40, 1), room, Duration.FromHours(2), s_limits).Value!;
}
