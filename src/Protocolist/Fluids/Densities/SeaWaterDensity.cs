namespace Protocolist.Fluids.Densities;

/// <summary>Density of sea water at the surface, the one-atmosphere equation of state of 1980 (EOS-80).</summary>
/// <remarks>Source: Fofonoff and Millard 1983, UNESCO Technical Papers in Marine Science 44; practical salinity 0 to 42, -2 to 40 °C.</remarks>
internal static class SeaWaterDensity
{
    /// <summary>Practical salinity of ocean water, the value meant where none is given.</summary>
    public const double OceanSalinity = 35;

    /// <summary>Highest salinity of the formula.</summary>
    public const double HighestSalinity = 42;

    /// <summary>Density in kg/m³ at practical salinity 0 to 42 and <paramref name="celsius"/> -2 to 40.</summary>
    public static double Of(double salinity, double celsius)
    {
        var t = celsius;
        var water = 999.842594 + t * (6.793952e-2 + t * (-9.095290e-3 + t * (1.001685e-4 + t * (-1.120083e-6 + t * 6.536332e-9))));
        var linear = 8.24493e-1 + t * (-4.0899e-3 + t * (7.6438e-5 + t * (-8.2467e-7 + t * 5.3875e-9)));
        var threeHalves = -5.72466e-3 + t * (1.0227e-4 + t * -1.6546e-6);
        return water + salinity * (linear + threeHalves * Math.Sqrt(salinity) + 4.8314e-4 * salinity);
    }
}
