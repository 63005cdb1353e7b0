using FsCheck;
using FsCheck.Fluent;

namespace Protocolist.Testing;

/// <summary>Makes a good text nearly good: a few characters cut out, doubled, swapped or put in.</summary>
internal static class Damage
{
    private static readonly string[] Insertions =
    [
        "(", ")", "\"", "-", "+", "/", "*", ",", ".", " ", "to", "at least ", "not ", "is ", "±", "%", "e", "1", "kg", "ß", "−", "\t", "\n",
        "\u00A0", "\uD83D",
    ];

    /// <summary>One to three damages to a text.</summary>
    public static Gen<string> Of(string text) =>
        from times in Gen.Choose(1, 3)
        from seeds in Gen.ArrayOf(Gen.Choose(0, int.MaxValue - 1), times * 3)
        select Enumerable.Range(0, times).Aggregate(text, (t, i) => Once(t, seeds[3 * i], seeds[(3 * i) + 1], seeds[(3 * i) + 2]));

    /// <summary>The text with one run of characters left out.</summary>
    public static IEnumerable<string> Shrink(string text)
    {
        for (var length = text.Length / 2; length > 0; length /= 2)
        {
            for (var at = 0; at + length <= text.Length; at += length) yield return text.Remove(at, length);
        }
    }

    private static string Once(string text, int kind, int place, int what)
    {
        var at = place % (text.Length + 1);
        if (text.Length < 2 || at >= text.Length - 1) return text + Insertions[what % Insertions.Length];
        return (kind % 4) switch
        {
            0 => text.Remove(at, 1),
            1 => text.Insert(at, text[at].ToString()),
            2 => string.Concat(text.AsSpan(0, at), [text[at + 1], text[at]], text.AsSpan(at + 2)),
            _ => text.Insert(at, Insertions[what % Insertions.Length]),
        };
    }
}
