using Protocolist.Vessels;

namespace Protocolist.Tests.Reference;

/// <summary>Strength left in a leaking jar, worked by hand with van Laar activities and diffusion in air at 22 °C.</summary>
public class AlcoholDriftReferenceTests
{
    // OIML R 22 at 20 °C: mass percent and kg/m³.
    private static readonly double[] s_mass = [0, 0.332996, 0.424257, 0.520884, 0.623861, 0.678202, 0.734800, 0.856646, 1];
    private static readonly double[] s_density = [998.20, 948.045, 930.142, 909.115, 885.562, 872.793, 859.270, 829.182, 789.239];

    [Theory]
    [InlineData(0.623861, 0.3, new[] { 69.3, 68.5, 66.7, 64.4, 57.6 }, new[] { 68.8, 67.5, 64.5, 60.6, 48.5 })]
    [InlineData(0.623861, 0.5, new[] { 68.9, 67.8, 65.1, 61.7, 51.3 }, new[] { 68.6, 67.1, 63.5, 59.0, 44.6 })]
    [InlineData(0.623861, 0.7, new[] { 68.5, 66.9, 63.1, 58.4, 43.5 }, new[] { 68.4, 66.7, 62.5, 57.2, 40.1 })]
    [InlineData(0.734800, 0.5, new[] { 79.3, 78.5, 76.8, 74.6, 68.2 }, new[] { 79.1, 78.1, 75.7, 72.8, 63.5 })]
    public void Alcohol_weakens_as_worked_by_hand(double start, double humidity, double[] diffusive, double[] breathing)
    {
        double[] lost = [0.05, 0.1, 0.2, 0.3, 0.5];
        for (var i = 0; i < lost.Length; i++)
        {
            Assert.Equal(diffusive[i], After(start, lost[i], humidity, Leak.Diffusive), 0.35);
            Assert.Equal(breathing[i], After(start, lost[i], humidity, Leak.Breathing), 0.35);
        }
    }

    private static double After(double start, double lost, double humidity, Leak leak)
    {
        var w = AlcoholDrift.MassFractionAfter(start, lost, humidity, 22, leak, Density);
        return 100 * w * Density(w) / 789.239;
    }

    private static double Density(double massFraction)
    {
        var i = 1;
        while (i < s_mass.Length - 1 && massFraction > s_mass[i]) i++;
        return s_density[i - 1] + (s_density[i] - s_density[i - 1]) * (massFraction - s_mass[i - 1]) / (s_mass[i] - s_mass[i - 1]);
    }
}
