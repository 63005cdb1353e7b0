using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Plans;
using Protocolist.Sheets;
using Protocolist.Specimens;

namespace Protocolist.Tests.Plans;

/// <summary>A plan's file with any one part taken out or replaced: it is refused with a reason, or it is a plan that every sheet can be made of.</summary>
public partial class DamagedPlanTests(ITestOutputHelper output)
{
    private static readonly string?[] Instead = ["null", "-7", "1e300", "\"\"", "\"x\"", "[]", "[null]", "{}", null];

    [Fact]
    public void Every_part_taken_out_or_replaced_is_refused_or_still_a_plan()
    {
        var bench = BenchReader.Read(new("b.yaml", File.ReadAllText(Repository.SkerryPoint)), DateTimeZoneProviders.Tzdb).Value!;
        var otter = SpecimenReader.Read(new("s.yaml", File.ReadAllText(Repository.Otter))).Value!;
        var root = JsonNode.Parse(PlanJson.Write(new Planner(Shelf.Bundled()).Plan(new(otter, bench, new LocalDateTime(2027, 3, 1, 9, 0))).Value!))!;
        var (refused, kept) = (0, 0);

        // One place of each kind: what holds of the first step holds of the others.
        foreach (var (path, set) in Places(root, "").DistinctBy(p => Number().Replace(p.Path, "[]")).ToList())
        {
            foreach (var text in Instead)
            {
                var before = set(text);
                var json = root.ToJsonString();
                before();
                var read = PlanJson.Read(new("p.json", json));
                if (read.Value is not { } plan)
                {
                    Assert.True(read.Findings.Any(f => !f.Message.IsEmpty), path);
                    refused++;
                    continue;
                }

                kept++;
                try
                {
                    Assert.All([TextSheet.Write(plan), HtmlSheet.Write(plan), CalendarSheet.Write(plan), StepTable.Write(plan), ShoppingList.Write(plan), PlanJson.Write(plan)], Assert.NotEmpty);
                    foreach (var figure in plan.Figures.Take(20)) _ = Explanation.Of(plan, figure.Id);
                }
                catch (Exception fault)
                {
                    Assert.Fail($"{path} as {text ?? "nothing"}: {fault}");
                }
            }
        }

        output.WriteLine($"{refused} refused, {kept} still plans");
    }

    /// <summary>Every part of a document: its path, and what puts another text in its place and gives what undoes that.</summary>
    private static IEnumerable<(string Path, Func<string?, Action> Set)> Places(JsonNode? node, string path)
    {
        switch (node)
        {
            case JsonObject table:
                foreach (var (key, value) in table.ToList())
                {
                    yield return ($"{path}.{key}", text =>
                    {
                        var at = table.IndexOf(key);
                        var was = table[key];
                        if (text is null) table.Remove(key);
                        else table[key] = JsonNode.Parse(text);
                        return () =>
                        {
                            table.Remove(key);
                            table.Insert(at, key, was);
                        };
                    }
                    );
                    foreach (var place in Places(value, $"{path}.{key}")) yield return place;
                }

                break;
            case JsonArray list:
                for (var i = 0; i < list.Count; i++)
                {
                    var at = i;
                    yield return ($"{path}[{at}]", text =>
                    {
                        var was = list[at];
                        if (text is null) list.RemoveAt(at);
                        else list[at] = JsonNode.Parse(text);
                        return () =>
                        {
                            if (text is null) list.Insert(at, was);
                            else list[at] = was;
                        };
                    }
                    );
                    foreach (var place in Places(list[i], $"{path}[{at}]")) yield return place;
                }

                break;
        }
    }

    [GeneratedRegex(@"\[\d+\]")]
    private static partial Regex Number();
}
