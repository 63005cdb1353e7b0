using System.Collections.Immutable;
using Protocolist.Plans;

namespace Protocolist;

/// <summary>A plan after what really happened.</summary>
/// <param name="Plan">The plan as it goes on; the very plan that was given where nothing changes.</param>
/// <param name="Changes">What is different from the plan that was given, and why; empty where nothing is.</param>
public sealed record Revision(Plan Plan, ImmutableArray<PlanChange> Changes);
