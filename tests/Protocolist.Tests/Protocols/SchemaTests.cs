using System.Text.Json.Nodes;
using Json.Schema;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Protocols;
using Protocolist.Reading;
using Protocolist.Specimens;

namespace Protocolist.Tests.Protocols;

/// <summary>The schemas judged by a validator that is not ours.</summary>
public sealed class SchemaTests
{
    private static readonly JsonSchema Protocol = JsonSchema.FromText(FileSchemas.Protocol());
    private static readonly JsonSchema Specimen = JsonSchema.FromText(FileSchemas.Specimen());
    private static readonly JsonSchema Bench = JsonSchema.FromText(FileSchemas.Bench());

    /// <summary>The broken protocols whose fault is one of shape: keys, closed lists of words, names, what must be there.</summary>
    public static TheoryData<string> Malformed =>
    [
        "bad-format", "bad-name", "bad-revision", "bad-value-name", "class-without-group", "duplicate-option", "empty-choice", "example-unknown-measure",
        "example-without-specimen", "later-format", "missing-fluid", "missing-format", "missing-protocol", "missing-revision", "missing-title",
        "renamed-key", "renamed-stage-key", "title-a-list", "unknown-cover", "unknown-group", "unknown-key", "unknown-life-stage", "unknown-setting-word", "unknown-sign",
        "unknown-stage-key", "unknown-stage-kind", "unknown-watch-remedy", "watch-without-rhythm", "whole-file-a-list",
    ];

    public static TheoryData<string> Bundled => [.. BundledProtocols.Sources().Select(s => s.Name)];

    [Theory]
    [MemberData(nameof(Bundled))]
    public void Every_bundled_protocol_fits_the_schema(string name) =>
        Assert.Empty(Faults(Protocol, BundledProtocols.Sources().Single(s => s.Name == name)));

    [Theory]
    [MemberData(nameof(Malformed))]
    public void Every_protocol_that_is_malformed_by_shape_is_refused(string name) =>
        Assert.NotEmpty(Faults(Protocol, Broken(name)));

    [Theory]
    [InlineData("unknown-value")]
    [InlineData("wrong-dimension")]
    [InlineData("example-fails")]
    [InlineData("fixation-too-short")]
    public void What_only_the_check_can_judge_passes(string name) => Assert.Empty(Faults(Protocol, Broken(name)));

    [Fact]
    public void The_schemas_are_of_draft_2020_12()
    {
        foreach (var schema in new[] { FileSchemas.Protocol(), FileSchemas.Specimen(), FileSchemas.Bench() })
            Assert.Equal("https://json-schema.org/draft/2020-12/schema", JsonNode.Parse(schema)!["$schema"]!.GetValue<string>());
    }

    [Theory]
    [InlineData("specimen: A\ngroup: mammal\nmass: 7.2 kg\nsex: female\n", true)]
    [InlineData("specimen: A\ngroup: mammal\nweight: 7.2 kg\n", false)]
    [InlineData("specimen: A\ngroup: mamal\nmass: 7.2 kg\n", false)]
    public void A_specimen_is_judged_by_keys_and_words(string text, bool fits) =>
        Assert.Equal(fits, Faults(Specimen, new("s.yaml", "format: 1\n" + text)).Count == 0);

    [Theory]
    [InlineData("bench: A\nzone: Atlantic/Azores\nstock:\n  - {fluid: ethanol 96 %vol, on-hand: 8 L, packs: [{size: 5 L, price: 42.00 EUR}]}\n", true)]
    [InlineData("bench: A\nzone: Atlantic/Azores\nstocks:\n  - {fluid: ethanol 96 %vol}\n", false)]
    [InlineData("bench: A\nzone: Atlantic/Azores\nvessels:\n  - {id: jar, inside: {diameter: 9 cm, height: 16 cm}, wall: gold}\n", false)]
    public void A_bench_is_judged_by_keys_and_words(string text, bool fits) =>
        Assert.Equal(fits, Faults(Bench, new("b.yaml", "format: 1\n" + text)).Count == 0);

    [Fact]
    public void The_specimen_reader_takes_every_key_of_its_schema()
    {
        var text = "format: 1\n" + string.Concat(PropertiesOf(FileSchemas.Specimen(), "properties").Where(k => k != "format").Select(k => $"{k}: 1\n"));
        Assert.DoesNotContain(SpecimenReader.Read(new("s.yaml", text)).Findings, f => f.Id == "unknown-key");
    }

    [Fact]
    public void The_bench_reader_takes_every_key_of_its_schema()
    {
        var stock = PropertiesOf(FileSchemas.Bench(), "properties", "stock", "items", "properties").Where(k => k is not ("salt" or "consumable" or "tool")).Select(k => $"    {k}: 1\n");
        var vessel = PropertiesOf(FileSchemas.Bench(), "properties", "vessels", "items", "properties").Where(k => k != "inside").Select(k => $"    {k}: 1\n");
        var rest = PropertiesOf(FileSchemas.Bench(), "properties").Where(k => k is not ("format" or "stock" or "vessels")).Select(k => $"{k}: 1\n");
        var text = "format: 1\n" + string.Concat(rest) + "stock:\n  -\n" + string.Concat(stock) + "vessels:\n  -\n    inside: {diameter: 9 cm, height: 16 cm}\n" + string.Concat(vessel);
        Assert.DoesNotContain(BenchReader.Read(new("b.yaml", text), DateTimeZoneProviders.Tzdb).Findings, f => f.Id == "unknown-key");
    }

    [Fact]
    public void The_readers_ask_for_no_key_that_the_schemas_lack()
    {
        Assert.Empty(Faults(Specimen, Sample("specimens/harbour-otter.yaml")).Concat(Faults(Specimen, Sample("specimens/pool-wrasse.yaml"))).Concat(Faults(Bench, Sample("benches/skerry-point.yaml"))));
        Assert.Equal(KnownTo("protocol: x\nzzzzzzzz: 1\n", t => Shelf.Of([t]).Findings), PropertiesOf(FileSchemas.Protocol(), "properties").Order(StringComparer.Ordinal));
        Assert.Equal(KnownTo("bench: x\nzone: UTC\nzzzzzzzz: 1\n", t => BenchReader.Read(t, DateTimeZoneProviders.Tzdb).Findings), PropertiesOf(FileSchemas.Bench(), "properties").Order(StringComparer.Ordinal));
    }

    /// <summary>The keys that a reader names when it meets one that nobody knows.</summary>
    private static string[] KnownTo(string text, Func<SourceText, IEnumerable<Finding>> read)
    {
        var finding = read(new("x.yaml", "format: 1\n" + text)).Single(f => f.Id == "unknown-key");
        return finding.Remedy.ToString()["known here: ".Length..].Split(", ");
    }

    private static IEnumerable<string> PropertiesOf(string schema, params string[] path) =>
        path.Aggregate(JsonNode.Parse(schema)!, (node, key) => node[key]!).AsObject().Select(p => p.Key);

    private static SourceText Broken(string name) => FromOutput($"Protocols/broken/{name}.yaml");

    private static SourceText Sample(string name) => FromOutput($"samples/{name}");

    private static SourceText FromOutput(string name) => new(name, File.ReadAllText(Path.Combine(AppContext.BaseDirectory, name)));

    private static List<string> Faults(JsonSchema schema, SourceText source)
    {
        using var document = System.Text.Json.JsonDocument.Parse(Json(DocumentReader.Read(source).Value!).ToJsonString());
        var result = schema.Evaluate(document.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });
        return result.IsValid ? [] : [.. (result.Details ?? []).Where(d => d.Errors is not null).SelectMany(d => d.Errors!.Select(e => $"{d.InstanceLocation}: {e.Value}"))];
    }

    private static JsonNode Json(DocumentNode node) => node switch
    {
        MappingNode m => new JsonObject(m.Entries.Select(e => KeyValuePair.Create(e.Key.Value, (JsonNode?)Json(e.Value)))),
        SequenceNode s => new JsonArray([.. s.Items.Select(Json)]),
        ScalarNode s => JsonValue.Create(s.Value),
        _ => throw new ArgumentException("There is no such node.", nameof(node)),
    };
}
