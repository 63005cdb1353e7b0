namespace Protocolist.Specimens.Fixation;

/// <summary>How long something takes, in hours: at best, most likely, and to be on the safe side.</summary>
/// <param name="LowHours">With the measured rate: no sooner.</param>
/// <param name="NominalHours">With the rate that fits what museums do.</param>
/// <param name="HighHours">With the slow rate of whole organs: the time to plan with.</param>
internal readonly record struct TimeBand(double LowHours, double NominalHours, double HighHours)
{
    /// <summary>The longer of two, end by end: both must be done.</summary>
    /// <param name="other">The other time.</param>
    /// <returns>A band no end of which is below either's.</returns>
    public TimeBand AndAlso(TimeBand other) => new(
        Math.Max(LowHours, other.LowHours), Math.Max(NominalHours, other.NominalHours), Math.Max(HighHours, other.HighHours));
}
