namespace Protocolist.Vessels.Glass;

/// <summary>
/// The table that aquarium keepers hand on (W. Stilwell, Federation of New Zealand Aquatic Societies), by its own formula.
/// Its side values are those of four held edges, so it is right for a framed tank and too thin for a rimless one. Here it serves to tell people so.
/// </summary>
internal static class HobbyTable
{
    private static readonly double[] s_sideAspect = [0.5, 0.667, 1, 1.5, 2, 2.5, 3];
    private static readonly double[] s_sideBeta = [0.085, 0.1156, 0.16, 0.26, 0.32, 0.35, 0.37];
    private static readonly double[] s_sideAlpha = [0.003, 0.0085, 0.022, 0.042, 0.056, 0.063, 0.067];

    // Roark's case 1a for 1.4, 1.6, 1.8, 2.0, 3.0, printed in the hobby table against these smaller ratios.
    private static readonly double[] s_bottomAspect = [1, 1.5, 2, 2.5, 3];
    private static readonly double[] s_bottomBeta = [0.4530, 0.5172, 0.5688, 0.6102, 0.7134];
    private static readonly double[] s_bottomAlpha = [0.0770, 0.0906, 0.1017, 0.1110, 0.1335];

    /// <summary>Thickness (mm) and deflection (mm) of a side pane; dimensions in mm.</summary>
    public static (double Thickness, double Deflection) Side(double length, double height) =>
        Apply(Look(s_sideAspect, s_sideBeta, length / height), Look(s_sideAspect, s_sideAlpha, length / height), height);

    /// <summary>Thickness (mm) and deflection (mm) of a bottom pane; dimensions in mm. It takes the height where the short side belongs.</summary>
    public static (double Thickness, double Deflection) Bottom(double length, double width, double height) =>
        Apply(Look(s_bottomAspect, s_bottomBeta, length / width), Look(s_bottomAspect, s_bottomAlpha, length / width), height);

    /// <summary>Its formula: water, gravity taken as 10, strength 19.2 N/mm², safety factor 3.8, stiffness 69 GPa.</summary>
    private static (double Thickness, double Deflection) Apply(double beta, double alpha, double height)
    {
        var thickness = Math.Sqrt(beta * Math.Pow(height, 3) * 1e-5 / (19.2 / 3.8));
        return (thickness, alpha * 10 * height * 1e-6 * Math.Pow(height, 4) / (69000 * Math.Pow(thickness, 3)));
    }

    private static double Look(double[] aspects, double[] values, double aspect)
    {
        if (aspect <= aspects[0]) return values[0];
        for (var i = 1; i < aspects.Length; i++)
        {
            if (aspect <= aspects[i])
            {
                return values[i - 1] + (values[i] - values[i - 1]) * (aspect - aspects[i - 1]) / (aspects[i] - aspects[i - 1]);
            }
        }

        return values[^1];
    }
}
