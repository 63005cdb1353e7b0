using System.Text.Json.Nodes;
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
    [InlineData("{\"formatVersion\": 1}")]
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
    public void Plan_of_a_later_format_is_refused()
    {
        var read = Read(Written.Replace("\"formatVersion\": 1", "\"formatVersion\": 2", StringComparison.Ordinal));

        Assert.Equal("later-format", Assert.Single(read.Findings).Id);
    }

    /// <summary>Every value of a plan replaced by one of another kind, and every key taken out.</summary>
    [Fact]
    public void Damaged_plan_is_a_finding_or_a_plan_and_never_an_exception()
    {
        var root = JsonNode.Parse(Written)!.AsObject();
        var refused = 0;
        foreach (var key in root.Select(p => p.Key).ToList())
        {
            foreach (var wrong in (JsonNode?[])[null, JsonValue.Create("wrong"), JsonValue.Create(-1), new JsonArray(1, 2), new JsonObject { ["x"] = 1 }])
            {
                var damaged = root.DeepClone().AsObject();
                damaged[key] = wrong?.DeepClone();
                var read = Read(damaged.ToJsonString());
                Assert.True(read.Value is not null || read.HasErrors, key);
                refused += read.Value is null ? 1 : 0;
            }

            var without = root.DeepClone().AsObject();
            without.Remove(key);
            Assert.True(Read(without.ToJsonString()) is { Value: not null } or { HasErrors: true }, key);
        }

        Assert.True(refused > 40, $"{refused} were refused");
    }

    [Fact]
    public void Fault_is_found_at_its_line()
    {
        var lines = Written.Split('\n');
        var line = Array.FindIndex(lines, l => l.Contains("\"leastHours\"", StringComparison.Ordinal));
        lines[line] = lines[line].Replace(": ", ": \"long\" ", StringComparison.Ordinal);

        Assert.Equal(line + 1, Assert.Single(Read(string.Join('\n', lines)).Findings).Where.Line);
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
