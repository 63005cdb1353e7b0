using Protocolist.Benches;

namespace Protocolist.Planning;

/// <summary>A bench with all that depends on it alone worked out, ready for any number of plans. Immutable; safe to share between threads.</summary>
/// <remarks>Prepare a bench once and plan with it many times: a plan then costs a small part of what it costs to prepare.</remarks>
public sealed class PreparedBench
{
    /// <summary>Prepares a bench.</summary>
    /// <param name="bench">The bench.</param>
    public PreparedBench(Bench bench)
    {
        ArgumentNullException.ThrowIfNull(bench);
        Bench = bench;
    }

    /// <summary>The bench as it was given.</summary>
    public Bench Bench { get; }
}
