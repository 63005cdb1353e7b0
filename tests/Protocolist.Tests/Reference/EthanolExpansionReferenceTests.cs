using Protocolist.Fluids.Densities;

namespace Protocolist.Tests.Reference;

public class EthanolExpansionReferenceTests
{
    // %vol at 20 °C, °C, density by Bettin and Spieweck 1990 (PTB-Mitteilungen 100, 457) computed apart from this code, and V/V20 by OIML R 22.
    [Theory]
    [InlineData(70, 5, 897.779, 0.986390)]
    [InlineData(70, 10, 893.760, 0.990825)]
    [InlineData(70, 15, 889.688, 0.995359)]
    [InlineData(70, 20, 885.557, 1.000000)]
    [InlineData(70, 25, 881.369, 1.004751)]
    [InlineData(70, 30, 877.123, 1.009613)]
    [InlineData(70, 35, 872.818, 1.014592)]
    [InlineData(70, 40, 868.448, 1.019695)]
    [InlineData(75, 5, 885.212, 0.985969)]
    [InlineData(75, 10, 881.124, 0.990543)]
    [InlineData(75, 15, 876.983, 0.995218)]
    [InlineData(75, 20, 872.789, 1.000000)]
    [InlineData(75, 25, 868.540, 1.004890)]
    [InlineData(75, 30, 864.239, 1.009890)]
    [InlineData(75, 35, 859.884, 1.015003)]
    [InlineData(75, 40, 855.467, 1.020242)]
    [InlineData(80, 5, 871.867, 0.985551)]
    [InlineData(80, 10, 867.717, 0.990263)]
    [InlineData(80, 15, 863.517, 0.995078)]
    [InlineData(80, 20, 859.265, 1.000000)]
    [InlineData(80, 25, 854.964, 1.005029)]
    [InlineData(80, 30, 850.614, 1.010168)]
    [InlineData(80, 35, 846.214, 1.015419)]
    [InlineData(80, 40, 841.754, 1.020798)]
    public void Ethanol_expands_as_both_formulas_say(double volumePercent, double celsius, double density, double ratio)
    {
        var p = EthanolWater.MassFractionOfVolume(volumePercent / 100);
        Assert.Equal(density, EthanolWater.Density(p, celsius), 0.0095);
        Assert.Equal(ratio, EthanolWater.Expansion(p, 20, celsius), 0.000002);
    }
}
