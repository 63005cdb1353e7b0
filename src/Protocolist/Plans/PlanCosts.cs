using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Protocolist.Benches.Disposal;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Quantities;
using UnitsNet;

namespace Protocolist.Plans;

/// <summary>
/// What the plan costs. Each is null where the bench gives no prices for it. Every part is rounded once to the smallest coin, halves away from zero; the sums
/// are exact sums of the rounded parts.
/// </summary>
/// <param name="Cash">To spend now.</param>
/// <param name="Used">Worth of what is used up.</param>
/// <param name="Labour">Hands-on time at the bench's rate.</param>
/// <param name="Disposal">Taking away of what is spent.</param>
public sealed record PlanCosts(
    [property: JsonConverter(typeof(MoneyJson))] Money? Cash,
    [property: JsonConverter(typeof(MoneyJson))] Money? Used,
    [property: JsonConverter(typeof(MoneyJson))] Money? Labour,
    [property: JsonConverter(typeof(MoneyJson))] Money? Disposal)
{
    private readonly ValueList<DisposalCost> _disposalByClass = [];

    /// <summary>Nothing is known, because the bench keeps no sums.</summary>
    internal static PlanCosts Unknown { get; } = new(null, null, null, null);

    /// <summary>What stays on the shelf of the materials that the plan touches is worth.</summary>
    [JsonConverter(typeof(MoneyJson))]
    public Money? LeftOnShelf { get; init; }

    /// <summary>What tools that last lose by being used.</summary>
    [JsonConverter(typeof(MoneyJson))]
    public Money? Wear { get; init; }

    /// <summary>Disposal by class of waste.</summary>
    public ImmutableArray<DisposalCost> DisposalByClass { get => _disposalByClass; init => _disposalByClass = value; }

    /// <summary>Used, wear, labour and disposal: what the plan costs, whatever is bought with it.</summary>
    [JsonConverter(typeof(MoneyJson))]
    public Money? Total { get; init; }

    /// <summary>The dearest specimen's share of the total, where a lot shares it; all shares add up to the total.</summary>
    [JsonConverter(typeof(MoneyJson))]
    public Money? BySpecimen { get; init; }

    /// <summary>The work of a year of care after sealing, at the bench's rate.</summary>
    [JsonConverter(typeof(MoneyJson))]
    public Money? CareLabourByYear { get; init; }

    /// <summary>The fluid that evaporates in a year and is put back, by the worth of what it is made from.</summary>
    [JsonConverter(typeof(MoneyJson))]
    public Money? CareFluidByYear { get; init; }

    /// <summary>How much fluid that is; null where it is neither measured nor published.</summary>
    [JsonPropertyName("topUpByYearMl")]
    [JsonConverter(typeof(VolumeInMillilitres))]
    public Volume? TopUpByYear { get; init; }

    /// <summary>A year of care after sealing: work and fluid.</summary>
    [JsonConverter(typeof(MoneyJson))]
    public Money? CareByYear { get; init; }

    /// <summary>The total and ten years of care.</summary>
    [JsonConverter(typeof(MoneyJson))]
    public Money? OverTenYears { get; init; }
}

/// <summary>What it costs to be rid of one class of waste.</summary>
/// <param name="Class">The class.</param>
/// <param name="Cost">Its cost.</param>
public sealed record DisposalCost(
    [property: JsonConverter(typeof(WordJson<WasteClass>))] WasteClass Class,
    [property: JsonConverter(typeof(MoneyJson))] Money Cost)
{
    /// <summary>The class in words.</summary>
    [JsonIgnore]
    public Message ClassWords => Waste.Words(Class);
}
