using System.Text.Json;
using System.Text.Json.Serialization;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Notation;
using UnitsNet;

namespace Protocolist.Plans;

/// <summary>Something that a step needs on the table.</summary>
/// <param name="From">Where it comes from.</param>
[JsonConverter(typeof(StepMaterialJson))]
public sealed record StepMaterial(MaterialOrigin From)
{
    private static readonly Phrase SoMuch = new("measured.volume", "{amount}");

    private static readonly Phrase SoMany = new("measured.pieces", "{n}");

    private static readonly Phrase[] Origins =
    [
        new("material-origin.shelf", "shelf"),
        new("material-origin.purchase", "purchase"),
        new("material-origin.shelf-and-purchase", "shelf and purchase"),
        new("material-origin.tap", "tap"),
        new("material-origin.recipe", "recipe"),
        new("material-origin.vessel", "vessel"),
        new("material-origin.not-listed", "not listed"),
        new("material-origin.lacking", "lacking"),
    ];

    /// <summary>The fluid; null for vessels and things.</summary>
    public Fluid? Fluid { get; init; }

    /// <summary>Of a fluid, how much.</summary>
    public Volume Volume { get; init => field = Grid.On(value); } = Volume.FromMilliliters(0);

    /// <summary>Of vessels and things, how many; 0 for a fluid.</summary>
    public long Pieces { get; init; }

    /// <summary>What it is.</summary>
    public Message Name
    {
        get => Fluid is null ? field : Message.Text(Fluid.Name);
        init;
    }

    /// <summary>The id of the fluid, the vessel or the stock item; of what the bench does not list, the plan's own name for it.</summary>
    public string Id
    {
        get => Fluid is null ? field : Slug.Of(Fluid.Name);
        init;
    } = "";

    /// <summary>How much, as a person measures it out.</summary>
    public Message HowMuch => Measured(Volume, Pieces);

    /// <summary>Where it comes from, in words.</summary>
    public Message FromWords => Origins.At((int)From);

    /// <summary>An amount as a person measures it out: what a cylinder reads, a bare number of pieces.</summary>
    internal static Message Measured(Volume volume, long pieces) => pieces > 0 ? SoMany.With(("n", pieces)) : SoMuch.With(("amount", volume));
}

internal sealed class StepMaterialJson : ObjectJson<StepMaterial>
{
    protected override void Members(Utf8JsonWriter json, StepMaterial value, Language language)
    {
        json.WriteString("id", value.Id);
        Write(json, "name", value.Name, language);
        Write(json, "fluid", value.Fluid);
        json.WriteString("amount", value.HowMuch.ToString(language));
        json.WriteNumber("volumeMl", value.Volume.Milliliters);
        json.WriteNumber("pieces", value.Pieces);
        Write(json, "from", value.From);
    }

    protected override StepMaterial Of(JsonElement json, SubstanceCatalogue known)
    {
        var material = new StepMaterial(Word<MaterialOrigin>(json, "from"))
        {
            Volume = Volume.FromMilliliters(Number(json, "volumeMl")),
            Pieces = Count(json, "pieces"),
            Fluid = FluidOf(json, "fluid", known),
        };
        return material.Fluid is null ? material with { Id = Text(json, "id"), Name = Said(json, "name") } : material;
    }
}
