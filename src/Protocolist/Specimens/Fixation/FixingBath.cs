namespace Protocolist.Specimens.Fixation;

/// <summary>One fixative at one temperature, 0 to 40 °C: what temperature does to it, worked out once for all the depths that it has to cross.</summary>
internal readonly struct FixingBath(Fixative fixative, double temperatureC)
{
    private readonly double _warmth = Warmth.RateFactor(temperatureC);

    /// <summary>How long it binds once it is there.</summary>
    public TimeBand Binding { get; } = Warmth.Binding(fixative, temperatureC);

    /// <summary>See <see cref="Penetration.FixationTime"/>.</summary>
    public TimeBand Time(double depthMm, Tissue tissue, double shape = Penetration.Plane)
    {
        var k = PenetrationRate.Of(tissue, fixative);
        return new(
            Penetration.HoursToReach(depthMm, k.Nominal * _warmth, shape) + Binding.LowHours,
            Penetration.HoursToReach(depthMm, Math.Sqrt(k.Low * k.Nominal) * _warmth, shape) + Binding.NominalHours,
            Penetration.HoursToReach(depthMm, k.Low * _warmth, shape) + Binding.HighHours);
    }

    /// <summary>See <see cref="Penetration.SafeDepthMm"/>.</summary>
    public double SafeDepthMm(double hours, Tissue tissue, double shape = Penetration.Plane) =>
        Penetration.DepthMm(Math.Max(0, hours - Binding.HighHours) / shape, PenetrationRate.Of(tissue, fixative).Low * _warmth);
}
