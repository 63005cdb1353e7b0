using System.Text.Json;
using System.Text.Json.Serialization;
using Protocolist.Benches;
using Protocolist.Benches.Disposal;
using Protocolist.Findings;
using Protocolist.Fluids;

namespace Protocolist.Plans;

/// <summary>Something that leaves the plan.</summary>
/// <param name="Class">What kind of waste.</param>
/// <param name="Amount">How much: a volume, or a number of pieces.</param>
/// <param name="Way">What becomes of it.</param>
/// <param name="Destination">Where it goes: the vessel, drum or permission; never empty.</param>
/// <param name="Step">The id of the step it comes from; empty for what is left where a fluid was made.</param>
[JsonConverter(typeof(PlannedWasteJson))]
public sealed record PlannedWaste(WasteClass Class, Amount Amount, WasteWay Way, Message Destination, string Step)
{
    private static readonly Phrase InJugs = new("waste-in-jugs", "{fluid} left in jugs and syringes");

    /// <summary>The fluid; null for things.</summary>
    public Fluid? Fluid { get; init; }

    /// <summary>Of a fluid that is made, whether it is for lying in alone; see <see cref="PlannedRecipe.ForImmersion"/>.</summary>
    public bool ForImmersion { get; init; }

    /// <summary>What it is.</summary>
    public Message What
    {
        get => Fluid is null ? field
            : Step.Length > 0 ? Message.Text(Fluid.Name)
            : InJugs.With(("fluid", Fluid.Name));
        init;
    }

    /// <summary>Where it comes from: the step, or the recipe.</summary>
    public Message From => Step.Length > 0 || Fluid is null ? Message.Text(Step) : FluidMove.RecipeOf(Fluid, ForImmersion);

    /// <summary>How much, as a person measures it out.</summary>
    public Message HowMuch => Amount.Kind == AmountKind.Volume ? StepMaterial.Measured(Amount.Volume, 0) : StepMaterial.Measured(default, Amount.Units);

    /// <summary>The class in words.</summary>
    public Message ClassWords => Waste.Words(Class);

    /// <summary>What becomes of it in words.</summary>
    public Message WayWords => Waste.Words(Way);

    /// <summary>Of fixative that is kept, how many specimens it will have served.</summary>
    public int Uses { get; init; }
}

internal sealed class PlannedWasteJson : ObjectJson<PlannedWaste>
{
    protected override void Members(Utf8JsonWriter json, PlannedWaste value, Language language)
    {
        Write(json, "what", value.What, language);
        Write(json, "fluid", value.Fluid);
        json.WriteBoolean("forImmersion", value.ForImmersion);
        json.WriteNumber("volumeMl", value.Amount.Kind == AmountKind.Volume ? InUnit(value.Amount) : 0);
        json.WriteNumber("pieces", value.Amount.Kind == AmountKind.Count ? value.Amount.Units : 0);
        Write(json, "class", value.Class);
        Write(json, "way", value.Way);
        Write(json, "destination", value.Destination, language);
        json.WriteString("step", value.Step);
        json.WriteString("from", value.From.ToString(language));
        json.WriteNumber("uses", value.Uses);
    }

    protected override PlannedWaste Of(JsonElement json, SubstanceCatalogue known)
    {
        var (pieces, fluid) = (Count(json, "pieces"), FluidOf(json, "fluid", known));
        var amount = pieces > 0 ? Amount.Of(pieces) : FromUnit(AmountKind.Volume, Decimal(json, "volumeMl"));
        return new(Word<WasteClass>(json, "class"), amount, Word<WasteWay>(json, "way"), Said(json, "destination"), Text(json, "step"))
        {
            What = fluid is null ? Said(json, "what") : default,
            Fluid = fluid,
            ForImmersion = YesNo(json, "forImmersion"),
            Uses = Whole(json, "uses"),
        };
    }
}
