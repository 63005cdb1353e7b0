using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Fluids.Mixing;
using UnitsNet;

namespace Protocolist.Plans;

/// <summary>What is told of a step or a recipe: a closed union. Two are equal that say the same, whether it was planned or read.</summary>
internal abstract class Telling : IEquatable<Telling>
{
    private protected Telling()
    {
    }

    /// <summary>Sentence by sentence; made when somebody reads.</summary>
    public abstract ImmutableArray<Message> Sentences { get; }

    public bool Equals(Telling? other) => ReferenceEquals(this, other) || (other is not null && Sentences.AsSpan().SequenceEqual(other.Sentences.AsSpan()));

    public override bool Equals(object? obj) => Equals(obj as Telling);

    /// <summary>To be hashed is no reason to make sentences.</summary>
    public override int GetHashCode() => 0;
}

/// <summary>Sentences as they were written.</summary>
internal sealed class WrittenTelling(ImmutableArray<Message> sentences) : Telling
{
    public static WrittenTelling Nothing { get; } = new([]);

    public override ImmutableArray<Message> Sentences => sentences;
}

/// <summary>The work of a step between the protocol's own words on how it is done and its remark.</summary>
internal sealed class WorkTelling(Message how, StepWork work, StepFacts facts, Message note) : Telling
{
    public override ImmutableArray<Message> Sentences => [.. Said(how), .. work.Instructions(facts), .. Said(note)];

    private static ReadOnlySpan<Message> Said(Message words) => words.IsEmpty ? [] : new Message[] { words };
}

/// <summary>How a fluid is made, one way a line.</summary>
internal sealed class RecipeTelling(Fluid fluid, Volume volume, Temperature at, ImmutableArray<PlannedPart> made) : Telling
{
    private static readonly Phrase Or = new("recipe.or", "or: {way}");

    public override ImmutableArray<Message> Sentences
    {
        get
        {
            ImmutableArray<RecipePart> parts = [.. made.Select(p => new RecipePart(p.Name.ToString(), p.Volume, p.Mass)
            {
                Fluid = p.Fluid,
                Salt = p.Salt,
            })];
            var recipe = new Recipe(fluid, volume, at, parts, Volume.Zero);
            return recipe.AddWater is { IsEmpty: false } add ? [recipe.MakeUp, Or.With(("way", add))] : [recipe.MakeUp];
        }
    }
}
