using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Protocolist.Quantities;
using UnitsNet;

namespace Protocolist.Plans;

/// <summary>What to measure out to make one fluid.</summary>
/// <param name="Fluid">The fluid that is made.</param>
/// <param name="Volume">How much of it.</param>
/// <param name="Method">How to go about it, in sentences.</param>
/// <param name="Parts">What goes in.</param>
/// <param name="For">The ids of the steps that use it.</param>
public sealed record Recipe(
    string Fluid,
    [property: JsonPropertyName("volumeMl"), JsonConverter(typeof(VolumeInMillilitres))] Volume Volume,
    ImmutableArray<string> Method,
    ImmutableArray<RecipePart> Parts,
    ImmutableArray<string> For);

/// <summary>One part of a recipe.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Volume">Volume to measure; null for what is weighed only.</param>
/// <param name="Mass">Mass to weigh; null where its density is not known.</param>
/// <param name="Stock">The id of the stock it is taken from; empty for what the bench does not list.</param>
public sealed record RecipePart(
    string Name,
    [property: JsonPropertyName("volumeMl"), JsonConverter(typeof(VolumeInMillilitres))] Volume? Volume,
    [property: JsonPropertyName("massG"), JsonConverter(typeof(MassInGrams))] Mass? Mass,
    string Stock = "");

/// <summary>One thing to buy.</summary>
/// <param name="Item">What it is.</param>
/// <param name="Pack">The size of the pack, or the amount needed where the bench lists no packs.</param>
/// <param name="Count">How many packs.</param>
/// <param name="Price">Of all of them; null where the bench gives none.</param>
/// <param name="LeadDays">Calendar days until it is there.</param>
public sealed record PlannedPurchase(string Item, string Pack, int Count, [property: JsonConverter(typeof(MoneyJson))] Money? Price, int LeadDays)
{
    /// <summary>The ids of the steps that wait for it.</summary>
    public ImmutableArray<string> For { get; init; } = [];
}

/// <summary>The books of one material through the plan: <c>used + left = on hand + bought</c>, exactly.</summary>
/// <param name="Id">Its id in the plan.</param>
/// <param name="Name">What it is.</param>
/// <param name="Kind"><c>fluid</c>, <c>salt</c>, <c>water</c>, <c>consumable</c>, <c>tool</c> or <c>vessel</c> (one that is bought).</param>
/// <param name="Unit"><c>mL</c>, <c>g</c> or <c>pieces</c>.</param>
/// <param name="OnHand">Usable on the shelf before.</param>
/// <param name="Bought">Bought; of tap water, drawn.</param>
/// <param name="Used">Used up, reserve of working fluids included.</param>
/// <param name="Left">On the shelf afterwards; negative where something is lacking that nobody sells.</param>
public sealed record PlannedMaterial(string Id, string Name, string Kind, string Unit, decimal OnHand, decimal Bought, decimal Used, decimal Left)
{
    /// <summary>On the shelf, but not to be used: expired, of unknown strength, spent.</summary>
    public decimal Unusable { get; init; }

    /// <summary>Of what is left, pieces that must be there although they are not used up.</summary>
    public decimal Reserve { get; init; }

    /// <summary>Of things, how often a piece is used.</summary>
    public long Uses { get; init; }

    /// <summary>From which bottles, in the order of drawing.</summary>
    public ImmutableArray<MaterialDraw> Draws { get; init; } = [];

    /// <summary>The ids of the steps that use it.</summary>
    public ImmutableArray<string> For { get; init; } = [];
}

/// <summary>What is taken from one bottle.</summary>
/// <param name="Stock">The id of the stock, <c>bought</c>, or where else it comes from.</param>
/// <param name="Amount">How much, in the material's unit.</param>
public sealed record MaterialDraw(string Stock, decimal Amount);

/// <summary>What the plan costs. Each is null where the bench gives no prices for it.</summary>
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
    /// <summary>What stays on the shelf of the materials that the plan touches is worth.</summary>
    [JsonConverter(typeof(MoneyJson))]
    public Money? LeftOnShelf { get; init; }

    /// <summary>What tools that last lose by being used.</summary>
    [JsonConverter(typeof(MoneyJson))]
    public Money? Wear { get; init; }

    /// <summary>Disposal by class of waste.</summary>
    public ImmutableArray<DisposalCost> DisposalByClass { get; init; } = [];

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
/// <param name="Class">The class, kebab-case.</param>
/// <param name="Cost">Its cost.</param>
public sealed record DisposalCost(string Class, [property: JsonConverter(typeof(MoneyJson))] Money Cost);

/// <summary>Something that leaves the plan.</summary>
/// <param name="What">What it is.</param>
/// <param name="Volume">How much.</param>
/// <param name="Class">What kind of waste.</param>
/// <param name="Destination">Where it goes; never empty.</param>
/// <param name="Step">The id of the step it comes from.</param>
public sealed record PlannedWaste(
    string What,
    [property: JsonPropertyName("volumeMl"), JsonConverter(typeof(VolumeInMillilitres))] Volume Volume,
    string Class,
    string Destination,
    string Step)
{
    /// <summary>What becomes of it: <c>kept-for-reuse</c>, <c>collected-as-hazardous</c>, <c>collected-as-clinical</c>, <c>drained-where-allowed</c>.</summary>
    public string Way { get; init; } = "";

    /// <summary>Of things, how many; the volume is then 0.</summary>
    public long Pieces { get; init; }

    /// <summary>Of fixative that is kept, how many specimens it will have served.</summary>
    public int Uses { get; init; }
}

/// <summary>One volume of one fluid from where it was to where it goes.</summary>
/// <param name="Fluid">The fluid.</param>
/// <param name="Volume">How much.</param>
/// <param name="From">A recipe, the tap, or a step's id.</param>
/// <param name="To">A step's id, the body, the final vessel, or a waste destination.</param>
public sealed record FluidMove(
    string Fluid,
    [property: JsonPropertyName("volumeMl"), JsonConverter(typeof(VolumeInMillilitres))] Volume Volume,
    string From,
    string To);
