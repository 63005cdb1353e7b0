using System.Globalization;
using System.Text;
using Protocolist.Findings;
using static System.FormattableString;

namespace Protocolist.Cli.Commands;

/// <summary>A comparison as plain tables: what each way is, one column a way and one row a number, then what is remarked and found.</summary>
internal static class CompareText
{
    private const int Columns = 6;
    private const int Width = 100;

    public static string Of(Comparison comparison, IEnumerable<Finding> findings)
    {
        var text = new StringBuilder();
        var ways = comparison.Ways;
        Add(text, $"{comparison.SpecimenId}: {comparison.Protocol.Title} ({comparison.Protocol.Id}, revision {comparison.Protocol.Revision})");
        Add(
            text,
            string.Create(
                CultureInfo.InvariantCulture,
                $"{ways.Length} {(ways.Length == 1 ? "way" : "ways")} of {comparison.Weighed} that were weighed, the less harmful first. A is what the planner "
                + $"takes by itself; behind each other stands what it is good for. Numbers are not all: read the remarks and what was found"));
        foreach (var finding in findings) Add(text, finding.ToString());
        text.Append('\n');
        foreach (var way in ways)
        {
            var goodFor = way.GoodFor.IsEmpty ? "" : $" (good for: {way.GoodFor})";
            Add(text, $"{way.Name.PadRight(2)} {What(way, ways)}{goodFor}", "   ");
        }

        foreach (var some in ways.Chunk(Columns)) Table(text.Append('\n'), some);
        text.Append("\nShrinkage and colour\n");
        foreach (var remark in ways.SelectMany(w => w.Remarks).Distinct())
            Add(text, $"{Names(ways.Where(w => w.Remarks.Contains(remark)), ways.Length)}: {remark}", "  ");
        Found(text, ways);
        return text.ToString();
    }

    /// <summary>
    /// The first way is told whole. Another set of choices is told by them, vessels and stock being the planner's own; a way that insists on something by
    /// that.
    /// </summary>
    private static string What(ComparedWay way, IReadOnlyList<ComparedWay> ways)
    {
        var choices = string.Join(", ", way.Choices.Select(c => $"{c.Key}: {c.Value}"));
        if (!way.Wishes.IsEmpty() && ways.FirstOrDefault(w => w.Choices.SequenceEqual(way.Choices) && w.Name != way.Name) is { } like && like.Wishes.IsEmpty())
            return $"as {like.Name}, but {string.Join(", ", Details(way).Except(Details(like), StringComparer.Ordinal))}";
        return way.Wishes.IsEmpty() && way != ways[0] ? choices : string.Join("; ", ((string[])[choices, .. Details(way)]).Where(t => t.Length > 0));
    }

    private static IEnumerable<string> Details(ComparedWay way) =>
        way.Vessels.Select(v => $"{v.Key} in {v.Value}").Concat(way.Supplies.Select(s => $"{s.Key} from {s.Value}"));

    private static void Table(StringBuilder text, ComparedWay[] ways)
    {
        (string Title, Func<ComparedWay, string> Cell)[] rows =
        [
            ("", w => w.Name),
            ("days", w => w.Days is { } days ? Invariant($"{days:0.0}") : "none found"),
            ("hands-on hours", w => Invariant($"{w.HandsOnHours:0.0}")),
            ("cost now", w => w.CostNow?.ToString() ?? "not known"),
            ("cost over ten years", w => w.OverTenYears?.ToString() ?? "not known"),
            ("formaldehyde stock, L", w => Litres(w.FormaldehydeStockLitres)),
            ("flammable alcohol, L", w => Litres(w.FlammableAlcoholLitres)),
            ("errors", w => Invariant($"{w.Errors}")),
            ("warnings", w => Invariant($"{w.Warnings}")),
            ("may be started", w => w.Startable ? "yes" : "NO"),
            ("nowhere better than", w => w.DominatedBy ?? "-"),
        ];
        var first = rows.Max(r => r.Title.Length);
        var width = rows.Max(r => ways.Max(w => r.Cell(w).Length)) + 2;
        foreach (var (title, cell) in rows)
            text.Append((title.PadRight(first) + string.Concat(ways.Select(w => cell(w).PadLeft(width)))).TrimEnd()).Append('\n');
    }

    /// <summary>Errors and warnings, each once by its id, with the ways that have it; in the words of the first.</summary>
    private static void Found(StringBuilder text, IReadOnlyList<ComparedWay> ways)
    {
        var found = ways
            .SelectMany(w => w.Findings.Select(f => (Way: w, Finding: f)))
            .GroupBy(f => (f.Finding.Severity, f.Finding.Id))
            .OrderByDescending(g => g.Key.Severity)
            .ToList();
        if (found.Count > 0) text.Append("\nErrors and warnings\n");
        foreach (var group in found)
        {
            var example = group.First().Finding;
            var names = Names(group.Select(f => f.Way).DistinctBy(w => w.Name), ways.Count);
            var alike = group.Select(f => f.Finding.Message.ToString()).Distinct(StringComparer.Ordinal).Skip(1).Any() ? " (and alike)" : "";
            Add(
                text,
                $"{names}: {example.Severity.ToString().ToLowerInvariant()} {example.Id}: {example.Message}{alike}",
                "  ");
        }
    }

    private static string Names(IEnumerable<ComparedWay> some, int all)
    {
        var names = some.Select(w => w.Name).ToList();
        return names.Count == all ? "all" : string.Join(' ', names);
    }

    private static string Litres(double litres) =>
        litres switch { 0 => "0", < 0.1 => Invariant($"{litres:0.000}"), < 10 => Invariant($"{litres:0.00}"), _ => Invariant($"{litres:0.0}") };

    /// <summary>A line of at most so many characters; what goes on is indented.</summary>
    private static void Add(StringBuilder text, string line, string indent = "  ")
    {
        var length = 0;
        foreach (var word in line.Split(' '))
        {
            if (length > 0 && length + word.Length + 1 > Width)
            {
                text.Append('\n').Append(indent);
                length = indent.Length;
            }
            else if (length > 0)
            {
                text.Append(' ');
                length++;
            }

            text.Append(word);
            length += word.Length;
        }

        text.Append('\n');
    }
}
