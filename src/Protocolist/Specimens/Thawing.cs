using Protocolist.Findings;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace Protocolist.Specimens;

/// <summary>The simple body that a frozen specimen comes nearest to.</summary>
internal enum ThawShape
{
    /// <summary>Flat: a flatfish, a block frozen in a tray.</summary>
    Slab = 1,

    /// <summary>Long: most fishes, snakes, squids, trunks.</summary>
    Cylinder = 2,

    /// <summary>Round.</summary>
    Sphere = 3,
}

/// <summary>What surrounds the specimen while it thaws.</summary>
internal enum ThawMedium
{
    /// <summary>Lying in still air, in a cold room or on a table.</summary>
    StillAir,

    /// <summary>Lying in cold water that is not moved.</summary>
    StillWater,

    /// <summary>Under a cold shower, or in water that runs.</summary>
    RunningWater,
}

/// <summary>How long a frozen body takes to thaw through.</summary>
/// <param name="Least">With everything in favour.</param>
/// <param name="Likely">With the middle values.</param>
/// <param name="Most">With everything against.</param>
/// <param name="Findings">Cautions.</param>
internal sealed record ThawTime(Duration Least, Duration Likely, Duration Most, IReadOnlyList<Finding> Findings);

/// <summary>Thawing time by size: Plank's equation, which moves a front of melting inwards through tissue already thawed.</summary>
/// <remarks>
/// t = ρ L / (T - Tf) · (R / (E h) + R² / (2 E k)) with the half-thickness R and E = 1, 2, 3 for slab, cylinder and sphere (Plank 1941; reviewed by
/// Góral et al. 2016, Food Technology and Biotechnology 54:3). It leaves out warming below and above the melting point, so it is on the short side:
/// the band's upper end allows a fifth more for that (from memory).
/// </remarks>
internal static class Thawing
{
    public const string Source = "Plank's equation (Góral et al. 2016)";

    private static readonly Phrase NeverThaws = new("never-thaws", "at {around:0.# °C} a frozen body does not thaw");
    private static readonly Phrase ThawCool = new("never-thaws.remedy", "thaw at 2 to 15 °C");

    // Cold, never warm: O'Shea 2003, Large Squid Fixing and Preservation Notes; Neumann, NHCOLL-L 2011. 20 °C is the upper end O'Shea gives.
    private const double WarmestC = 20;
    private static readonly Phrase Warm = new("thawing-warm", "at {around:0.# °C} the outside rots while the inside is still frozen");
    private static readonly Phrase ThawCold = new("thawing-warm.remedy", "thaw cold, never in warm water; a cold shower or running cold water shortens it");

    private const double IceHeat = 333_600; // J/kg, heat of melting of ice, CRC Handbook (from memory)
    private const double MeltingC = -1; // tissue melts from about -1 °C on; textbooks of food freezing, from memory
    private const double Density = 1050; // kg/m3, soft animals within 5 %

    // W/(m K), thawed lean tissue: protein of 0.342 in series with three parts of water comes to 0.49, published meats lie within 7 % of that
    // (Agricultural and Biological Chemistry 46:5, 1982, p. 1235; by its abstract); the band of 10 % is the project's.
    private const double Conductivity = 0.5;
    private const double WarmingBesides = 1.2;

    /// <summary>The time for a body to thaw through.</summary>
    /// <param name="halfThicknessM">From the surface to the middle of the thickest part, in metres, above 0.</param>
    /// <param name="shape">Its shape.</param>
    /// <param name="medium">What surrounds it.</param>
    /// <param name="mediumC">The temperature around it in °C, above the melting point.</param>
    /// <param name="waterShare">Mass of water to mass of body, 0.6 for a lean mammal to 0.85 for a squid.</param>
    /// <returns>A band, and the warning <c>thawing-warm</c> above 20 °C; the error <c>never-thaws</c> and no time where it stays frozen.</returns>
    public static ThawTime Of(double halfThicknessM, ThawShape shape, ThawMedium medium, double mediumC, double waterShare = 0.75)
    {
        var around = Temperature.FromDegreesCelsius(mediumC);
        if (mediumC <= MeltingC + 0.5)
            return new(Duration.Zero, Duration.Zero, Duration.Zero, [Finding.Error(NeverThaws.Id, NeverThaws.With(("around", around)), ThawCool)]);
        var (poor, usual, good) = Transfer(medium);
        return new(
            Plank(good, Conductivity * 1.1),
            Plank(usual, Conductivity),
            Plank(poor, Conductivity * 0.9) * WarmingBesides,
            mediumC <= WarmestC ? [] : [Finding.Warning(Warm.Id, Warm.With(("around", around)), ThawCold)]);

        Duration Plank(double h, double k)
        {
            var e = (double)shape;
            var way = (halfThicknessM / (e * h)) + (halfThicknessM * halfThicknessM / (2 * e * k));
            var seconds = Density * waterShare * IceHeat / (mediumC - MeltingC) * way;
            return Duration.FromMinutes(Math.Ceiling(seconds / 60));
        }
    }

    // W/(m2 K), poor to good; textbook ranges of free and forced convection at these temperatures, from memory.
    private static (double Poor, double Usual, double Good) Transfer(ThawMedium medium) => medium switch
    {
        ThawMedium.StillAir => (6, 10, 15),
        ThawMedium.StillWater => (60, 100, 200),
        _ => (150, 300, 600),
    };
}
