using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Vessels;

namespace Protocolist.Planning.Drafting;

/// <summary>What came of looking for a vessel: the best fit, or every reason against, and what would do.</summary>
internal sealed record VesselOutcome(FittedVessel? Fitted, NeededVessel? Needed, ImmutableArray<Finding> Reasons);
