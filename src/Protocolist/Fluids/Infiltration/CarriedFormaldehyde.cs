using UnitsNet;
using Duration = NodaTime.Duration;

namespace Protocolist.Fluids.Infiltration;

/// <summary>How much formaldehyde a fixed body gives to the fluids that it is laid in afterwards, filling after filling.</summary>
/// <remarks>
/// Mass balance without what is bound to the tissue, by the slowest and the fastest diffusion thinkable (Crank 1975): a slow body gives little at first and
/// more later. What clings to the outside, two to five hundredths of the body's volume (common practice), goes into the first filling.
/// </remarks>
/// <param name="halfThickness">Half-thickness of the body.</param>
/// <param name="tissueWater">Fluid inside all the bodies together.</param>
/// <param name="bodies">The volume of all of them.</param>
internal struct CarriedFormaldehyde(Length halfThickness, Volume tissueWater, Volume bodies)
{
    private const double Clinging = 0.05;

    /// <summary>Inside, in g/L, if all went slowly, and if all went fast.</summary>
    private double slow;
    private double fast;

    /// <summary>On the outside, in g.</summary>
    private double film;

    /// <summary>Whether there is any to carry over.</summary>
    public readonly bool IsAny => slow > 0 || fast > 0;

    /// <summary>The bodies have lain in fixative, and are taken as soaked through; of what was injected alone, a volume of 0.</summary>
    public void Fixed(double gramsPerLitre, Volume bath)
    {
        var inside = bath.Liters > 0 ? gramsPerLitre * bath.Liters / (bath.Liters + tissueWater.Liters) : gramsPerLitre;
        (slow, fast, film) = (Math.Max(slow, inside), Math.Max(fast, inside), gramsPerLitre * Clinging * bodies.Liters);
    }

    /// <summary>The bodies lie in one filling of a fluid without formaldehyde.</summary>
    /// <param name="bath">How much of it, above zero.</param>
    /// <param name="lasts">How long.</param>
    /// <returns>What that filling comes to hold at the most, g/L.</returns>
    public double Into(Volume bath, Duration lasts)
    {
        var reached = Diffusion.Reached(DiffusionShape.Cylinder, halfThickness, lasts.TotalSeconds, Solute.Formaldehyde);
        var (clung, share) = (film / bath.Liters, tissueWater.Liters / (tissueWater.Liters + bath.Liters));
        var (most, perLitre) = (0.0, tissueWater.Liters / bath.Liters);
        slow = Left(slow, reached.Slow);
        fast = Left(fast, reached.Fast);
        film = 0;
        return most + clung;

        double Left(double inside, double way)
        {
            var gone = way * inside * (1 - share);
            most = Math.Max(most, gone * perLitre);
            return inside - gone;
        }
    }
}
