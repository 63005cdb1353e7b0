using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids.Mixing;

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

/// <summary>How a fluid is made, one way a line.</summary>
/// <param name="made">The recipe as it was reckoned.</param>
internal sealed class RecipeTelling(Func<Recipe> made) : Telling
{
    private static readonly Phrase Or = new("recipe.or", "or: {way}");

    public override ImmutableArray<Message> Sentences =>
        made() is var recipe && recipe.AddWater is { IsEmpty: false } add ? [recipe.MakeUp, Or.With(("way", add))] : [recipe.MakeUp];
}
