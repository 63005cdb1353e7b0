using Protocolist.Vessels.Glass;
using UnitsNet;

namespace Protocolist.Tests.Reference;

/// <summary>Whole tanks against worked examples, a glass maker's table, a printed table and the aquarium keepers' own examples.</summary>
public class GlassReferenceTests
{
    private const double Water = 998.2, Ethanol70 = 885.6, Formalin10 = 1015;

    /// <summary>
    /// Worked by hand from t = H (beta rho g H / 5.053 MPa)^1/2 with coefficients of an independent Lévy and Ritz calculation
    /// that was checked against Roark's table 11.4.
    /// </summary>
    [Theory]
    [InlineData(300, 200, 250, Water, TankTop.Free, 2.83, 3, 4.50, 4.27, 0.40, 2.15, 3.07, 92, 15.0, 17)]
    [InlineData(600, 300, 360, Water, TankTop.Free, 6.03, 8, 2.87, 6.69, 0.39, 3.82, 6.19, 381, 64.7, 79)]
    [InlineData(600, 300, 360, Water, TankTop.Framed, 5.04, 6, 3.57, 5.38, 0.19, 3.49, 6.19, 381, 64.7, 77)]
    [InlineData(1000, 400, 500, Water, TankTop.Free, 10.70, 12, 4.02, 4.78, 1.01, 6.09, 10.25, 1224, 199.6, 250)]
    [InlineData(1000, 400, 500, Water, TankTop.Framed, 8.76, 10, 3.88, 4.95, 0.24, 5.65, 10.25, 1224, 199.6, 243)]
    [InlineData(1000, 400, 500, Ethanol70, TankTop.Framed, 8.26, 10, 3.44, 5.58, 0.22, 5.32, 9.65, 1086, 177.1, 218)]
    [InlineData(1000, 400, 500, Formalin10, TankTop.Framed, 8.84, 10, 3.95, 4.87, 0.25, 5.69, 10.33, 1244, 203.0, 246)]
    [InlineData(500, 500, 500, Formalin10, TankTop.Free, 7.04, 8, 3.92, 4.90, 0.35, 7.04, 8.41, 622, 126.9, 153)]
    public void A_tank_comes_out_as_worked_by_hand(
        double length, double width, double depth, double density, Enum top, double thickness, double stock, double stress,
        double safety, double deflection, double end, double bottom, double force, double fluidMass, double totalMass)
    {
        var tank = Tank(length, width, depth, density, (TankTop)top);
        Assert.Equal(thickness, tank.LongPane!.Required.Millimeters, 0.011);
        Assert.Equal(stock, tank.LongPane.Stock!.Value.Millimeters, 0.001);
        Assert.Equal(stress, tank.LongPane.Stress!.Value.Megapascals, 0.011);
        Assert.Equal(safety, tank.LongPane.SafetyFactor!.Value, 0.011);
        Assert.Equal(deflection, tank.LongPane.Deflection!.Value.Millimeters, 0.011);
        Assert.Equal(end, tank.EndPane!.Required.Millimeters, 0.011);
        Assert.Equal(bottom, tank.BottomPane!.Required.Millimeters, 0.011);
        Assert.Equal(force, tank.Force.Newtons, 0.6);
        Assert.Equal(fluidMass, tank.FluidMass.Kilograms, 0.06);
        Assert.Equal(totalMass, tank.TotalMass!.Value.Kilograms, 0.6);
    }

    /// <summary>A glass maker's published table for aquaria: 19 mm for 2500 x 800 mm held at four edges.</summary>
    [Fact]
    public void A_glass_makers_19_mm_comes_out_for_2500_by_800_framed()
    {
        var tank = Tank(2500, 800, 800, 1000, TankTop.Framed);
        Assert.Equal(19, tank.LongPane!.Required.Millimeters, 0.2);
    }

    /// <summary>Rother 1983's printed table of aquarium panes, length x height in cm and mm of glass; the fluid is water.</summary>
    [Theory]
    [InlineData(60, 30, 4.5)]
    [InlineData(60, 40, 6.0)]
    [InlineData(60, 50, 7.0)]
    [InlineData(60, 60, 8.5)]
    [InlineData(80, 40, 6.5)]
    [InlineData(80, 50, 8.0)]
    [InlineData(80, 60, 10.0)]
    [InlineData(80, 70, 11.5)]
    [InlineData(90, 50, 8.5)]
    [InlineData(90, 60, 10.5)]
    [InlineData(90, 70, 12.5)]
    public void A_framed_pane_is_within_half_a_millimetre_of_Rothers_table(double length, double depth, double thickness) =>
        Assert.Equal(thickness, Tank(length * 10, 300, depth * 10, 1000, TankTop.Framed).LongPane!.Required.Millimeters, 0.5);

    /// <summary>W. Stilwell's two worked examples, Federation of New Zealand Aquatic Societies: side 3000 x 1000, bottom 3000 x 900 under 950 mm.</summary>
    [Fact]
    public void The_aquarium_keepers_examples_come_out_by_their_own_formula()
    {
        var side = HobbyTable.Side(3000, 1000);
        Assert.Equal(27.06, side.Thickness, 0.01);
        Assert.Equal(0.49, side.Deflection, 0.005);
        var bottom = HobbyTable.Bottom(3000, 900, 950);
        Assert.Equal(34.8, bottom.Thickness, 0.05);
        Assert.Equal(0.355, bottom.Deflection, 0.0015);
    }

    /// <summary>The aquarium keepers' table is Roark's case of four held edges: 12 to 36 % too thin where the top is free.</summary>
    [Theory]
    [InlineData(1, 1.12)]
    [InlineData(1.5, 1.18)]
    [InlineData(2, 1.22)]
    [InlineData(3, 1.36)]
    public void A_rimless_pane_needs_12_to_36_percent_more_than_the_aquarium_keepers_table(double aspect, double more)
    {
        var free = PlateCoefficients.Compute(aspect, PaneLoad.Hydrostatic, TankTop.Free);
        var framed = PlateCoefficients.Compute(aspect, PaneLoad.Hydrostatic, TankTop.Framed);
        Assert.Equal(more, Math.Sqrt(free.Stress / framed.Stress), 0.01);
    }

    private static TankDesign Tank(double length, double width, double depth, double density, TankTop top) => TankDesigner.Design(new(
        Length.FromMillimeters(length),
        Length.FromMillimeters(width),
        Length.FromMillimeters(depth),
        Density.FromKilogramsPerCubicMeter(density),
        top)).Value!;
}
