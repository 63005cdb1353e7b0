using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Fluids;

namespace Protocolist.Plans;

/// <summary>What sort of material a plan books.</summary>
public enum MaterialKind
{
    /// <summary>A liquid that has a strength.</summary>
    Fluid,

    /// <summary>A salt or another solid that is weighed.</summary>
    Salt,

    /// <summary>Water, from the shelf or the tap.</summary>
    Water,

    /// <summary>Something counted that is used up.</summary>
    Consumable,

    /// <summary>Something counted that lasts.</summary>
    Tool,

    /// <summary>A vessel that is bought.</summary>
    Vessel,
}

/// <summary>Where a material comes from.</summary>
public enum MaterialOrigin
{
    /// <summary>From the bench's stock.</summary>
    Shelf,

    /// <summary>It is bought.</summary>
    Purchase,

    /// <summary>A part of it is there, the rest is bought.</summary>
    ShelfAndPurchase,

    /// <summary>From the tap or another source of water.</summary>
    Tap,

    /// <summary>It is made by a recipe of the plan.</summary>
    Recipe,

    /// <summary>It is one of the bench's vessels.</summary>
    Vessel,

    /// <summary>The bench does not list it; it has to be found.</summary>
    NotListed,

    /// <summary>The shelf does not hold it, and it cannot be bought.</summary>
    Lacking,
}

/// <summary>The books of one material through the plan: <c>used + left = on hand + bought</c>, exactly.</summary>
/// <param name="Id">Its id in the plan.</param>
/// <param name="Name">What it is.</param>
/// <param name="Kind">What sort of material it is.</param>
/// <param name="OnHand">Usable on the shelf before; all amounts of one material are measured alike.</param>
/// <param name="Bought">Bought; of tap water, drawn.</param>
/// <param name="Used">Used up, reserve of working fluids included.</param>
/// <param name="Left">On the shelf afterwards; negative where something is lacking that nobody sells.</param>
[JsonConverter(typeof(PlannedMaterialJson))]
public sealed record PlannedMaterial(string Id, Message Name, MaterialKind Kind, Amount OnHand, Amount Bought, Amount Used, Amount Left)
{
    private readonly ValueList<MaterialDraw> _draws = [];
    private readonly ValueList<string> _for = [];

    /// <summary>On the shelf, but not to be used: expired, of unknown strength, spent.</summary>
    public Amount Unusable { get; init; } = Amount.Zero(OnHand.Kind);

    /// <summary>Of what is left, pieces that must be there although they are not used up.</summary>
    public Amount Reserve { get; init; } = Amount.Zero(OnHand.Kind);

    /// <summary>Of things, how often a piece is used.</summary>
    public long Uses { get; init; }

    /// <summary>Where what is used comes from, in the order of drawing.</summary>
    public ImmutableArray<MaterialDraw> Draws { get => _draws; init => _draws = value; }

    /// <summary>The ids of the steps that use it.</summary>
    public ImmutableArray<string> For { get => _for; init => _for = value; }
}

/// <summary>What is taken from one bottle or another place.</summary>
/// <param name="From">Where it comes from.</param>
/// <param name="Stock">The id of the bottle; empty for what does not come from the shelf.</param>
/// <param name="Amount">How much.</param>
public readonly record struct MaterialDraw(MaterialOrigin From, string Stock, Amount Amount);

internal sealed class PlannedMaterialJson : ObjectJson<PlannedMaterial>
{
    private static readonly string[] Units = ["mL", "g", "pieces"];

    protected override void Members(Utf8JsonWriter json, PlannedMaterial value, Language language)
    {
        json.WriteString("id", value.Id);
        Write(json, "name", value.Name, language);
        Write(json, "kind", value.Kind);
        json.WriteString("unit", Units[(int)value.OnHand.Kind]);
        json.WriteNumber("onHand", InUnit(value.OnHand));
        json.WriteNumber("bought", InUnit(value.Bought));
        json.WriteNumber("used", InUnit(value.Used));
        json.WriteNumber("left", InUnit(value.Left));
        json.WriteNumber("unusable", InUnit(value.Unusable));
        json.WriteNumber("reserve", InUnit(value.Reserve));
        json.WriteNumber("uses", value.Uses);
        json.WriteStartArray("draws");
        foreach (var draw in value.Draws)
        {
            json.WriteStartObject();
            Write(json, "from", draw.From);
            json.WriteString("stock", draw.Stock);
            json.WriteNumber("amount", InUnit(draw.Amount));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        Write(json, "for", value.For);
    }

    protected override PlannedMaterial Of(JsonElement json, SubstanceCatalogue known)
    {
        var unit = Array.IndexOf(Units, Text(json, "unit"));
        if (unit < 0) throw new JsonException("A material needs a unit.");
        MaterialDraw Draw(JsonElement draw) => new(Word<MaterialOrigin>(draw, "from"), Text(draw, "stock"), Measured(draw, "amount"));
        Amount Measured(JsonElement of, string name) => FromUnit((AmountKind)unit, Decimal(of, name));
        var used = new PlannedMaterial(
            Text(json, "id"), Said(json, "name"), Word<MaterialKind>(json, "kind"),
            Measured(json, "onHand"), Measured(json, "bought"), Measured(json, "used"), Measured(json, "left"));
        return used with
        {
            Unusable = Measured(json, "unusable"),
            Reserve = Measured(json, "reserve"),
            Uses = Count(json, "uses"),
            Draws = [.. Part(json, "draws").EnumerateArray().Select(Draw)],
            For = Texts(json, "for"),
        };
    }
}
