using Protocolist.Vessels.Air;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace Protocolist.Tests.Vessels;

public class AirEstimateTests
{
    // Directive (EU) 2019/983: 0.3 ppm over 8 h, 0.6 ppm over 15 min.
    private static readonly AirLimits s_limits = new("Directive (EU) 2019/983", AirConcentration.FromPpm(0.3), AirConcentration.FromPpm(0.6));
    private static readonly WorkRoom s_room = new(Volume.FromCubicMeters(60), 6);

    [Fact]
    public void An_open_pan_asks_for_a_control_and_never_claims_compliance()
    {
        var estimate = Of(0.1, s_room);
        Assert.NotEqual(AirControl.RoomAir, estimate.Control);
        Assert.Equal(9, estimate.High.MgPerM3 / estimate.Low.MgPerM3, 1e-9);
        Assert.Contains(estimate.Findings, f => f.Id == "formaldehyde-in-the-air");
        Assert.Contains("only a measurement", Assert.Single(estimate.Findings, f => f.Id == "air-estimate-is-rough").Remedy, StringComparison.Ordinal);
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
