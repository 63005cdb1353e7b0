using System.Collections.Frozen;
using System.Text.Json;

namespace Protocolist.Reading;

/// <summary>The values of an enumeration as kebab-case words of a file.</summary>
internal static class EnumWords<T>
    where T : struct, Enum
{
    private static readonly FrozenDictionary<string, T> ByWord =
        Enum.GetValues<T>().ToFrozenDictionary(v => JsonNamingPolicy.KebabCaseLower.ConvertName(v.ToString()), StringComparer.Ordinal);

    public static IReadOnlyCollection<string> All => ByWord.Keys;

    public static T Parse(string word) => ByWord[word];

    private static readonly FrozenDictionary<T, string> ByValue = ByWord.GroupBy(w => w.Value).ToFrozenDictionary(g => g.Key, g => g.First().Key);

    public static string Of(T value) => ByValue[value];
}
