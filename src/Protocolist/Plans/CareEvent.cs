using System.Text.Json.Serialization;
using NodaTime;

namespace Protocolist.Plans;

/// <summary>Something to do after sealing, once or again and again.</summary>
/// <param name="What">What to do.</param>
/// <param name="On">The first time; null where the plan has no dates.</param>
/// <param name="EveryMonths">Again after so many months; null for once.</param>
/// <param name="Source">Where the rhythm comes from.</param>
public sealed record CareEvent(
    string What,
    [property: JsonConverter(typeof(LocalDateJson))] LocalDate? On,
    int? EveryMonths,
    string Source);
