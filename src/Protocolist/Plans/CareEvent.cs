using System.Collections.Immutable;
using System.Text.Json.Serialization;
using NodaTime;
using Protocolist.Findings;

namespace Protocolist.Plans;

/// <summary>Something to do after sealing, once or again and again.</summary>
/// <param name="What">What to do.</param>
/// <param name="On">The first time; null where the plan has no dates.</param>
/// <param name="EveryMonths">Again after so many months; null for once.</param>
/// <param name="Source">Where the rhythm comes from.</param>
public sealed record CareEvent(
    Message What,
    [property: JsonConverter(typeof(LocalDateJson))] LocalDate? On,
    int? EveryMonths,
    string Source)
{
    private readonly ValueList<LocalDate> _dates = [];

    /// <summary>Its kebab-case id, unique in the plan.</summary>
    public string Id { get; init; } = "";

    /// <summary>Every date up to the plan's horizon, on open days; after the last the rhythm goes on.</summary>
    [JsonConverter(typeof(LocalDatesJson))]
    public ImmutableArray<LocalDate> Dates { get => _dates; init => _dates = value; }

    /// <summary>How much of what, where the vessel and its fluid are known; else empty.</summary>
    public Message Amount { get; init; }
}
