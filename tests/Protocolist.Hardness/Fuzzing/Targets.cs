using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Formulas;
using Protocolist.Logs;
using Protocolist.Notation;
using Protocolist.Planning;
using Protocolist.Planning.Batching;
using Protocolist.Plans;
using Protocolist.Protocols;
using Protocolist.Quantities;
using Protocolist.Reading;
using Protocolist.Sheets;
using Protocolist.Specimens;

namespace Protocolist.Hardness.Fuzzing;

/// <summary>Every kind of text that the program reads. What can be read goes on to be planned with and written out in every form.</summary>
internal static class Targets
{
    private static readonly LocalDateTime Monday = new(2027, 3, 1, 9, 0);
    private static readonly IDateTimeZoneProvider Zones = DateTimeZoneProviders.Tzdb;
    private static readonly Lazy<Shelf> Protocols = new(Shelf.Bundled);
    private static readonly Lazy<Planner> Bundled = new(() => new(Protocols.Value));
    private static readonly Lazy<PreparedBench> Bench = new(() => new(BenchReader.Read(new("bench.yaml", Folders.Text("samples", "benches", "skerry-point.yaml")), Zones).Value!));
    private static readonly Lazy<Specimen> Otter = new(() => SpecimenReader.Read(new("otter.yaml", Folders.Text("samples", "specimens", "harbour-otter.yaml"))).Value!);
    private static readonly Lazy<Plan> OtterPlan = new(() => Bundled.Value.Plan(new(Otter.Value, Bench.Value, Monday)).Value!);
    private static readonly SourceText[] Fishes = [.. BundledProtocols.Sources().Where(s => s.Name.Contains("/bases/", StringComparison.Ordinal) || s.Name.Contains("fish-medium", StringComparison.Ordinal))];
    private static readonly Lazy<FormulaScope> Scope = new(() => new(new Dictionary<string, FormulaType>(SpecimenScope.Types, StringComparer.Ordinal), new[] { CommonFunctions.All, SpecimenFunctions.All }.SelectMany(f => f).ToDictionary(f => f.Name, StringComparer.Ordinal)));

    public static IReadOnlyList<Target> All { get; } =
    [
        new("specimen", Files("samples", "specimens"), text => Told(SpecimenReader.Read(new("f.yaml", text)) is var read && read.IsSound
            ? Bundled.Value.Plan(new(read.Value, Bench.Value, Monday)) is var made && made.Value is { } plan ? [.. made.Findings, .. Written(plan)] : made.Findings
            : read.Findings)),
        new("bench", Files("samples", "benches"), text => Told(BenchReader.Read(new("f.yaml", text), Zones) is var read && read.IsSound
            ? Bundled.Value.Plan(new(Otter.Value, read.Value, Monday)).Findings
            : read.Findings)),
        new("protocol", [Folders.Text("samples", "house", "fish-medium.yaml"), .. Files("protocols", "fishes")], text => Told(Shelf.Of([Fishes, [new SourceText("f.yaml", text)]]) is var shelf
            && shelf.Protocols.FirstOrDefault(p => p.File == "f.yaml") is { } protocol ? [.. shelf.Findings, .. Shown(protocol)] : shelf.Findings)),
        new("log", Files("samples", "logs"), text => Told(LogReader.Read(new("f.yaml", text), DateTimeZone.Utc) is var read && read.IsSound
            ? Bundled.Value.Revise(OtterPlan.Value, read.Value, Bench.Value).Findings
            : read.Findings)),
        new("plan", [PlanJson.Write(OtterPlan.Value)], text => Told(PlanJson.Read(new("f.json", text)) is var read && read.Value is { } plan ? [.. read.Findings, .. Written(plan)] : read.Findings)),
        new("csv", Files("samples", "batches", "*.csv"), text => Told(Batch.Open(new StringReader(text), "f.csv", new(Bundled.Value, Bench.Value, Monday)) is var opened && opened.Value is { } batch
            ? batch.Rows().Take(3).SelectMany(r => r.Fault is { } fault ? throw new InvalidOperationException("A row ended by a fault.", fault) : r.Findings)
            : opened.Findings)),
        new("formula", ["specimen.mass * 3 mL/kg", "least(specimen.half-thickness, 12 mm / 2)", "choose(specimen.mass > 2 kg and not specimen.frozen, 24 h, 3 d)", "2 to 3 * (1 + 5 %)"], text =>
        {
            var formula = Formula.Parse(text, Scope.Value, out var fault);
            return fault is { } wrong ? wrong.Message.Phrase?.Id ?? "" : formula!.ToString()!.Length > 0 ? "read" : "";
        }),
        new("quantity", ["12.5 mL", "2 to 3 kg", "1/2 in", "20 degC", "3,5 %vol", "1e3 mm", "12.50 EUR", "3.20 EUR/L"], text => string.Concat(
            QuantityText.TryRead(text, Dimension.OfMass, out var mass, out var fault) ? Measurable.Text(mass) : Told([fault!]),
            Told(MoneyText.Read(text) is var money && money.Value is { } sum ? [.. money.Findings, Finding.Note("sum", Message.Text(sum.ToString()))] : money.Findings),
            Told(Price.Read(text) is var price && price.Value is { } rate ? [.. price.Findings, Finding.Note("rate", Message.Text(rate.ToString()))] : price.Findings))),
        new("fluid", ["ethanol 70 %vol", "formalin 10 %vol, phosphate buffered", "isopropanol 50 %vol", "water", "glycerol 30 %vol in ethanol 70 %vol", "saturated borax"], text =>
            Told(Fluid.Read(text) is var read && read.Value is { } fluid ? [.. read.Findings, Finding.Note("fluid", Message.Text(fluid.ToString()!))] : read.Findings)),
        new("moment", ["2027-03-01T09:00", "2027-03-01", "2027-03-01T09:00+01:00", "2027-03-28T02:30:00", "24:00", "9:00 to 17:30"], text =>
        {
            var quoted = $"\"{text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\"";
            return string.Concat(
                Told(LogReader.Read(new("f.yaml", $"format: 1\nlog: A\nwritten: {quoted}\nentries:\n  - {{step: fix, begun: {quoted}, done: {quoted}}}\n"), Zones["Europe/Lisbon"]).Findings),
                Told(SpecimenReader.Read(new("f.yaml", $"format: 1\nspecimen: A\ngroup: bony-fish\nmass: 1 kg\nfound-on: {quoted}\ndied-at: {quoted}\n")).Findings),
                Told(BenchReader.Read(new("f.yaml", $"format: 1\nbench: A\nzone: UTC\nhours: {{mon: {quoted}}}\nclosed: [{quoted}]\nalso-open: {{{quoted}: 09:00 to 12:00}}\n"), Zones).Findings));
        }),
    ];

    public static Target Named(string name) =>
        All.FirstOrDefault(t => t.Name == name) ?? throw new ArgumentException($"There is no target '{name}': {string.Join(", ", All.Select(t => t.Name))}.", nameof(name));

    private static List<string> Files(params string[] path)
    {
        var pattern = path[^1].Contains('*', StringComparison.Ordinal) ? path[^1] : "*.yaml";
        var folder = Folders.Of(path[^1].Contains('*', StringComparison.Ordinal) ? path[..^1] : path);
        return [.. Directory.GetFiles(folder, pattern).Order(StringComparer.Ordinal).Select(f => File.ReadAllText(f).ReplaceLineEndings("\n"))];
    }

    /// <summary>Says every finding, as a person would read it, and gives the ids that came.</summary>
    private static string Told(IEnumerable<Finding> findings)
    {
        var ids = new SortedSet<string>(StringComparer.Ordinal);
        foreach (var finding in findings)
        {
            if (finding.ToString().Contains('\n', StringComparison.Ordinal)) throw new InvalidOperationException($"Not one line: {finding.Id}");
            ids.Add(finding.Id);
        }

        return string.Join(' ', ids);
    }

    private static ImmutableArray<Finding> Written(Plan plan)
    {
        foreach (var text in (string[])[TextSheet.Write(plan), HtmlSheet.Write(plan), CalendarSheet.Write(plan), StepTable.Write(plan), ShoppingList.Write(plan), PlanJson.Write(plan)])
        {
            if (text.Length == 0) throw new InvalidOperationException("Nothing was written.");
        }

        foreach (var figure in plan.Figures) _ = Explanation.Of(plan, figure.Id).Value?.ToString();
        return plan.Findings;
    }

    private static IEnumerable<Finding> Shown(Protocol protocol)
    {
        foreach (var line in ProtocolListing.Of(protocol)) _ = $"{line.Key}: {line.Text}";
        return [];
    }
}
