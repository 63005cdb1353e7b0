using System.Text.RegularExpressions;
using NodaTime;
using Protocolist.Findings;
using Protocolist.Formulas;
using Protocolist.Protocols;
using Protocolist.Quantities;

namespace Protocolist.Tests.Protocols;

/// <summary>The authoring guide says what is so: its examples check out, and its tables are those of the program.</summary>
public sealed partial class GuideTests
{
    private static readonly string Guide = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "protocols", "README.md")).ReplaceLineEndings("\n");

    /// <summary>What stands around a fragment of the guide that is not a whole file.</summary>
    private static readonly (string Key, string Text)[] Frame =
    [
        ("format", "format: 1"),
        ("protocol", "protocol: fragment"),
        ("revision", "revision: 1"),
        ("title", "title: Fragment"),
        ("for", "for: {group: bony-fish, mass: 20 g to 500 g, volume: 1 mL to 10 L, life-stage: adult, intended-use: display}"),
        ("choices", "choices: {keeping: [ethanol, formalin, isopropanol]}"),
        ("stages", "stages:\n  - {stage: immerse, id: fix, fluid: neutral buffered formalin 10 %, ratio: 10, last: 7 d to 14 d}\n  - {stage: house, id: house, fluid: neutral buffered formalin 10 %, ratio: 3}"),
    ];

    public static TheoryData<int> Examples => [.. Enumerable.Range(0, YamlBlock().Count(Guide))];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_example_of_the_guide_checks_out(int index)
    {
        var text = YamlBlock().Matches(Guide)[index].Groups[1].Value;
        var isWhole = text.StartsWith("format:", StringComparison.Ordinal);

        var findings = FileCheck.Run([new SourceText("guide.yaml", isWhole ? text : Framed(text))], DateTimeZoneProviders.Tzdb);

        Assert.DoesNotContain(findings, f => f.Severity == Severity.Error);
        if (isWhole) Assert.DoesNotContain(findings, f => f.Severity == Severity.Warning && f.Where.File == "guide.yaml");
    }

    [Fact]
    public void The_guide_has_an_example_for_each_part_of_the_language() => Assert.True(Examples.Count >= 8);

    [Fact]
    public void The_list_of_names_is_that_of_the_tool() =>
        Assert.Equal(Table("names"), Lines("| name | kind | what it is |", SpecimenScope.Names.Select(n => $"| `{n.Name}` | {Kind(n.Type)} | {n.Summary} |")));

    [Fact]
    public void The_list_of_functions_is_that_of_the_tool() =>
        Assert.Equal(Table("functions"), Lines("| function | what it gives |", FormulaLibrary.All.Select(f => $"| `{f.Signature}` | {f.Summary} |")));

    [Fact]
    public void The_list_of_stages_is_that_of_the_tool() =>
        Assert.Equal(Table("stages"), Lines("| stage | what it is | its own keys |", StageGrammar.Kinds.Select(k => $"| `{k.Word}` | {k.Summary} | {string.Join(", ", k.Settings.Select(s => s.Required ? $"**`{s.Key}`**" : $"`{s.Key}`"))} |")));

    [Fact]
    public void The_lists_of_signs_and_remedies_are_those_of_the_tool()
    {
        Assert.Equal(Table("signs"), Lines("| sign | what the eye or hand finds |", Sign.All.Select(s => $"| `{s.Word}` | {s.Meaning} |")));
        Assert.Equal(Table("remedies"), Lines("| remedy | what is done |", Remedy.All.Select(r => $"| `{r.Word}` | {r.Meaning} |")));
    }

    [Fact]
    public void The_list_of_what_a_stage_can_cover_is_that_of_the_program() =>
        Assert.Equal(Table("covers"), Lines("| word | what it declares |", CoverageWords.All.Select(w => $"| `{w.Word}` | {w.Meaning} |")));

    private static string Kind(FormulaType type) => type.Kind == FormulaKind.Word ? string.Join(", ", type.Words) : type.Dimension == Dimension.None ? "bare number" : type.ToString();

    private static string Lines(string head, IEnumerable<string> rows)
    {
        var rule = string.Concat(Enumerable.Repeat("|---", head.Count(c => c == '|') - 1)) + "|";
        return string.Join('\n', [head, rule, .. rows]);
    }

    /// <summary>The table that follows a mark of the guide.</summary>
    private static string Table(string mark)
    {
        var from = Guide[(Guide.IndexOf($"<!-- {mark} -->", StringComparison.Ordinal) + $"<!-- {mark} -->".Length)..].TrimStart('\n');
        return string.Join('\n', from.Split('\n').TakeWhile(l => l.StartsWith('|')));
    }

    private static string Framed(string fragment) =>
        string.Join('\n', Frame.Where(f => !TopKey(f.Key).IsMatch(fragment)).Select(f => f.Text)) + "\n" + fragment;

    private static Regex TopKey(string key) => new($"^{key}:", RegexOptions.Multiline);

    [GeneratedRegex("```yaml\n(.*?)```", RegexOptions.Singleline)]
    private static partial Regex YamlBlock();
}
