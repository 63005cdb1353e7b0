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
public sealed record PlannedPurchase(string Item, string Pack, int Count, [property: JsonConverter(typeof(MoneyJson))] Money? Price, int LeadDays);

/// <summary>What the plan costs. Each is null where the bench gives no prices for it.</summary>
/// <param name="Cash">To spend now.</param>
/// <param name="Used">Worth of what is used up.</param>
/// <param name="Labour">Hands-on time at the bench's rate.</param>
/// <param name="Disposal">Taking away of what is spent.</param>
public sealed record PlanCosts(
    [property: JsonConverter(typeof(MoneyJson))] Money? Cash,
    [property: JsonConverter(typeof(MoneyJson))] Money? Used,
    [property: JsonConverter(typeof(MoneyJson))] Money? Labour,
    [property: JsonConverter(typeof(MoneyJson))] Money? Disposal);

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
    string Step);

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
