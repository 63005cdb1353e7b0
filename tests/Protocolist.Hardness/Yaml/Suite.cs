using System.Text.Json;
using Protocolist.Findings;
using Protocolist.Reading;

namespace Protocolist.Hardness.Yaml;

/// <summary>
/// The public YAML test suite against the reader of our files. What our files narrow on purpose is counted by its finding; nothing wrong may be
/// accepted, and nothing read otherwise.
/// </summary>
internal static class Suite
{
    /// <summary>What YAML has and our files have not, by the finding that says so.</summary>
    private static readonly Dictionary<string, string> Narrower = new(StringComparer.Ordinal)
    {
        ["anchors-not-allowed"] = "no anchors: a value stands where it is used, or under a name",
        ["aliases-not-allowed"] = "no aliases: a value stands where it is used, or under a name",
        ["tags-not-allowed"] = "no tags: the key says what a value is",
        ["second-document"] = "one document a file",
        ["empty-file"] = "an empty file is a mistake",
        ["key-not-a-word"] = "a key is a word on one line",
        ["duplicate-key"] = "a key stands once",
        ["tab-indentation"] = "no tab indents, not even where YAML would let one",
        ["unreadable-character"] = "no character that nobody sees",
    };

    /// <summary>Sound cases that the parser cannot read. Each is refused with its place, none is read otherwise, and nobody writes a protocol so.</summary>
    private static readonly Dictionary<string, string> Unread = new(StringComparer.Ordinal)
    {
        ["4MUZ-2"] = "in braces, a key on one line and its colon on the next",
        ["VJP3-1"] = "in braces, a key on one line and its colon on the next",
        ["DK95-4"] = "a line of nothing but a tab",
        ["JEF9-1"] = "a kept block text of nothing but blanks",
        ["JEF9-2"] = "a kept block text of nothing but blanks",
    };

    public static int Run(string path)
    {
        var (right, narrower, unread, wrong) = (0, new SortedDictionary<string, List<string>>(StringComparer.Ordinal), new List<string>(), new List<string>());
        using var document = JsonDocument.Parse(File.ReadAllText(path));
        foreach (var given in document.RootElement.EnumerateArray())
        {
            var id = given.GetProperty("id").GetString()!;
            var mustFail = given.TryGetProperty("fail", out var fail) && fail.GetBoolean();
            var read = DocumentReader.Read(new("case.yaml", given.GetProperty("yaml").GetString()!));
            var error = read.Findings.FirstOrDefault(f => f.Severity == Severity.Error);
            if (mustFail)
            {
                if (error is null) wrong.Add($"{id}: wrong, and accepted");
                else right++;
            }
            else if (error is not null)
            {
                if (Unread.ContainsKey(id) && error.Id == "yaml-syntax") unread.Add(id);
                else if (!Narrower.ContainsKey(error.Id)) wrong.Add($"{id}: sound, and refused: {error}");
                else if (narrower.TryGetValue(error.Id, out var cases)) cases.Add(id);
                else narrower[error.Id] = [id];
            }
            else if (Events(given.GetProperty("tree").GetString()!) is var meant && string.Concat(Events(read.Value!)) is var ours && ours != meant)
            {
                wrong.Add($"{id}: read as {ours}, and means {meant}");
            }
            else
            {
                right++;
            }
        }

        Console.WriteLine($"{right} read or refused as the suite has it");
        foreach (var (id, cases) in narrower) Console.WriteLine($"{cases.Count} refused by {id} ({Narrower[id]}): {string.Join(' ', cases)}");
        foreach (var id in unread) Console.WriteLine($"1 refused that the parser cannot read: {id}, {Unread[id]}");
        foreach (var line in wrong) Console.WriteLine(ShownText.Line(line));
        var explained = right + narrower.Values.Sum(c => c.Count) + unread.Count;
        Console.WriteLine($"{explained} of {explained + wrong.Count} explained");
        return wrong.Count == 0 ? 0 : 1;
    }

    /// <summary>The suite's own tree without styles; of a scalar only its value.</summary>
    private static string Events(string tree) => string.Concat(
        tree.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(l => l.TrimStart()).Where(l => l[1..4] is not ("STR" or "DOC"))
            .Select(l => l[..4] == "=VAL" ? $"={Value(l)};" : l[..4] + ";"));

    private static string Value(string line)
    {
        // A tag that changes nothing may stand before the value.
        var from = line.StartsWith("=VAL <", StringComparison.Ordinal) ? line.IndexOf("> ", StringComparison.Ordinal) + 2 : 5;
        var plain = line[from] == ':';
        var value = line[(from + 1)..];
        return plain && value is "~" or "null" ? "" : value;
    }

    private static IEnumerable<string> Events(DocumentNode node)
    {
        switch (node)
        {
            case ScalarNode scalar:
                yield return $"={Escaped(scalar.Value)};";
                break;
            case SequenceNode list:
                yield return "+SEQ;";
                foreach (var text in list.Items.SelectMany(Events)) yield return text;
                yield return "-SEQ;";
                break;
            case MappingNode mapping:
                yield return "+MAP;";
                foreach (var text in mapping.Entries.SelectMany(e => Events(e.Key).Concat(Events(e.Value)))) yield return text;
                yield return "-MAP;";
                break;
        }
    }

    private static string Escaped(string value) => value.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\n", "\\n", StringComparison.Ordinal)
        .Replace("\t", "\\t", StringComparison.Ordinal).Replace("\b", "\\b", StringComparison.Ordinal).Replace("\r", "\\r", StringComparison.Ordinal);
}
