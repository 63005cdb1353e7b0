using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using Protocolist.Reading;

namespace Protocolist.Tests.Hostile;

/// <summary>A file with a text put in one place, and which place that is.</summary>
public sealed record Injected(string Place, int Line, string Text);

/// <summary>Every place of a file that holds a text of somebody's, each with another text put there.</summary>
internal static class Places
{
    /// <summary>Every key and every value of a YAML file.</summary>
    public static IEnumerable<Injected> OfYaml(string yaml, string text)
    {
        var lines = new List<int> { 0 };
        for (var i = 0; i < yaml.Length; i++)
            if (yaml[i] == '\n') lines.Add(i + 1);
        foreach (var (place, scalar) in Scalars(DocumentReader.Read(new("f.yaml", yaml)).Value!, ""))
        {
            var (from, to) = (lines[scalar.Span.Line - 1] + scalar.Span.Column - 1, lines[scalar.Span.EndLine - 1] + scalar.Span.EndColumn - 1);
            if (to == from) continue;
            yield return new(place, scalar.Span.Line, yaml[..from] + Quoted(text) + yaml[to..]);
        }
    }

    /// <summary>Every string of a JSON document, names left as they are; the texts take turns.</summary>
    public static IEnumerable<Injected> OfJson(string json, IReadOnlyList<string> texts)
    {
        var root = JsonNode.Parse(json)!;
        var i = 0;
        foreach (var (place, set, was) in Strings(root).ToList())
        {
            set(texts[i++ % texts.Count]);
            yield return new(place, 1, root.ToJsonString());
            set(was);
        }
    }

    /// <summary>Every cell of a table, the heading's too.</summary>
    public static IEnumerable<Injected> OfCsv(string[][] rows, string text)
    {
        for (var r = 0; r < rows.Length; r++)
            for (var c = 0; c < rows[r].Length; c++)
                yield return new(string.Create(CultureInfo.InvariantCulture, $"{r}.{rows[0][c]}"), r + 1, Csv(rows.Select((row, i) => i != r ? row : [.. row[..c], text, .. row[(c + 1)..]])));
    }

    /// <summary>Cells as a table, as a program would write it that means harm or knows no better.</summary>
    public static string Csv(IEnumerable<string[]> rows) =>
        string.Concat(rows.Select(row => string.Join(',', row.Select(cell => "\"" + cell.Replace("\"", "\"\"", StringComparison.Ordinal) + "\"")) + "\n"));

    private static IEnumerable<(string Place, ScalarNode Scalar)> Scalars(DocumentNode node, string place) => node switch
    {
        ScalarNode scalar => [(place, scalar)],
        SequenceNode list => list.Items.SelectMany((item, i) => Scalars(item, string.Create(CultureInfo.InvariantCulture, $"{place}[{i}]"))),
        MappingNode table => table.Entries.SelectMany(e => Scalars(e.Key, $"{place}.{e.Key.Value}(key)").Concat(Scalars(e.Value, $"{place}.{e.Key.Value}"))),
        _ => [],
    };

    private static IEnumerable<(string Place, Action<string> Set, string Was)> Strings(JsonNode node) => node switch
    {
        JsonObject table => table.SelectMany(e => Strings(e.Value, text => table[e.Key] = text)),
        JsonArray list => list.SelectMany((e, i) => Strings(e, text => list[i] = text)),
        _ => [],
    };

    private static IEnumerable<(string Place, Action<string> Set, string Was)> Strings(JsonNode? node, Action<string> set) => node switch
    {
        JsonValue value when value.GetValueKind() == System.Text.Json.JsonValueKind.String => [(value.GetPath(), set, value.GetValue<string>())],
        null => [],
        _ => Strings(node),
    };

    private static string Quoted(string text)
    {
        var quoted = new StringBuilder("\"");
        foreach (var c in text)
        {
            if (c is '"' or '\\') quoted.Append('\\').Append(c);
            else if (c is >= ' ' and < '\u007F') quoted.Append(c);
            else quoted.Append(CultureInfo.InvariantCulture, $"\\u{(int)c:X4}");
        }

        return quoted.Append('"').ToString();
    }
}
