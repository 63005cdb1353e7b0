using Protocolist.Fluids;
using Protocolist.Fluids.Infiltration;
using UnitsNet;

namespace Protocolist.Tests.Reference;

public class InfiltrationReferenceTests
{
    // Mass balances worked by hand apart from this code with OIML R 22: mL water in the specimen, bath mL, strengths, %vol after each.
    [Theory]
    [InlineData(78.892, 1000, new[] { 70.0 }, new[] { 65.14 })]
    [InlineData(78.892, 300, new[] { 70.0, 70, 70 }, new[] { 55.97, 67.10, 69.40 })]
    [InlineData(78.892, 300, new[] { 80.0, 80, 70 }, new[] { 64.16, 76.74, 71.41 })]
    [InlineData(722.3, 3000, new[] { 30.0, 50, 70, 70 }, new[] { 24.17, 45.07, 65.24, 69.08 })]
    [InlineData(197.2, 1000, new[] { 80.0, 80, 80 }, new[] { 67.54, 77.97, 79.67 })]
    public void Strength_after_each_bath_is_the_worked_one(double water, double bath, double[] strengths, double[] after)
    {
        var baths = strengths.Select(s => new AlcoholBath(Fluid.Ethanol(s), Volume.FromMilliliters(bath)));
        var result = AlcoholBaths.Strengths(Volume.FromMilliliters(water), baths);
        Assert.Equal(after.Length, result.Length);
        for (var i = 0; i < after.Length; i++) Assert.Equal(after[i], result[i], 0.05);
    }

    // Fourier numbers: Crank, The Mathematics of Diffusion; Carslaw and Jaeger. Average 50, 80, 90, 95, 99 %.
    [Theory]
    [InlineData(DiffusionShape.Slab, new[] { 0.197, 0.567, 0.848, 1.129, 1.781 })]
    [InlineData(DiffusionShape.Cylinder, new[] { 0.063, 0.215, 0.334, 0.454, 0.733 })]
    [InlineData(DiffusionShape.Sphere, new[] { 0.031, 0.114, 0.183, 0.253, 0.416 })]
    public void Average_comes_up_at_the_published_fourier_numbers(Enum shape, double[] published)
    {
        double[] shares = [0.5, 0.8, 0.9, 0.95, 0.99];
        for (var i = 0; i < shares.Length; i++) Assert.Equal(published[i], Diffusion.FourierNumber((DiffusionShape)shape, shares[i]), 0.001);
    }

    // The centre at 90 and 95 %.
    [Theory]
    [InlineData(DiffusionShape.Slab, 1.031, 1.312)]
    [InlineData(DiffusionShape.Cylinder, 0.480, 0.599)]
    [InlineData(DiffusionShape.Sphere, 0.304, 0.374)]
    public void Centre_comes_up_at_the_published_fourier_numbers(Enum shape, double at90, double at95)
    {
        Assert.Equal(at90, Diffusion.FourierNumberOfCentre((DiffusionShape)shape, 0.90), 0.001);
        Assert.Equal(at95, Diffusion.FourierNumberOfCentre((DiffusionShape)shape, 0.95), 0.001);
    }

    // Slab of 10 mm half-thickness: 95 % in 2.6 d at 5e-10 m²/s, 4.4 d at 3e-10 m²/s. Practice for small fish, 1 to 2 d of soaking, lies beside
    // the cylinder's 0.8 to 1.1 d (USGS Open-File Report 93-104: 48 h).
    [Fact]
    public void Times_for_a_centimetre_agree_with_practice()
    {
        var band = Diffusion.Time(DiffusionShape.Slab, Length.FromMillimeters(10), 0.95, Solute.Ethanol);
        Assert.Equal(2.6, band.Low / 86400, 0.05);
        Assert.Equal(4.4, band.High / 86400, 0.05);
    }
}
