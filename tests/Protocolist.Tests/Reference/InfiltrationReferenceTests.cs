using Protocolist.Specimens.Fixation;

namespace Protocolist.Tests.Reference;

/// <summary>Diffusion into bodies against the classical solutions (Crank, The Mathematics of Diffusion), worked to three digits.</summary>
public class InfiltrationReferenceTests
{
    [Theory]
    [InlineData(0.50, 0.197)]
    [InlineData(0.80, 0.567)]
    [InlineData(0.90, 0.848)]
    [InlineData(0.95, 1.129)]
    [InlineData(0.99, 1.781)]
    public void Slab_on_the_average(double progress, double fourier)
    {
        Assert.Equal(progress, Infiltration.SlabAverage(fourier), 0.001);
        Assert.Equal(fourier, Infiltration.Fourier(Infiltration.HoursFor(progress, 10, 5e-10), 10, 5e-10), 0.001);
    }

    [Theory]
    [InlineData(0.90, 1.031)]
    [InlineData(0.95, 1.312)]
    public void Slab_in_the_middle(double progress, double fourier) => Assert.Equal(progress, Infiltration.SlabMiddle(fourier), 0.001);

    [Theory]
    [InlineData(0.50, 0.063)]
    [InlineData(0.80, 0.215)]
    [InlineData(0.90, 0.334)]
    [InlineData(0.95, 0.454)]
    [InlineData(0.99, 0.733)]
    public void Cylinder_on_the_average(double progress, double fourier) => Assert.Equal(progress, Infiltration.CylinderAverage(fourier), 0.001);

    // R mm: days to 90 and 95 % of a slab at D = 5e-10 and 3e-10 m2/s.
    [Theory]
    [InlineData(5, 0.5, 0.7, 0.8)]
    [InlineData(10, 2.0, 2.6, 3.3)]
    [InlineData(20, 7.9, 10.5, 13)]
    [InlineData(30, 18, 24, 29)]
    [InlineData(50, 49, 65, 82)]
    public void Days_in_alcohol(double halfMm, double ninety, double ninetyFive, double slow)
    {
        Assert.Equal(ninety, Infiltration.HoursFor(0.90, halfMm, 5e-10) / 24, Math.Max(0.06, ninety * 0.02));
        Assert.Equal(ninetyFive, Infiltration.HoursFor(0.95, halfMm, 5e-10) / 24, Math.Max(0.06, ninetyFive * 0.02));
        Assert.Equal(slow, Infiltration.HoursFor(0.90, halfMm, 3e-10) / 24, Math.Max(0.06, slow * 0.02));
    }

    [Fact]
    public void Progress_rises_across_the_seams_of_the_series()
    {
        foreach (var of in (Func<double, double>[])[Infiltration.SlabAverage, Infiltration.SlabMiddle, Infiltration.CylinderAverage])
        {
            var last = 0.0;
            for (var fourier = 0.0; fourier < 3; fourier += 0.001)
            {
                var now = of(fourier);
                Assert.InRange(now, last - 1e-12, 1);
                last = now;
            }
        }
    }
}
