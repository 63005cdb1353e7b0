using System.Globalization;
using System.Text.Json;
using Protocolist.Findings;

namespace Protocolist.Plans;

/// <summary>
/// Where the file of a plan says other than the plan that was read of it: a key that no plan has, a part that is not there, a number or a yes that the other
/// facts do not bear out. Texts may differ: where there are facts beside them they are words, and may be of another language.
/// </summary>
internal static class ReadBack
{
    private static readonly Phrase NoSuchKey = new("plan-impossible.unknown-key", "no plan has '{path}'");
    private static readonly Phrase GivenTwice = new("plan-impossible.key-twice", "'{path}' is there twice");
    private static readonly Phrase TooMany = new("plan-impossible.length", "'{path}' has {given} items, and by the rest of the plan {reckoned}");
    private static readonly Phrase Otherwise = new("plan-impossible.otherwise", "'{path}' is {given}, and by the rest of the plan {reckoned}");

    /// <summary>What the file has otherwise than the plan, each with its path.</summary>
    public static IEnumerable<Message> Differences(JsonElement file, JsonElement plan, string path = "")
    {
        if (KindOf(file) != KindOf(plan)) return [Told(Otherwise, path, Shown(file), Shown(plan))];
        return file.ValueKind switch
        {
            JsonValueKind.Object => OfObjects(file, plan, path.Length > 0 ? path + "." : ""),
            JsonValueKind.Array when file.GetArrayLength() != plan.GetArrayLength() =>
                [Told(TooMany, path, file.GetArrayLength(), plan.GetArrayLength())],
            JsonValueKind.Array => file.EnumerateArray().Zip(plan.EnumerateArray())
                .SelectMany((pair, i) => Differences(pair.First, pair.Second, string.Create(CultureInfo.InvariantCulture, $"{path}[{i}]"))),
            JsonValueKind.Number => IsSame(file, plan) ? [] : [Told(Otherwise, path, Shown(file), Shown(plan))],
            JsonValueKind.True or JsonValueKind.False => file.ValueKind == plan.ValueKind ? [] : [Told(Otherwise, path, Shown(file), Shown(plan))],
            _ => [],
        };
    }

    private static IEnumerable<Message> OfObjects(JsonElement file, JsonElement plan, string path)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var part in file.EnumerateObject())
        {
            if (!seen.Add(part.Name)) yield return GivenTwice.With(("path", path + part.Name));
            else if (!plan.TryGetProperty(part.Name, out var known)) yield return NoSuchKey.With(("path", path + Excerpt.Of(part.Name)));
            else foreach (var difference in Differences(part.Value, known, path + part.Name)) yield return difference;
        }

        foreach (var part in plan.EnumerateObject().Where(p => !seen.Contains(p.Name))) yield return FaultyParts.MissingAt(path + part.Name);
    }

    private static JsonValueKind KindOf(JsonElement json) => json.ValueKind == JsonValueKind.False ? JsonValueKind.True : json.ValueKind;

    private static bool IsSame(JsonElement one, JsonElement other) =>
        one.TryGetDecimal(out var a) && other.TryGetDecimal(out var b) ? a == b : one.GetDouble().Equals(other.GetDouble());

    private static string Shown(JsonElement json) => json.ValueKind switch
    {
        JsonValueKind.Object => "{…}",
        JsonValueKind.Array => "[…]",
        _ => Excerpt.Of(json.GetRawText()),
    };

    private static Message Told(Phrase phrase, string path, Argument given, Argument reckoned) => phrase.With(("path", path), given, reckoned);

    private static Message Told(Phrase phrase, string path, string given, string reckoned) => Told(phrase, path, ("given", given), ("reckoned", reckoned));

    private static Message Told(Phrase phrase, string path, int given, int reckoned) => Told(phrase, path, ("given", given), ("reckoned", reckoned));
}
