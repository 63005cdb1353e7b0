using System.Collections.Immutable;

namespace Protocolist.Findings;

/// <summary>Lists as a program gives them to a record.</summary>
internal static class GivenList
{
    /// <summary>A list that was never made is empty; one with a hole is the caller's bug.</summary>
    public static ImmutableArray<T> Of<T>(ImmutableArray<T> items)
        where T : class
    {
        if (items.IsDefault) return [];
        foreach (var item in items)
        {
            if (item is null) throw new ArgumentException("An item of the list is missing.", nameof(items));
        }

        return items;
    }

    /// <summary>Pairs of which each has both sides.</summary>
    public static ImmutableSortedDictionary<string, T> Of<T>(ImmutableSortedDictionary<string, T> pairs)
    {
        ArgumentNullException.ThrowIfNull(pairs);
        foreach (var (key, value) in pairs)
        {
            if (value is null) throw new ArgumentException($"'{key}' has no value.", nameof(pairs));
        }

        return pairs;
    }
}
