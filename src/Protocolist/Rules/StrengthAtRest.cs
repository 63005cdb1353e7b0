using Protocolist.Fluids.Infiltration;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace Protocolist.Rules;

/// <summary>The last jar and what it comes to rest at, in %vol, from the slower to the faster of two reckonings.</summary>
/// <param name="Low">The jar at rest, at the least.</param>
/// <param name="High">The jar at rest, at the most.</param>
/// <param name="InsideSlow">Inside the body when it comes into the jar, by the slower reckoning; 0 where no bath was before.</param>
/// <param name="InsideFast">The same by the faster.</param>
internal readonly record struct JarAtRest(double Low, double High, double InsideSlow, double InsideFast);

/// <summary>The water of the body, and baths too short for it, do not pull the final alcohol out of its band.</summary>
internal static class StrengthAtRest
{
    public const string Id = "alcohol-weakened-by-body";
    public const string Source =
        "mass balance with contraction (OIML R 22) and diffusion into a cylinder (Crank 1975); one change, then test: Simmons 2009, Michonneau 2017";

    /// <summary>Points of %vol that nobody measures.</summary>
    private const double Slack = 0.5;

    /// <summary>What the last of these fillings, all of one alcohol, comes to.</summary>
    public static JarAtRest Of(Length depth, Volume tissueWater, IReadOnlyCollection<(AlcoholBath Bath, Duration Lasts)> fillings)
    {
        var outcomes = TimedBaths.Follow(new(DiffusionShape.Cylinder, depth, tissueWater), fillings);
        var (jar, before) = (outcomes[^1], outcomes.Length > 1 ? outcomes[^2] : null);
        return new(Math.Min(jar.JarSlow, jar.JarFast), Math.Max(jar.JarSlow, jar.JarFast), before?.InsideSlow ?? 0, before?.InsideFast ?? 0);
    }

    /// <summary>Whether that is below what the alcohol is kept at.</summary>
    public static bool IsBelow(double least, JarAtRest jar) => jar.Low < least - Slack;
}
