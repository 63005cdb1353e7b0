namespace Protocolist.Tests.Reference;

/// <summary>
/// Densities in kg/m³ at 5, 10, ... 40 °C: ethanol-water by OIML R 22 (1975); water by the International Temperature Scale's usual table
/// (CRC Handbook). Between the points a parabola through the three nearest.
/// </summary>
internal static class OimlDensity
{
    private static readonly Dictionary<int, double[]> s_tables = new()
    {
        [0] = [999.967, 999.702, 999.102, 998.207, 997.048, 995.650, 994.035, 992.219],
        [50] = [941.176, 937.563, 933.886, 930.142, 926.334, 922.465, 918.543, 914.572],
        [70] = [897.780, 893.762, 889.690, 885.562, 881.374, 877.129, 872.825, 868.457],
        [80] = [871.868, 867.719, 863.520, 859.270, 854.970, 850.621, 846.221, 841.763],
        [95] = [824.236, 819.984, 815.698, 811.380, 807.034, 802.661, 798.259, 793.815],
    };

    public static Func<double, double> Of(int volumePercent)
    {
        var table = s_tables[volumePercent];
        return celsius =>
        {
            var i = Math.Clamp((int)Math.Round((celsius - 5) / 5), 1, table.Length - 2);
            var u = (celsius - 5) / 5 - i;
            return table[i] + u * (table[i + 1] - table[i - 1]) / 2 + u * u * (table[i + 1] - 2 * table[i] + table[i - 1]) / 2;
        };
    }
}
