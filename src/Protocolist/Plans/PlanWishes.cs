using System.Collections.Immutable;
using System.Text.Json.Serialization;
using NodaTime;
using Protocolist.Findings;

namespace Protocolist.Plans;

/// <summary>
/// What a person insists on where the planner would choose by itself. Kept in the plan, so that a revision keeps to it; what it costs against the planner's
/// own way is told.
/// </summary>
public sealed record PlanWishes
{
    private readonly ValueMap<string> _vessels = ValueMap<string>.Empty;
    private readonly ValueMap<string> _supplies = ValueMap<string>.Empty;
    private readonly ValueMap<Duration> _soaks = ValueMap<Duration>.Empty;
    private readonly ValueMap<LocalDate> _dates = ValueMap<LocalDate>.Empty;

    /// <summary>The planner chooses everything.</summary>
    public static PlanWishes None { get; } = new();

    /// <summary>A step's id → the id of the vessel that it is to use.</summary>
    [JsonConverter(typeof(TextsByNameJson))]
    public ImmutableSortedDictionary<string, string> Vessels { get => _vessels; init => _vessels = value; }

    /// <summary>A fluid that is made → what it is made from: ids of the bench's stock joined by <c>+</c>, as a comparison of ways has them.</summary>
    [JsonConverter(typeof(TextsByNameJson))]
    public ImmutableSortedDictionary<string, string> Supplies { get => _supplies; init => _supplies = value; }

    /// <summary>The id of a step in which the body lies in fluid → how long it lies there at the least; above nothing, at most a hundred years.</summary>
    [JsonPropertyName("soakHours")]
    [JsonConverter(typeof(DurationsInHours))]
    public ImmutableSortedDictionary<string, Duration> Soaks { get => _soaks; init => _soaks = value; }

    /// <summary>A step's id → the day on which it begins, on the bench's clocks.</summary>
    [JsonConverter(typeof(LocalDateMapJson))]
    public ImmutableSortedDictionary<string, LocalDate> Dates { get => _dates; init => _dates = value; }

    /// <summary>How the planner laid the body, by the word of its posture and the layers of a coil; null where there is but one way to.</summary>
    [JsonInclude]
    internal string? Posture { get; init; }

    /// <summary>The days of <see cref="Dates"/>.</summary>
    internal IEnumerable<LocalDate?> Days => Dates.Values.Select(d => (LocalDate?)d);

    /// <summary>Whether nothing is insisted on.</summary>
    public bool IsEmpty() => Vessels.IsEmpty && Supplies.IsEmpty && Soaks.IsEmpty && Dates.IsEmpty && Posture is null;
}
