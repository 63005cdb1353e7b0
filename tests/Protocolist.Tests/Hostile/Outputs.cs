using System.Text.Json;
using Protocolist.Cli;
using Protocolist.Cli.Commands;
using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Reading.Csv;
using Protocolist.Sheets;

namespace Protocolist.Tests.Hostile;

/// <summary>Everything that is written for a person to read, by the name of its form.</summary>
internal static class Outputs
{
    /// <summary>A text that would begin a line of its own anywhere a line break of somebody's comes through.</summary>
    public const string Mark = "FORGED";

    public static IEnumerable<(string Form, string Text)> Of(IEnumerable<Finding> findings)
    {
        var all = findings.ToList();
        yield return ("finding lines", Said(w => Told.Of(all).Write(w)));
        yield return ("json", Said(w => w.Write(Protocolist.Cli.Commands.FluidJson.Object(json => json.Findings(all)) + "\n")));
    }

    public static IEnumerable<(string Form, string Text)> Of(Plan plan) =>
    [
        ("text", TextSheet.Write(plan)), ("json", PlanJson.Write(plan)), ("html", HtmlSheet.Write(plan)), ("ics", CalendarSheet.Write(plan)), ("csv", StepTable.Write(plan)), ("csv", ShoppingList.Write(plan)),
        ("explain lines", Said(w =>
        {
            foreach (var figure in plan.Figures) ExplainCommand.Write(Explanation.Of(plan, figure.Id).Value!, 0, w);
        })),
        .. Of(plan.Findings),
    ];

    public static IEnumerable<(string Form, string Text)> Of(Revision revision) =>
    [
        ("change lines", Said(w =>
        {
            foreach (var change in revision.Changes) w.WriteLine(change);
        })),
        .. Of(revision.Plan),
    ];

    public static IEnumerable<(string Form, string Text)> Of(BatchRow row)
    {
        var cells = new StringWriter();
        CsvWriter.WriteRow(cells, BatchText.Cells(row));
        return [("batch line", Said(w => w.WriteLine(BatchText.Line(row)))), ("json", Said(w => w.WriteLine(BatchText.Json(row)))), ("csv", cells.ToString()), .. Of(row.Findings), .. row.Plan is { } plan ? Of(plan) : []];
    }

    public static IEnumerable<(string Form, string Text)> Of(Protocol protocol) =>
        [("show lines", Said(w => ShowCommand.Write(protocol, w)))];

    /// <summary>Whether a text obeys nothing, forges no line and is still of its form.</summary>
    public static void AssertClean(string form, string text, string place)
    {
        var plain = text.Replace("\r\n", "\n", StringComparison.Ordinal);
        Assert.True(ReferenceEquals(ShownText.Lines(plain), plain), $"{place} comes through raw as {form}: {ShownText.Lines(plain)}");
        var lines = form switch { "ics" => plain.Replace("\n ", "", StringComparison.Ordinal), "html" or "csv" => "", _ => plain };
        var forged = lines.Split('\n').Prepend("").Pairwise().Any(l => l.Second.TrimStart().StartsWith(Mark, StringComparison.Ordinal) && !(form == "text" && IsWrapped(l.First, l.Second)));
        Assert.False(forged, $"{place} forges a line as {form}: {lines}");
        if (form == "json") JsonDocument.Parse(plain).Dispose();
        if (form == "html") Assert.False(plain.Contains("<script", StringComparison.OrdinalIgnoreCase), $"{place} is markup as {form}");
        if (form != "csv") return;
        var reader = new CsvReader(new StringReader(text), "f.csv");
        while (reader.Read() is { } record)
        {
            Assert.Empty(record.Findings);
            Assert.False(record.Fields.Any(f => f.Text.StartsWith('=') || f.Text.StartsWith('@')), $"{place} is a formula as {form}");
        }
    }

    /// <summary>Whether a line goes on with the one before it, because its first word had no more room there.</summary>
    private static bool IsWrapped(string before, string line) => line.StartsWith("  ", StringComparison.Ordinal) && before.Length + 1 + line.TrimStart().Split(' ')[0].Length > 100;

    private static IEnumerable<(string First, string Second)> Pairwise(this IEnumerable<string> lines) => lines.Zip(lines.Skip(1));

    private static string Said(Action<TextWriter> say)
    {
        var text = new StringWriter { NewLine = "\n" };
        say(new ShownWriter(text));
        return text.ToString();
    }
}
