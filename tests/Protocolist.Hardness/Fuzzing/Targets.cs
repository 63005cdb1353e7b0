using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Formulas;
using Protocolist.Notation;
using Protocolist.Plans;
using Protocolist.Protocols;
using Protocolist.Quantities;
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
    private static readonly SourceText BenchText = new("bench.yaml", Folders.Text("samples", "benches", "skerry-point.yaml"));
    private static readonly SourceText OtterText = new("otter.yaml", Folders.Text("samples", "specimens", "harbour-otter.yaml"));
    private static readonly Lazy<PreparedBench> Bench = new(() => new(BenchReader.Read(BenchText, Zones).Value!));
    private static readonly Lazy<Specimen> Otter = new(() => SpecimenReader.Read(OtterText).Value!);
    private static readonly Lazy<Plan> OtterPlan = new(() => Bundled.Value.Plan(new(Otter.Value, Bench.Value, Monday)).Value!);
    private static readonly SourceText[] Fishes =
        [.. BundledProtocols.Sources().Where(s => ((string[])["/bases/", "fish-medium"]).Any(part => s.Name.Contains(part, StringComparison.Ordinal)))];

    private static readonly Lazy<FormulaScope> Scope = new(() => new(
        new Dictionary<string, FormulaType>(SpecimenScope.Types, StringComparer.Ordinal),
        new[] { CommonFunctions.All, SpecimenFunctions.All }.SelectMany(f => f).ToDictionary(f => f.Name, StringComparer.Ordinal)));

    public static IReadOnlyList<Target> All { get; } =
    [
        new("specimen", Files("samples", "specimens"), OfSpecimen),
        new("bench", Files("samples", "benches"), OfBench),
        new("protocol", [Folders.Text("samples", "house", "fish-medium.yaml"), .. Files("protocols", "fishes")], OfProtocol),
        new("log", Files("samples", "logs"), OfLog),
        new("plan", [PlanJson.Write(OtterPlan.Value)], OfPlan),
        new("csv", Files("samples", "batches", "*.csv"), OfTable),
        new(
            "formula",
            [
                "specimen.mass * 3 mL/kg", "least(specimen.half-thickness, 12 mm / 2)", "2 to 3 * (1 + 5 %)",
                "choose(specimen.mass > 2 kg and not specimen.frozen, 24 h, 3 d)",
            ],
            OfFormula),
        new("quantity", ["12.5 mL", "2 to 3 kg", "1/2 in", "20 degC", "3,5 %vol", "1e3 mm", "12.50 EUR", "3.20 EUR/L"], OfQuantity),
        new(
            "fluid",
            ["ethanol 70 %vol", "formalin 10 %vol, phosphate buffered", "isopropanol 50 %vol", "water", "glycerol 30 %vol", "saturated borax"],
            OfFluid),
        new("moment", ["2027-03-01T09:00", "2027-03-01", "2027-03-01T09:00+01:00", "2027-03-28T02:30:00", "24:00", "9:00 to 17:30"], OfMoment),
    ];

    private static string OfSpecimen(string text)
    {
        var read = SpecimenReader.Read(new("f.yaml", text));
        if (!read.IsSound) return Told(read.Findings);
        var made = Bundled.Value.Plan(new(read.Value, Bench.Value, Monday));
        return Told(made.Value is { } plan ? [.. made.Findings, .. Written(plan)] : made.Findings);
    }

    private static string OfBench(string text)
    {
        var read = BenchReader.Read(new("f.yaml", text), Zones);
        return Told(read.IsSound ? Bundled.Value.Plan(new(Otter.Value, read.Value, Monday)).Findings : read.Findings);
    }

    private static string OfProtocol(string text)
    {
        var shelf = Shelf.Of([Fishes, [new SourceText("f.yaml", text)]]);
        if (shelf.Protocols.FirstOrDefault(p => p.File == "f.yaml") is not { } protocol) return Told(shelf.Findings);
        foreach (var line in ProtocolListing.Of(protocol)) _ = $"{line.Key}: {line.Text}";
        return Told(shelf.Findings);
    }

    private static string OfLog(string text)
    {
        var read = LogReader.Read(new("f.yaml", text), DateTimeZone.Utc);
        return Told(read.IsSound ? Bundled.Value.Revise(OtterPlan.Value, read.Value, Bench.Value).Findings : read.Findings);
    }

    private static string OfPlan(string text)
    {
        var read = PlanJson.Read(new("f.json", text), Zones);
        return Told(read.Value is { } plan ? [.. read.Findings, .. Written(plan)] : read.Findings);
    }

    private static string OfTable(string text)
    {
        var opened = Batch.Open(new StringReader(text), "f.csv", new(Bundled.Value, Bench.Value, Monday));
        return Told(opened.Value is not { } batch ? opened.Findings
            : batch.Rows().Take(3).SelectMany(r => r.Fault is { } fault ? throw new InvalidOperationException("A row ended by a fault.", fault) : r.Findings));
    }

    private static string OfFormula(string text)
    {
        var formula = Formula.Parse(text, Scope.Value, out var fault);
        return fault is { } wrong ? wrong.Message.Phrase?.Id ?? "" : formula!.ToString()!;
    }

    private static string OfQuantity(string text)
    {
        var read = QuantityText.TryRead(text, Dimension.OfMass, out var mass, out var fault);
        var (money, price) = (MoneyText.Read(text), Price.Read(text));
        _ = $"{money.Value} {price.Value}";
        return string.Concat(read ? Measurable.Text(mass) : Told([fault!]), Told(money.Findings), Told(price.Findings));
    }

    private static string OfFluid(string text)
    {
        var read = Fluid.Read(text);
        _ = read.Value?.ToString();
        return Told(read.Findings);
    }

    private static string OfMoment(string text)
    {
        var quoted = $"\"{text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\"";
        var log = $"format: 1\nlog: A\nwritten: {quoted}\nentries:\n  - {{step: fix, begun: {quoted}, done: {quoted}}}\n";
        var specimen = $"format: 1\nspecimen: A\ngroup: bony-fish\nmass: 1 kg\nfound-on: {quoted}\ndied-at: {quoted}\n";
        var bench = $"format: 1\nbench: A\nzone: UTC\nhours: {{mon: {quoted}}}\nclosed: [{quoted}]\nalso-open: {{{quoted}: 09:00 to 12:00}}\n";
        return string.Concat(
            Told(LogReader.Read(new("f.yaml", log), Zones["Europe/Lisbon"]).Findings),
            Told(SpecimenReader.Read(new("f.yaml", specimen)).Findings),
            Told(BenchReader.Read(new("f.yaml", bench), Zones).Findings));
    }

    public static Target Named(string name) =>
        All.FirstOrDefault(t => t.Name == name) ?? throw new ArgumentException($"There is no target '{name}'.", nameof(name));

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
        foreach (var write in (Func<Plan, Language?, string>[])
            [TextSheet.Write, HtmlSheet.Write, CalendarSheet.Write, StepTable.Write, ShoppingList.Write, PlanJson.Write])
        {
            if (write(plan, null).Length == 0) throw new InvalidOperationException("Nothing was written.");
        }

        foreach (var figure in plan.Figures) _ = Explanation.Of(plan, figure.Id).Value?.ToString();
        return plan.Findings;
    }
}
