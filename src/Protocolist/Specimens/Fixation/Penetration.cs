namespace Protocolist.Specimens.Fixation;

/// <summary>How far fixative gets in a time, and how long it needs: d = K·√t, and the time to bind on top.</summary>
/// <remarks>Every function is monotone in each argument, so that bounds over ranges follow from the ends.</remarks>
internal static class Penetration
{
    /// <summary>A flat front: the safe default.</summary>
    public const double Plane = 1;

    /// <summary>A long cylinder reached from all round takes half the time to its axis (shrinking core; Levenspiel, from memory).</summary>
    /// <remarks>Optimistic for limbs, snakes, eels.</remarks>
    public const double Cylinder = 1 / 2.0;

    /// <summary>A ball takes a third.</summary>
    public const double Sphere = 1 / 3.0;

    /// <summary>Depth reached. Rises with both.</summary>
    /// <param name="hours">Time since the fluid touched, h, 0 or more.</param>
    /// <param name="k">Rate at the bath's temperature, mm/√h, above 0.</param>
    /// <returns>Depth in mm from a flat surface.</returns>
    public static double DepthMm(double hours, double k) => k * Math.Sqrt(hours);

    /// <summary>Time until a depth is reached, binding not counted. Rises with depth and shape, falls with the rate.</summary>
    /// <param name="depthMm">Depth in mm, 0 or more.</param>
    /// <param name="k">Rate at the bath's temperature, mm/√h, above 0.</param>
    /// <param name="shape"><see cref="Plane"/>, <see cref="Cylinder"/> or <see cref="Sphere"/>.</param>
    /// <returns>Hours.</returns>
    public static double HoursToReach(double depthMm, double k, double shape = Plane) => shape * depthMm / k * (depthMm / k);

    /// <summary>Time until a depth is reached and bound. Rises with the depth, never rises with the temperature.</summary>
    /// <param name="depthMm">Depth in mm, 0 or more.</param>
    /// <param name="tissue">What has to be crossed.</param>
    /// <param name="fixative">What crosses it.</param>
    /// <param name="temperatureC">Temperature of the bath, 0 to 40 °C.</param>
    /// <param name="shape">Shape factor.</param>
    /// <returns>At best with the measured rate, likely with √(slow · measured), safe with the slow rate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 40 °C; ask <see cref="Warmth.Check"/> first.</exception>
    public static TimeBand FixationTime(double depthMm, Tissue tissue, Fixative fixative, double temperatureC = 20, double shape = Plane) =>
        new FixingBath(fixative, temperatureC).Time(depthMm, tissue, shape);

    /// <summary>The depth that is reached and bound by a time, to be on the safe side. Rises with time and temperature.</summary>
    /// <param name="hours">Time since the fluid touched, h.</param>
    /// <param name="tissue">What has to be crossed.</param>
    /// <param name="fixative">What crosses it.</param>
    /// <param name="temperatureC">Temperature of the bath, 0 to 40 °C.</param>
    /// <param name="shape">Shape factor.</param>
    /// <returns>Depth in mm; 0 where the time does not even suffice for binding.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 40 °C; ask <see cref="Warmth.Check"/> first.</exception>
    public static double SafeDepthMm(double hours, Tissue tissue, Fixative fixative, double temperatureC = 20, double shape = Plane) =>
        new FixingBath(fixative, temperatureC).SafeDepthMm(hours, tissue, shape);
}
