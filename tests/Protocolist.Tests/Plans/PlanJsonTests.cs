using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Protocolist.Findings;
using Protocolist.Plans;
using static Protocolist.Tests.Planning.PlanFixture;

namespace Protocolist.Tests.Plans;

public class PlanJsonTests
{
    private static readonly string Written = PlanJson.Write(Otter());

    private static Checked<Plan> Read(string text) => PlanJson.Read(new("plan.json", text));

    [Fact]
    public void Plan_reads_back_equal()
    {
        var plan = Otter(("keeping", "ethanol"));

        var read = Read(PlanJson.Write(plan));

        Assert.Equal(plan, read.Value);
        Assert.Equal(plan.GetHashCode(), read.Value!.GetHashCode());
        Assert.Equal(plan.Step("fix")!.Start, read.Value.Step("fix")!.Start);
        Assert.NotEqual(plan, Otter());
    }

    [Theory]
    [InlineData("")]
    [InlineData("{\"formatVersion\": \"2\"}")]
    [InlineData("{")]
    [InlineData("[]")]
    [InlineData("\"a plan\"")]
    [InlineData("null")]
    [InlineData("{}")]
    public void Text_that_is_no_plan_is_a_finding(string text)
    {
        var read = Read(text);

        Assert.Null(read.Value);
        Assert.Equal("plan-unreadable", Assert.Single(read.Findings).Id);
    }

    [Fact]
    public void Every_part_that_is_missing_is_told_at_once()
    {
        var read = Read("{\"formatVersion\": 2, \"zone\": \"UTC\"}");

        Assert.Null(read.Value);
        Assert.All(read.Findings, f => Assert.Equal("plan-incomplete", f.Id));
        Assert.Equal(JsonNode.Parse(Written)!.AsObject().Count - 2, read.Findings.Length);
    }

    [Fact]
    public void Plan_without_its_specimen_is_told_from_text_that_is_cut_off()
    {
        var lacking = JsonNode.Parse(Written)!.AsObject();
        lacking.Remove("specimen");

        Assert.Contains("'specimen' is missing", Assert.Single(Read(lacking.ToJsonString()).Findings).ToString(), StringComparison.Ordinal);
        Assert.Contains("not JSON, or is cut off", Assert.Single(Read(Written[..^3]).Findings).ToString(), StringComparison.Ordinal);
        Assert.Contains("not JSON, or is cut off", Assert.Single(Read(Written + "x").Findings).ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1, "earlier-format")]
    [InlineData(3, "later-format")]
    public void Plan_of_another_format_is_refused_by_its_number(int format, string finding)
    {
        var read = Read(Written.Replace("\"formatVersion\": 2", $"\"formatVersion\": {format}", StringComparison.Ordinal));

        Assert.Equal(finding, Assert.Single(read.Findings).Id);
    }

    /// <summary>Every kind of value that a plan has, replaced by one of another kind, taken out, written twice, or joined by one that no plan has.</summary>
    [Fact]
    public void Damaged_plan_is_refused_with_its_place_and_never_an_exception()
    {
        var root = JsonNode.Parse(Written)!.AsObject();
        var spared = new List<string>();
        foreach (var (at, name) in Members(root, "").DistinctBy(m => Regex.Replace(m.Path, @"\d+", "0")).Select(m => (m.Object.GetPath(), m.Name)).ToList())
        {
            foreach (var wrong in (JsonNode?[])[null, JsonValue.Create("wrong"), JsonValue.Create(-1), new JsonArray(1, 2), new JsonObject { ["x"] = 1 }])
                Assert.True(Damaged(at, o => o[name] = wrong?.DeepClone()) is { Value: not null } or { HasErrors: true }, $"{at}.{name}");

            // What a specimen lacks, and which facts a message has, is its own affair.
            if (!at.Contains("specimen", StringComparison.Ordinal) && !at.Contains("facts", StringComparison.Ordinal) && name is not ("facts" or "phrase") && !at.EndsWith("choices", StringComparison.Ordinal))
            {
                var cut = Damaged(at, o => o.Remove(name));
                if (!(cut.HasErrors || name == "startable" || Words.Contains(name) || Words.Contains(at.Split('.')[^1]))) spared.Add($"{at} without {name}");
            }
        }

        Assert.Empty(spared);
        Assert.True(Damaged("$", o => o["another"] = 1).HasErrors);
        Assert.True(Damaged("$.steps[0]", o => o["another"] = 1).HasErrors);
        Assert.True(Read(Written.Replace("\"zone\":", "\"zone\": \"UTC\",\n  \"zone\":", StringComparison.Ordinal)).HasErrors);

        Protocolist.Findings.Checked<Plan> Damaged(string at, Action<JsonObject> damage)
        {
            var damaged = root.DeepClone();
            damage(At(damaged, at));
            return Read(damaged.ToJsonString());
        }
    }

    /// <summary>JSON can write a number that no machine holds: wherever it stands, the file is no plan, and no such number is written again.</summary>
    [Fact]
    public void Endless_number_is_refused_wherever_it_stands()
    {
        var numbers = Regex.Matches(Written, @"""([\w.-]+)"": (-?\d+(?:\.\d+)?)(?=\s*[,}])").DistinctBy(m => m.Groups[1].Value).Select(m => m.Groups[2]).ToList();

        Assert.True(numbers.Count > 30);
        Assert.All(numbers, n => Assert.True(Read($"{Written[..n.Index]}1e999{Written[(n.Index + n.Length)..]}").HasErrors, Written[Math.Max(0, n.Index - 60)..n.Index]));
    }

    /// <summary>Words that stand beside the facts they are made of, and are not read.</summary>
    private static readonly string[] Words = ["amount", "pack", "from", "to", "what", "name", "method", "tool"];

    private static IEnumerable<(string Path, JsonObject Object, string Name)> Members(JsonNode? node, string path) => node switch
    {
        JsonObject o => o.SelectMany(p => Members(p.Value, $"{path}.{p.Key}").Prepend(($"{path}.{p.Key}", o, p.Key))),
        JsonArray a => a.SelectMany((item, i) => Members(item, $"{path}[{i}]")),
        _ => [],
    };

    /// <summary>The object at a path such as <c>$.steps[3].sites[0]</c>.</summary>
    private static JsonObject At(JsonNode root, string path) =>
        path.Split('.', '[').Skip(1).Aggregate(root, (node, part) => part.EndsWith(']') ? node[int.Parse(part[..^1], CultureInfo.InvariantCulture)]! : node[part]!).AsObject();

    [Fact]
    public void Fault_is_found_at_its_line()
    {
        var lines = Written.Split('\n');
        var line = Array.FindIndex(lines, l => l.Contains("\"leastHours\"", StringComparison.Ordinal));
        lines[line] = lines[line].Replace(": ", ": \"long\" ", StringComparison.Ordinal);

        Assert.Equal(line + 1, Assert.Single(Read(string.Join('\n', lines)).Findings).Where.Line);
    }

    /// <summary>Every character that <see cref="ShownText"/> writes out, in the text and in the bytes alike; reading refuses it with its place.</summary>
    [Fact]
    public void Bytes_are_those_of_the_text_and_hold_nothing_that_is_obeyed()
    {
        var hidden = string.Concat(Enumerable.Range(0, 0x10000).Where(c => c is < 0xD800 or > 0xDFFF && ShownText.FirstUnfit(((char)c).ToString()) >= 0).Select(c => (char)c));
        foreach (var notes in (string[])["plain – µ ° ≤ 𓆏", $"a{hidden}b"])
        {
            var plan = Otter();
            plan = plan with { Specimen = plan.Specimen with { Notes = notes } };
            using var bytes = new MemoryStream();

            PlanJson.Write(plan, bytes);

            var text = System.Text.Encoding.UTF8.GetString(bytes.ToArray());
            Assert.Equal(PlanJson.Write(plan), text);
            Assert.Same(text, ShownText.Lines(text));
            var read = Read(text);
            if (notes.EndsWith('b')) Assert.Equal("plan-impossible", Assert.Single(read.Findings).Id);
            else Assert.Equal(notes, read.Value!.Specimen.Notes);
        }
    }

    [Fact]
    public void Json_keeps_units_in_the_names_and_letters_as_they_are()
    {
        Assert.Contains("\"volumeMl\": ", Written, StringComparison.Ordinal);
        Assert.Contains("\"massG\": 7200", Written, StringComparison.Ordinal);
        Assert.Contains("\"costMinor\": ", Written, StringComparison.Ordinal);
        Assert.DoesNotContain("\\u00", Written, StringComparison.OrdinalIgnoreCase);
        Assert.EndsWith("}\n", Written, StringComparison.Ordinal);
        Assert.DoesNotContain('\r', Written);
    }
}
