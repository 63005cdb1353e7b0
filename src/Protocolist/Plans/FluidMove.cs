using System.Text.Json;
using System.Text.Json.Serialization;
using Protocolist.Findings;
using Protocolist.Fluids;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace Protocolist.Plans;

/// <summary>What sort of place a fluid comes from or goes to.</summary>
public enum FluidPlaceKind
{
    /// <summary>The tap or another source of water.</summary>
    Tap,

    /// <summary>Where it is made.</summary>
    Recipe,

    /// <summary>A step of the plan.</summary>
    Step,

    /// <summary>It stays in the body.</summary>
    Body,

    /// <summary>It stays in the final vessel.</summary>
    FinalVessel,

    /// <summary>It is kept ready for spills and for topping up.</summary>
    Reserve,

    /// <summary>It dries in the jugs.</summary>
    Jugs,

    /// <summary>It is collected or drained.</summary>
    Waste,

    /// <summary>There is too little of it to be collected.</summary>
    TooLittle,
}

/// <summary>A place that a fluid comes from or goes to.</summary>
/// <param name="Kind">What sort of place.</param>
/// <param name="Step">The id of the step, where it is one.</param>
/// <param name="Destination">Of waste, where it goes.</param>
public readonly record struct FluidPlace(FluidPlaceKind Kind, string Step = "", Message Destination = default);

/// <summary>One volume of one fluid from where it was to where it goes.</summary>
/// <param name="Fluid">The fluid.</param>
/// <param name="Volume">How much.</param>
/// <param name="From">A recipe, the tap, or a step.</param>
/// <param name="To">A step, the body, the final vessel, or a waste destination.</param>
[JsonConverter(typeof(FluidMoveJson))]
public sealed record FluidMove(Fluid Fluid, Volume Volume, FluidPlace From, FluidPlace To)
{
    private static readonly Phrase Recipe = new("fluid-place.recipe", "recipe: {recipe}");

    private static readonly Phrase[] Places =
    [
        new("fluid-place.tap", "tap or source"),
        Recipe,
        new("fluid-place.step", "{step}"),
        new("fluid-place.body", "stays in the body; what runs back is collected with the fixative"),
        new("fluid-place.final-vessel", "stays in the final vessel"),
        new("fluid-place.reserve", "reserve, kept labelled for topping up"),
        new("fluid-place.jugs", "dries in the jugs"),
        new("fluid-place.waste", "{destination}"),
        new("fluid-place.too-little", "too little to collect"),
    ];

    /// <summary>Whether it is the fluid that is made for lying in alone; see <see cref="PlannedRecipe.ForImmersion"/>.</summary>
    public bool ForImmersion { get; init; }

    /// <summary>
    /// Of a step's fillings, which one comes or goes: 0 is the first, at the step's start; after it comes one at each of its <see cref="Step.ChangesAt"/>.
    /// </summary>
    public int Filling { get; init; }

    /// <summary>Of what is made for a step, the vessel in which it is mixed; empty where it is not mixed, or the bench lists none.</summary>
    public string MixedIn { get; init; } = "";

    /// <summary>In how many equal batches it is mixed; 0 where it is not mixed, or with the filling of the same recipe before it.</summary>
    public int Batches { get; init; }

    /// <summary>How long somebody is busy mixing it.</summary>
    public Duration Mixing { get; init; }

    /// <summary>What people call one of its ends.</summary>
    /// <param name="place">Where it comes from or goes to.</param>
    /// <returns>The words.</returns>
    internal Message Words(FluidPlace place) => place.Kind switch
    {
        FluidPlaceKind.Recipe => RecipeOf(Fluid, ForImmersion),
        FluidPlaceKind.Step => Message.Text(place.Step),
        FluidPlaceKind.Waste => place.Destination,
        var kind => Places.At((int)kind),
    };

    /// <summary>The place where a fluid is made.</summary>
    internal static Message RecipeOf(Fluid fluid, bool forImmersion) => Recipe.With(("recipe", PlannedRecipe.NameOf(fluid, forImmersion)));
}

internal sealed class FluidMoveJson : ObjectJson<FluidMove>
{
    protected override void Members(Utf8JsonWriter json, FluidMove value, Language language)
    {
        Write(json, "fluid", value.Fluid);
        json.WriteBoolean("forImmersion", value.ForImmersion);
        json.WriteNumber("volumeMl", Grid.Round(value.Volume.Milliliters));
        json.WriteString("from", value.Words(value.From).ToString(language));
        Write(json, "fromKind", value.From.Kind);
        if (value.To.Kind == FluidPlaceKind.Waste) Write(json, "to", value.To.Destination, language);
        else json.WriteString("to", value.Words(value.To).ToString(language));
        Write(json, "toKind", value.To.Kind);
        json.WriteNumber("filling", value.Filling);
        json.WriteString("mixedIn", value.MixedIn);
        json.WriteNumber("batches", value.Batches);
        json.WriteNumber("mixingMinutes", value.Mixing.TotalMinutes);
    }

    protected override FluidMove Of(JsonElement json, SubstanceCatalogue known)
    {
        var fluid = FluidOf(json, "fluid", known) ?? throw new JsonException("A move needs a fluid.");
        return new(fluid, Volume.FromMilliliters(Number(json, "volumeMl")), Place(json, "from"), Place(json, "to"))
        {
            ForImmersion = YesNo(json, "forImmersion"),
            Filling = Whole(json, "filling"),
            MixedIn = Text(json, "mixedIn"),
            Batches = Whole(json, "batches"),
            Mixing = Grid.OnMinutes(Duration.FromMinutes(Number(json, "mixingMinutes"))),
        };
    }

    private static FluidPlace Place(JsonElement json, string end) => Word<FluidPlaceKind>(json, end + "Kind") switch
    {
        FluidPlaceKind.Step => new(FluidPlaceKind.Step, Text(json, end)),
        FluidPlaceKind.Waste => new(FluidPlaceKind.Waste, Destination: Said(json, end)),
        var kind => new(kind),
    };
}
