using System.Globalization;
using System.Text;
using Protocolist.Findings;
using Protocolist.Planning.Comparing;
using static System.FormattableString;

namespace Protocolist.Cli.Commands;

/// <summary>A comparison as a plain table: one column a way, one row a number.</summary>
internal static class CompareText
{
    private const int Columns = 6;

    public static string Of(Comparison comparison, IEnumerable<Finding> findings)
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"{comparison.SpecimenId}: {comparison.Protocol.Title} ({comparison.Protocol.Id}, revision {comparison.Protocol.Revision})\n");
        text.Append(CultureInfo.InvariantCulture, $"{comparison.Ways.Length} ways\n\n");
        foreach (var way in comparison.Ways)
            text.Append(CultureInfo.InvariantCulture, $"{way.Name}  {string.Join(", ", way.Choices.Select(c => $"{c.Key}: {c.Value}"))}\n");
        foreach (var some in comparison.Ways.Chunk(Columns)) Table(text.Append('\n'), some);
        text.Append('\n');
        foreach (var remark in comparison.Ways.SelectMany(w => w.Remarks).Distinct(StringComparer.Ordinal))
            text.Append(CultureInfo.InvariantCulture, $"{string.Join(" ", comparison.Ways.Where(w => w.Remarks.Contains(remark)).Select(w => w.Name))}: {remark}\n");
        foreach (var finding in findings) text.Append(finding).Append('\n');
        return text.ToString();
    }

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
            ("", w => w.DominatedBy is { } better ? $"{better} is better" : ""),
        ];
        var first = rows.Max(r => r.Title.Length);
        var width = rows.Max(r => ways.Max(w => r.Cell(w).Length)) + 2;
        foreach (var (title, cell) in rows)
            text.Append((title.PadRight(first) + string.Concat(ways.Select(w => cell(w).PadLeft(width)))).TrimEnd()).Append('\n');
    }

    private static string Litres(double litres) => litres switch { 0 => "0", < 0.1 => Invariant($"{litres:0.000}"), < 10 => Invariant($"{litres:0.00}"), _ => Invariant($"{litres:0.0}") };
}
