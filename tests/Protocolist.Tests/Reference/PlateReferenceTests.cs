using Protocolist.Vessels.Glass;

namespace Protocolist.Tests.Reference;

/// <summary>Plate coefficients against published tables; the class of the problem is named at each.</summary>
public class PlateReferenceTests
{
    /// <summary>Roark's Formulas for Stress and Strain, table 11.4 case 1a: four edges simply supported, uniform load, nu = 0.3.</summary>
    [Theory]
    [InlineData(1.0, 0.0444, 0.2874)]
    [InlineData(1.2, 0.0616, 0.3762)]
    [InlineData(1.4, 0.0770, 0.4530)]
    [InlineData(1.6, 0.0906, 0.5172)]
    [InlineData(1.8, 0.1017, 0.5688)]
    [InlineData(2.0, 0.1110, 0.6102)]
    [InlineData(3.0, 0.1335, 0.7134)]
    [InlineData(4.0, 0.1400, 0.7410)]
    [InlineData(5.0, 0.1417, 0.7476)]
    public void A_bottom_pane_bends_as_Roark_tabulates(double aspect, double alpha, double beta)
    {
        var plate = PlateCoefficients.Compute(aspect, PaneLoad.Uniform, TankTop.Framed);
        Assert.InRange(plate.Stress, beta * 0.995, beta * 1.005);
        Assert.InRange(plate.Deflection, alpha * 0.995 - 0.00005, alpha * 1.005 + 0.00005);
    }

    /// <summary>
    /// Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells: three edges simply supported, the fourth free, hydrostatic load
    /// that vanishes at the free edge: deflection and bending moment in the middle of the free edge, nu = 0.3.
    /// </summary>
    [Theory]
    [InlineData(2.0, 0.00230, 0.0197)]
    [InlineData(1.5, 0.00304, 0.0265)]
    [InlineData(1.0, 0.00368, 0.0325)]
    [InlineData(0.6666667, 0.00347, 0.0308)]
    [InlineData(0.5, 0.00291, 0.0258)]
    public void The_free_edge_of_a_rimless_pane_bends_as_Timoshenko_tabulates(double lengthOverHeight, double deflection, double moment)
    {
        var plate = new LevyPlate(lengthOverHeight, PaneLoad.Hydrostatic, TankTop.Free, 0.3);
        var length4 = Math.Pow(lengthOverHeight, 4);
        var w = plate.DeflectionInTheMiddle(1) / length4;
        Span<double> waves = stackalloc double[LevyPlate.WavesLength], terms = stackalloc double[LevyPlate.HeightLength];
        plate.WavesAt(lengthOverHeight / 2, waves);
        var count = plate.TermsAt(1, terms);
        var m = plate.PrincipalMoment(lengthOverHeight / 2, waves, 1, terms, count) / (lengthOverHeight * lengthOverHeight);
        Assert.InRange(w, deflection * 0.995, deflection * 1.005);
        Assert.InRange(m, moment * 0.995, moment * 1.005);
    }

    [Theory]
    [InlineData(0.25, 0.0004, 0.0308, 0.0004, 0.0308)]
    [InlineData(0.333, 0.0010, 0.0482, 0.0010, 0.0482)]
    [InlineData(0.5, 0.0037, 0.0840, 0.0038, 0.0854)]
    [InlineData(0.667, 0.0086, 0.1142, 0.0096, 0.1229)]
    [InlineData(0.75, 0.0117, 0.1258, 0.0141, 0.1417)]
    [InlineData(1.0, 0.0224, 0.1619, 0.0402, 0.2014)]
    [InlineData(1.25, 0.0331, 0.2144, 0.0910, 0.2814)]
    [InlineData(1.5, 0.0424, 0.2578, 0.1679, 0.3579)]
    [InlineData(1.75, 0.0498, 0.2916, 0.2713, 0.4217)]
    [InlineData(2.0, 0.0555, 0.3172, 0.4008, 0.4730)]
    [InlineData(2.5, 0.0629, 0.3498, 0.7346, 0.5517)]
    [InlineData(3.0, 0.0669, 0.3670, 1.1625, 0.6767)]
    [InlineData(4.0, 0.0701, 0.3804, 2.2822, 0.9268)]
    [InlineData(5.0, 0.0709, 0.3838, 3.7386, 1.1768)]
    public void A_wall_pane_bends_as_an_independent_series_and_Ritz_calculation_gives(double aspect, double framedAlpha, double framedBeta, double freeAlpha, double freeBeta)
    {
        var framed = PlateCoefficients.Compute(aspect, PaneLoad.Hydrostatic, TankTop.Framed);
        var free = PlateCoefficients.Compute(aspect, PaneLoad.Hydrostatic, TankTop.Free);
        Assert.InRange(framed.Stress, framedBeta * 0.995 - 0.00005, framedBeta * 1.005 + 0.00005);
        Assert.InRange(free.Stress, freeBeta * 0.995 - 0.00005, freeBeta * 1.005 + 0.00005);
        Assert.InRange(framed.Deflection, framedAlpha * 0.995 - 0.00005, framedAlpha * 1.005 + 0.00005);
        Assert.InRange(free.Deflection, freeAlpha * 0.995 - 0.00005, freeAlpha * 1.005 + 0.00005);
    }
}
