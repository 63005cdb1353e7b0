using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Quantities;

namespace Protocolist.Plans;

/// <summary>One thing to buy.</summary>
/// <param name="Item">What it is.</param>
/// <param name="Pack">What one pack holds, or the amount needed where the bench lists no packs.</param>
/// <param name="Count">How many packs.</param>
/// <param name="Price">Of all of them; null where the bench gives none.</param>
/// <param name="LeadDays">Calendar days until it is there.</param>
[JsonConverter(typeof(PlannedPurchaseJson))]
public sealed record PlannedPurchase(Message Item, Amount Pack, int Count, Money? Price, int LeadDays)
{
    private readonly ValueList<string> _for = [];

    /// <summary>The id of the material in the plan's books; empty where they do not have it.</summary>
    public string Id { get; init; } = "";

    /// <summary>The ids of the steps that wait for it.</summary>
    public ImmutableArray<string> For { get => _for; init => _for = value; }
}

internal sealed class PlannedPurchaseJson : ObjectJson<PlannedPurchase>
{
    protected override void Members(Utf8JsonWriter json, PlannedPurchase value, Language language)
    {
        json.WriteString("id", value.Id);
        Write(json, "item", value.Item, language);
        json.WriteString("pack", value.Pack.ToString());
        Write(json, "pack", value.Pack);
        json.WriteNumber("count", value.Count);
        Write(json, "price", value.Price);
        json.WriteNumber("leadDays", value.LeadDays);
        Write(json, "for", value.For);
    }

    protected override PlannedPurchase Of(JsonElement json, SubstanceCatalogue known) =>
        new(Said(json, "item"), AmountOf(json, "pack"), Whole(json, "count"), MoneyOf(json, "price"), Whole(json, "leadDays"))
        {
            Id = Text(json, "id"),
            For = Texts(json, "for"),
        };
}
