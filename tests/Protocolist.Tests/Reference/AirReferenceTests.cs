using Protocolist.Vessels.Air;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace Protocolist.Tests.Reference;

/// <summary>The one-box model against a measured dissection room and cases worked by hand.</summary>
public class AirReferenceTests
{
    /// <summary>Keil and others 2001, Appl Occup Environ Hyg 16:967: 47 tables, 148 mg/min on average, 9.8 air changes an hour, about 920 m³.</summary>
    [Fact]
    public void The_dissection_room_comes_to_what_was_measured()
    {
        var room = new WorkRoom(Volume.FromCubicMeters(920), 9.8);
        Assert.Equal(0.99, room.Steady(47 * FormaldehydeSource.MgPerMinOfDissectionTable).MgPerM3, 0.01);
        Assert.Equal(0.635, room.Steady(95.2).MgPerM3, 0.01);
        Assert.Equal(1.82, room.Steady(274).MgPerM3, 0.01);
        Assert.Equal(0.80, room.Steady(148).Ppm, 0.01);
    }

    [Theory]
    [InlineData(6.0, 60, 6, 0.81, 0.63, 0.81, 2.7, 30, 21)]
    [InlineData(6.0, 60, 1, 4.9, 1.08, 3.09, 16, 180, 233)]
    [InlineData(6.0, 30, 0.5, 19.6, 2.3, 7.7, 65, 360, 633)]
    [InlineData(30, 100, 10, 1.47, 1.35, 1.47, 4.9, 18, 16)]
    [InlineData(3.15, 90, 8, 0.21, 0.18, 0.21, 0.71, 22, 6)]
    [InlineData(0.3, 60, 6, 0.04, 0.03, 0.04, 0.14, 30, 0)]
    public void A_room_comes_out_as_worked_by_hand(
        double emission, double size, double changes, double steady, double quarter, double hour, double poorlyMixed, double t95, double clearing)
    {
        var room = new WorkRoom(Volume.FromCubicMeters(size), changes);
        Close(steady, room.Steady(emission).Ppm);
        Close(quarter, room.After(emission, Duration.FromMinutes(15)).Ppm);
        Close(hour, room.After(emission, Duration.FromMinutes(60)).Ppm);
        Close(poorlyMixed, (room with { Mixing = 0.3 }).Steady(emission).Ppm);
        Assert.Equal(t95, room.TimeTo95Percent.TotalMinutes, 0.6);
        Assert.Equal(clearing, room.ClearingTime(room.Steady(emission), AirConcentration.FromPpm(0.1)).TotalMinutes, 0.6);
    }

    [Fact]
    public void The_pan_of_a_tenth_of_a_square_metre_comes_out_as_worked_by_hand()
    {
        var emission = new FormaldehydeSource(Area.FromSquareMeters(0.1), 40, 1).EmissionMgPerMin;
        var room = new WorkRoom(Volume.FromCubicMeters(60), 6);
        Assert.Equal(6.0, emission, 1e-9);
        Assert.Equal(3.6, room.Near(emission, 1.2).Ppm - room.Steady(emission).Ppm, 0.05);
        Assert.Equal(2.0, room.Near(emission, 3.6).Ppm, 0.05);
        Assert.Equal(0.5, room.Near(emission, 9).Ppm - room.Steady(emission).Ppm, 0.05);
        Assert.Equal(0.75, room.MeanDuring(emission, Duration.FromHours(2)).Ppm, 0.005);
        Assert.Equal(0.20, room.ShiftMean(emission, Duration.FromHours(2), Duration.FromHours(8)).Ppm, 0.005);
        double[] limits = [0.75, 0.3, 0.1, 0.016], air = [6.5, 16, 49, 306];
        for (var i = 0; i < limits.Length; i++)
        {
            Assert.Equal(air[i], room.FreshAirFor(emission, AirConcentration.FromPpm(limits[i])).CubicMetersPerMinute, 0.01 * air[i] + 0.3);
        }

        Assert.Equal(54, room.AfterSpill(Mass.FromGrams(4)).Ppm, 0.5);
    }

    /// <summary>Two digits, as the cases are printed; the second may be off by its own rounding.</summary>
    private static void Close(double expected, double actual) =>
        Assert.Equal(expected, actual, expected < 0.1 ? 0.005 : expected < 10 ? 0.06 * expected * 0.5 : 0.5);
}
