using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Fluids.Buffers;
using Protocolist.Fluids.Mixing;
using UnitsNet;

namespace Protocolist.Plans;

/// <summary>What to measure out to make one fluid.</summary>
/// <param name="Fluid">The fluid that is made.</param>
/// <param name="Volume">How much of it, at <see cref="At"/>.</param>
/// <param name="Parts">What goes in.</param>
/// <param name="For">The ids of the steps that use it.</param>
public sealed record PlannedRecipe(
    Fluid Fluid,
    [property: JsonPropertyName("volumeMl"), JsonConverter(typeof(VolumeInMillilitres))] Volume Volume,
    ImmutableArray<PlannedPart> Parts,
    ImmutableArray<string> For)
{
    private readonly ValueList<PlannedPart> _parts = Parts;
    private readonly ValueList<string> _for = For;

    private static readonly Phrase ForLyingIn = new("recipe-for-immersion", "{fluid}, for immersion");

    /// <summary>What goes in.</summary>
    public ImmutableArray<PlannedPart> Parts { get => _parts; init => _parts = value; }

    /// <summary>The ids of the steps that use it.</summary>
    public ImmutableArray<string> For { get => _for; init => _for = value; }

    /// <summary>Whether it is for lying in alone, so that fixative which has served before may go into it.</summary>
    public bool ForImmersion { get; init; }

    /// <summary>The temperature at which it is measured out.</summary>
    [JsonPropertyName("atC")]
    [JsonConverter(typeof(TemperatureInCelsius))]
    public Temperature At { get; init; } = Temperature.FromDegreesCelsius(20);

    /// <summary>What people call it: the fluid, and what it is for where there are two of one fluid.</summary>
    public Message Name => NameOf(Fluid, ForImmersion);

    /// <summary>How to go about it, one way a line; worked out from the parts when somebody reads it.</summary>
    public ImmutableArray<Message> Method
    {
        get => (Telling ?? new RecipeTelling(Made)).Sentences;
        init => Telling = new WrittenTelling(value);
    }

    /// <summary>How to go about it where that is settled already; null where the parts say it.</summary>
    internal Telling? Telling { get; init; }

    /// <summary>How to go about a part of it.</summary>
    /// <param name="batch">How much is made at once.</param>
    internal ImmutableArray<Message> MethodFor(Volume batch) =>
        batch.CubicMeters >= Volume.CubicMeters ? Method : new RecipeTelling(() => Made(batch)).Sentences;

    private Recipe Made() => Made(Volume);

    private Recipe Made(Volume batch)
    {
        var share = batch / Volume;
        return new(
            Fluid,
            batch,
            At,
            [.. Parts.Select(p => new RecipePart(p.Name.ToString(), p.Volume * share, p.Mass * share) { Fluid = p.Fluid, Salt = p.Salt })],
            Volume.Zero);
    }

    /// <summary>What people call a fluid that is made.</summary>
    internal static Message NameOf(Fluid fluid, bool forImmersion) => forImmersion ? ForLyingIn.With(("fluid", fluid.Name)) : Message.Text(fluid.Name);
}

/// <summary>One part of a recipe.</summary>
/// <param name="Name">What stands on the bottle.</param>
/// <param name="Volume">Volume to measure; null for what is weighed only.</param>
/// <param name="Mass">Mass to weigh.</param>
/// <param name="Stock">The id of the stock it is taken from; empty for what the bench does not list.</param>
public sealed record PlannedPart(
    Message Name,
    [property: JsonPropertyName("volumeMl"), JsonConverter(typeof(VolumeInMillilitres))] Volume? Volume,
    [property: JsonPropertyName("massG"), JsonConverter(typeof(MassInGrams))] Mass Mass,
    string Stock = "")
{
    /// <summary>The liquid; null for a salt.</summary>
    public Fluid? Fluid { get; init; }

    /// <summary>The salt; null for a liquid.</summary>
    [JsonInclude]
    [JsonConverter(typeof(SaltJson))]
    internal Salt? Salt { get; init; }
}
