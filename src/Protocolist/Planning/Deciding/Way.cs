using Protocolist.Planning.Making;

namespace Protocolist.Planning.Deciding;

/// <summary>One way, worked out, and the harm that it does.</summary>
internal sealed record Way(Settled Settled, MadePlan Made, HarmDone Harm);
