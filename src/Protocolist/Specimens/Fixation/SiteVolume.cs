namespace Protocolist.Specimens.Fixation;

/// <summary>Fluid at one injection site, mL.</summary>
/// <param name="LowMl">The least by custom or by the protocol.</param>
/// <param name="HighMl">The most.</param>
internal readonly record struct SiteVolume(double LowMl, double HighMl)
{
    /// <summary>By the thickness of the place: derived from what a depot of that volume soaks.</summary>
    /// <param name="thicknessMm">Whole thickness there, mm.</param>
    /// <returns>0.1 to 0.25 mL under 10 mm, 0.5 to 1 mL under 20 mm, 2 to 5 mL under 50 mm, 5 to 10 mL above.</returns>
    public static SiteVolume ByThickness(double thicknessMm) => thicknessMm switch
    {
        < 10 => new(0.1, 0.25),
        < 20 => new(0.5, 1),
        < 50 => new(2, 5),
        _ => new(5, 10),
    };

    /// <summary>The volume chosen of this range by custom for a place: rises with its thickness.</summary>
    /// <param name="thicknessMm">Whole thickness there, mm.</param>
    /// <returns>mL, within the range.</returns>
    public double Choose(double thicknessMm) => Math.Clamp(
        thicknessMm switch { < 5 => 0.1, < 10 => 0.25, < 15 => 0.5, < 20 => 1, < 35 => 2, < 50 => 5, _ => 10 }, LowMl, HighMl);

    /// <summary>Sites that a mass needs: max(1, ⌈m·dose/v⌉). Rises with mass and dose, falls with the volume.</summary>
    /// <param name="massG">Mass of the part, g.</param>
    /// <param name="doseMlPerKg">Fluid per mass, mL/kg.</param>
    /// <param name="siteMl">Fluid at one site, mL, above 0.</param>
    /// <returns>1 or more.</returns>
    public static int Sites(double massG, double doseMlPerKg, double siteMl) =>
        // 1e-9: a quotient that is whole on paper must not be rounded up for its last bit.
        checked((int)Math.Max(1, Math.Ceiling((massG / 1000 * doseMlPerKg / siteMl) - 1e-9)));
}
