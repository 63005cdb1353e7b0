using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Protocolist.Findings;

namespace Protocolist.Plans;

/// <summary>
/// What a person insists on where the planner would choose by itself: a vessel, or what a fluid is made from. Kept in the plan, so that a revision keeps
/// to it.
/// </summary>
public sealed record PlanWishes
{
    private readonly ValueMap _vessels = ValueMap.Empty;
    private readonly ValueMap _supplies = ValueMap.Empty;

    /// <summary>The planner chooses everything.</summary>
    public static PlanWishes None { get; } = new();

    /// <summary>A step's id → the id of the vessel that it is to use.</summary>
    [JsonConverter(typeof(TextsByNameJson))]
    public ImmutableSortedDictionary<string, string> Vessels { get => _vessels; init => _vessels = value; }

    /// <summary>A fluid that is made → what it is made from: ids of the bench's stock joined by <c>+</c>, as a comparison of ways has them.</summary>
    [JsonConverter(typeof(TextsByNameJson))]
    public ImmutableSortedDictionary<string, string> Supplies { get => _supplies; init => _supplies = value; }

    /// <summary>Whether nothing is insisted on.</summary>
    public bool IsEmpty() => Vessels.IsEmpty && Supplies.IsEmpty;
}
