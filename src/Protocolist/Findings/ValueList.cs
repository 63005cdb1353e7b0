using System.Collections.Immutable;
using System.Runtime.CompilerServices;

namespace Protocolist.Findings;

/// <summary>
/// A list as a record keeps it. Lists compare by what is in them, so that a record of facts and lists is equal by value without a word of its own;
/// to whoever reads the record it is an <see cref="ImmutableArray{T}"/>.
/// </summary>
[CollectionBuilder(typeof(ValueList), nameof(ValueList.Of))]
internal readonly struct ValueList<T>(ImmutableArray<T> items) : IEquatable<ValueList<T>>
{
    private readonly ImmutableArray<T> _items = items;

    public static implicit operator ValueList<T>(ImmutableArray<T> items) => new(items);

    public static implicit operator ImmutableArray<T>(ValueList<T> list) => list._items;

    public ImmutableArray<T>.Enumerator GetEnumerator() => _items.GetEnumerator();

    public bool Equals(ValueList<T> other) => _items == other._items || _items.AsSpan().SequenceEqual(other._items.AsSpan(), EqualityComparer<T>.Default);

    public override bool Equals(object? obj) => obj is ValueList<T> other && Equals(other);

    public override int GetHashCode()
    {
        var hash = new HashCode();
        foreach (var item in _items.AsSpan()) hash.Add(item);
        return hash.ToHashCode();
    }
}

/// <summary>Makes them from <c>[…]</c>.</summary>
internal static class ValueList
{
    public static ValueList<T> Of<T>(ReadOnlySpan<T> items) => new(ImmutableArray.Create(items));
}

/// <summary>Names and their texts as a record keeps them: in the order of their characters, and equal to others of the same.</summary>
internal readonly struct ValueMap<T>(ImmutableSortedDictionary<string, T> pairs) : IEquatable<ValueMap<T>>
{
    private readonly ImmutableSortedDictionary<string, T> _pairs = pairs.WithComparers(StringComparer.Ordinal);

    public static ValueMap<T> Empty { get; } = ImmutableSortedDictionary<string, T>.Empty;

    public static implicit operator ValueMap<T>(ImmutableSortedDictionary<string, T> pairs) => new(GivenList.Of(pairs));

    public static implicit operator ImmutableSortedDictionary<string, T>(ValueMap<T> map) => map._pairs;

    public bool Equals(ValueMap<T> other) => ReferenceEquals(_pairs, other._pairs) || _pairs.SequenceEqual(other._pairs);

    public override bool Equals(object? obj) => obj is ValueMap<T> other && Equals(other);

    public override int GetHashCode()
    {
        var hash = new HashCode();
        foreach (var pair in _pairs) hash.Add(pair);
        return hash.ToHashCode();
    }
}
