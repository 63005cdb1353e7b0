namespace Protocolist.Findings;

/// <summary>Words in the order of a closed list.</summary>
internal static class WordTables
{
    /// <summary>The word of a value; a number that is no value of the list is a caller's bug.</summary>
    public static T At<T>(this ReadOnlySpan<T> words, int value) =>
        value >= 0 && value < words.Length ? words[value] : throw new ArgumentOutOfRangeException(nameof(value), value, "This is no value of its list.");

    /// <inheritdoc cref="At{T}(ReadOnlySpan{T}, int)"/>
    public static T At<T>(this T[] words, int value) => At((ReadOnlySpan<T>)words, value);
}
