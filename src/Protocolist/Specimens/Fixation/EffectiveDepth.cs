namespace Protocolist.Specimens.Fixation;

/// <summary>Half of the largest distance between surfaces that fluid reaches: what is left to cross once cavities, cuts and depots are counted.</summary>
/// <remarks>Derived by geometry; lengths in mm, volumes in mL. Monotone in each argument.</remarks>
internal static class EffectiveDepth
{
    /// <summary>Share of a depot that is fluid, the rest is the tissue it soaks: 0.2, unsure.</summary>
    public const double FluidInDepot = 0.2;

    /// <summary>Wall of a body cavity over the diameter of the trunk: 0.15 to 0.25, unsure; the nominal 0.2.</summary>
    private const double WallPerDiameter = 0.20;

    /// <summary>Thickness of the largest organ over the diameter of the trunk: 0.35, from memory, unsure.</summary>
    private const double OrganPerDiameter = 0.35;

    /// <summary>A cavity that is opened or filled: the worse of half its wall and half its largest organ. Rises with the half-thickness.</summary>
    /// <param name="halfThicknessMm">Half-thickness of the trunk, mm.</param>
    /// <returns>mm.</returns>
    public static double CavityMm(double halfThicknessMm) => halfThicknessMm * Math.Max(WallPerDiameter, OrganPerDiameter);

    /// <summary>Cuts at equal spacing into a part that fluid touches on both faces.</summary>
    /// <remarks>
    /// For cuts as long as the spacing this is max(min(s/2, T/2), (T-p)/2). Shorter cuts, in rows set off by half a spacing, leave
    /// ½·√(s² + (s-c)²) between them. Rises with spacing and thickness, falls with length and depth of the cuts.
    /// </remarks>
    /// <param name="spacingMm">Middle to middle, in both directions.</param>
    /// <param name="cutLengthMm">Length of one cut.</param>
    /// <param name="cutDepthMm">Depth of the cuts.</param>
    /// <param name="thicknessMm">Thickness of the part.</param>
    /// <returns>mm.</returns>
    public static double CutsMm(double spacingMm, double cutLengthMm, double cutDepthMm, double thicknessMm)
    {
        var gap = Math.Max(0, spacingMm - cutLengthMm);
        var between = Math.Sqrt((spacingMm * spacingMm) + (gap * gap)) / 2;
        return Math.Max(Math.Min(between, thicknessMm / 2), Math.Max(0, thicknessMm - cutDepthMm) / 2);
    }

    /// <summary>Radius of the ball of tissue that one injection soaks: (3v/(4πφ))^(1/3). Rises with the volume.</summary>
    /// <param name="siteMl">Volume injected, mL.</param>
    /// <param name="fluidShare">Share of fluid in the ball, 0 to 1.</param>
    /// <returns>mm.</returns>
    public static double DepotRadiusMm(double siteMl, double fluidShare = FluidInDepot) =>
        10 * Math.Cbrt(3 * siteMl / (4 * Math.PI * fluidShare));

    /// <summary>Depots on a cubic grid: (√3/2)·s - r, and never below 0. Rises with the spacing, falls with the radius.</summary>
    /// <param name="spacingMm">Site to site.</param>
    /// <param name="radiusMm">Radius of a depot.</param>
    /// <returns>mm.</returns>
    public static double GridMm(double spacingMm, double radiusMm) => Math.Max(0, (Math.Sqrt(3) / 2 * spacingMm) - radiusMm);

    /// <summary>Depots in rows in one plane: (√2/2)·s - r, and never below 0.</summary>
    /// <param name="spacingMm">Site to site.</param>
    /// <param name="radiusMm">Radius of a depot.</param>
    /// <returns>mm.</returns>
    public static double RowsMm(double spacingMm, double radiusMm) => Math.Max(0, (Math.Sqrt(2) / 2 * spacingMm) - radiusMm);

    /// <summary>The grid spacing that leaves a depth: (d + r)·2/√3. Rises with both.</summary>
    /// <param name="depthMm">Depth wanted.</param>
    /// <param name="radiusMm">Radius of a depot.</param>
    /// <returns>mm.</returns>
    public static double GridSpacingMm(double depthMm, double radiusMm) => (depthMm + radiusMm) * 2 / Math.Sqrt(3);

    /// <summary>The same for a tube-shaped body injected along its length: √2·(d + r). Rises with both.</summary>
    /// <param name="depthMm">Depth wanted.</param>
    /// <param name="radiusMm">Radius of a depot.</param>
    /// <returns>mm.</returns>
    public static double RowSpacingMm(double depthMm, double radiusMm) => Math.Sqrt(2) * (depthMm + radiusMm);

    /// <summary>Depots that share tissue out evenly. Rises with the tissue to a site; at a given dose it rises with the volume of a site.</summary>
    /// <param name="siteMl">Volume injected at one site, mL.</param>
    /// <param name="tissuePerSiteMl">Tissue to one site, mL.</param>
    /// <returns>mm.</returns>
    public static double DepotsMm(double siteMl, double tissuePerSiteMl) =>
        GridMm(10 * Math.Cbrt(tissuePerSiteMl), DepotRadiusMm(siteMl));

    /// <summary>The widest spacing of cuts that leaves a depth, cuts deep enough given. Rises with the depth and with the length of the cuts.</summary>
    /// <param name="depthMm">Depth wanted.</param>
    /// <param name="cutLengthMm">Length of one cut.</param>
    /// <returns>mm.</returns>
    public static double CutSpacingMm(double depthMm, double cutLengthMm)
    {
        // 4d² = s² + (s-c)² where the cuts leave gaps, s = 2d where they do not.
        if (2 * depthMm <= cutLengthMm) return 2 * depthMm;
        return (cutLengthMm + Math.Sqrt((8 * depthMm * depthMm) - (cutLengthMm * cutLengthMm))) / 2;
    }
}
