using Protocolist.Planning.Making;

namespace Protocolist.Planning.Deciding;

/// <summary>One way, worked out, and the harm that it does.</summary>
internal sealed record Way(Settled Settled, MadePlan Made, HarmDone Harm)
{
    /// <summary>Whether the body waits longer than it bears, or a step takes what is not there, for something that comes by post.</summary>
    public bool AwaitsDelivery => Harm[Deciding.Harm.Waiting] > 0 && Made.Plan.Findings.Any(f => f.Id is "waits-for-delivery" or "supplies-late");
}
