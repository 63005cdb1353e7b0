using System.Collections.Immutable;
using Protocolist.Plans;
using Protocolist.Specimens;
using Protocolist.Specimens.Fixation;

namespace Protocolist.Planning.Drafting;

/// <summary>A plan in the making: every step with its fluids, amounts and durations, not yet its vessels and dates. Immutable.</summary>
internal sealed record Draft(
    BodyMeasure Body,
    PreparedProtocol Prepared,
    ImmutableSortedDictionary<string, string> Choices,
    ImmutableArray<DraftStep> Steps,
    ImmutableArray<Figure> Figures)
{
    public Protocol Protocol => Prepared.Protocol;

    /// <summary>How long the body takes to be fixed to the core as it is cut and injected; null where nothing fixes it, or too cold or warm to say.</summary>
    public BodyFixation? Fixation { get; init; }

    /// <summary>How the body is laid from the step on that poses it; null until vessels are chosen.</summary>
    public SetPosture? Posture { get; init; }
}
