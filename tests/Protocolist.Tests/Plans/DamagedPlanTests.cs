using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Sheets;
using Protocolist.Specimens;

namespace Protocolist.Tests.Plans;

/// <summary>A plan's file with any one part taken out or replaced: it is refused with a reason, or it is a plan that every sheet can be made of.</summary>
public partial class DamagedPlanTests(ITestOutputHelper output)
{
    /// <summary>What stands in a value's place, by the name that the list of what is allowed has for it; nothing takes the value out.</summary>
    private static readonly (string Name, string? Text)[] Instead =
        [("null", "null"), ("-1", "-1"), ("1e300", "1e300"), ("text", "\"\""), ("word", "\"x\""), ("list", "[]"), ("holed list", "[null]"), ("object", "{}"), ("out", null)];

    /// <summary>Where a value may be another and the file is a plan all the same, with why. A path ends with what it is allowed to be.</summary>
    private static readonly (string Path, string Why)[] Allowed =
    [
        (@".*\.facts\..+|.*\.facts (object|out)", "a message says whatever it says: nothing is reckoned with its facts, and any fact can be said"),
        (@".*\.(text|phrase) word", "words, and a phrase of another version of the library: it keeps its words"),
        (@".*\.(tool|what)\.(text|phrase|facts).*", "words beside the facts that say the same, never read"),
        (@".*\.(title|what|region|message|item|name|destination|instructions\[\]|method\[\]|lookFor\[\]|cautions\[\]|because\[\]|label\[\]) word", "words"),
        (@".*\.(why|amount|at|remedy|note|formula|what|tool|instructions\[\]|method\[\]|lookFor\[\]|cautions\[\]|because\[\]|label\[\]|parts\[\]\.name) (text|word)", "words that may be none"),
        (@"\.figures\[\]\.value .*|\.fluids\[\]\.from .*|\.(waste\[\]\.from|recipes\[\]\.name|purchases\[\]\.pack) .*", "words beside the facts that say the same, never read"),
        (@".*\.(source|where|subject|side|bench|file|stock|step|mixedIn) (text|word)", "may be empty: where there is none to name"),
        (@".*\.(id|name|group|scientificName|collectedBy|howObtained) word", "a name is any text; where it is of something of the plan, what it names is there"),
        (@"\.protocol\.files\[\]\.text word", "the protocol's text is read where it is used"),
        (@"\.figures\[\]\.exact text", "a figure that is a word"),
        (@"\.specimen\..* out|\.specimen\.(group|scientificName|collectedBy|howObtained|where|permits\[\]) (text|word)", "another animal"),
        (@"\.choices object|\.choices\..* (text|word|out)", "what is not chosen takes its default; a revision refuses an option that is none"),
        (@"\.(by|earliestStart|start|end|loggedUntil|wishes|settled) null", "not asked for, or no time was found"),
        (@"\.costs\..* null|.*\.price null", "the bench gives no prices for it"),
        (@"\.settled\.(vessels|supplies) object|\.settled\.(vessels|supplies)\..* word", "of a step or a fluid that is none nothing is settled"),
        (@"\.settled\.(soakHours|dates)(\.\(unknown\))? (-1|object|out)|\.settled\.posture (null|out)|\.settled\.(vessels|supplies) out", "nothing is settled of it"),
        (@"\.care\[\]\.(on|everyMonths) null", "without dates, or once"),
        (@".*\.(fluid|salt|vessel|volumeMl|mostHours|lengthMm|depthMm|spacingMm) null|\.steps\[\]\.(fluid|vessel) (text|word)", "has none"),
        (@"\.purchases\[\]\.id text", "the books do not have it"),
        (@"\.recipes\[\]\.atC -1", "the cold room is below freezing"),
        (@".*(\]|changes|withdrawn|care|dates|label|findings|figures|inputs|fluids|materials|draws|for|purchases|recipes|parts|method|because|cautions|cuts|sites|inspections|changesAt|instructions|lookFor|waste|disposalByClass) (list|out)", "a list may be shorter, down to nothing"),
    ];

    /// <summary>The otter after a week, with everything asked of it that a plan can say.</summary>
    private static JsonNode Whole()
    {
        var bench = BenchReader.Read(new("b.yaml", File.ReadAllText(Repository.SkerryPoint)), DateTimeZoneProviders.Tzdb).Value!;
        var otter = SpecimenReader.Read(new("s.yaml", File.ReadAllText(Repository.Otter))).Value!;
        var log = LogReader.Read(new("l.yaml", File.ReadAllText(Repository.File("samples", "logs", "harbour-otter.yaml"))), bench.Opening.Zone).Value!;
        var planner = new Planner(Shelf.Bundled());
        var plan = planner.Plan(new(otter, bench, new LocalDateTime(2027, 3, 1, 9, 0)) { By = new LocalDate(2027, 12, 1) }).Value!;
        return JsonNode.Parse(PlanJson.Write(planner.Revise(plan, log, new(bench)).Value!.Plan))!;
    }

    [Fact]
    public void Every_value_that_is_replaced_is_refused_with_its_path_or_is_allowed_and_still_a_plan()
    {
        var root = Whole();
        var (refused, kept, wrong) = (0, 0, new List<string>());
        var unused = Allowed.Select(a => a.Path).ToHashSet();

        // One place of each kind: what holds of the first step holds of the others.
        foreach (var (path, set) in Places(root, "").DistinctBy(p => Alike(p.Path)).ToList())
        {
            foreach (var (name, text) in Instead)
            {
                var undo = set(text);
                var json = root.ToJsonString();
                undo();
                var read = PlanJson.Read(new("p.json", json), DateTimeZoneProviders.Tzdb);
                var allowed = Allowed.Where(a => Fits(a.Path, $"{Kind(path)} {name}")).Select(a => a.Path).ToList();
                unused.ExceptWith(allowed);
                if (read.Value is not { } plan)
                {
                    if (!Tells(read.Findings, path)) wrong.Add($"{path} {name}: without its path: {string.Join("; ", read.Findings)}");
                    refused++;
                    continue;
                }

                kept++;
                if (allowed.Count == 0) wrong.Add($"{path} {name}: taken");
                try
                {
                    Assert.All([TextSheet.Write(plan), HtmlSheet.Write(plan), CalendarSheet.Write(plan), StepTable.Write(plan), ShoppingList.Write(plan), PlanJson.Write(plan)], Assert.NotEmpty);
                    foreach (var figure in plan.Figures.Take(20)) _ = Explanation.Of(plan, figure.Id);
                }
                catch (Exception fault)
                {
                    Assert.Fail($"{path} {name}: {fault}");
                }
            }
        }

        output.WriteLine($"{refused} refused, {kept} still plans");
        Assert.Empty(wrong);
        Assert.Empty(unused);
    }

    /// <summary>Every part of a document: its path, and what puts another text in its place and gives what undoes that.</summary>
    private static IEnumerable<(string Path, Func<string?, Action> Set)> Places(JsonNode? node, string path)
    {
        if (node is JsonObject table)
        {
            yield return ($"{path}.(unknown)", text => Set(table, table.Count, "unknown", text ?? "1"));
            foreach (var (at, (key, value)) in table.ToList().Index())
            {
                yield return ($"{path}.{key}", text => Set(table, at, key, text));
                foreach (var place in Places(value, $"{path}.{key}")) yield return place;
            }
        }

        if (node is not JsonArray list) yield break;
        for (var i = 0; i < list.Count; i++)
        {
            var at = i;
            yield return ($"{path}[{at}]", text => Set(list, at, text));
            foreach (var place in Places(list[i], $"{path}[{at}]")) yield return place;
        }
    }

    private static Action Set(JsonObject table, int at, string key, string? text)
    {
        var had = table.TryGetPropertyValue(key, out var was);
        table.Remove(key);
        if (text is not null) table.Insert(at, key, JsonNode.Parse(text));
        return () =>
        {
            table.Remove(key);
            if (had) table.Insert(at, key, was);
        };
    }

    private static Action Set(JsonArray list, int at, string? text)
    {
        var was = list[at];
        list.RemoveAt(at);
        if (text is not null) list.Insert(at, JsonNode.Parse(text));
        return () =>
        {
            if (text is not null) list.RemoveAt(at);
            list.Insert(at, was);
        };
    }

    private static string Kind(string path) => Number().Replace(path, "[]");

    /// <summary>The facts of all messages are read by one reader: what holds of one message's holds of any.</summary>
    private static string Alike(string path) => FactsOfAny().Replace(Kind(path), "$1");

    /// <summary>Whether a finding tells the path, or that of a part that it lies in.</summary>
    private static bool Tells(IEnumerable<Finding> findings, string path)
    {
        var top = path.TrimStart('.').Split('.', '[')[0].Trim('(', ')');
        return findings.Any(f => f.Severity == Severity.Error && (f.ToString().Contains(top, StringComparison.OrdinalIgnoreCase) || f.Id == "earlier-format"));
    }

    private static bool Fits(string allowed, string place) => Regex.IsMatch(place, $"^{allowed}$");

    [GeneratedRegex(@"^.*?(\.facts\.).*\.")]
    private static partial Regex FactsOfAny();

    [GeneratedRegex(@"\[\d+\]")]
    private static partial Regex Number();
}
