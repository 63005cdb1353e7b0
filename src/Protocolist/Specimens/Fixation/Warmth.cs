using Protocolist.Findings;
using Protocolist.Quantities;

namespace Protocolist.Specimens.Fixation;

/// <summary>What temperature does to penetration, binding and rot. All three hold from 0 to 40 °C.</summary>
internal static class Warmth
{
    /// <summary>The coldest bath the figures hold for, °C.</summary>
    public const double ColdestC = 0;

    /// <summary>The warmest bath the figures hold for, °C.</summary>
    public const double WarmestC = 40;

    private static readonly Phrase TooCold = new("bath-too-cold", "at {bath:0.# degC} fixation stands still and formalin throws down paraformaldehyde");
    private static readonly Phrase TooWarm = new("bath-too-warm", "at {bath:0.# degC} the core rots before it is reached, and the fumes are dangerous");
    private static readonly Phrase FixAt = new("bath-too-cold.remedy", "fix at 4 to 25 degC");

    // Viscosity of water in mPa·s: CRC Handbook of Chemistry and Physics, from memory.
    private static readonly (double C, double Viscosity)[] Water =
    [
        (0, 1.787), (4, 1.567), (10, 1.307), (15, 1.138), (20, 1.002), (25, 0.890), (30, 0.798), (37, 0.692), (40, 0.653),
    ];

    /// <summary>Whether the figures hold at a temperature, and if not, why not.</summary>
    /// <param name="temperatureC">Temperature of the bath, °C.</param>
    /// <returns>An error <c>bath-too-cold</c> or <c>bath-too-warm</c>, or null.</returns>
    public static Finding? Check(double temperatureC) => temperatureC switch
    {
        >= ColdestC and <= WarmestC => null,
        < ColdestC => Finding.Error("bath-too-cold", TooCold.With(Bath(temperatureC)), FixAt),
        _ => Finding.Error("bath-too-warm", TooWarm.With(Bath(temperatureC)), FixAt),
    };

    /// <summary>K at a temperature over K at 20 °C: √(T/293.15 · η(20)/η(T)), as diffusion goes. Rises with the temperature.</summary>
    /// <param name="temperatureC">0 to 40 °C.</param>
    /// <returns>0.72 at 0 °C, 1 at 20 °C, 1.28 at 40 °C.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 40 °C; ask <see cref="Check"/> first.</exception>
    public static double RateFactor(double temperatureC) =>
        Math.Sqrt((temperatureC + 273.15) / 293.15 * Viscosity(20) / Viscosity(temperatureC));

    /// <summary>Hours that tissue needs with fixative in it until it is bound. Never rises with the temperature.</summary>
    /// <remarks>
    /// Formaldehyde: 48 h at 4 to 15 °C; 24 h (Fox et al. 1985) to 48 h (Buesa and Peshkov) at 20 to 25 °C; 18 h at 37 °C (Fox);
    /// straight lines between. Alcohol coagulates on contact; a day is allowed at the safe end: from memory.
    /// </remarks>
    /// <param name="fixative">The fixative.</param>
    /// <param name="temperatureC">0 to 40 °C.</param>
    /// <returns>The band.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 40 °C; ask <see cref="Check"/> first.</exception>
    public static TimeBand Binding(Fixative fixative, double temperatureC)
    {
        MustHold(temperatureC);
        if (fixative is not Fixative.Formaldehyde) return new(0, 12, 24);
        var low = Line(temperatureC, [(15, 48), (20, 24), (25, 24), (37, 18)]);
        var high = Line(temperatureC, [(25, 48), (37, 18)]);
        return new(low, (low + high) / 2, high);
    }

    /// <summary>How much longer a core keeps than at 20 °C: a factor 2.5 for each 10 K colder (from memory, unsure). Falls with the temperature.</summary>
    /// <param name="temperatureC">0 to 40 °C.</param>
    /// <returns>1 at 20 °C.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 40 °C; ask <see cref="Check"/> first.</exception>
    public static double KeepingFactor(double temperatureC)
    {
        MustHold(temperatureC);
        return Math.Pow(2.5, (20 - temperatureC) / 10);
    }

    private static Argument Bath(double temperatureC) => Argument.Of("bath", temperatureC + 273.15, Dimension.OfTemperature);

    private static double Viscosity(double temperatureC)
    {
        MustHold(temperatureC);
        var above = 1;
        while (Water[above].C < temperatureC) above++;
        var (lower, upper) = (Water[above - 1], Water[above]);
        var share = (temperatureC - lower.C) / (upper.C - lower.C);
        return lower.Viscosity * Math.Pow(upper.Viscosity / lower.Viscosity, share);
    }

    /// <summary>A line through points, level before the first and after the last.</summary>
    private static double Line(double x, ReadOnlySpan<(double X, double Y)> points)
    {
        if (x <= points[0].X) return points[0].Y;
        for (var i = 1; i < points.Length; i++)
        {
            if (x > points[i].X) continue;
            var (a, b) = (points[i - 1], points[i]);
            return a.Y + ((b.Y - a.Y) * (x - a.X) / (b.X - a.X));
        }

        return points[^1].Y;
    }

    private static void MustHold(double temperatureC)
    {
        if (temperatureC is not (>= ColdestC and <= WarmestC))
            throw new ArgumentOutOfRangeException(nameof(temperatureC), temperatureC, "The figures hold from 0 to 40 degC.");
    }
}
