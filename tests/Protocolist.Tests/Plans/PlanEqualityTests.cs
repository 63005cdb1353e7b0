using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Protocolist.Findings;
using Protocolist.Plans;
using UnitsNet;
using static Protocolist.Tests.Planning.PlanFixture;

namespace Protocolist.Tests.Plans;

/// <summary>A plan is its facts: the same facts are the same plan, and any other fact is another plan.</summary>
public class PlanEqualityTests
{
    private static readonly Plan Plan = Otter();

    public static TheoryData<string, Func<Plan, Plan>> Changed => new()
    {
        { "specimen", p => p with { Specimen = p.Specimen with { Mass = Mass.FromGrams(p.Specimen.Mass!.Value.Grams + 1) } } },
        { "permits", p => p with { Specimen = p.Specimen with { Permits = ["P 12"] } } },
        { "choice", p => p with { Choices = p.Choices.SetItem("keeping", "another") } },
        { "wish", p => p with { Wishes = new() { Vessels = p.Choices } } },
        { "start", p => p with { Start = p.Start!.Value.Plus(NodaTime.Duration.FromMinutes(1)) } },
        { "step", p => p with { Steps = p.Steps.SetItem(0, p.Steps[0] with { Changes = p.Steps[0].Changes + 1 }) } },
        { "sentence", p => p with { Steps = p.Steps.SetItem(0, p.Steps[0] with { Instructions = [.. p.Steps[0].Instructions, Message.Text("Wait.")] }) } },
        { "order of steps", p => p with { Steps = [.. p.Steps.Reverse()] } },
        { "step left out", p => p with { Steps = p.Steps.RemoveAt(0) } },
        { "recipe", p => p with { Recipes = p.Recipes.SetItem(0, p.Recipes[0] with { For = [] }) } },
        { "part", p => p with { Recipes = p.Recipes.SetItem(0, p.Recipes[0] with { Parts = p.Recipes[0].Parts.SetItem(0, p.Recipes[0].Parts[0] with { Mass = Mass.Zero }) }) } },
        { "method", p => p with { Recipes = p.Recipes.SetItem(0, p.Recipes[0] with { Method = [] }) } },
        { "figure", p => p with { Figures = p.Figures.RemoveAt(0) } },
        { "what a finding rests on", p => p with { Findings = p.Findings.SetItem(0, p.Findings[0] with { Figures = ["another"] }) } },
        { "text of the protocol", p => p with { Protocol = p.Protocol with { Files = [] } } },
    };

    [Theory]
    [MemberData(nameof(Changed))]
    public void Any_other_fact_is_another_plan(string what, Func<Plan, Plan> change) => Assert.False(Plan.Equals(change(Plan)), what);

    [Fact]
    public void The_same_facts_are_the_same_plan()
    {
        var again = Otter();

        Assert.NotSame(Plan, again);
        Assert.Equal(Plan, again);
        Assert.Equal(Plan.GetHashCode(), again.GetHashCode());
        Assert.Equal(Plan, Plan with { Specimen = Plan.Specimen with { Mass = Mass.FromKilograms(Plan.Specimen.Mass!.Value.Kilograms) } });
    }

    /// <summary>Every fact of the file, one at a time, each made another: what can be read of that is another plan.</summary>
    [Fact]
    public void Whatever_is_read_counts()
    {
        var root = JsonNode.Parse(PlanJson.Write(Plan))!;
        Assert.Equal(Plan, Read(root));
        var (read, alike) = (0, new SortedSet<string>(StringComparer.Ordinal));
        foreach (var path in Leaves(root).DistinctBy(p => Regex.Replace(p, @"\d+", "0")).ToList())
        {
            var other = root.DeepClone();
            Change(other, path);
            if (Read(other) is not { } plan) continue;
            read++;
            if (plan == Plan) alike.Add(Regex.Replace(path, @"\[\d+\]", "").Replace("$.", "", StringComparison.Ordinal));
        }

        Assert.True(read > 100);
        Assert.Equal(Words, alike.Where(p => !p.EndsWith(".text", StringComparison.Ordinal)));
    }

    /// <summary>What follows from other facts and stands beside them for whoever reads the file; so does the <c>text</c> of a message.</summary>
    private static readonly string[] Words =
    [
        "figures.value", "fluids.from", "purchases.pack", "recipes.name", "steps.materials.amount",
        "steps.sites.tool.phrase",
        "waste.from", "waste.what", "waste.what.facts.fluid", "waste.what.phrase",
    ];

    private static Plan? Read(JsonNode json) => PlanJson.Read(new("plan.json", json.ToJsonString())).Value;

    private static IEnumerable<string> Leaves(JsonNode? node) => node switch
    {
        JsonObject o => o.SelectMany(p => Leaves(p.Value)),
        JsonArray a => a.SelectMany(Leaves),
        JsonValue v => [v.GetPath()],
        _ => [],
    };

    private static void Change(JsonNode root, string path)
    {
        var (parent, key) = (root, "");
        foreach (var part in Regex.Matches(path, @"\['([^']+)'\]|\[(\d+)\]|\.([^.\[]+)").Select(m => m.Groups.Values.Skip(1).First(g => g.Success).Value))
        {
            if (key.Length > 0) parent = Under(parent, key)!;
            key = part;
        }

        var value = Under(parent, key)!.AsValue();
        JsonNode changed = value.GetValueKind() switch
        {
            System.Text.Json.JsonValueKind.String => value.GetValue<string>() + "x",
            System.Text.Json.JsonValueKind.Number => value.GetValue<double>() + 1,
            _ => !value.GetValue<bool>(),
        };
        if (parent is JsonArray list) list[int.Parse(key, System.Globalization.CultureInfo.InvariantCulture)] = changed;
        else parent[key] = changed;
    }

    private static JsonNode? Under(JsonNode parent, string key) => parent is JsonArray list ? list[int.Parse(key, System.Globalization.CultureInfo.InvariantCulture)] : parent[key];
}
