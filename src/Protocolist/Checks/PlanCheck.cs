using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Checks;

/// <summary>One thing that the most careful colleague would look at in a finished plan.</summary>
/// <param name="Id">The id of its findings.</param>
/// <param name="Protects">What or whom it protects, in a few words.</param>
/// <param name="Source">Where the rule comes from.</param>
/// <param name="Find">What it finds; empty where all is well. A pure function.</param>
internal sealed record PlanCheck(string Id, string Protects, string Source, Func<ReviewCase, ImmutableArray<Finding>> Find)
{
    /// <summary>How grave its findings are, and when; in the order in which it asks.</summary>
    public ImmutableArray<SeverityRule> Severities { get; init; } = [];

    /// <summary>Ids of findings of earlier passes that it says itself, so that nothing is said twice.</summary>
    public ImmutableArray<string> Absorbs { get; init; } = [];

    /// <summary>Whether it keeps people from harm: such a check may be raised by a protocol, never lowered.</summary>
    public bool ProtectsPeople { get; init; }

    /// <summary>A check that an earlier pass made already: it stands in the list with its source, and its severity can be set like any other's.</summary>
    public static PlanCheck OfPlanning(string id, string protects, string source) => new(id, protects, source, plan => plan.Found(id)) { Absorbs = [id] };
}
