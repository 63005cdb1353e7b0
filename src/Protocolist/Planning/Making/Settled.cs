using System.Collections.Immutable;
using Protocolist.Planning.Drafting;
using Protocolist.Planning.Provisioning;
using Protocolist.Plans;
using Protocolist.Specimens;

namespace Protocolist.Planning.Making;

/// <summary>What is asked for, and what is left to the planner.</summary>
/// <param name="Request">Specimen, bench, start, and what the person decided.</param>
/// <param name="Body">The body as measured.</param>
/// <param name="Prepared">The protocol that serves it.</param>
/// <param name="Found">What was found on the way.</param>
internal sealed record Question(PlanRequest Request, BodyMeasure Body, PreparedProtocol Prepared, ImmutableArray<Findings.Finding> Found);

/// <summary>What the planner settles where nobody decided; the rest each step settles for itself.</summary>
internal sealed record Settled
{
    public static Settled Nothing { get; } = new();

    /// <summary>Choice → option.</summary>
    public ImmutableSortedDictionary<string, string> Choices { get; init; } = ImmutableSortedDictionary<string, string>.Empty;

    /// <summary>Vessels and stock that differ from what each step would take by itself.</summary>
    public PlanWishes Means { get; init; } = PlanWishes.None;

    /// <summary>The place of its options in the protocol's order.</summary>
    public int Option { get; init; }

    /// <summary>The place of its posture: nought for the one that is preferred.</summary>
    public int Laid { get; init; }

    /// <summary>How the body is laid; null for what <see cref="PostureChoice"/> takes.</summary>
    public SetPosture? Posture { get; init; }

    /// <summary>The person's wishes, which come first, and these.</summary>
    public PlanWishes With(PlanWishes wishes) => Means.IsEmpty() ? wishes : wishes with
    {
        Vessels = Means.Vessels.SetItems(wishes.Vessels),
        Supplies = Means.Supplies.SetItems(wishes.Supplies),
    };

    public Settled WithVessel(string step, string vessel) => this with { Means = Means with { Vessels = Means.Vessels.SetItem(step, vessel) } };

    public Settled WithSupply(string fluid, string supply) => this with { Means = Means with { Supplies = Means.Supplies.SetItem(fluid, supply) } };
}
