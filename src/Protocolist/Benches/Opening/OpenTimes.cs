using System.Collections.Immutable;
using NodaTime;

namespace Protocolist.Benches.Opening;

/// <summary>When a bench is open between two instants.</summary>
/// <param name="Intervals">In order, apart, none empty. Openings that touch are one.</param>
/// <param name="ClockNotes">Where an opening hour falls into a skipped or a doubled hour of the local clock.</param>
internal sealed record OpenTimes(ImmutableArray<Interval> Intervals, ImmutableArray<ClockNote> ClockNotes)
{
    /// <summary>Elapsed open time.</summary>
    public Duration Total => Intervals.Aggregate(Duration.Zero, (sum, open) => sum + open.Duration);
}
